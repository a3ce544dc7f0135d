package kelter.electrical.cold;

import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.component.Electrical;

/**
 * The clock that turns from cooling to defrost and back. A defrost lasts 15 to 30 minutes and comes
 * every 6 to 24 hours of running. Chances are from memory.
 */
public final class DefrostTimer implements Part {

  static final Observable STANDS =
      Observable.named("stands-still", "it does not move on by itself")
          .how(
              "Mark its shaft, close the machine and let it run. After an hour of cooling the mark"
                  + " must have moved.")
          .by(Electrical.running(5, Electrical.BY_EYE));

  static final Observable NO_DEFROST =
      Observable.named("defrost-ignored", "turned to defrost by hand, nothing warms")
          .how(
              "Measure the defrost heater dead first. Turn the shaft until the compressor stops, close"
                  + " the machine and watch a power meter at the plug.")
          .by(Electrical.running(10, Electrical.BY_EYE));

  static final ComponentKind DEFROST_TIMER =
      new ComponentKind(
          "defrost-timer", "defrost timer", List.of(STANDS, NO_DEFROST), List.of(), List.of());

  /** What faults change. */
  private static final class Clock {
    static final FigureSet ALL = new FigureSet("defrost-timer");
    static final Figure STANDS = ALL.figure("chance that it is seen to stand still", 0.03);
    static final Figure NO_DEFROST =
        ALL.figure("chance that its contact is seen not to feed the heater", 0.03);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(DEFROST_TIMER);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component part) {
    return Optional.of(
        PartModel.of(part, DEFROST_TIMER, Electrical.PRIORS, Clock.ALL)
            .faults(
                fault("dead", "defrost timer stands or does not switch", 0.01)
                    .wears(Wear.CONTACT)
                    .changes(Clock.STANDS.becomes(0.85), Clock.NO_DEFROST.becomes(0.3))
                    .makes(Symptoms.ICES_UP, 0.8)
                    .makes(Symptoms.TOO_WARM_INSIDE, 0.68)
                    .makes(Symptoms.RUNS_WITHOUT_END, 0.6)
                    .makes(Symptoms.WEAK_AIR, 0.6)
                    .curedBy(
                        Work.renewing(
                            "renew-defrost-timer",
                            "thaw the coil and renew the defrost timer",
                            40,
                            0.93,
                            Caution.UNPLUG)))
            .looks(STANDS, Clock.STANDS)
            .looks(NO_DEFROST, Clock.NO_DEFROST)
            .build());
  }
}
