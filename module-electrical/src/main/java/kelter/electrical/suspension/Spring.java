package kelter.electrical.suspension;

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
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Proof;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;

/** The springs that a tub hangs on. Chances, those of symptoms too, are from memory. */
public final class Spring implements Part {

  static final Observable HANGS_LOW =
      Observable.named("hangs-low", "the tub hangs low or leans to one side")
          .asked(1, "Plug out: look through the door whether drum and opening are in line.");

  static final Observable BROKEN =
      Observable.named("broken", "a spring is broken or off its hook")
          .proving()
          .how("Look at both ends of each spring with a lamp.")
          .by(Electrical.inside(3, ElectricalCautions.HEAVY_TUB));

  static final ComponentKind SPRING =
      new ComponentKind(
          "spring", "spring of the tub", List.of(HANGS_LOW, BROKEN), List.of(), List.of());

  /** What faults change. */
  private static final class Hang {
    static final FigureSet ALL = new FigureSet("spring");
    static final Figure LOW = ALL.figure("chance that the tub is seen to hang low", 0.04);
    static final Figure BROKEN =
        ALL.figure("chance that a spring is seen broken", Proof.FALSE_ALARM);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(SPRING);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component spring) {
    return Optional.of(
        PartModel.of(spring, SPRING, Electrical.PRIORS, Hang.ALL)
            .faults(
                fault("broken", "spring of the tub broken or off", 0.01)
                    .wears(Wear.BEARING)
                    .changes(Hang.LOW.becomes(0.85), Hang.BROKEN.becomes(0.97))
                    .makes(Symptoms.VIBRATES, 0.8)
                    .makes(Symptoms.LOUD, 0.75)
                    .makes(Symptoms.DOES_NOT_SPIN, 0.3)
                    .makes(Meaning.IMBALANCE.symptom(), 0.35)
                    .curedBy(
                        Work.renewing(
                            "renew-springs",
                            "renew the springs of the tub, in pairs",
                            40,
                            0.97,
                            Caution.UNPLUG,
                            ElectricalCautions.HEAVY_TUB)))
            .looks(HANGS_LOW, Hang.LOW)
            .looks(BROKEN, Hang.BROKEN)
            .build());
  }
}
