package kelter.electrical.brushroll;

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

/** The brush roll of a vacuum cleaner. Chances, those of symptoms too, are from memory. */
public final class BrushRoll implements Part {

  static final Observable HAIR =
      Observable.named("hair", "hair and thread on the roll")
          .graded("none", "some", "thick", "jammed solid")
          .asked(1, "Plug out: turn the nozzle over and look at the roll and its ends.");

  static final Observable ENDS =
      Observable.named("ends", "how its ends turn with belt and hair off")
          .graded("freely", "roughly", "with play", "melted or stuck")
          .how("Take the roll out, clear it, and turn both ends between two fingers.")
          .by(Electrical.inside(4));

  static final ComponentKind BRUSH_ROLL =
      new ComponentKind("brush-roll", "brush roll", List.of(HAIR, ENDS), List.of(), List.of());

  /** What faults change. */
  private static final class Roll {
    static final FigureSet ALL = new FigureSet("brush-roll");
    static final Figure HAIR = ALL.figure("how much hair is on it, from 0 to 1", 0.25);
    static final Figure ENDS = ALL.figure("how badly its ends turn, from 0 to 1", 0.07);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(BRUSH_ROLL);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component roll) {
    return Optional.of(
        PartModel.of(roll, BRUSH_ROLL, Electrical.PRIORS, Roll.ALL)
            .faults(
                fault("jammed", "brush roll jammed", 0.08)
                    .changes(Roll.HAIR.becomes(line(0.6, 0.98)))
                    .makes(Symptoms.POOR_RESULT, 0.8, 0.9)
                    .makes(Symptoms.DOES_NOT_TURN, 0.6, 0.95)
                    .makes(Symptoms.SMELLS_BURNT, 0.2, 0.6)
                    .makes(Symptoms.LOUD, 0.3)
                    .curedBy(
                        Work.byHand(
                            "clear-brush-roll",
                            "clear the brush roll and its ends",
                            15,
                            0.9,
                            Caution.UNPLUG)),
                fault("bearing-worn", "bearing of the brush roll worn", 0.015)
                    .wears(Wear.BEARING)
                    .changes(Roll.ENDS.becomes(line(0.4, 0.97)))
                    .makes(Symptoms.LOUD, 0.8, 0.9)
                    .makes(Symptoms.POOR_RESULT, 0.6, 0.8)
                    .makes(Symptoms.DOES_NOT_TURN, 0.1, 0.5)
                    .makes(Symptoms.SMELLS_BURNT, 0.1, 0.5)
                    .curedBy(
                        Work.renewing(
                            "renew-brush-roll", "renew the brush roll", 15, 0.95, Caution.UNPLUG)))
            .looks(HAIR, Roll.HAIR)
            .looks(ENDS, Roll.ENDS)
            .build());
  }
}
