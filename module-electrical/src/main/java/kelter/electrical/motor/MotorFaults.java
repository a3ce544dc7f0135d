package kelter.electrical.motor;

import static kelter.core.diagnosis.model.Course.constant;
import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.Course.square;
import static kelter.core.diagnosis.model.FaultRow.fault;
import static kelter.electrical.motor.MotorFigure.AUXILIARY;
import static kelter.electrical.motor.MotorFigure.CAPACITANCE;
import static kelter.electrical.motor.MotorFigure.CURRENT;
import static kelter.electrical.motor.MotorFigure.LEAK;
import static kelter.electrical.motor.MotorFigure.MAIN;
import static kelter.electrical.motor.MotorFigure.SMELLS;
import static kelter.electrical.motor.MotorFigure.STIFFNESS;
import static kelter.electrical.motor.MotorFigure.SWOLLEN;
import static kelter.electrical.motor.MotorFigure.WET;

import java.util.List;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.Course;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Work;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.copper.CopperCoil;
import kelter.electrical.insulation.EarthLeak;

/**
 * What can be wrong with a motor and its capacitor. Minutes and chances, those of symptoms too, are
 * from memory.
 */
final class MotorFaults {

  /** Of machines whose motor stands, how many show it. */
  private static final double SHOWN = 0.6;

  private static final Work RENEW_MOTOR =
      Work.renewing(
          "renew-motor",
          "renew the motor",
          75,
          0.97,
          Caution.UNPLUG,
          ElectricalCautions.CHARGED_CAPACITOR);

  private static final Work DRY_MOTOR =
      Work.byHand(
          "dry-motor",
          "find where the water comes from, dry the motor warm, and measure its insulation again",
          70,
          0.5,
          Caution.UNPLUG,
          ElectricalCautions.TEST_VOLTAGE);

  private static final Work FREE_BEARING =
      Work.withPart(
          "free-bearing",
          "free the bearing or renew it",
          60,
          0.6,
          Caution.UNPLUG,
          ElectricalCautions.CHARGED_CAPACITOR);

  private static final Work RENEW_CAPACITOR =
      Work.renewing(
          "renew-capacitor",
          "renew the capacitor by one of the same capacitance and at least the same voltage",
          20,
          0.97,
          Caution.UNPLUG,
          ElectricalCautions.CHARGED_CAPACITOR);

  private static final FaultRow SHORTED_TURNS =
      standing(
          fault("shorted-turns", "turns shorted in the winding", 0.04)
              .wears(Wear.WINDING)
              .changes(MAIN.times(0.4), CURRENT.times(4), SMELLS.becomes(line(0.1, 0.9)))
              .makes(Symptoms.HUMS_ONLY, 0.05, 0.6)
              .makes(Symptoms.STOPS_IN_CYCLE, 0.1, 0.6)
              .makes(Symptoms.SMELLS_BURNT, 0.1, 0.6)
              .makes(Symptoms.TRIPS_BREAKER, 0, 0.3)
              .makes(Symptoms.TRIPS_RCD, 0, 0.2)
              .curedBy(RENEW_MOTOR),
          line(0.1, 0.9));

  private static final FaultRow WINDING_OPEN =
      standing(
          fault("winding-open", "main winding open", 0.03)
              .wears(Wear.WINDING)
              .apartFrom("shorted-turns")
              .changes(MAIN.becomes(CopperCoil.OPEN), SMELLS.atLeast(0.25))
              .makes(Symptoms.DOES_NOT_START, 0.4)
              .makes(Symptoms.HUMS_ONLY, 0.2)
              .makes(Symptoms.SMELLS_BURNT, 0.2)
              .curedBy(RENEW_MOTOR),
          constant(0.95));

  private static final FaultRow AUXILIARY_OPEN =
      standing(
          fault("auxiliary-open", "auxiliary winding open", 0.02)
              .wears(Wear.WINDING)
              .changes(AUXILIARY.becomes(CopperCoil.OPEN))
              .makes(Symptoms.HUMS_ONLY, 0.9)
              .makes(Symptoms.DOES_NOT_START, 0.4)
              .curedBy(RENEW_MOTOR),
          constant(0.85));

  private static final FaultRow DAMP =
      fault("damp", "winding damp, leaks to earth", 0.03)
          .changes(LEAK.plus(EarthLeak.CONDUCTANCE), WET.becomes(line(0.35, 0.8)))
          .makes(Symptoms.TRIPS_RCD, EarthLeak.TRIPS)
          .makes(Symptoms.TRIPS_BREAKER, 0, 0.2)
          .makes(Symptoms.DOES_NOT_TURN, 0, 0.3)
          .makes(Symptoms.STOPS_IN_CYCLE, 0.05, 0.45)
          .curedBy(DRY_MOTOR, RENEW_MOTOR);

  private static final FaultRow SEIZED =
      standing(
          fault("seized", "bearing stiff or seized", 0.05)
              .wears(Wear.BEARING)
              .changes(
                  STIFFNESS.becomes(line(0.3, 0.95)),
                  CURRENT.atLeast(square(1, RunningMotor.BLOCKED)))
              .makes(Symptoms.HUMS_ONLY, square(0, 0.93))
              .makes(Symptoms.LOUD, 0.9, 0.6)
              .makes(Symptoms.VIBRATES, 0.3, 0.5)
              .makes(Symptoms.SMELLS_BURNT, 0, 0.4)
              .makes(Symptoms.STOPS_IN_CYCLE, 0.1, 0.5)
              .makes(Symptoms.TRIPS_BREAKER, 0, 0.15)
              .curedBy(FREE_BEARING, RENEW_MOTOR),
          square(0, 0.95));

  static final FaultRow WEAK =
      standing(
          fault("weak", "capacitor weak", 0.065)
              .wears(Wear.CAPACITOR)
              .changes(
                  CAPACITANCE.times(0.2),
                  CURRENT.atLeast(
                      square(1, RunningMotor.BLOCKED))) // it slips more, and stands at last
              .makes(Symptoms.HUMS_ONLY, early(0.05, 0.92))
              .makes(Symptoms.DOES_NOT_START, early(0, 0.53))
              .curedBy(RENEW_CAPACITOR),
          early(0.05, 0.85));

  static final FaultRow OPEN =
      standing(
          fault("open", "capacitor open", 0.02)
              .wears(Wear.CAPACITOR)
              .apartFrom("weak")
              .changes(CAPACITANCE.becomes(1e-3))
              .makes(Symptoms.HUMS_ONLY, 0.92)
              .makes(Symptoms.DOES_NOT_START, 0.4)
              .curedBy(RENEW_CAPACITOR),
          constant(0.9));

  /** Gas in the case: it loses capacitance the faster. */
  static final FaultRow BURST =
      standing(
          fault("burst", "capacitor swollen, cracked or leaking", 0.025)
              .wears(Wear.CAPACITOR)
              .apartFrom("weak", "open")
              .changes(
                  CAPACITANCE.times(line(0.95, 0.05)),
                  CURRENT.atLeast(square(1, RunningMotor.BLOCKED)),
                  SWOLLEN.becomes(0.98))
              .makes(Symptoms.HUMS_ONLY, early(0.05, 0.92))
              .makes(Symptoms.DOES_NOT_START, early(0, 0.53))
              .makes(Symptoms.SMELLS_BURNT, 0.1, 0.4)
              .curedBy(RENEW_CAPACITOR),
          early(0.05, 0.85));

  private MotorFaults() {}

  /** A motor that stands, with the chance of it; many machines show that of themselves. */
  private static FaultRow standing(FaultRow row, Course stands) {
    return row.makes(Symptoms.DOES_NOT_TURN, stands)
        .makes(Symptoms.DOES_NOT_SPIN, stands)
        .makes(Meaning.MOTOR.symptom(), severity -> SHOWN * stands.at(severity));
  }

  static List<FaultRow> ofMotor(boolean auxiliary) {
    return auxiliary
        ? List.of(SHORTED_TURNS, WINDING_OPEN, AUXILIARY_OPEN, DAMP, SEIZED)
        : List.of(SHORTED_TURNS, WINDING_OPEN, DAMP, SEIZED);
  }
}
