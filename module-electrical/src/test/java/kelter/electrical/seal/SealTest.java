package kelter.electrical.seal;

import static kelter.electrical.DriveMachines.UNTOLD;
import static kelter.electrical.DriveMachines.WASHER;
import static kelter.electrical.DriveMachines.forecast;
import static kelter.electrical.DriveMachines.inOrder;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a leak of a gasket, a seal or a body moves. */
class SealTest {

  /** Each fault makes a look likelier or worse by a good part of its scale. */
  @ParameterizedTest
  @CsvSource({"door-gasket.leaks, door-gasket.paper-strip", "drum-seal.leaks, drum-seal.traces"})
  void aFaultShowsAtItsOwnPlace(String fault, String moved) {
    assertTrue(forecast(WASHER, moved, fault, 0.8) > inOrder(WASHER, moved) + 0.3, moved);
  }

  /** The same of parts of which a job tells nothing. */
  @ParameterizedTest
  @CsvSource({
    "seal.leaks, seal.paper-test",
    "gasket.leaks, gasket.dry-paper",
    "body.leaks, body.dry-paper"
  })
  void paperAndTracesTellALeak(String fault, String moved) {
    assertTrue(forecast(UNTOLD, moved, fault, 0.8) > inOrder(UNTOLD, moved) + 0.3, moved);
  }
}
