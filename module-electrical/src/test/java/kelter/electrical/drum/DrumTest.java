package kelter.electrical.drum;

import static kelter.electrical.DriveMachines.EXTRACTOR;
import static kelter.electrical.DriveMachines.TURNTABLE;
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

/** What a worn bearing, roller or idler moves. */
class DrumTest {

  /** Less than 0.5 mm of play in order, more than 1.5 mm worn: from memory. */
  @Test
  void aWornBearingPlays() {
    assertTrue(inOrder(WASHER, "drum-bearing.rim-play") < 0.5e-3);
    assertTrue(forecast(WASHER, "drum-bearing.rim-play", "drum-bearing.worn", 0.5) > 1.5e-3);
  }

  /** Each fault makes a look likelier or worse by a good part of its scale. */
  @ParameterizedTest
  @CsvSource({"drum-roller.worn, drum-roller.turning-by-hand", "idler.worn, idler.worn-shape"})
  void aFaultShowsAtItsOwnPlace(String fault, String moved) {
    assertTrue(forecast(EXTRACTOR, moved, fault, 0.8) > inOrder(EXTRACTOR, moved) + 0.3, moved);
  }

  /** So do those of a turntable. */
  @ParameterizedTest
  @CsvSource({
    "roller-ring.worn, roller-ring.turning-by-hand",
    "roller-ring.worn, roller-ring.worn-shape",
    "coupler.worn, coupler.worn-shape"
  })
  void aWornTurntableShows(String fault, String moved) {
    assertTrue(forecast(TURNTABLE, moved, fault, 0.8) > inOrder(TURNTABLE, moved) + 0.3, moved);
  }

  /** The limits of the trade: what conforms and what does not. */
  @ParameterizedTest
  @CsvSource({
    "drum-bearing, rim-play, 0.2 mm, CONFORMS",
    "drum-bearing, rim-play, 3 mm, DOES_NOT_CONFORM"
  })
  void readingsAreHeldAgainstTheLimits(
      String part, String observable, String reading, Verdict verdict) {
    assertEquals(Set.of(verdict), verdicts(WASHER, read(part, observable, reading)));
  }
}
