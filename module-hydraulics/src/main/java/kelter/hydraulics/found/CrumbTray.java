package kelter.hydraulics.found;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.FaultRow.fault;

import kelter.core.diagnosis.model.Work;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.onefault.OneFault;
import kelter.hydraulics.onefault.Sign;

/** The crumb tray and the chamber of a toaster. */
public final class CrumbTray {

  static final Observable CRUMBS =
      Observable.named("crumbs", "crumbs on tray and wires")
          .graded("few", "many", "heaped")
          .how("Let it cool, pull the tray out, and look into the slots with a lamp.")
          .by(Procedure.inside(2));

  private CrumbTray() {}

  /**
   * The part.
   *
   * @return the part
   */
  public static OneFault part() {
    return OneFault.of(
        "crumb-tray",
        "crumb tray and chamber",
        fault("full", "crumbs on the heating wires", 0.07)
            .makes(Symptoms.SMELLS_BURNT, chance(0.1, 0.92, 0.98))
            .makes(Symptoms.TOO_HOT, chance(0.02, 0.21, 0.4))
            .makes(Symptoms.TRIPS_BREAKER, chance(0.01, 0.12, 0.3))
            .curedBy(
                Work.byHand(
                    "empty-crumb-tray",
                    "empty the tray and shake the toaster out over a bin",
                    6,
                    0.93,
                    Caution.UNPLUG)),
        Sign.word(CRUMBS, early(0.15, 0.95)));
  }
}
