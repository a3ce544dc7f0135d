package coffee.grinder;

import java.util.List;
import kelter.core.module.About;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.module.Parts;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Symptom;

/** Coffee grinders. */
public final class GrinderModule implements CalculationModule {

  /** Found by ServiceLoader. */
  public GrinderModule() {}

  @Override
  public About about() {
    return new About("coffee-grinder", "Burrs of coffee grinders", "1.0.0");
  }

  @Override
  public List<Calculation> calculations() {
    return List.of(GrindTime.calculation(), DoseScatter.calculation(), BurrLife.calculation());
  }

  @Override
  public Parts parts() {
    return Parts.of(new Burrs());
  }

  @Override
  public List<Symptom> symptoms() {
    return List.of(Burrs.GRINDS_SLOWLY, Burrs.DOSES_SHORT);
  }

  @Override
  public List<Caution> cautions() {
    return Burrs.CAUTIONS;
  }
}
