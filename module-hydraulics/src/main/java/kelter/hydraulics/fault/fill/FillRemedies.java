package kelter.hydraulics.fault.fill;

import java.util.List;
import kelter.core.diagnosis.Remedy;
import kelter.core.diagnosis.Remedy.Restores;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;

/**
 * The work on the way of the water in. Minutes and chances of cure: common practice, no source.
 *
 * @param component the id of the inlet valve
 */
record FillRemedies(String component) {

  private static final Caution PRESSURE =
      new Caution(
          Signal.CAUTION,
          "Water under pressure. Close the tap and let the pressure out into a bucket before you loosen a"
              + " joint; watch every joint afterwards.");
  private static final Caution PLUMBING =
      new Caution(
          Signal.NOTICE, "The pipes of the house are the plumber's: local codes come first.");

  Remedy cleanScreen() {
    return work("clean-screen", "clean the screens in hose and valve", 12, 0.95);
  }

  Remedy straightenHose() {
    return work("straighten-hose", "lay the fill hose without kinks", 8, 0.8);
  }

  Remedy renewHose() {
    return part("renew-hose", "renew the fill hose", 15, Restores.PART);
  }

  Remedy renewValve() {
    return part("renew-valve", "renew the inlet valve", 30, Restores.COMPONENT);
  }

  Remedy setSupply() {
    return new Remedy(
        "open-supply",
        component,
        "open the tap and stop valves wholly, or have the supply put right",
        15,
        Restores.FUNCTION,
        false,
        0.7,
        List.of(PRESSURE, PLUMBING));
  }

  Remedy reducePressure() {
    return new Remedy(
        "reduce-pressure",
        component,
        "have a pressure reducer or a surge arrester fitted",
        40,
        Restores.FUNCTION,
        true,
        0.9,
        List.of(PRESSURE, PLUMBING));
  }

  private Remedy work(String id, String title, double minutes, double cure) {
    return new Remedy(
        id,
        component,
        title,
        minutes,
        Restores.FUNCTION,
        false,
        cure,
        List.of(Caution.UNPLUG, PRESSURE));
  }

  private Remedy part(String id, String title, double minutes, Restores restores) {
    return new Remedy(
        id, component, title, minutes, restores, true, 0.95, List.of(Caution.UNPLUG, PRESSURE));
  }
}
