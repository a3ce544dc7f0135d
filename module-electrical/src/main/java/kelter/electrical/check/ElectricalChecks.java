package kelter.electrical.check;

import java.util.List;
import kelter.core.check.Check;
import kelter.electrical.check.LimitCheck.Rule;
import kelter.electrical.component.ControlKinds;
import kelter.electrical.component.HeaterKinds;
import kelter.electrical.component.SupplyKinds;
import kelter.electrical.contact.ClosedContact;
import kelter.electrical.copper.CopperRule;

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
              Rule.HEATER_RESISTANCE),
          new LimitCheck(
              "heater-insulation",
              "Does the heater leak to earth?",
              HEATERS,
              HeaterKinds.INSULATION,
              Rule.HEATER_INSULATION),
          new LimitCheck(
              "appliance-insulation",
              "Is the appliance insulated as its protection class asks?",
              List.of(SupplyKinds.CORD.id()),
              SupplyKinds.APPLIANCE_INSULATION,
              Rule.APPLIANCE_INSULATION),
          new LimitCheck(
              "protective-conductor",
              "Is touchable metal connected to earth well enough?",
              List.of(SupplyKinds.CORD.id()),
              SupplyKinds.PROTECTIVE_CONDUCTOR,
              Rule.PROTECTIVE_CONDUCTOR),
          new LimitCheck(
              "protective-conductor-current",
              "Does too much flow in the protective conductor?",
              List.of(SupplyKinds.CORD.id()),
              SupplyKinds.CONDUCTOR_CURRENT,
              Rule.CONDUCTOR_CURRENT),
          new LimitCheck(
              "touch-current",
              "Can too much flow through a person who touches it?",
              List.of(SupplyKinds.CORD.id()),
              SupplyKinds.TOUCH_CURRENT,
              Rule.TOUCH_CURRENT),
          new kelter.core.check.LimitCheck(
              "thermal-link-continuity",
              "Is the thermal link whole?",
              ControlKinds.THERMAL_LINK,
              ControlKinds.LINK_RESISTANCE,
              ClosedContact.RULE),
          new LimitCheck(
              "sensor-resistance",
              "Does the temperature sensor read right?",
              List.of(ControlKinds.TEMPERATURE_SENSOR.id()),
              ControlKinds.SENSOR_RESISTANCE,
              Rule.SENSOR_RESISTANCE),
          new LimitCheck(
              "heater-power",
              "Does the heater take what its nameplate says?",
              HEATERS,
              HeaterKinds.POWER,
              Rule.HEATER_POWER),
          new LimitCheck(
              "heater-current",
              "Does the heater draw what its nameplate says?",
              HEATERS,
              HeaterKinds.CURRENT,
              Rule.HEATER_CURRENT),
          new LimitCheck(
              "heater-voltage",
              "Does the voltage reach the heater?",
              HEATERS,
              HeaterKinds.TERMINAL_VOLTAGE,
              Rule.HEATER_VOLTAGE),
          new LimitCheck(
              "heating-rate",
              "Does the water warm as fast as the power should make it?",
              List.of(HeaterKinds.HEATER.id()),
              HeaterKinds.HEATING_RATE,
              Rule.HEATING_RATE),
          new LimitCheck(
              "air-temperature-rise",
              "Is the air as warm as power and airflow should make it?",
              List.of(HeaterKinds.AIR_HEATER.id()),
              HeaterKinds.AIR_RISE,
              Rule.AIR_RISE),
          new LimitCheck(
              "shown-temperature",
              "Does the machine show the right temperature?",
              List.of(ControlKinds.TEMPERATURE_SENSOR.id()),
              ControlKinds.SHOWN_ERROR,
              Rule.SHOWN_TEMPERATURE),
          new LimitCheck(
              "relay-voltage-drop",
              "Does the contact of the relay lose voltage?",
              List.of(ControlKinds.RELAY.id()),
              ControlKinds.VOLTAGE_DROP,
              Rule.CONTACT_DROP),
          new kelter.core.check.LimitCheck(
              "relay-coil-resistance",
              "Does the coil of the relay measure what it should?",
              ControlKinds.RELAY,
              ControlKinds.COIL_RESISTANCE,
              new CopperRule("coil", ControlKinds.COIL)),
          new LimitCheck(
              "supply-idle",
              "Is the supply within its range?",
              List.of(SupplyKinds.SUPPLY.id()),
              SupplyKinds.IDLE,
              Rule.SUPPLY),
          new LimitCheck(
              "supply-loaded",
              "Is the supply within its range under load?",
              List.of(SupplyKinds.SUPPLY.id()),
              SupplyKinds.LOADED,
              Rule.SUPPLY));

  private ElectricalChecks() {}
}
