package kelter.hydraulics.condensate;

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
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.part.WaterSide;

/** The small pump that lifts condensate, at the mains. */
public final class CondensatePump implements Part {

  static final Characteristic WINDING =
      new Characteristic("winding-resistance", "resistance of its winding", QuantityKind.RESISTANCE)
          .within(new Span(1, 1e5));

  static final Observable RUNS =
      Observable.named("runs", "the pump is heard to run when its tray is filled")
          .how("With the machine closed and on, pour water into the tray until its float lifts.")
          .by(Procedure.running(4, Procedure.BY_EYE, Caution.HOT_WATER));

  static final Observable RESISTANCE =
      Observable.named("winding-resistance", "resistance of the winding")
          .logarithmic(QuantityKind.RESISTANCE, new Span(0.05, 1e8))
          .provingFrom(1e6)
          .how("Unplug the pump from its control and measure between its terminals.")
          .by(Procedure.dead(5, new Accuracy(0.01, 0.2)));

  static final Observable IMPELLER =
      Observable.named("impeller", "lint or slime at its inlet and impeller")
          .graded("clean", "some", "clogged")
          .how("Take the pump out of its tray and look; turn the impeller with a finger.")
          .by(WaterSide.runOff(8));

  private static final ComponentKind KIND =
      new ComponentKind(
          "condensate-pump",
          "condensate pump",
          List.of(RUNS, RESISTANCE, IMPELLER),
          List.of(WINDING),
          List.of());

  private static final double USUAL = 250; // Ohm at 230 V, from memory
  private static final double OPEN = 1e6; // ratio: beyond what a meter reads

  private static final FaultRow DEAD =
      fault("dead", "condensate pump dead", 0.03)
          .wears(Wear.WINDING)
          .changes(RunOffFigure.WINDING.becomes(OPEN), RunOffFigure.RUNS.becomes(0.03))
          .makes(Symptoms.TANK_FULL_SHOWN, 0.85)
          .makes(Symptoms.LEAKS, 0.5)
          .makes(Symptoms.STOPS_IN_CYCLE, 0.65)
          .makes(Symptoms.WATER_INSIDE, 0.35)
          .curedBy(
              Work.renewing(
                  "renew-condensate-pump", "renew the condensate pump", 30, 0.96, Caution.UNPLUG));

  private static final FaultRow BLOCKED =
      fault("blocked", "condensate pump blocked by lint or slime", 0.02)
          .wears(Wear.DEPOSIT)
          .changes(RunOffFigure.LINT.plus(early(0, 0.85)), RunOffFigure.RUNS.times(0.5))
          .makes(Symptoms.TANK_FULL_SHOWN, chance(0.05, 0.8, 0.9))
          .makes(Symptoms.LEAKS, chance(0.02, 0.4, 0.8))
          .makes(Symptoms.STOPS_IN_CYCLE, chance(0.03, 0.65, 0.85))
          .makes(Symptoms.WATER_INSIDE, chance(0.02, 0.25, 0.6))
          .curedBy(
              Work.byHand("clean-condensate-pump", "clean pump and tray", 25, 0.88, Caution.UNPLUG),
              Work.renewing(
                  "renew-condensate-pump", "renew the condensate pump", 30, 0.96, Caution.UNPLUG));

  @Override
  public List<ComponentKind> kinds() {
    return List.of(KIND);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("condensate-pump-winding", "Is the winding of the condensate pump whole?")
            .on(
                KIND,
                RESISTANCE,
                Allowed.of(
                    "winding of the condensate pump",
                    Source.fromMemory("100 to 500 ohm at 230 V, a quarter of that at 120 V"),
                    // well below the least at 120 V, 25 ohm, to twice the most at 230 V
                    new Limits(15, 1000))));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component pump) {
    double winding = pump.si(WINDING, USUAL);
    double known = pump.figure(WINDING).isPresent() ? 0.1 : 0.6; // of the logarithm
    return Optional.of(
        PartModel.of(pump, KIND, WaterSide.PRIORS, RunOffFigure.ALL)
            .faults(DEAD, BLOCKED)
            .looks(RUNS, RunOffFigure.RUNS)
            .looks(RESISTANCE, RunOffFigure.WINDING.of(winding), Spread.constant(known))
            .looks(IMPELLER, RunOffFigure.LINT)
            .build());
  }
}
