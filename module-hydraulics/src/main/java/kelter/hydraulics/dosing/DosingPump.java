package kelter.hydraulics.dosing;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
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
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.part.FigureRule;
import kelter.hydraulics.part.WaterSide;

/**
 * A pump that squeezes a tube. Spreads and chances are from memory, minutes judgement: common
 * practice, no source.
 */
public final class DosingPump implements Part {

  private static final double ML_PER_MIN = 1e-6 / 60; // m3/s
  private static final double USUAL = 50 * ML_PER_MIN; // m3/s; from memory

  static final Characteristic RATED =
      new Characteristic("rated-flow", "flow rate of the dosing pump", QuantityKind.FLOW)
          .within(new Span(0.1 * ML_PER_MIN, 5000 * ML_PER_MIN));

  static final Observable DELIVERED =
      Observable.named("delivered", "flow rate with its prime key held")
          .quantity(QuantityKind.FLOW, 0, 5000 * ML_PER_MIN)
          .how("Hose end in a measuring cylinder: hold the prime key for a minute.")
          .by(
              Procedure.running(
                  4, new Accuracy(0.04, ML_PER_MIN), HydraulicCautions.CAUSTIC_DETERGENT));

  static final Observable STANDS_PRIMED =
      Observable.named("stands-primed", "its rotor stands still with the prime key held")
          .how("Look through its cover while the prime key is held.")
          .by(Procedure.running(1, Procedure.BY_EYE, HydraulicCautions.CAUSTIC_DETERGENT));

  static final Observable STANDS_CALLED =
      Observable.named("stands-called", "its rotor stands still when the programme should dose")
          .how("Start a programme and watch the rotor when it should dose.")
          .by(Procedure.running(6, Procedure.BY_EYE, HydraulicCautions.CAUSTIC_DETERGENT));

  static final Observable BUBBLES =
      Observable.named("bubbles", "air bubbles run in its suction hose, or can or lance is empty")
          .how("Look at the suction hose while it runs, and at lance and can.")
          .by(Procedure.running(2, Procedure.BY_EYE, HydraulicCautions.CAUSTIC_DETERGENT));

  static final Observable TUBE =
      Observable.named("tube", "the squeezed tube")
          .graded("round", "flat", "cracked")
          .how("Take the cover off and look at the tube where the rollers run.")
          .by(Procedure.inside(4, HydraulicCautions.CAUSTIC_DETERGENT));

  private static final ComponentKind KIND =
      new ComponentKind(
          "dosing-pump",
          "dosing pump",
          List.of(DELIVERED, BUBBLES, STANDS_PRIMED, TUBE, STANDS_CALLED),
          List.of(RATED),
          List.of());

  /** What faults change. */
  private static final class Change {
    static final FigureSet ALL = new FigureSet("dosing-pump");
    static final Figure DELIVERED = ALL.figure("what it delivers, ratio", 1);
    static final Figure TUBE =
        ALL.figure("the tube, place on the scale from round to cracked", 0.15);
    static final Figure BUBBLES = ALL.figure("chance that bubbles are seen", 0.05);
    static final Figure STANDS_PRIMED =
        ALL.figure("chance that it stands with the prime key held", 0.03);
    static final Figure STANDS_CALLED =
        ALL.figure("chance that it stands when the programme should dose", 0.04);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(KIND);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("dosing-flow", "Does the dosing pump deliver what it should?")
            .on(
                KIND,
                DELIVERED,
                new FigureRule(
                    "what the dosing pump delivers against its figure",
                    Source.commonPractice("within 15 % of its figure"),
                    RATED,
                    new Limits(0.85, 1.15))));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component pump) {
    boolean known = pump.figure(RATED).isPresent();
    return Optional.of(
        PartModel.of(pump, KIND, WaterSide.PRIORS, Change.ALL)
            .faults(faults())
            .looks(
                DELIVERED,
                Change.DELIVERED.of(pump.si(RATED, USUAL)),
                Spread.relative(known ? 0.08 : 0.35).atLeast((known ? 0.03 : 0.1) * USUAL))
            .looks(STANDS_PRIMED, Change.STANDS_PRIMED)
            .looks(STANDS_CALLED, Change.STANDS_CALLED)
            .looks(BUBBLES, Change.BUBBLES)
            .looks(TUBE, Change.TUBE)
            .build());
  }

  private static List<FaultRow> faults() {
    Work tube =
        Work.withPart(
            "renew-tube", "renew the squeezed tube", 15, 0.95, HydraulicCautions.CAUSTIC_DETERGENT);
    Work suction =
        Work.byHand(
            "tighten-suction",
            "fill the can, seat lance and hose",
            10,
            0.9,
            HydraulicCautions.CAUSTIC_DETERGENT);
    Work pump =
        Work.renewing(
            "renew-dosing-pump",
            "renew the dosing pump",
            30,
            0.95,
            Caution.UNPLUG,
            HydraulicCautions.CAUSTIC_DETERGENT);
    Work signal =
        Work.byHand(
            "restore-signal",
            "mend the wire or the setting of its signal",
            40,
            0.7,
            Caution.UNPLUG);
    return List.of(
        fault("tube-worn", "tube of the dosing pump worn", 0.03)
            .wears(Wear.RUBBER)
            .changes(Change.DELIVERED.times(early(1, 0.1)), Change.TUBE.plus(early(0, 0.8)))
            .makes(Symptoms.POOR_RESULT, chance(0.1, 0.83, 0.95))
            .makes(Symptoms.DISPENSER_STAYS_FULL, chance(0.03, 0.3, 0.6))
            .curedBy(tube),
        fault("draws-air", "dosing pump draws air, lance or can", 0.02)
            .changes(
                Change.DELIVERED.times(early(1, 0.05)), Change.BUBBLES.becomes(early(0.2, 0.95)))
            .makes(Symptoms.POOR_RESULT, chance(0.1, 0.83, 0.95))
            .makes(Symptoms.DISPENSER_STAYS_FULL, chance(0.03, 0.3, 0.6))
            .curedBy(suction),
        fault("motor-dead", "motor of the dosing pump dead", 0.01)
            .wears(Wear.WINDING)
            .changes(
                Change.DELIVERED.becomes(0),
                Change.STANDS_PRIMED.becomes(0.96),
                Change.STANDS_CALLED.becomes(0.96))
            .makes(Symptoms.POOR_RESULT, 0.83)
            .makes(Symptoms.DISPENSER_STAYS_FULL, 0.4)
            .curedBy(pump),
        fault("no-signal", "no signal for the dosing pump", 0.006)
            .wears(Wear.WIRE)
            .changes(Change.STANDS_CALLED.becomes(0.96))
            .makes(Symptoms.POOR_RESULT, 0.8)
            .makes(Symptoms.DISPENSER_STAYS_FULL, 0.4)
            .curedBy(signal));
  }
}
