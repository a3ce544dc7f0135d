package kelter.electrical.cold;

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
import kelter.core.vocabulary.Span;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.component.Electrical;

/**
 * The sensor on an evaporator that begins or ends the defrost. In ice water an NTC has what its
 * table says at 0 °C, 33.6 kOhm for one of 10 kOhm and B 3950 K. Chances and spreads are from
 * memory.
 */
public final class DefrostSensor implements Part {

  static final Observable IN_ICE =
      Observable.named("ice-water-ratio", "resistance in ice water over that of its table at 0 °C")
          .logarithmic(QuantityKind.RATIO, new Span(1e-3, 1e3))
          .how(
              "Pull its plug, hold it in ice water for three minutes, measure and divide by the table."
                  + " A defrost thermostat counts as 1 if it conducts in ice water, else write 1000.")
          .by(Electrical.dead(10, new Accuracy(0.03, 0)));

  static final Observable SEAT =
      Observable.named("seat", "how it sits on the coil")
          .graded("firm", "loose", "off")
          .how("Look whether its clip holds it on the pipe that the maker names.")
          .by(Electrical.inside(6));

  static final ComponentKind DEFROST_SENSOR =
      new ComponentKind(
          "defrost-sensor", "defrost sensor", List.of(IN_ICE, SEAT), List.of(), List.of());

  private static final Source TABLE =
      Source.commonPractice("a sensor within 10 % of its table in ice water");

  /** What faults change. */
  private static final class Sensor {
    static final FigureSet ALL = new FigureSet("defrost-sensor");
    static final Figure RATIO = ALL.figure("resistance over that of its table", 1);
    static final Figure OFF = ALL.figure("how far it is off its seat, from 0 to 1", 0.05);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(DEFROST_SENSOR);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("defrost-sensor-ice", "Does the defrost sensor read its table?")
            .on(
                DEFROST_SENSOR,
                IN_ICE,
                Allowed.of("resistance in ice water over its table", TABLE, new Limits(0.9, 1.1))));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component part) {
    return Optional.of(
        PartModel.of(part, DEFROST_SENSOR, Electrical.PRIORS, Sensor.ALL)
            .faults(
                fault("dead", "defrost sensor open", 0.02)
                    .wears(Wear.SENSOR)
                    .changes(Sensor.RATIO.becomes(1e3))
                    .makes(Symptoms.ICES_UP, 0.86)
                    .makes(Symptoms.TOO_WARM_INSIDE, 0.5)
                    .makes(Symptoms.POOR_RESULT, 0.5)
                    .makes(Symptoms.RUNS_WITHOUT_END, 0.4)
                    .makes(Symptoms.WEAK_AIR, 0.4)
                    .makes(Meaning.SENSOR.symptom(), 0.25)
                    .curedBy(
                        Work.renewing(
                            "renew-defrost-sensor",
                            "thaw the coil and renew the defrost sensor",
                            45,
                            0.93,
                            Caution.UNPLUG)),
                fault("off-seat", "defrost sensor off its seat", 0.008)
                    .changes(Sensor.OFF.becomes(line(0.5, 1)))
                    .makes(Symptoms.ICES_UP, 0.85, 0.95)
                    .makes(Symptoms.POOR_RESULT, 0.7)
                    .curedBy(
                        Work.byHand(
                            "seat-defrost-sensor",
                            "thaw the coil and clip the sensor on",
                            30,
                            0.93,
                            Caution.UNPLUG)))
            .looks(IN_ICE, Sensor.RATIO, Spread.constant(0.06))
            .looks(SEAT, Sensor.OFF)
            .build());
  }
}
