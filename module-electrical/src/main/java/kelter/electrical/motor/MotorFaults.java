package kelter.electrical.motor;

import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.Course.square;
import static kelter.core.diagnosis.model.FaultRow.fault;
import static kelter.electrical.motor.MotorFigure.AUXILIARY;
import static kelter.electrical.motor.MotorFigure.CAPACITANCE;
import static kelter.electrical.motor.MotorFigure.CURRENT;
import static kelter.electrical.motor.MotorFigure.HUMS;
import static kelter.electrical.motor.MotorFigure.LEAK;
import static kelter.electrical.motor.MotorFigure.MAIN;
import static kelter.electrical.motor.MotorFigure.SMELLS;
import static kelter.electrical.motor.MotorFigure.STIFFNESS;
import static kelter.electrical.motor.MotorFigure.SWOLLEN;
import static kelter.electrical.motor.MotorFigure.WET;

import java.util.List;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Work;
import kelter.core.safety.Caution;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.copper.CopperCoil;
import kelter.electrical.insulation.EarthLeak;

/** What can be wrong with a motor and its capacitor. Minutes and chances are from memory. */
final class MotorFaults {

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
      fault("shorted-turns", "turns shorted in the winding", 0.04)
          .wears(Wear.WINDING)
          .changes(MAIN.times(0.4), CURRENT.times(4), SMELLS.becomes(line(0.1, 0.9)))
          .curedBy(RENEW_MOTOR);

  private static final FaultRow WINDING_OPEN =
      fault("winding-open", "main winding open", 0.03)
          .wears(Wear.WINDING)
          .apartFrom("shorted-turns")
          .changes(MAIN.becomes(CopperCoil.OPEN), SMELLS.atLeast(0.25), HUMS.atLeast(0.25))
          .curedBy(RENEW_MOTOR);

  private static final FaultRow AUXILIARY_OPEN =
      fault("auxiliary-open", "auxiliary winding open", 0.02)
          .wears(Wear.WINDING)
          .changes(AUXILIARY.becomes(CopperCoil.OPEN), HUMS.atLeast(0.9))
          .curedBy(RENEW_MOTOR);

  private static final FaultRow DAMP =
      fault("damp", "winding damp, leaks to earth", 0.03)
          .changes(LEAK.plus(EarthLeak.CONDUCTANCE), WET.becomes(line(0.35, 0.8)))
          .curedBy(DRY_MOTOR, RENEW_MOTOR);

  private static final FaultRow SEIZED =
      fault("seized", "bearing stiff or seized", 0.05)
          .wears(Wear.BEARING)
          .changes(
              STIFFNESS.becomes(line(0.3, 0.95)),
              CURRENT.atLeast(square(1, RunningMotor.BLOCKED)),
              HUMS.atLeast(square(0.05, 0.93)))
          .curedBy(FREE_BEARING, RENEW_MOTOR);

  static final FaultRow WEAK =
      fault("weak", "capacitor weak", 0.08)
          .wears(Wear.CAPACITOR)
          .changes(
              CAPACITANCE.times(0.2),
              CURRENT.atLeast(square(1, RunningMotor.BLOCKED)), // it slips more, and stands at last
              HUMS.atLeast(line(0.05, 0.9)),
              SWOLLEN.becomes(0.2))
          .curedBy(RENEW_CAPACITOR);

  static final FaultRow OPEN =
      fault("open", "capacitor open", 0.03)
          .wears(Wear.CAPACITOR)
          .apartFrom("weak")
          .changes(CAPACITANCE.becomes(1e-3), HUMS.atLeast(0.92), SWOLLEN.becomes(0.35))
          .curedBy(RENEW_CAPACITOR);

  private MotorFaults() {}

  static List<FaultRow> ofMotor(boolean auxiliary) {
    return auxiliary
        ? List.of(SHORTED_TURNS, WINDING_OPEN, AUXILIARY_OPEN, DAMP, SEIZED)
        : List.of(SHORTED_TURNS, WINDING_OPEN, DAMP, SEIZED);
  }
}
