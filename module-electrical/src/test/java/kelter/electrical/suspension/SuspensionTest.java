package kelter.electrical.suspension;

import static kelter.electrical.DriveMachines.EXTRACTOR;
import static kelter.electrical.DriveMachines.WASHER;
import static kelter.electrical.DriveMachines.forecast;
import static kelter.electrical.DriveMachines.inOrder;
import static kelter.electrical.DriveMachines.read;
import static kelter.electrical.DriveMachines.verdicts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import kelter.core.check.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What faults of dampers, springs, imbalance switch and anchors move. */
class SuspensionTest {

  private static final double OPEN = 1e8;

  /**
   * By the law of the decrement, swings down to a tenth: damping 0.3 has a decrement of 1.976 and
   * 2.303 / 1.976 = 1.17 swings; the limits are 1.5 in order, 3 and more weak.
   */
  @Test
  void aWeakDamperLetsTheTubSwing() {
    assertEquals(1.165, inOrder(WASHER, "damper.swings"), 0.001);
    assertTrue(forecast(WASHER, "damper.swings", "damper.weak", 0.5) > 3);
  }

  /** Closed at rest and open when moved; a stuck switch is the same in both. */
  @Test
  void aStuckImbalanceSwitchDoesNotSwitch() {
    assertEquals(0.1, inOrder(EXTRACTOR, "imbalance-switch.rest-resistance"), 1e-9);
    assertEquals(OPEN, inOrder(EXTRACTOR, "imbalance-switch.moved-resistance"), 1e-6);
    for (double severity : new double[] {0.2, 0.8}) {
      assertEquals(
          forecast(
              EXTRACTOR, "imbalance-switch.rest-resistance", "imbalance-switch.stuck", severity),
          forecast(
              EXTRACTOR, "imbalance-switch.moved-resistance", "imbalance-switch.stuck", severity));
    }
  }

  @Test
  void aBrokenSpringAndLooseAnchorsAreSeen() {
    assertTrue(forecast(WASHER, "spring.broken", "spring.broken", 1) > 0.9);
    assertTrue(forecast(WASHER, "spring.hangs-low", "spring.broken", 1) > 0.8);
    assertTrue(forecast(EXTRACTOR, "anchor-bolts.turns", "anchor-bolts.loose", 0.8) > 0.7);
  }

  /** The limits of the trade: what conforms and what does not. */
  @ParameterizedTest
  @CsvSource({"damper, swings, 1 1, CONFORMS", "damper, swings, 4 1, DOES_NOT_CONFORM"})
  void readingsAreHeldAgainstTheLimits(
      String part, String observable, String reading, Verdict verdict) {
    assertEquals(Set.of(verdict), verdicts(WASHER, read(part, observable, reading)));
  }
}
