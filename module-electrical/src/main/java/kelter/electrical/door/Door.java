package kelter.electrical.door;

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
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;

/**
 * A door with latch, hinges and springs, told by looks with nothing opened. Chances, those of
 * symptoms too, are from memory.
 */
public final class Door implements Part {

  static final Observable CATCHES =
      Observable.named("catches", "how the latch catches")
          .graded("firmly", "with play", "only at a push", "not at all")
          .asked(
              1, "Plug out: close the door gently three times. Look at hook and catch for wear.");

  static final Observable HANGS =
      Observable.named("hangs", "how the door hangs")
          .graded("even gap", "slightly off", "sags", "rubs or is loose")
          .asked(
              1, "Look at the gap all round. Lift the open door at its free end: feel for play.");

  static final Observable FALLS =
      Observable.named("falls", "the open door falls, stays nowhere, or does not pull itself shut")
          .asked(1, "Let the door go half open. In order its springs hold it or draw it shut.");

  static final ComponentKind DOOR =
      new ComponentKind("door", "door", List.of(CATCHES, HANGS, FALLS), List.of(), List.of());

  /** What faults change. */
  private static final class Hung {
    static final FigureSet ALL = new FigureSet("door");
    static final Figure CATCH = ALL.figure("how badly the latch catches, from 0 to 1", 0.06);
    static final Figure SAG = ALL.figure("how badly the door hangs, from 0 to 1", 0.08);
    static final Figure FALLS = ALL.figure("chance that the door is seen to fall", 0.04);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(DOOR);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component door) {
    return Optional.of(
        PartModel.of(door, DOOR, Electrical.PRIORS, Hung.ALL)
            .faults(
                fault("latch-worn", "latch of the door worn or broken", 0.012)
                    .wears(Wear.WIRE)
                    .changes(Hung.CATCH.becomes(line(0.45, 0.97)))
                    .makes(Symptoms.DOES_NOT_START, 0.4, 0.8)
                    .makes(Symptoms.DOOR_DOES_NOT_CLOSE, 0.4, 0.85)
                    .makes(Symptoms.DOOR_DOES_NOT_LOCK, 0.4, 0.9)
                    .makes(Symptoms.DOOR_DOES_NOT_OPEN, 0.4)
                    .makes(Symptoms.STOPS_IN_CYCLE, 0.2)
                    .makes(Symptoms.LEAKS, 0.1, 0.2)
                    .makes(Meaning.DOOR.symptom(), 0.4, 0.7)
                    .curedBy(
                        Work.renewing(
                            "renew-latch",
                            "renew the latch and hook of the door",
                            30,
                            0.9,
                            Caution.UNPLUG)),
                fault("hinge-sags", "hinge of the door sags", 0.01)
                    .wears(Wear.WIRE)
                    .changes(Hung.SAG.becomes(line(0.4, 0.97)), Hung.CATCH.atLeast(line(0.1, 0.45)))
                    .makes(Symptoms.DOOR_DOES_NOT_CLOSE, 0.4, 0.85)
                    .makes(Symptoms.DOOR_DOES_NOT_LOCK, 0.3, 0.8)
                    .makes(Symptoms.LEAKS, 0.2, 0.5)
                    .makes(Symptoms.DOES_NOT_START, 0.1, 0.3)
                    .makes(Symptoms.UNEVEN_HEAT, 0.2, 0.5)
                    .curedBy(
                        Work.byHand(
                            "set-hinge",
                            "set the hinge and tighten it",
                            25,
                            0.6,
                            Caution.UNPLUG,
                            ElectricalCautions.DOOR_SPRINGS),
                        Work.withPart(
                            "renew-hinges",
                            "renew the hinges, in pairs",
                            60,
                            0.95,
                            Caution.UNPLUG,
                            ElectricalCautions.DOOR_SPRINGS)),
                fault("spring-broken", "spring or cord of the door broken", 0.01)
                    .wears(Wear.WIRE)
                    .changes(Hung.FALLS.becomes(0.95))
                    .makes(Symptoms.DOOR_DOES_NOT_CLOSE, 0.65)
                    .makes(Symptoms.DOOR_DOES_NOT_LOCK, 0.4)
                    .makes(Symptoms.LEAKS, 0.3)
                    .makes(Symptoms.DOES_NOT_START, 0.2)
                    .curedBy(
                        Work.withPart(
                            "renew-door-springs",
                            "renew the springs and cords of the door, in pairs",
                            50,
                            0.95,
                            Caution.UNPLUG,
                            ElectricalCautions.DOOR_SPRINGS)))
            .looks(CATCHES, Hung.CATCH)
            .looks(HANGS, Hung.SAG)
            .looks(FALLS, Hung.FALLS)
            .build());
  }
}
