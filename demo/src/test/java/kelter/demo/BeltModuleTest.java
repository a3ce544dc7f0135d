package kelter.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import kelter.core.job.Appliance;
import kelter.core.module.CalculationModule;
import kelter.core.module.Computation;
import kelter.testkit.ModuleContract;
import org.junit.jupiter.api.Test;

class BeltModuleTest extends ModuleContract {

  @Override
  protected CalculationModule module() {
    return new BeltModule();
  }

  @Override
  protected List<Appliance> appliances() {
    return List.of();
  }

  /** Arithmetic: 2800 rpm, 20 mm on 280 mm without slip is a fourteenth of it, 200 rpm. */
  @Test
  void drumSpeed() {
    Computation computation =
        Computation.of(
            BeltDrive.CALCULATION,
            Map.of(
                "speed", "2800 rpm",
                "diameter", "20 mm",
                "driven-diameter", "280 mm",
                "slip", "0 %"));

    assertEquals(200, computation.results().get(0).quantity().value(), 1e-9);
  }
}
