package kelter.hydraulics.vacuum;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
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
import kelter.hydraulics.part.WaterSide;

/** The housing of a vacuum cleaner between inlet and fan. */
public final class VacuumBody implements Part {

  static final Observable CRACK =
      Observable.named("crack", "a crack, or a dust trail at a joint")
          .asked(3, "Look over the housing, its lid and its joints with a lamp.");

  static final Observable DRAWS =
      Observable.named("draws-paper", "a joint or crack draws a strip of paper")
          .how(
              "Close the inlet with the hand, run it, and lead a strip of thin paper along the joints.")
          .by(Procedure.running(4, Procedure.BY_EYE, HydraulicCautions.TURNING_FAN));

  static final Observable SUCTION =
      Observable.named("sealed-suction", "suction at the closed inlet of the body")
          .quantity(QuantityKind.PRESSURE_DIFFERENCE, 0, 60_000)
          .how("Press a manometer on the inlet of the body without the hose, for a few seconds.")
          .by(Procedure.running(3, new Accuracy(0.02, 100), HydraulicCautions.TURNING_FAN));

  private static final ComponentKind KIND =
      new ComponentKind(
          "housing",
          "housing of the vacuum cleaner",
          List.of(CRACK, DRAWS, SUCTION),
          List.of(Suction.SEALED),
          List.of());

  private static final double LEAST_KEPT = 0.8; // ratio; common practice, no source

  private static final FaultRow CRACKED =
      fault("cracked", "housing cracked", 0.02)
          .wears(Wear.RUBBER)
          .changes(SuctionFigure.LEAK.plus(6e-4))
          .makes(Symptoms.WEAK_SUCTION, chance(0.05, 0.8, 0.97))
          .makes(Symptoms.LOUD, chance(0.05, 0.3, 0.6))
          .curedBy(
              Work.renewing("renew-housing", "renew the cracked part", 35, 0.95, Caution.UNPLUG));

  @Override
  public List<ComponentKind> kinds() {
    return List.of(KIND);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("body-suction", "Is the body tight?")
            .on(KIND, SUCTION, VacuumBody::tight));
  }

  private static Optional<Allowed> tight(Measured measured) {
    double rated = measured.component().si(Suction.SEALED);
    if (!(rated > 0)) {
      return Optional.empty();
    }
    return Optional.of(
        Allowed.of(
                "suction of the closed body against its rating",
                Source.commonPractice("a body in order has four fifths of its rating or more"),
                Limits.atLeast(LEAST_KEPT * rated))
            .resting("a worn motor has less suction too"));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component body) {
    return Optional.of(
        PartModel.of(body, KIND, WaterSide.PRIORS, SuctionFigure.ALL)
            .faults(CRACKED)
            .looks(CRACK, new Look.Noticed(SuctionFigure.LEAK, 1e-4, 3e-5))
            .looks(DRAWS, new Look.Noticed(SuctionFigure.LEAK, 5e-5, 1.5e-5))
            .under(Suction.of(body))
            .observe(SUCTION, Suction.Drawn::suction, Spread.relative(0.1).atLeast(200))
            .build());
  }
}
