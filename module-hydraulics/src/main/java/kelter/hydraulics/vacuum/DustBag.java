package kelter.hydraulics.vacuum;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.part.WaterSide;

/** The bag or bin of a vacuum cleaner. */
public final class DustBag implements Part {

  static final Observable FILLED =
      Observable.named("filled", "how full it is")
          .graded("empty", "half-full", "full")
          .asked(1, "Open the lid and look; fine dust closes a bag that looks half full.");

  private static final ComponentKind KIND =
      new ComponentKind("bag", "bag or bin", List.of(FILLED), List.of(), List.of());

  private static final FaultRow FULL =
      fault("full", "bag or bin full", 0.1)
          .changes(SuctionFigure.FULL.plus(early(0, 0.72)))
          .makes(Symptoms.WEAK_SUCTION, chance(0.05, 0.9, 0.97))
          .makes(Symptoms.POOR_RESULT, chance(0.05, 0.7, 0.9))
          .makes(Symptoms.STOPS_IN_CYCLE, chance(0.01, 0.27, 0.6))
          .makes(Symptoms.LOUD, chance(0.02, 0.28, 0.5))
          .curedBy(
              Work.byHand(
                  "empty-bag", "renew the bag or empty and wipe the bin", 5, 0.95, Caution.UNPLUG));

  @Override
  public List<ComponentKind> kinds() {
    return List.of(KIND);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component bag) {
    return Optional.of(
        PartModel.of(bag, KIND, WaterSide.PRIORS, SuctionFigure.ALL)
            .faults(FULL)
            .looks(FILLED, SuctionFigure.FULL)
            .build());
  }
}
