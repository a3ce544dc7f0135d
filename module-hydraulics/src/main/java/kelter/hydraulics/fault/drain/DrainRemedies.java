package kelter.hydraulics.fault.drain;

import java.util.List;
import kelter.core.diagnosis.Remedy;
import kelter.core.diagnosis.Remedy.Restores;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.hydraulics.fault.PowerRemedies;

/**
 * The work on a drain pump and its path. Minutes and chances of cure: common practice, no source.
 *
 * @param component the id of the drain pump
 */
record DrainRemedies(String component) {

  private static final Caution SHARP =
      new Caution(
          Signal.CAUTION,
          "Glass, pins and sharp sheet edges in pump and sump. Wear cut-proof gloves.");
  private static final Caution FLOOD =
      new Caution(
          Signal.CAUTION,
          "Flood. Close the tap, empty the sump first, and watch every joint during a test run.");
  private static final Caution HEAVY =
      new Caution(
          Signal.WARNING,
          "Crushing. A machine with water in it is heavy: empty it before you tilt it, and prop it.");

  PowerRemedies power() {
    return new PowerRemedies(component);
  }

  Remedy cleanStrainer() {
    return work("clean-strainer", "clean the strainer and the trap", 12, 0.95, SHARP);
  }

  Remedy cleanPump() {
    return work("clean-pump", "clear the pump chamber and the vanes", 25, 0.9, SHARP);
  }

  Remedy renewPump() {
    return new Remedy(
        "renew-pump",
        component,
        "renew the drain pump",
        40,
        Restores.COMPONENT,
        true,
        0.97,
        List.of(Caution.UNPLUG, HEAVY, FLOOD));
  }

  Remedy clearHose() {
    return work("clear-hose", "clear the drain hose, take out kinks", 20, 0.85, FLOOD);
  }

  Remedy tightenHose() {
    return work("tighten-hose", "seat the drain hose and tighten its clips", 15, 0.7, FLOOD);
  }

  Remedy renewHose() {
    return part("renew-hose", "renew the drain hose", 25, FLOOD);
  }

  Remedy lowerHose() {
    return work("lower-hose", "lay the hose and its outlet lower", 20, 0.9, FLOOD);
  }

  Remedy cleanValve() {
    return work("clean-valve", "clean the check valve and free its flap", 20, 0.8, FLOOD);
  }

  Remedy renewValve() {
    return part("renew-valve", "renew the check valve", 25, FLOOD);
  }

  private Remedy work(String id, String title, double minutes, double cure, Caution own) {
    return new Remedy(
        id,
        component,
        title,
        minutes,
        Restores.FUNCTION,
        false,
        cure,
        List.of(Caution.UNPLUG, Caution.HOT_WATER, own));
  }

  private Remedy part(String id, String title, double minutes, Caution own) {
    return new Remedy(
        id,
        component,
        title,
        minutes,
        Restores.PART,
        true,
        0.95,
        List.of(Caution.UNPLUG, Caution.HOT_WATER, own));
  }
}
