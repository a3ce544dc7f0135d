package kelter.electrical.latch;

import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.core.job.Appliance;
import kelter.electrical.Forecasts;
import kelter.electrical.SampleMachines;
import org.junit.jupiter.api.Test;

/** What a latch does that does not hold. */
class LatchTest {

  private static final Appliance MACHINE = SampleMachines.CONTROLS;

  private static double at(String question, String fault) {
    return Forecasts.of(MACHINE, question, 0.5, fault);
  }

  @Test
  void aLatchThatDoesNotHoldSticksOrMissesItsMagnet() {
    assertTrue(at("latch.stiff", "latch.jammed") > Forecasts.of(MACHINE, "latch.stiff") + 0.4);
    assertTrue(at("latch.misses", "latch.jammed") > 0.6);
  }
}
