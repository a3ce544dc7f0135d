package kelter.hydraulics.airway;

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

/** The flap that keeps air from coming back through a duct. */
public final class Flap implements Part {

  static final Observable SWINGS =
      Observable.named("swings", "how the flap swings")
          .graded("freely", "stiffly", "stuck")
          .how("Take the duct off and push the flap with a finger.")
          .by(Procedure.inside(5));

  private static final ComponentKind KIND =
      new ComponentKind("flap", "flap of the air duct", List.of(SWINGS), List.of(), List.of());

  private static final FaultRow STUCK =
      fault("stuck", "flap stuck", 0.05)
          .wears(Wear.DEPOSIT)
          .changes(AirwayFigure.STIFF.plus(early(0, 0.87)))
          .makes(Symptoms.WEAK_AIR, chance(0.05, 0.9, 0.97))
          .makes(Symptoms.POOR_RESULT, chance(0.05, 0.65, 0.9))
          .makes(Symptoms.LOUD, chance(0.02, 0.4, 0.6))
          .curedBy(
              Work.byHand("free-flap", "clean the flap and set it free", 15, 0.8, Caution.UNPLUG),
              Work.renewing("renew-flap", "renew the flap", 25, 0.97, Caution.UNPLUG));

  @Override
  public List<ComponentKind> kinds() {
    return List.of(KIND);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component flap) {
    return Optional.of(
        PartModel.of(flap, KIND, WaterSide.PRIORS, AirwayFigure.ALL)
            .faults(STUCK)
            .looks(SWINGS, AirwayFigure.STIFF)
            .build());
  }
}
