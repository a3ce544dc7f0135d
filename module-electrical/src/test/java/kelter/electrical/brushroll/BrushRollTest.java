package kelter.electrical.brushroll;

import static kelter.electrical.DriveMachines.UNTOLD;
import static kelter.electrical.DriveMachines.forecast;
import static kelter.electrical.DriveMachines.inOrder;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What faults of a brush roll move. */
class BrushRollTest {

  /** Each fault makes a look likelier or worse by a good part of its scale. */
  @ParameterizedTest
  @CsvSource({"brush-roll.jammed, brush-roll.hair", "brush-roll.bearing-worn, brush-roll.ends"})
  void aFaultShowsAtItsOwnPlace(String fault, String moved) {
    assertTrue(forecast(UNTOLD, moved, fault, 0.8) > inOrder(UNTOLD, moved) + 0.3, moved);
  }
}
