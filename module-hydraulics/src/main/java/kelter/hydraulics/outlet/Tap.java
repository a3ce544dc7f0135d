package kelter.hydraulics.outlet;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.part.WaterSide;

/**
 * The tap of a water boiler or urn. Figures and chances are from memory, minutes judgement: common
 * practice, no source.
 */
public final class Tap implements Part {

  private static final double L_PER_MIN = 1e-3 / 60; // m3/s

  static final Observable FLOW =
      Observable.named("flow", "flow rate of the wide open tap")
          .quantity(QuantityKind.FLOW, 0, 30 * L_PER_MIN)
          .how("Boiler cooled below 45 °C and at least half full: time a jug under the open tap.")
          .by(WaterSide.caught(3));

  static final Observable DRIPS =
      Observable.named("drips", "the closed tap")
          .graded("dry", "drips", "runs")
          .how("Close it, wipe it dry, and look after two minutes, at the spout and the spindle.")
          .by(Procedure.look(3));

  private static final ComponentKind KIND =
      new ComponentKind("tap", "tap", List.of(DRIPS, FLOW), List.of(), List.of());

  /** What faults change. */
  private static final class Change {
    static final FigureSet ALL = new FigureSet("tap");
    static final Figure FLOW = ALL.figure("flow rate of the open tap, m3/s", 6 * L_PER_MIN);
    static final Figure DRIPS =
        ALL.figure("the closed tap, place on the scale from dry to runs", 0.06);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(KIND);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("tap-flow", "Does the tap let enough through?")
            .on(
                KIND,
                FLOW,
                Allowed.of(
                    "flow rate of the wide open tap",
                    Source.fromMemory("3 L/min or more from a tap that is not scaled"),
                    Limits.atLeast(3 * L_PER_MIN))));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component tap) {
    Work renew =
        Work.renewing(
            "renew-tap", "renew the tap or its seat cup", 20, 0.95, HydraulicCautions.BOILER_TAP);
    return Optional.of(
        PartModel.of(tap, KIND, WaterSide.PRIORS, Change.ALL)
            .faults(
                fault("blocked", "tap blocked with scale", 0.04)
                    .wears(Wear.DEPOSIT)
                    .changes(Change.FLOW.times(early(1, 0.05)))
                    .makes(Symptoms.WEAK_FLOW, chance(0.1, 0.95, 0.98))
                    .makes(Symptoms.DISCOLOURED_WATER, 0, 0.6)
                    .curedBy(
                        Work.byHand(
                            "descale-tap",
                            "descale the tap",
                            25,
                            0.85,
                            HydraulicCautions.BOILER_TAP),
                        renew),
                fault("leaks", "tap drips or leaks", 0.03)
                    .wears(Wear.RUBBER)
                    .changes(Change.DRIPS.plus(early(0, 0.9)))
                    .makes(Symptoms.LEAKS, chance(0.1, 0.96, 0.98))
                    .curedBy(renew))
            .looks(DRIPS, Change.DRIPS)
            .looks(FLOW, Change.FLOW, Spread.relative(0.2).atLeast(0.2 * L_PER_MIN))
            .build());
  }
}
