package kelter.electrical.hob;

import static kelter.electrical.DriveMachines.INDUCTION_HOB;
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

/** What faults of an induction hob move, and what its coil may measure. */
class HobTest {

  /** Each fault makes a look likelier or worse by a good part of its scale. */
  @ParameterizedTest
  @CsvSource({
    "glass.cracked, glass.crack",
    "induction-coil.open, induction-coil.scorched",
    "dc-fan.seized, dc-fan.turns",
    "dc-fan.seized, dc-fan.silent",
    "dc-fan.dead, dc-fan.silent",
    "dc-fan.blocked, dc-fan.air-way",
    "temperature-sensor.off-seat, temperature-sensor.off-its-seat"
  })
  void aFaultShowsAtItsOwnPlace(String fault, String moved) {
    double shown = forecast(INDUCTION_HOB, moved, fault, 0.8);
    assertTrue(shown > inOrder(INDUCTION_HOB, moved) + 0.3, moved);
  }

  /** A fan that is dead and not stuck turns by hand as one in order does. */
  @Test
  void aDeadFanTurnsFreely() {
    assertEquals(
        inOrder(INDUCTION_HOB, "dc-fan.turns"),
        forecast(INDUCTION_HOB, "dc-fan.turns", "dc-fan.dead", 0.8));
  }

  /** 0.05 Ohm to 0.2 Ohm, from memory. */
  @Test
  void aCoilIsOfTenthsOfAnOhm() {
    assertEquals(
        Set.of(Verdict.CONFORMS),
        verdicts(INDUCTION_HOB, read("induction-coil", "resistance", "0.1 Ohm")));
    assertEquals(
        Set.of(Verdict.DOES_NOT_CONFORM),
        verdicts(INDUCTION_HOB, read("induction-coil", "resistance", "1000 Ohm")));
    double open = forecast(INDUCTION_HOB, "induction-coil.resistance", "induction-coil.open", 0.8);
    assertTrue(open > 1e6, "" + open);
  }

  /**
   * Where nothing is a heater, the sensor is judged by itself: an NTC that is open reads nothing.
   */
  @Test
  void aSensorUnderTheGlassIsJudged() {
    double open =
        forecast(
            INDUCTION_HOB, "temperature-sensor.resistance", "temperature-sensor.sensor-open", 1);
    assertTrue(open > 1e6, "" + open);
    assertEquals(125_400, inOrder(INDUCTION_HOB, "temperature-sensor.resistance"), 200);
  }
}
