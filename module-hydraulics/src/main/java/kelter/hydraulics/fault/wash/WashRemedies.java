package kelter.hydraulics.fault.wash;

import java.util.List;
import kelter.core.diagnosis.Remedy;
import kelter.core.diagnosis.Remedy.Restores;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.hydraulics.fault.PowerRemedies;

/**
 * The work on a wash pump and its circuit. Minutes and chances of cure: common practice, no source.
 *
 * @param component the id of the wash pump
 */
record WashRemedies(String component) {

  private static final Caution SHARP =
      new Caution(
          Signal.CAUTION,
          "Glass, bone and sharp sheet edges in pump and filter. Wear cut-proof gloves.");
  private static final Caution HEAVY =
      new Caution(
          Signal.WARNING,
          "Crushing. A machine with water in it is heavy: empty it before you tilt it, and prop it.");
  private static final Caution CAPACITOR =
      new Caution(
          Signal.DANGER,
          "Stored charge. A run capacitor can hold its charge after the plug is out: discharge it through"
              + " a resistor and prove it dead.");
  private static final Caution FLOOD =
      new Caution(
          Signal.CAUTION,
          "Flood. Close the tap before you open the water side, and watch every joint during a test run.");

  PowerRemedies power() {
    return new PowerRemedies(component);
  }

  Remedy cleanPump() {
    return work("clean-pump", "clear the pump chamber and the vanes", 35, 0.9, SHARP);
  }

  Remedy cleanFilter() {
    return work("clean-filter", "clean the filter and its seat", 10, 0.95, SHARP);
  }

  Remedy cleanJets() {
    return work("clean-jets", "clear and descale the jets", 20, 0.9, SHARP);
  }

  Remedy setLevel() {
    return work(
        "set-level",
        "find why too little water comes in, and set the level right",
        30,
        0.75,
        FLOOD);
  }

  Remedy renewImpeller() {
    return part("renew-impeller", "renew the impeller and its cover", 45, HEAVY);
  }

  Remedy renewSeal() {
    return part("renew-seal", "renew shaft seal and bearings", 60, HEAVY);
  }

  Remedy renewCapacitor() {
    return part("renew-capacitor", "renew the run capacitor or the speed control", 20, CAPACITOR);
  }

  Remedy renewPassage() {
    return part("renew-passage", "renew feed pipe, joint or arm bearing", 30, FLOOD);
  }

  Remedy renewPump() {
    return new Remedy(
        "renew-pump",
        component,
        "renew the wash pump",
        60,
        Restores.COMPONENT,
        true,
        0.97,
        List.of(Caution.UNPLUG, CAPACITOR, HEAVY, FLOOD));
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
        0.9,
        List.of(Caution.UNPLUG, Caution.HOT_WATER, own));
  }
}
