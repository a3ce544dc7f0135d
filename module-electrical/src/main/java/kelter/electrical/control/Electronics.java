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
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.component.Electrical;

/**
 * A small electronic part with one task: a timer, a holding magnet with its driver, a rectifier, a
 * lamp driver, a remote control. Chances and spreads are from memory.
 */
public final class Electronics implements Part {

  static final Observable DOES_NOTHING =
      Observable.named("does-nothing", "it does not do its task although all around it does")
          .how(
              "Let the machine call for it, closed. Do what feeds it and what it works on measure"
                  + " right? For a remote control: look at its light through a phone camera.")
          .by(Electrical.running(5, Electrical.BY_EYE));

  static final Observable OVER_SETTING =
      Observable.named("over-setting", "time or level that it gives, over the one that is set")
          .quantity(QuantityKind.RATIO, 0, 5)
          .how(
              "Time or measure three settings and take the mean of what it gives over what is set.")
          .by(Electrical.running(8, new Accuracy(0.05, 0)));

  static final Observable NO_WAY =
      Observable.named("conducts-no-way", "it conducts neither way on the diode range")
          .how(
              "For rectifiers and drivers: take one wire off and measure on the diode range, both"
                  + " ways. Sound ones show 0.4 V to 0.8 V one way.")
          .by(Electrical.inside(6));

  static final ComponentKind ELECTRONICS =
      new ComponentKind(
          "electronics",
          "electronic part",
          List.of(DOES_NOTHING, OVER_SETTING, NO_WAY),
          List.of(),
          List.of());

  private static final Source WITHIN =
      Source.commonPractice("a timer or level of a small machine within a quarter of its setting");

  /** What faults change. */
  private static final class Task {
    static final FigureSet ALL = new FigureSet("electronics");
    static final Figure NOTHING = ALL.figure("chance that it is seen to do nothing", 0.03);
    static final Figure GIVEN = ALL.figure("what it gives over what is set, as a ratio", 1);
    static final Figure OPEN = ALL.figure("chance that it is found to conduct neither way", 0.03);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(ELECTRONICS);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("electronics-over-setting", "Does it give what it is set to?")
            .on(
                ELECTRONICS,
                OVER_SETTING,
                Allowed.of("what it gives over what is set", WITHIN, new Limits(0.75, 1.25))));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component part) {
    Work renew =
        Work.renewing("renew-electronics", "renew the electronic part", 30, 0.93, Caution.UNPLUG);
    return Optional.of(
        PartModel.of(part, ELECTRONICS, Electrical.PRIORS, Task.ALL)
            .faults(
                fault("dead", "electronic part dead", 0.02)
                    .changes(Task.NOTHING.becomes(0.94), Task.OPEN.becomes(0.2))
                    .makes(Symptoms.DOES_NOT_START, 0.65)
                    .makes(Symptoms.STOPS_IN_CYCLE, 0.35)
                    .makes(Symptoms.CONTROL_DEAD, 0.3)
                    .makes(Symptoms.LIGHT_OUT, 0.2)
                    .curedBy(renew),
                fault("drifts", "electronic part drifts: it gives more than is set", 0.008)
                    .wears(Wear.SENSOR)
                    .changes(Task.GIVEN.becomes(line(1.25, 2.2)))
                    .makes(Symptoms.TOO_HOT, 0.3, 0.8)
                    .makes(Symptoms.STOPS_IN_CYCLE, 0.3)
                    .makes(Symptoms.POOR_RESULT, 0.1, 0.2)
                    .curedBy(
                        Work.byHand("set-electronics", "set it anew", 15, 0.4, Caution.UNPLUG),
                        renew),
                fault("open", "electronic part open: it conducts no way", 0.005)
                    .apartFrom("drifts")
                    .changes(Task.OPEN.becomes(0.96), Task.NOTHING.becomes(0.9))
                    .makes(Symptoms.DOES_NOT_TURN, 0.9)
                    .makes(Symptoms.SMELLS_BURNT, 0.35)
                    .curedBy(renew))
            .looks(DOES_NOTHING, Task.NOTHING)
            .looks(OVER_SETTING, Task.GIVEN, Spread.relative(0.1))
            .looks(NO_WAY, Task.OPEN)
            .build());
  }
}
