package kelter.electrical.lamp;

import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.core.job.Appliance;
import kelter.electrical.Forecasts;
import kelter.electrical.SampleMachines;
import org.junit.jupiter.api.Test;

/** What a lamp measures. */
class LampTest {

  private static final Appliance MACHINE = SampleMachines.CONTROLS;

  private static double at(String question, String fault) {
    return Forecasts.of(MACHINE, question, 0.5, fault);
  }

  /** A filament of 15 W at 230 V: 230² / 15 = 3.5 kOhm hot, about a tenth of it cold. */
  @Test
  void aLampIsWholeOpenOrShorted() {
    double cold = Forecasts.of(MACHINE, "lamp.resistance");
    assertTrue(cold < 230.0 * 230 / 15 / 5 && cold > 230.0 * 230 / 15 / 50);
    assertTrue(at("lamp.resistance", "lamp.dead") > 1e6);
    assertTrue(at("lamp.resistance", "lamp.shorted") < 1);
  }
}
