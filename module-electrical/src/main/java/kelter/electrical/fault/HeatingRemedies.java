package kelter.electrical.fault;

import java.util.List;
import kelter.core.diagnosis.Remedy;
import kelter.core.diagnosis.Remedy.Restores;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.electrical.component.Electrical;

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

  private static final Caution FIXED_WIRING =
      new Caution(
          Signal.DANGER,
          "Outlet and fixed wiring are work for a licensed electrician. Take the machine out of use"
              + " if plug or outlet is hot or discoloured.");

  private HeatingRemedies() {}

  static Remedy renewHeater(String component) {
    return new Remedy(
        "renew-heater",
        component,
        "renew the heater with its seal",
        45,
        Restores.COMPONENT,
        true,
        0.97,
        List.of(Caution.UNPLUG, Caution.HOT_WATER, EARTH_AGAIN));
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
        List.of(Caution.UNPLUG, Electrical.HOT_PART));
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
        List.of(Caution.UNPLUG, Electrical.CHARGED_CAPACITOR));
  }

  static Remedy seatSensor(String component) {
    return new Remedy(
        "seat-sensor",
        component,
        "seat the sensor and clean its contacts",
        15,
        Restores.FUNCTION,
        false,
        0.9,
        List.of(Caution.UNPLUG, Caution.HOT_WATER));
  }

  static Remedy renewSensor(String component) {
    return new Remedy(
        "renew-sensor",
        component,
        "renew the temperature sensor",
        25,
        Restores.COMPONENT,
        true,
        0.95,
        List.of(Caution.UNPLUG, Caution.HOT_WATER));
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
        List.of(Caution.UNPLUG, FIXED_WIRING));
  }
}
