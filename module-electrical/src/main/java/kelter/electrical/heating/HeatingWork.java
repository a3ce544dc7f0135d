package kelter.electrical.heating;

import java.util.List;
import kelter.core.diagnosis.Remedy.Restores;
import kelter.core.diagnosis.model.Work;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.electrical.caution.Cautions;

/** Work on the heating circuit. Minutes and chances are from memory. */
final class HeatingWork {

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

  static final Work DESCALE =
      Work.byHand(
          "descale",
          "descale the heater and rinse",
          40,
          0.8,
          Caution.UNPLUG,
          Caution.HOT_WATER,
          ACID);

  static final Work CLEAR_AIR_PATH =
      Work.byHand(
          "clear-air-path",
          "take the lint off the heater, the filter and the duct",
          25,
          0.9,
          Caution.UNPLUG,
          Cautions.HOT_PART);

  static final Work RENEW_LINK =
      Work.renewing(
          "renew-thermal-link",
          "find why the thermal link opened, and renew it",
          30,
          0.9,
          Caution.UNPLUG,
          FIND_CAUSE);

  static final Work RENEW_RELAY =
      Work.renewing(
          "renew-relay",
          "renew the relay and its burnt terminals",
          40,
          0.93,
          Caution.UNPLUG,
          Cautions.CHARGED_CAPACITOR);

  static final Work MEND_SUPPLY =
      Work.byHand(
          "mend-supply",
          "mend the hot joint in the machine, or hand the outlet to an electrician",
          30,
          0.75,
          Caution.UNPLUG,
          Cautions.FIXED_WIRING);

  static final Work FIND_LEAK =
      new Work(
          "find-leak",
          "part the circuits, find what leaks by its insulation, and mend it",
          60,
          Restores.FUNCTION,
          true,
          0.8,
          List.of(Caution.UNPLUG, Cautions.TEST_VOLTAGE, EARTH_AGAIN));

  private HeatingWork() {}

  private static Caution hot(Medium medium) {
    return medium == Medium.AIR ? Cautions.HOT_PART : Caution.HOT_WATER;
  }

  /** A heater in air has neither a seal nor water about it. */
  static Work renewHeater(Medium medium) {
    return Work.renewing(
        "renew-heater",
        medium == Medium.AIR ? "renew the air heater" : "renew the heater with its seal",
        45,
        0.97,
        Caution.UNPLUG,
        hot(medium),
        EARTH_AGAIN);
  }

  static Work seatSensor(Medium medium) {
    return Work.byHand(
        "seat-sensor",
        "seat the sensor and clean its contacts",
        15,
        0.9,
        Caution.UNPLUG,
        hot(medium));
  }

  static Work renewSensor(Medium medium) {
    return Work.renewing(
        "renew-sensor", "renew the temperature sensor", 25, 0.95, Caution.UNPLUG, hot(medium));
  }
}
