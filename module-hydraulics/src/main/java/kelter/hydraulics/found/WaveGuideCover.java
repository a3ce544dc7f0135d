package kelter.hydraulics.found;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.FaultRow.fault;

import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.Work;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.onefault.OneFault;
import kelter.hydraulics.onefault.Sign;

/**
 * The cover of the wave guide, seen in the cooking chamber of a microwave oven. The case stays
 * closed.
 */
public final class WaveGuideCover {

  static final Observable STATE =
      Observable.named("state", "how the cover in the wall of the chamber looks")
          .graded("clean", "greasy", "burnt")
          .how("Open the door and look at the cover, and behind its edge. The case stays closed.")
          .by(Procedure.inside(2));

  private WaveGuideCover() {}

  /**
   * The part.
   *
   * @return the part
   */
  public static OneFault part() {
    return OneFault.of(
        "wave-guide-cover",
        "wave guide cover",
        fault("burnt", "wave guide cover dirty or burnt", 0.05)
            .wears(Wear.DEPOSIT)
            .makes(Symptoms.SPARKS, chance(0.1, 0.9, 0.98))
            .makes(Symptoms.SMELLS_BURNT, chance(0.05, 0.6, 0.9))
            .curedBy(
                Work.renewing(
                    "renew-wave-guide-cover",
                    "clean the chamber and renew the cover",
                    15,
                    0.93,
                    Caution.UNPLUG)),
        Sign.word(STATE, early(0.15, 0.95)));
  }
}
