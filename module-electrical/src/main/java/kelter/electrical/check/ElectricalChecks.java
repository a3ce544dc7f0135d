package kelter.electrical.check;

import java.util.List;
import kelter.core.check.Check;
import kelter.electrical.check.LimitCheck.Rule;
import kelter.electrical.component.ControlKinds;
import kelter.electrical.component.MotorKinds;
import kelter.electrical.contact.ClosedContact;
import kelter.electrical.insulation.InsulationRule;

/** All checks of electrical parts. */
public final class ElectricalChecks {

  /** The checks, in the order in which they are told. */
  public static final List<Check> ALL =
      List.of(
          new kelter.core.check.LimitCheck(
              "motor-insulation",
              "Does the motor leak to earth?",
              MotorKinds.MOTOR,
              MotorKinds.INSULATION,
              new InsulationRule(false)),
          new kelter.core.check.LimitCheck(
              "door-switch-continuity",
              "Does the door switch close?",
              ControlKinds.DOOR_SWITCH,
              ControlKinds.CLOSED_RESISTANCE,
              ClosedContact.RULE),
          new LimitCheck(
              "motor-current",
              "Does the motor draw more than it is rated for?",
              List.of(MotorKinds.MOTOR.id()),
              MotorKinds.CURRENT,
              Rule.MOTOR_CURRENT),
          new LimitCheck(
              "winding-resistance",
              "Does the main winding measure what it should?",
              List.of(MotorKinds.MOTOR.id()),
              MotorKinds.WINDING_RESISTANCE,
              Rule.MAIN_WINDING),
          new LimitCheck(
              "auxiliary-resistance",
              "Does the auxiliary winding measure what it should?",
              List.of(MotorKinds.MOTOR.id()),
              MotorKinds.AUXILIARY_RESISTANCE,
              Rule.AUXILIARY_WINDING),
          new LimitCheck(
              "coil-resistance",
              "Does the coil measure what it should?",
              List.of(MotorKinds.SOLENOID.id()),
              MotorKinds.COIL_RESISTANCE,
              Rule.SOLENOID_COIL),
          new LimitCheck(
              "capacitance",
              "Does the capacitor have what is marked on it?",
              List.of(MotorKinds.RUN_CAPACITOR.id()),
              MotorKinds.MEASURED_CAPACITANCE,
              Rule.CAPACITANCE),
          new WarningSignCheck(),
          new OutOfReachCheck());

  private ElectricalChecks() {}
}
