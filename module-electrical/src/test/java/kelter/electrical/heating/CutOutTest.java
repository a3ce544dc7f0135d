package kelter.electrical.heating;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.core.job.Appliance;
import kelter.electrical.Forecasts;
import kelter.electrical.Jobs;
import kelter.electrical.SampleMachines;
import org.junit.jupiter.api.Test;

/** What a cut-out of a motor or fan does. */
class CutOutTest {

  private static final Appliance MACHINE = SampleMachines.CONTROLS;

  private static double at(String question, String fault) {
    return Forecasts.of(MACHINE, question, 0.5, fault);
  }

  /** A cut-out of a machine without a heater, such as a vacuum cleaner, is judged by itself. */
  @Test
  void aCutOutOpensEarlyAlthoughItIsWholeWhenCold() {
    assertTrue(at("link.resistance", "link.opens-early") < 1);
    assertTrue(at("link.opens-while-working", "link.opens-early") > 0.9);
    assertTrue(at("link.opens-below", "link.opens-early") > 20);
    assertTrue(at("link.resistance", "link.open") > 1e6);
  }

  /** The limiter of a cooking zone lights a lamp while the glass is hot; other cut-outs do not. */
  @Test
  void onlyALimiterOfGlassHasALampContact() {
    Appliance hob =
        Jobs.appliance(
            Jobs.component("ring", "air-heater"), Jobs.component("link", "thermal-link"));
    Appliance ofKind =
        new Appliance(
            "hob",
            hob.maker(),
            hob.model(),
            hob.serial(),
            hob.age(),
            hob.nameplate(),
            hob.components());
    assertTrue(Forecasts.of(ofKind, "link.hot-lamp-dark", 0.5, "link.lamp-contact-burnt") > 0.9);
    assertThrows(AssertionError.class, () -> Forecasts.of(hob, "link.hot-lamp-dark"));
  }
}
