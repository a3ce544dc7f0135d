package kelter.hydraulics.fault.level;

import java.util.List;
import kelter.core.diagnosis.Remedy;
import kelter.core.diagnosis.Remedy.Restores;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;

/**
 * The work on the measuring of the level. Minutes and chances of cure: common practice, no source.
 *
 * @param component the id of the level sensor
 */
record LevelRemedies(String component) {

  private static final Caution OVERFLOW =
      new Caution(
          Signal.CAUTION,
          "Flood. A machine that does not know its level can overfill: stay beside it for the first fill.");

  Remedy cleanTrap() {
    return new Remedy(
        "clean-trap",
        component,
        "clean the air trap and its passage, blow the tube out",
        25,
        Restores.FUNCTION,
        false,
        0.9,
        List.of(Caution.UNPLUG, OVERFLOW));
  }

  Remedy renewTube() {
    return new Remedy(
        "renew-tube",
        component,
        "renew the tube and seat it on its nozzles",
        20,
        Restores.PART,
        true,
        0.9,
        List.of(Caution.UNPLUG, OVERFLOW));
  }

  Remedy renewSensor() {
    return new Remedy(
        "renew-sensor",
        component,
        "renew the level sensor",
        25,
        Restores.COMPONENT,
        true,
        0.95,
        List.of(Caution.UNPLUG, OVERFLOW));
  }
}
