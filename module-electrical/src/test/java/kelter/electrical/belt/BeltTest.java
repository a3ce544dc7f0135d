package kelter.electrical.belt;

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

/** What faults of a belt move, by hand from the law of the string. */
class BeltTest {

  /** The law of the string: at a tenth of the tension 40 Hz fall to 40 / sqrt(10) = 12.6 Hz. */
  @Test
  void aSlackBeltSoundsLower() {
    assertEquals(40, inOrder(WASHER, "belt.span-frequency"), 1e-9);
    assertEquals(12.65, forecast(WASHER, "belt.span-frequency", "belt.slack", 1), 0.01);
    assertEquals(1, forecast(WASHER, "belt.span-frequency", "belt.broken", 1), 1e-9);
    assertTrue(forecast(WASHER, "belt.turns-without-drag", "belt.broken", 1) > 0.9);
  }

  /** The limits of the trade: what conforms and what does not. */
  @ParameterizedTest
  @CsvSource({
    "belt, span-frequency, 38 Hz, CONFORMS",
    "belt, span-frequency, 20 Hz, DOES_NOT_CONFORM"
  })
  void readingsAreHeldAgainstTheLimits(
      String part, String observable, String reading, Verdict verdict) {
    assertEquals(Set.of(verdict), verdicts(WASHER, read(part, observable, reading)));
  }
}
