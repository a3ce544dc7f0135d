package kelter.hydraulics.found;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.part.WaterSide;

/**
 * The cover of the wave guide, seen in the cooking chamber of a microwave oven. The case stays
 * closed.
 */
public final class WaveGuideCover implements Part {

  static final Observable STATE =
      Observable.named("state", "how the cover in the wall of the chamber looks")
          .graded("clean", "greasy", "burnt")
          .how("Open the door and look at the cover, and behind its edge. The case stays closed.")
          .by(Procedure.inside(2));

  private static final ComponentKind KIND =
      new ComponentKind(
          "wave-guide-cover", "wave guide cover", List.of(STATE), List.of(), List.of());

  private static final FaultRow BURNT =
      fault("burnt", "wave guide cover dirty or burnt", 0.05)
          .wears(Wear.DEPOSIT)
          .changes(Deposit.PLACE.plus(early(0, 0.8)))
          .makes(Symptoms.SPARKS, chance(0.1, 0.9, 0.98))
          .makes(Symptoms.SMELLS_BURNT, chance(0.05, 0.6, 0.9))
          .curedBy(
              Work.renewing(
                  "renew-wave-guide-cover",
                  "clean the chamber and renew the cover",
                  15,
                  0.93,
                  Caution.UNPLUG));

  @Override
  public List<ComponentKind> kinds() {
    return List.of(KIND);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component cover) {
    return Optional.of(
        PartModel.of(cover.id(), WaterSide.PRIORS, Deposit.values())
            .on(cover, KIND)
            .faults(BURNT)
            .looks(STATE, Deposit.PLACE)
            .build());
  }
}
