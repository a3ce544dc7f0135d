package kelter.electrical.inverter;

import static kelter.electrical.DriveMachines.EXTRACTOR;
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

/** What faults of a drive move, and what its motor may measure. */
class InverterDriveTest {

  /** Each fault makes a look likelier or worse by a good part of its scale. */
  @ParameterizedTest
  @CsvSource({
    "inverter-drive.dead, inverter-drive.stage-faulty",
    "inverter-drive.dead, inverter-drive.no-attempt",
    "inverter-drive.trips, inverter-drive.starts-then-stops"
  })
  void aFaultShowsAtItsOwnPlace(String fault, String moved) {
    assertTrue(forecast(EXTRACTOR, moved, fault, 0.8) > inOrder(EXTRACTOR, moved) + 0.3, moved);
  }

  @Test
  void phasesOfADrivenMotorAreAlike() {
    assertEquals(
        Set.of(Verdict.CONFORMS),
        verdicts(EXTRACTOR, read("inverter-drive", "phase-difference", "1 %")));
    assertEquals(
        Set.of(Verdict.DOES_NOT_CONFORM),
        verdicts(EXTRACTOR, read("inverter-drive", "phase-difference", "20 %")));
  }
}
