package kelter.hydraulics.vacuum;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.power;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Look;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.part.AirSide;
import kelter.hydraulics.part.WaterSide;

/** Hose and wand of a vacuum cleaner. */
public final class SuctionHose implements Part {

  static final Observable BALL_STOPS =
      Observable.named("ball-stops", "a ball that just fits does not fall through")
          .how("Take hose and wand off, hold them straight and drop a ball of 25 mm through.")
          .by(Procedure.inside(2));

  static final Observable SUCTION_KEPT =
      Observable.named("suction-kept", "closed suction at the wand, by that at the body")
          .quantity(QuantityKind.PERCENT, 0, 1.1)
          .how(
              "Press a manometer on the end of the wand, then on the inlet of the body without the hose,"
                  + " for a few seconds each. Divide the first reading by the second.")
          .by(Procedure.running(5, new Accuracy(0.02, 0.01), HydraulicCautions.TURNING_FAN));

  static final Observable FLOW_KEPT =
      Observable.named("flow-kept", "air at the wand, by the air at the body")
          .quantity(QuantityKind.PERCENT, 0, 1.1)
          .how(
              "Hold a vane in a funnel on the open wand, then on the inlet of the body without the hose."
                  + " Divide the first reading by the second.")
          .by(Procedure.running(5, AirSide.TWO_VANE_READINGS, HydraulicCautions.TURNING_FAN));

  static final Observable SPLIT =
      Observable.named("split", "a split or hole in the hose, or it whistles when bent")
          .asked(2, "Stretch and bend the hose near both ends and look, or listen while it runs.");

  static final ComponentKind KIND =
      new ComponentKind(
          "suction-hose",
          "suction hose and wand",
          List.of(BALL_STOPS, SPLIT, SUCTION_KEPT, FLOW_KEPT),
          List.of(),
          List.of());

  private static final Work RENEW =
      Work.renewing("renew-suction-hose", "renew the hose", 8, 0.97, Caution.UNPLUG);

  private static final FaultRow BLOCKED =
      fault("blocked", "hose blocked", 0.1)
          .changes(SuctionFigure.LOSS.times(power(1, 200)))
          .makes(Symptoms.WEAK_SUCTION, chance(0.05, 0.9, 0.98))
          .makes(Symptoms.POOR_RESULT, chance(0.05, 0.72, 0.95))
          .makes(Symptoms.LOUD, chance(0.02, 0.2, 0.4))
          .makes(Symptoms.STOPS_IN_CYCLE, chance(0.01, 0.15, 0.5))
          .curedBy(
              Work.byHand(
                  "clear-suction-hose",
                  "push the blockage out with a blunt stick",
                  12,
                  0.92,
                  Caution.UNPLUG),
              RENEW);

  private static final FaultRow HOLED =
      fault("split", "hose split", 0.05)
          .wears(Wear.RUBBER)
          .changes(SuctionFigure.LEAK.plus(6e-4))
          .makes(Symptoms.WEAK_SUCTION, chance(0.05, 0.74, 0.97))
          .makes(Symptoms.POOR_RESULT, chance(0.05, 0.65, 0.9))
          .makes(Symptoms.LOUD, chance(0.05, 0.36, 0.6))
          .curedBy(
              Work.byHand(
                  "cut-suction-hose",
                  "cut the split end off and refit the cuff",
                  15,
                  0.7,
                  Caution.UNPLUG),
              RENEW);

  @Override
  public List<ComponentKind> kinds() {
    return List.of(KIND);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("suction-hose-tight", "Is the hose tight?")
            .on(
                KIND,
                SUCTION_KEPT,
                Allowed.of(
                    "closed suction at the wand by that at the body",
                    Source.commonPractice("a tight hose keeps nine tenths of the suction or more"),
                    Limits.atLeast(0.9))),
        LimitCheck.named("suction-hose-free", "Is the hose free?")
            .on(
                KIND,
                FLOW_KEPT,
                Allowed.of(
                    "air at the wand by the air at the body",
                    Source.commonPractice("a free hose leaves seven tenths of the flow or more"),
                    Limits.atLeast(0.7))));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component hose) {
    return Optional.of(
        PartModel.of(hose, KIND, WaterSide.PRIORS, SuctionFigure.ALL)
            .faults(BLOCKED, HOLED)
            .looks(BALL_STOPS, new Look.Noticed(SuctionFigure.LOSS, 4, 1))
            .looks(SPLIT, new Look.Noticed(SuctionFigure.LEAK, 5e-5, 1.5e-5))
            .under(Suction.of(hose))
            .observe(SUCTION_KEPT, Suction.Drawn::kept, Spread.constant(0.03))
            .observe(
                FLOW_KEPT,
                Suction.Drawn::flow,
                Spread.relative(0.05).atLeast(0.02).andOfEffect(0.1))
            .build());
  }
}
