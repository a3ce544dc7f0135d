package kelter.hydraulics.flowmeter;

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
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.part.FigureRule;
import kelter.hydraulics.part.WaterSide;

/**
 * A wheel that gives so many pulses for each litre. A dirty one turns stiffly and gives fewer, a
 * dead one turns and gives none. Spreads and chances are from memory, minutes judgement: common
 * practice, no source.
 */
public final class FlowSensor implements Part {

  private static final QuantityKind PULSES = QuantityKind.of("pulses for each litre", "{pulse}/L");
  private static final double EACH_LITRE = 1000; // 1/m3
  private static final double USUAL = 300 * EACH_LITRE; // of a dishwasher; from memory
  private static final double KNOWN = 0.05; // standard deviation of the logarithm
  private static final double UNKNOWN = 0.7; // the same where the figure is not known

  static final Characteristic RATED =
      new Characteristic("rated-pulses", "pulses for each litre", PULSES)
          .within(new Span(EACH_LITRE, 1e5 * EACH_LITRE));

  static final Observable PULSES_COUNTED =
      Observable.named("pulses", "pulses for each litre")
          .logarithmic(PULSES, new Span(0.1 * EACH_LITRE, 1e5 * EACH_LITRE))
          .how(
              "Let the service menu or a counter on the plug of the sensor count while a litre runs into a"
                  + " measuring jug.")
          .by(Procedure.running(6, new Accuracy(0.03, 0.5 * EACH_LITRE), Caution.HOT_WATER));

  static final Observable WHEEL =
      Observable.named("wheel", "how the wheel turns when blown at")
          .graded("easily", "stiff", "not at all")
          .how("Take the sensor out, blow through it gently, and watch the wheel.")
          .by(WaterSide.behindCovers(6));

  static final Observable NOT_COUNTED =
      Observable.named("not-counted", "the machine counts nothing although the wheel turns")
          .how("In the service menu, watch the count while water runs and the wheel turns.")
          .by(WaterSide.running(4));

  private static final ComponentKind KIND =
      new ComponentKind(
          "flow-sensor",
          "flow sensor",
          List.of(PULSES_COUNTED, WHEEL, NOT_COUNTED),
          List.of(RATED),
          List.of());

  /** What faults change. */
  private static final class Change {
    static final FigureSet ALL = new FigureSet("flow-sensor");
    static final Figure PULSES = ALL.figure("pulses, ratio", 1);
    static final Figure STIFF =
        ALL.figure("the wheel, place on the scale from easily to not at all", 0.08);
    static final Figure NOT_COUNTED =
        ALL.figure("chance that nothing is counted although it turns", 0.04);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(KIND);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("flow-sensor-pulses", "Does the flow sensor count right?")
            .on(
                KIND,
                PULSES_COUNTED,
                new FigureRule(
                    "pulses for each litre against the figure of the sensor",
                    Source.commonPractice("within 15 % of the figure of the sensor"),
                    RATED,
                    new Limits(0.85, 1.15))));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component sensor) {
    Work clean =
        Work.byHand("clean-flow-sensor", "clean the wheel and its axle", 20, 0.85, Caution.UNPLUG);
    Work renew =
        Work.renewing("renew-flow-sensor", "renew the flow sensor", 25, 0.95, Caution.UNPLUG);
    double spread = sensor.figure(RATED).isPresent() ? KNOWN : UNKNOWN;
    return Optional.of(
        PartModel.of(sensor, KIND, WaterSide.PRIORS, Change.ALL)
            .faults(
                fault("dirty", "flow sensor dirty or stiff", 0.04)
                    .wears(Wear.DEPOSIT)
                    .changes(Change.PULSES.times(early(1, 0.1)), Change.STIFF.plus(early(0, 0.85)))
                    .makes(Symptoms.STAYS_COLD, chance(0.02, 0.3, 0.8))
                    .makes(Symptoms.POOR_RESULT, chance(0.03, 0.4, 0.7))
                    .makes(Meaning.FILL.symptom(), chance(0.03, 0.4, 0.8))
                    .makes(Symptoms.STOPS_IN_CYCLE, 0, 0.54)
                    .makes(Symptoms.TEMPERATURE_SWINGS, 0, 0.4)
                    .curedBy(clean, renew),
                fault("dead", "flow sensor dead", 0.03)
                    .wears(Wear.SENSOR)
                    .changes(Change.PULSES.becomes(1e-6), Change.NOT_COUNTED.becomes(0.93))
                    .makes(Symptoms.STAYS_COLD, 0.4)
                    .makes(Symptoms.POOR_RESULT, 0.35)
                    .makes(Meaning.FILL.symptom(), 0.5)
                    .makes(Symptoms.STOPS_IN_CYCLE, 0.36)
                    .curedBy(renew))
            .looks(
                PULSES_COUNTED, Change.PULSES.of(sensor.si(RATED, USUAL)), Spread.constant(spread))
            .looks(WHEEL, Change.STIFF)
            .looks(NOT_COUNTED, Change.NOT_COUNTED)
            .build());
  }
}
