package kelter.electrical.belt;

import static kelter.core.diagnosis.model.Course.line;
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
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Span;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.component.Electrical;
import kelter.electrical.drive.BeltTension;

/**
 * A belt that drives a drum, a roll or a wheel. Chances, those of symptoms too, and spreads are
 * from memory.
 */
public final class Belt implements Part {

  static final Characteristic NOTE =
      new Characteristic("span-frequency", "frequency of its plucked span", QuantityKind.FREQUENCY)
          .within(new Span(5, 500));

  static final Observable DRIVEN =
      Observable.named("turns-without-drag", "what it drives turns by hand without any drag")
          .asked(1, "Plug out: turn the drum or the roll by hand. In order the motor drags along.");

  static final Observable SQUEALS =
      Observable.named("squeals", "it squeals, or smells of rubber, as it starts or spins")
          .asked(1, "Ask, or listen while the machine starts with a load in it.");

  static final Observable STATE =
      Observable.named("state", "state of the belt")
          .graded("tight and whole", "slack or shiny", "frayed", "off or broken")
          .how("Look at the belt all round and press its longest span with a finger.")
          .by(Electrical.inside(3));

  static final Observable SPAN_FREQUENCY =
      Observable.named("span-frequency", "frequency of its plucked span")
          .quantity(QuantityKind.FREQUENCY, 1, 1000)
          .how(
              "Pluck the longest free span and read the note with a tuner beside it. Turn the pulley"
                  + " and do it three times; write the middle one.")
          .by(Electrical.dead(4, new Accuracy(0.02, 0.5)));

  /** A belt. */
  public static final ComponentKind BELT =
      new ComponentKind(
          "belt",
          "belt",
          List.of(DRIVEN, SQUEALS, STATE, SPAN_FREQUENCY),
          List.of(NOTE),
          List.of());

  /** What faults change. */
  private static final class Drive {
    static final FigureSet ALL = new FigureSet("belt");
    static final Figure TENSION = ALL.figure("tension, ratio to the one in order", 1);
    static final Figure STATE = ALL.figure("how bad it looks, from 0 to 1", 0.04);
    static final Figure FREE = ALL.figure("chance that what it drives turns without drag", 0.03);
    static final Figure SQUEALS = ALL.figure("chance that it squeals", 0.06);
  }

  /** Notes that leave the belt half to double its tension, as ratios. */
  private static final double LOW = BeltTension.note(0.5);

  private static final double HIGH = BeltTension.note(2);

  @Override
  public List<ComponentKind> kinds() {
    return List.of(BELT);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("belt-tension", "Is the belt as tight as it should be?")
            .on(BELT, SPAN_FREQUENCY, Belt::note));
  }

  private static Optional<Allowed> note(Measured measured) {
    double figure = measured.component().si(NOTE);
    return figure > 0
        ? Optional.of(
            Allowed.of(
                "frequency of the span against its figure",
                Source.commonPractice(
                    "half to double the tension, which goes with frequency squared"),
                new Limits(LOW * figure, HIGH * figure)))
        : Optional.empty();
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component belt) {
    Work renew = Work.renewing("renew-belt", "renew the belt", 30, 0.95, Caution.UNPLUG);
    PartModel model =
        PartModel.of(belt, BELT, Electrical.PRIORS, Drive.ALL)
            .faults(
                fault("slack", "belt slack or glazed", 0.03)
                    .wears(Wear.RUBBER)
                    .changes(
                        Drive.TENSION.times(line(0.5, 0.1)),
                        Drive.STATE.becomes(line(0.33, 0.6)),
                        Drive.FREE.becomes(line(0.05, 0.4)),
                        Drive.SQUEALS.becomes(line(0.4, 0.85)))
                    .makes(Symptoms.DOES_NOT_TURN, 0.05, 0.6)
                    .makes(Symptoms.DOES_NOT_SPIN, 0.1, 0.6)
                    .makes(Symptoms.LOUD, 0.45)
                    .makes(Symptoms.SMELLS_BURNT, 0.3, 0.5)
                    .makes(Meaning.MOTOR.symptom(), 0.1)
                    .curedBy(
                        Work.byHand("tension-belt", "tension the belt", 15, 0.5, Caution.UNPLUG),
                        renew),
                fault("broken", "belt broken or off", 0.04)
                    .wears(Wear.RUBBER)
                    .apartFrom("slack")
                    .changes(
                        Drive.TENSION.becomes(0),
                        Drive.STATE.becomes(0.98),
                        Drive.FREE.becomes(0.95),
                        Drive.SQUEALS.becomes(0.1))
                    .makes(Symptoms.DOES_NOT_TURN, 0.95)
                    .makes(Symptoms.DOES_NOT_SPIN, 0.95)
                    .makes(Symptoms.LOUD, 0.1)
                    .makes(Symptoms.SMELLS_BURNT, 0.1)
                    .makes(Meaning.MOTOR.symptom(), 0.3)
                    .curedBy(renew))
            .looks(DRIVEN, Drive.FREE)
            .looks(SQUEALS, Drive.SQUEALS)
            .looks(STATE, Drive.STATE);
    double figure = belt.si(NOTE);
    if (figure > 0) {
      model.looks(
          SPAN_FREQUENCY,
          state -> figure * BeltTension.note(state.of(Drive.TENSION)),
          Spread.relative(0.1).atLeast(1));
    }
    return Optional.of(model.build());
  }
}
