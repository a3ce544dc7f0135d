package kelter.electrical.brushmotor;

import static kelter.electrical.DriveMachines.WASHER;
import static kelter.electrical.DriveMachines.findings;
import static kelter.electrical.DriveMachines.forecast;
import static kelter.electrical.DriveMachines.inOrder;
import static kelter.electrical.DriveMachines.read;
import static kelter.electrical.DriveMachines.verdicts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import kelter.core.check.Verdict;
import kelter.core.job.Job;
import kelter.electrical.DriveMachines;
import kelter.electrical.Jobs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What faults of a motor with brushes and its tacho move, by hand from the figures of the trade.
 */
class BrushedMotorTest {

  private static final double OPEN = 1e8;

  /** Brushes are changed at 12 mm and spent at 6 mm; one in order is about half worn: 24 mm. */
  @Test
  void brushesWearBelowTheirLengthOfChange() {
    assertEquals(0.024, inOrder(WASHER, "brushes.length"), 1e-9);
    assertEquals(0.012, forecast(WASHER, "brushes.length", "brushes.worn", 1e-9), 1e-6);
    double spent = forecast(WASHER, "brushes.length", "brushes.worn", 1);
    assertTrue(spent > 0.003 && spent < 0.007, spent + " m");
  }

  /** What presses no longer conducts no longer: the rotor is read by way of the brushes. */
  @Test
  void wornBrushesRaiseTheRotorAndNotTheField() {
    assertEquals(2.5, inOrder(WASHER, "brushed-motor.rotor-resistance"), 1e-9);
    assertTrue(forecast(WASHER, "brushed-motor.rotor-resistance", "brushes.worn", 0.9) > 20);
    assertEquals(2, forecast(WASHER, "brushed-motor.field-resistance", "brushes.worn", 0.9), 1e-9);
  }

  /** An open motor is open in the field or in the rotor, never in both. */
  @ParameterizedTest
  @CsvSource({"0.25, 2.5, 1e8", "0.75, 1e8, 2"})
  void anOpenMotorIsOpenInOneWinding(double severity, double rotor, double field) {
    String open = "brushed-motor.winding-open";
    assertEquals(rotor, forecast(WASHER, "brushed-motor.rotor-resistance", open, severity), 1e-6);
    assertEquals(field, forecast(WASHER, "brushed-motor.field-resistance", open, severity), 1e-6);
  }

  /** Where a job states no field, the rotor alone tells. */
  @Test
  void aShortedRotorMeasuresLess() {
    String question = "brushed-motor.rotor-resistance";
    assertTrue(forecast(WASHER, question, "brushed-motor.armature-shorted", 1) < 0.5 * 2.5);
    assertEquals(
        OPEN,
        forecast(DriveMachines.MOTOR_ALONE, question, "brushed-motor.winding-open", 0.2),
        1e-6);
  }

  /** From 36 mm to 12 mm at 0.04 mm an hour: 600 h. */
  @Test
  void theHoursLeftOfBrushesAreTold() {
    Job job = Jobs.job(WASHER, read("brushes", "length", "36 mm"));
    assertTrue(findings(job).get(0).remark().contains("about 600 h"), findings(job).toString());
  }

  /** A tacho is open in its coil, or loose in its magnet with the coil whole. */
  @Test
  void coilAndMagnetTellTheFaultsOfATacho() {
    assertEquals(OPEN, forecast(WASHER, "tacho.coil-resistance", "tacho.open", 1), 1e-6);
    assertEquals(180, forecast(WASHER, "tacho.coil-resistance", "tacho.magnet-loose", 1), 1e-9);
    assertTrue(forecast(WASHER, "tacho.magnet-loose", "tacho.magnet-loose", 1) > 0.9);
  }

  /** The limits of the trade: what conforms and what does not. */
  @ParameterizedTest
  @CsvSource({
    "brushes, length, 20 mm, CONFORMS",
    "brushes, length, 9 mm, DOES_NOT_CONFORM",
    "brushed-motor, rotor-resistance, 3 Ohm, CONFORMS",
    "brushed-motor, rotor-resistance, 30 Ohm, DOES_NOT_CONFORM",
    "tacho, coil-resistance, 180 Ohm, CONFORMS",
    "tacho, coil-resistance, 90 kOhm, DOES_NOT_CONFORM"
  })
  void readingsAreHeldAgainstTheLimits(
      String part, String observable, String reading, Verdict verdict) {
    assertEquals(Set.of(verdict), verdicts(WASHER, read(part, observable, reading)));
  }
}
