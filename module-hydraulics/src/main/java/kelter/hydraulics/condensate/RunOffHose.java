package kelter.hydraulics.condensate;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Look;
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

/** A condensate hose, or another hose inside a machine. */
public final class RunOffHose implements Part {

  static final Observable POURED =
      Observable.named("poured", "how water runs through it")
          .graded("freely", "slowly", "not-at-all")
          .how("Take one end off, hold it over a bowl and pour 100 mL of water into the other.")
          .by(WaterSide.behindCovers(6));

  static final Observable WET =
      Observable.named("wet", "a split, a chafed place or a wet trace along it")
          .how("Follow it from end to end with a lamp and a dry paper, and bend it at its ends.")
          .by(WaterSide.behindCovers(4));

  private static final ComponentKind KIND =
      new ComponentKind(
          "hose", "hose inside the machine", List.of(WET, POURED), List.of(), List.of());

  private static final Work RENEW =
      Work.renewing("renew-inner-hose", "renew the hose", 25, 0.96, Caution.UNPLUG);

  private static final FaultRow BLOCKED =
      fault("blocked", "hose blocked", 0.02)
          .wears(Wear.DEPOSIT)
          .changes(RunOffFigure.SLOW.plus(early(0, 0.9)))
          .makes(Symptoms.LEAKS, chance(0.05, 0.7, 0.95))
          .makes(Symptoms.TANK_FULL_SHOWN, chance(0.02, 0.5, 0.8))
          .makes(Symptoms.STOPS_IN_CYCLE, chance(0.02, 0.4, 0.7))
          .makes(Symptoms.WATER_INSIDE, chance(0.02, 0.25, 0.6))
          .curedBy(
              Work.byHand(
                  "rinse-inner-hose", "take the hose off and rinse it", 20, 0.9, Caution.UNPLUG),
              RENEW);

  private static final FaultRow HOLED =
      fault("split", "hose split", 0.02)
          .wears(Wear.RUBBER)
          .changes(RunOffFigure.SPLIT.plus(1))
          .makes(Symptoms.LEAKS, chance(0.1, 0.9, 0.98))
          .makes(Symptoms.STOPS_IN_CYCLE, chance(0.02, 0.3, 0.6))
          .makes(Symptoms.WEAK_FLOW, chance(0.02, 0.2, 0.5))
          .curedBy(RENEW);

  @Override
  public List<ComponentKind> kinds() {
    return List.of(KIND);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component hose) {
    return Optional.of(
        PartModel.of(hose, KIND, WaterSide.PRIORS, RunOffFigure.ALL)
            .faults(BLOCKED, HOLED)
            .looks(WET, new Look.Noticed(RunOffFigure.SPLIT, 0.2, 0.06))
            .looks(POURED, RunOffFigure.SLOW)
            .build());
  }
}
