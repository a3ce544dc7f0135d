package kelter.electrical.latch;

import static kelter.core.diagnosis.model.Course.line;
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

/** The latch of a carriage, held by a magnet. Chances are from memory. */
public final class Latch implements Part {

  static final Observable STIFF =
      Observable.named("stiff", "how freely carriage and latch move, unplugged")
          .graded("freely", "rough", "sticks", "jammed")
          .how("Push the carriage down slowly and let go. Look for crumbs, a bent rod or hook.")
          .by(Electrical.inside(3));

  static final Observable MISSES =
      Observable.named("misses", "the plate does not reach the face of the magnet")
          .how("Hold the carriage down: the plate must lie flat on a clean face, without a gap.")
          .by(Electrical.inside(3));

  static final ComponentKind LATCH =
      new ComponentKind("latch", "latch", List.of(STIFF, MISSES), List.of(), List.of());

  /** What faults change. */
  private static final class Hold {
    static final FigureSet ALL = new FigureSet("latch");
    static final Figure STIFF = ALL.figure("how badly it moves, from 0 to 1", 0.06);
    static final Figure MISSES = ALL.figure("chance that the plate is seen not to reach", 0.03);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(LATCH);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component part) {
    return Optional.of(
        PartModel.of(part, LATCH, Electrical.PRIORS, Hold.ALL)
            .faults(
                fault("jammed", "latch does not hold", 0.03)
                    .wears(Wear.DEPOSIT)
                    .changes(
                        Hold.STIFF.becomes(line(0.4, 0.9)), Hold.MISSES.becomes(line(0.5, 0.9)))
                    .makes(Symptoms.DOES_NOT_START, 0.49)
                    .makes(Symptoms.STOPS_IN_CYCLE, 0.45)
                    .curedBy(
                        Work.byHand(
                            "free-latch",
                            "clean carriage and latch, straighten what is bent",
                            20,
                            0.8,
                            Caution.UNPLUG)))
            .looks(STIFF, Hold.STIFF)
            .looks(MISSES, Hold.MISSES)
            .build());
  }
}
