package kelter.demo;

import java.util.List;
import kelter.core.module.About;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;

/** A module from outside with one calculation. */
public final class BeltModule implements CalculationModule {

  /** Found by ServiceLoader. */
  public BeltModule() {}

  @Override
  public About about() {
    return new About("belts", "Belt drives of drums and fans", "0.1.0");
  }

  @Override
  public List<Calculation> calculations() {
    return List.of(BeltDrive.CALCULATION);
  }
}
