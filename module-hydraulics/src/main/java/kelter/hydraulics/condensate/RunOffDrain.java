package kelter.hydraulics.condensate;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.Course.line;
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
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.part.WaterSide;

/** The drain of a cold coil, or the drain of the building behind a machine. */
public final class RunOffDrain implements Part {

  static final Observable STANDS =
      Observable.named("stands", "water or ice stands where it should run away")
          .asked(2, "Look into the channel under the coil, or into the drain of the building.");

  static final Observable POURED =
      Observable.named("poured", "how water runs away")
          .graded("at-once", "slowly", "not-at-all")
          .how(
              "Pour 100 mL of water into the channel, or a bucket into a drain of the building, and"
                  + " watch.")
          .by(WaterSide.runOff(5));

  private static final ComponentKind KIND =
      new ComponentKind("drain", "drain", List.of(STANDS, POURED), List.of(), List.of());

  private static final FaultRow BLOCKED =
      fault("blocked", "drain blocked or frozen", 0.1)
          .wears(Wear.DEPOSIT)
          .changes(
              RunOffFigure.SLOW.plus(early(0, 0.9)), RunOffFigure.STANDS.becomes(line(0.3, 0.95)))
          .makes(Symptoms.WATER_INSIDE, chance(0.05, 0.9, 0.97))
          .makes(Symptoms.LEAKS, chance(0.03, 0.6, 0.9))
          .makes(Symptoms.ICES_UP, chance(0.02, 0.4, 0.7))
          .makes(Symptoms.STOPS_IN_CYCLE, chance(0.02, 0.2, 0.5))
          .makes(Symptoms.DRAINS_SLOWLY, chance(0.05, 0.85, 0.9))
          .makes(Symptoms.DOES_NOT_DRAIN, chance(0.01, 0.6, 0.95))
          .makes(Symptoms.WATER_LEFT, chance(0.02, 0.6, 0.9))
          .curedBy(
              Work.byHand(
                  "clear-drain",
                  "thaw and clear the drain, and rinse it with warm water",
                  25,
                  0.85,
                  Caution.UNPLUG),
              Work.withPart(
                  "renew-drain", "renew hose or trap of the drain", 40, 0.95, Caution.UNPLUG));

  @Override
  public List<ComponentKind> kinds() {
    return List.of(KIND);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component drain) {
    return Optional.of(
        PartModel.of(drain, KIND, WaterSide.PRIORS, RunOffFigure.ALL)
            .faults(BLOCKED)
            .looks(STANDS, RunOffFigure.STANDS)
            .looks(POURED, RunOffFigure.SLOW)
            .build());
  }
}
