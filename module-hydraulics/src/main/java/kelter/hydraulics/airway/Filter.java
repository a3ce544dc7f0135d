package kelter.hydraulics.airway;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.Course.power;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.part.AirSide;
import kelter.hydraulics.part.WaterSide;

/**
 * A filter or grille that air runs through, and the charcoal filter of a hood, which is renewed.
 * What it leaves of the flow is asked only where its share of the losses is known.
 */
public final class Filter implements Part {

  /**
   * Machines that heat the air: lint or dust on a heater burns, so none runs without its filter.
   */
  private static final Set<String> HEATED =
      Set.of("tumble-dryer", "washer-dryer", "hair-dryer", "fan-heater");

  static final Observable DIRT =
      Observable.named("dirt", "how clogged it looks")
          .graded("clean", "dusty", "clogged")
          .how("Take it out and hold it against the light.")
          .by(Procedure.look(1));

  static final Observable FLOW_KEPT =
      Observable.named("flow-kept", "air with it in, by the air without it")
          .quantity(QuantityKind.PERCENT, 0, 1.1)
          .how(
              "Hold a vane at the same place of the outlet, or of a funnel on the hose, with it in and"
                  + " without it. Divide the first reading by the second. Never in a machine that heats"
                  + " the air.")
          .by(Procedure.running(5, AirSide.TWO_VANE_READINGS, HydraulicCautions.TURNING_FAN));

  /** A filter or grille. */
  static final ComponentKind FILTER = kind("filter", "air filter");

  /** A filter of charcoal. */
  static final ComponentKind CHARCOAL = kind("charcoal-filter", "charcoal filter");

  private static final FaultRow CLOGGED =
      fault("clogged", "filter clogged", 0.1)
          .wears(Wear.DEPOSIT)
          .changes(AirwayFigure.DIRT.plus(early(0, 0.69)), AirwayFigure.LOSS.times(power(1, 40)))
          .makes(Symptoms.WEAK_AIR, chance(0.05, 0.85, 0.97))
          .makes(Symptoms.WEAK_SUCTION, chance(0.05, 0.85, 0.97))
          .makes(Symptoms.POOR_RESULT, chance(0.05, 0.65, 0.9))
          .makes(Symptoms.STOPS_IN_CYCLE, chance(0.02, 0.4, 0.8))
          .makes(Symptoms.ICES_UP, chance(0.02, 0.4, 0.8))
          .makes(Symptoms.TOO_WARM_INSIDE, chance(0.02, 0.4, 0.8))
          .makes(Symptoms.STAYS_COLD, chance(0.01, 0.3, 0.6))
          .makes(Symptoms.LOUD, chance(0.02, 0.3, 0.5))
          .makes(Symptoms.SMELLS_BURNT, chance(0.01, 0.2, 0.5))
          .curedBy(
              Work.byHand("clean-filter", "clean the filter", 10, 0.9, Caution.UNPLUG),
              Work.withPart("renew-filter", "renew the filter", 8, 0.98, Caution.UNPLUG));

  private static final FaultRow SPENT =
      fault("spent", "charcoal filter spent or clogged", 0.06)
          .wears(Wear.DEPOSIT)
          .changes(AirwayFigure.DIRT.plus(early(0, 0.64)), AirwayFigure.LOSS.times(power(1, 15)))
          .makes(Symptoms.POOR_RESULT, chance(0.05, 0.9, 0.95))
          .makes(Symptoms.WEAK_AIR, chance(0.05, 0.75, 0.9))
          .makes(Symptoms.SMELLS_FOUL, chance(0.05, 0.3, 0.6))
          .makes(Symptoms.LOUD, chance(0.02, 0.15, 0.3))
          .curedBy(
              Work.renewing(
                  "renew-charcoal-filter", "renew the charcoal filter", 8, 0.97, Caution.UNPLUG));

  private static ComponentKind kind(String id, String title) {
    return new ComponentKind(
        id, title, List.of(DIRT, FLOW_KEPT), List.of(AirThrough.LOSS_SHARE), List.of());
  }

  private static final Allowed ENOUGH =
      Allowed.of(
          "air with the filter by the air without it",
          Source.commonPractice("a filter in order leaves four fifths of the flow or more"),
          Limits.atLeast(0.8));

  @Override
  public List<ComponentKind> kinds() {
    return List.of(FILTER, CHARCOAL);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("filter-flow", "Does the filter let enough air through?")
            .on(FILTER, FLOW_KEPT, ENOUGH),
        LimitCheck.named("charcoal-flow", "Does the charcoal filter let enough air through?")
            .on(CHARCOAL, FLOW_KEPT, ENOUGH));
  }

  /** At least 80 % of the flow without it. */
  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component filter) {
    boolean charcoal = filter.kind().equals(CHARCOAL.id());
    PartModel model =
        PartModel.of(filter.id(), WaterSide.PRIORS, AirwayFigure.ALL)
            .on(filter, charcoal ? CHARCOAL : FILTER)
            .faults(charcoal ? SPENT : CLOGGED)
            .looks(DIRT, AirwayFigure.DIRT);
    double share = filter.si(AirThrough.LOSS_SHARE);
    if (share > 0 && !HEATED.contains(appliance.kind())) {
      model
          .under(new AirThrough(share))
          .observe(
              FLOW_KEPT,
              AirThrough.Air::kept,
              Spread.relative(0.02).atLeast(0.02).andOfEffect(0.1));
    }
    return Optional.of(model.build());
  }
}
