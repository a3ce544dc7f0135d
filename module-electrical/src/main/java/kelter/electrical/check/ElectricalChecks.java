package kelter.electrical.check;

import java.util.List;
import kelter.core.check.Check;
import kelter.electrical.component.ControlKinds;
import kelter.electrical.component.HeaterKinds;
import kelter.electrical.component.MotorKinds;
import kelter.electrical.component.SupplyKinds;

/** All checks of electrical parts. */
public final class ElectricalChecks {

  private static final List<String> HEATERS =
      List.of(HeaterKinds.HEATER.id(), HeaterKinds.AIR_HEATER.id());

  /** The checks, in the order in which they are told. */
  public static final List<Check> ALL =
      List.of(
          new LimitCheck(
              "heater-resistance",
              "Does the heater measure what its nameplate says?",
              HEATERS,
              HeaterKinds.RESISTANCE,
              HeaterRule::of),
          new LimitCheck(
              "heater-insulation",
              "Does the heater leak to earth?",
              HEATERS,
              HeaterKinds.INSULATION,
              InsulationRule::heater),
          new LimitCheck(
              "motor-insulation",
              "Does the motor leak to earth?",
              List.of(MotorKinds.MOTOR.id()),
              MotorKinds.INSULATION,
              InsulationRule::otherPart),
          new LimitCheck(
              "appliance-insulation",
              "Is the appliance insulated as its protection class asks?",
              List.of(SupplyKinds.CORD.id()),
              SupplyKinds.APPLIANCE_INSULATION,
              InsulationRule::appliance),
          new LimitCheck(
              "protective-conductor",
              "Is touchable metal connected to earth well enough?",
              List.of(SupplyKinds.CORD.id()),
              SupplyKinds.PROTECTIVE_CONDUCTOR,
              ContinuityRule::protectiveConductor),
          new LimitCheck(
              "thermal-link-continuity",
              "Is the thermal link whole?",
              List.of(ControlKinds.THERMAL_LINK.id()),
              ControlKinds.LINK_RESISTANCE,
              ContinuityRule::closed),
          new LimitCheck(
              "door-switch-continuity",
              "Does the door switch close?",
              List.of(ControlKinds.DOOR_SWITCH.id()),
              ControlKinds.CLOSED_RESISTANCE,
              ContinuityRule::closed),
          new LimitCheck(
              "sensor-resistance",
              "Does the temperature sensor read right?",
              List.of(ControlKinds.TEMPERATURE_SENSOR.id()),
              ControlKinds.SENSOR_RESISTANCE,
              SensorRule::of));

  private ElectricalChecks() {}
}
