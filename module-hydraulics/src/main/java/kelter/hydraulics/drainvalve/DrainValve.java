package kelter.hydraulics.drainvalve;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.core.diagnosis.model.Look;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.State;
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
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.part.FigureRule;
import kelter.hydraulics.part.WaterSide;

/**
 * A valve that opens without power and lets the bath run out by its weight. The time to empty goes
 * with the inverse of the open area (Torricelli). Spreads and chances are from memory, minutes
 * judgement: common practice, no source.
 */
public final class DrainValve implements Part {

  private static final double USUAL_TIME = 30; // s; from memory
  private static final double LEAST_OPEN = 0.02; // ratio

  static final Characteristic RATED_TIME =
      new Characteristic("drain-time", "usual time to drain", QuantityKind.TIME)
          .within(new Span(1, 3600));

  static final Observable TIME =
      Observable.named("drain-time", "time to drain")
          .quantity(QuantityKind.TIME, 0, 900)
          .how(
              "From the opening of the valve until the level reads nothing; 15 min if it does not.")
          .by(Procedure.running(6, new Accuracy(0.02, 2), Caution.HOT_WATER));

  static final Observable RUNS =
      Observable.named("runs-shut", "water runs from its outlet while it should be shut")
          .how("Watch or feel the outlet while the machine fills and washes.")
          .by(WaterSide.running(4));

  static final Observable DISC =
      Observable.named("stays-shut", "it stays shut with the power off")
          .how("Locked off: push its lever or disc by hand and look whether it is open.")
          .by(WaterSide.opened(5));

  private static final ComponentKind KIND =
      new ComponentKind(
          "drain-valve", "drain valve", List.of(RUNS, TIME, DISC), List.of(RATED_TIME), List.of());

  /** What faults change. */
  private static final class Change {
    static final FigureSet ALL = new FigureSet("drain-valve");
    static final Figure OPEN = ALL.figure("open area when it should be open, ratio", 1);
    static final Figure LEAK =
        ALL.figure("how far it stands open when it should be shut, 0 to 1", 0);
  }

  /**
   * The time to empty.
   *
   * @param usual the time in order, s
   */
  private record Emptied(double usual) implements ToDoubleFunction<State> {
    @Override
    public double applyAsDouble(State state) {
      return usual / Math.max(LEAST_OPEN, state.of(Change.OPEN));
    }
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(KIND);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("drain-valve-time", "Does the drain valve let the bath out in time?")
            .on(
                KIND,
                TIME,
                new FigureRule(
                    "time to drain against the usual one",
                    Source.commonPractice("at most twice the usual time"),
                    RATED_TIME,
                    Limits.atMost(2))));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component valve) {
    Work clean =
        Work.byHand(
            "clean-drain-valve", "take out what holds it, clean the seat", 30, 0.7, Caution.UNPLUG);
    Work renew =
        Work.renewing("renew-drain-valve", "renew the drain valve", 45, 0.95, Caution.UNPLUG);
    return Optional.of(
        PartModel.of(valve, KIND, WaterSide.PRIORS, Change.ALL)
            .faults(
                fault("leaks-by", "drain valve does not seat", 0.04)
                    .wears(Wear.RUBBER)
                    .changes(Change.LEAK.plus(early(0, 1)))
                    .makes(Symptoms.FILLS_WITHOUT_END, chance(0.05, 0.8, 0.95))
                    .makes(Meaning.FILL.symptom(), chance(0.03, 0.6, 0.9))
                    .makes(Symptoms.LEAKS, 0, 0.46)
                    .curedBy(clean, renew),
                fault("stuck-shut", "drain valve does not open", 0.03)
                    .wears(Wear.DEPOSIT)
                    .changes(Change.OPEN.times(early(1, 0.02)))
                    .makes(Symptoms.DOES_NOT_DRAIN, chance(0.05, 0.8, 0.97))
                    .makes(Meaning.DRAIN.symptom(), chance(0.05, 0.81, 0.95))
                    .makes(Symptoms.DRAINS_SLOWLY, chance(0.05, 0.73, 0.4))
                    .makes(Symptoms.WATER_LEFT, chance(0.03, 0.62, 0.95))
                    .curedBy(clean, renew))
            .looks(
                TIME,
                new Emptied(valve.si(RATED_TIME, USUAL_TIME)),
                Spread.relative(0.2).atLeast(3))
            .looks(RUNS, new Look.Noticed(Change.LEAK, 0.2, 0.06))
            .looks(DISC, new Look.Noticed(Change.OPEN, 0.35, -0.1))
            .build());
  }
}
