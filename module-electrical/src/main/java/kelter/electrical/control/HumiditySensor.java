package kelter.electrical.control;

import static kelter.core.diagnosis.model.Course.line;
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
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.component.Electrical;

/** The humidity sensor of a dehumidifier. Chances and spreads are from memory. */
public final class HumiditySensor implements Part {

  static final Observable OFF_BY =
      Observable.named("off-by", "what it shows against a hygrometer beside it, without sign")
          .quantity(QuantityKind.PERCENT, 0, 1)
          .how(
              "Hygrometer at its air inlet for ten minutes, machine off. Write the difference of both"
                  + " in percent of humidity, whichever is higher; where it shows nothing, the step of"
                  + " its knob at which it clicks.")
          .by(Electrical.running(15, new Accuracy(0, 0.03)));

  static final Observable FROZEN =
      Observable.named("frozen", "what it shows does not move when it is breathed at")
          .how("Breathe at the air inlet for ten seconds and watch what it shows.")
          .by(Electrical.running(2, Electrical.BY_EYE));

  static final ComponentKind HUMIDITY_SENSOR =
      new ComponentKind(
          "humidity-sensor", "humidity sensor", List.of(OFF_BY, FROZEN), List.of(), List.of());

  private static final Source WITHIN =
      Source.commonPractice("humidity sensors of small machines within 10 % of humidity");

  /** What faults change. */
  private static final class Humidity {
    static final FigureSet ALL = new FigureSet("humidity-sensor");
    static final Figure OFF = ALL.figure("how far it is off, as a ratio of full humidity", 0.04);
    static final Figure FROZEN = ALL.figure("chance that it is seen not to move", 0.04);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(HUMIDITY_SENSOR);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("humidity-off", "Does the humidity sensor read what is there?")
            .on(
                HUMIDITY_SENSOR,
                OFF_BY,
                Allowed.of("humidity shown against a hygrometer", WITHIN, Limits.atMost(0.1))));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component part) {
    Work renew =
        Work.renewing(
            "renew-humidity-sensor", "renew the humidity sensor", 30, 0.93, Caution.UNPLUG);
    return Optional.of(
        PartModel.of(part, HUMIDITY_SENSOR, Electrical.PRIORS, Humidity.ALL)
            .faults(
                fault("drifts", "humidity sensor drifts", 0.02)
                    .wears(Wear.SENSOR)
                    .changes(Humidity.OFF.becomes(line(0.1, 0.4)))
                    .makes(Symptoms.RUNS_WITHOUT_END, 0.5, 0.8)
                    .makes(Symptoms.DOES_NOT_START, 0.4)
                    .curedBy(renew),
                fault("dead", "humidity sensor dead", 0.01)
                    .wears(Wear.SENSOR)
                    .apartFrom("drifts")
                    .changes(Humidity.OFF.becomes(0.35), Humidity.FROZEN.becomes(0.95))
                    .makes(Symptoms.RUNS_WITHOUT_END, 0.5)
                    .makes(Symptoms.DOES_NOT_START, 0.35)
                    .makes(Meaning.SENSOR.symptom(), 0.4)
                    .curedBy(renew))
            .looks(OFF_BY, Humidity.OFF, Spread.relative(0.3).atLeast(0.025))
            .looks(FROZEN, Humidity.FROZEN)
            .build());
  }
}
