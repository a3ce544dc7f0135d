package kelter.electrical.fault.heating;

import java.util.List;
import kelter.core.diagnosis.Remedy;
import kelter.core.diagnosis.Remedy.Restores;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.electrical.caution.Cautions;

/** Work on the heating circuit. Minutes and chances are from memory. */
final class HeatingRemedies {

  private static final Caution EARTH_AGAIN =
      new Caution(
          Signal.DANGER,
          "Put the protective conductor back before anything else, and measure it and the insulation"
              + " before the machine is plugged in.");

  private static final Caution ACID =
      new Caution(
          Signal.CAUTION,
          "Descaling acid burns skin and eyes and gives off gas: gloves, goggles, open window, never"
              + " together with bleach.");

  private static final Caution FIND_CAUSE =
      new Caution(
          Signal.WARNING,
          "A thermal link opens because something got too hot. Find out what before a new one goes"
              + " in, fit the same temperature and current, and never bridge it.");

  private HeatingRemedies() {}

  private static Caution hot(boolean inAir) {
    return inAir ? Cautions.HOT_PART : Caution.HOT_WATER;
  }

  /** A heater in air has neither a seal nor water about it. */
  static Remedy renewHeater(String component, boolean inAir) {
    return new Remedy(
        "renew-heater",
        component,
        inAir ? "renew the air heater" : "renew the heater with its seal",
        45,
        Restores.COMPONENT,
        true,
        0.97,
        List.of(Caution.UNPLUG, hot(inAir), EARTH_AGAIN));
  }

  static Remedy descale(String component) {
    return new Remedy(
        "descale",
        component,
        "descale the heater and rinse",
        40,
        Restores.FUNCTION,
        false,
        0.8,
        List.of(Caution.UNPLUG, Caution.HOT_WATER, ACID));
  }

  static Remedy clearAirPath(String component) {
    return new Remedy(
        "clear-air-path",
        component,
        "take the lint off the heater, the filter and the duct",
        25,
        Restores.FUNCTION,
        false,
        0.9,
        List.of(Caution.UNPLUG, Cautions.HOT_PART));
  }

  static Remedy renewLink(String component) {
    return new Remedy(
        "renew-thermal-link",
        component,
        "find why the thermal link opened, and renew it",
        30,
        Restores.COMPONENT,
        true,
        0.9,
        List.of(Caution.UNPLUG, FIND_CAUSE));
  }

  static Remedy renewRelay(String component) {
    return new Remedy(
        "renew-relay",
        component,
        "renew the relay and its burnt terminals",
        40,
        Restores.COMPONENT,
        true,
        0.93,
        List.of(Caution.UNPLUG, Cautions.CHARGED_CAPACITOR));
  }

  static Remedy seatSensor(String component, boolean inAir) {
    return new Remedy(
        "seat-sensor",
        component,
        "seat the sensor and clean its contacts",
        15,
        Restores.FUNCTION,
        false,
        0.9,
        List.of(Caution.UNPLUG, hot(inAir)));
  }

  static Remedy renewSensor(String component, boolean inAir) {
    return new Remedy(
        "renew-sensor",
        component,
        "renew the temperature sensor",
        25,
        Restores.COMPONENT,
        true,
        0.95,
        List.of(Caution.UNPLUG, hot(inAir)));
  }

  static Remedy mendSupply(String component) {
    return new Remedy(
        "mend-supply",
        component,
        "mend the hot joint in the machine, or hand the outlet to an electrician",
        30,
        Restores.FUNCTION,
        false,
        0.75,
        List.of(Caution.UNPLUG, Cautions.FIXED_WIRING));
  }

  static Remedy findLeak(String component) {
    return new Remedy(
        "find-leak",
        component,
        "part the circuits, find what leaks by its insulation, and mend it",
        60,
        Restores.FUNCTION,
        true,
        0.8,
        List.of(Caution.UNPLUG, Cautions.TEST_VOLTAGE, EARTH_AGAIN));
  }
}
