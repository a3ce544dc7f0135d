package kelter.electrical.seal;

import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
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
 * A gasket, a seal or a body that keeps water, steam or air in: its look, the traces beside it, and
 * a piece of paper. A leak has no figure. Chances, those of symptoms too, are from memory.
 */
public final class Seal implements Part {

  private static final Observable CONDITION =
      Observable.named("condition", "look of it all round")
          .graded("sound", "hard or dirty", "worn or flat", "torn or cracked")
          .how("Wipe it and look at it all round with a lamp, and at what it lies against.")
          .by(Electrical.inside(4));

  private static final Observable TRACES =
      Observable.named("traces", "drops, streaks, scale or dust beside it")
          .how("Look below and beside it with a lamp, before you wipe anything.")
          .by(Electrical.inside(3));

  private final ComponentKind kind;
  private final Observable paper;
  private final FaultRow row;

  private Seal(String id, String title, Observable paper, FaultRow row, Work renew) {
    this.paper = paper;
    this.row = row.curedBy(renew);
    kind = new ComponentKind(id, title, List.of(CONDITION, TRACES, paper), List.of(), List.of());
  }

  private static FaultRow leaks(String title) {
    return fault("leaks", title + " leaks", 0.03)
        .wears(Wear.RUBBER)
        .changes(
            SealFigure.CONDITION.becomes(line(0.3, 0.9)),
            SealFigure.TRACES.becomes(early(0.4, 0.95)),
            SealFigure.PAPER.becomes(early(0.5, 0.97)));
  }

  private static Work renew(String id, String title, double minutes) {
    return Work.renewing(
        "renew-" + id,
        "renew the " + title + ", and clean its seat",
        minutes,
        0.93,
        Caution.UNPLUG);
  }

  /** Paper in the closed gap of a door. */
  private static Observable strip() {
    return Observable.named("paper-strip", "a strip of paper slips out of the closed door")
        .asked(3, "Close the door on a strip of paper and pull. Do it at eight places all round.");
  }

  /** Paper below what holds water or steam. */
  private static Observable dryPaper() {
    return Observable.named("dry-paper", "dry paper below it gets wet")
        .how("Lay dry paper under it, close the machine and run it for some minutes. Then look.")
        .by(Electrical.running(8, Electrical.BY_EYE));
  }

  /**
   * The gasket of a door.
   *
   * @return the part
   */
  public static Seal ofDoor() {
    return new Seal(
        "door-gasket",
        "door gasket",
        strip(),
        leaks("door gasket")
            .makes(Symptoms.LEAKS, 0.85, 0.97)
            .makes(Symptoms.DOOR_DOES_NOT_CLOSE, 0.1, 0.4)
            .makes(Symptoms.ICES_UP, 0.3, 0.7)
            .makes(Symptoms.TOO_WARM_INSIDE, 0.1, 0.6)
            .makes(Symptoms.RUNS_WITHOUT_END, 0.2, 0.7)
            .makes(Symptoms.UNEVEN_HEAT, 0.2, 0.5)
            .makes(Symptoms.HEATS_SLOWLY, 0.1, 0.5),
        renew("door-gasket", "door gasket", 40));
  }

  /**
   * The gasket of a heater, a flange or a probe.
   *
   * @return the part
   */
  public static Seal ofFlange() {
    return new Seal(
        "gasket",
        "gasket",
        dryPaper(),
        leaks("gasket").makes(Symptoms.LEAKS, 0.85, 0.97).makes(Symptoms.TRIPS_RCD, 0.05, 0.3),
        renew("gasket", "gasket", 45));
  }

  /**
   * The seal of a small machine, of water or of air.
   *
   * @return the part
   */
  public static Seal ofSmallMachine() {
    return new Seal(
        "seal",
        "seal",
        Observable.named("paper-test", "paper shows that it does not seal")
            .how(
                "Water: fill it, stand it on dry paper and look after some minutes. Air: hold tissue"
                    + " beside the seal while it runs and see whether it is drawn in.")
            .by(Electrical.running(5, Electrical.BY_EYE)),
        leaks("seal")
            .makes(Symptoms.LEAKS, 0.85, 0.95)
            .makes(Symptoms.WEAK_SUCTION, 0.6, 0.9)
            .makes(Symptoms.TRIPS_RCD, 0.1, 0.4)
            .makes(Symptoms.LOUD, 0.2, 0.4),
        renew("seal", "seal", 20));
  }

  /**
   * A body that holds water.
   *
   * @return the part
   */
  public static Seal ofBody() {
    return new Seal(
        "body",
        "body",
        dryPaper(),
        leaks("body").makes(Symptoms.LEAKS, 0.85, 0.95).makes(Symptoms.RELIEF_DRIPS, 0.1),
        renew("body", "body with its seals", 60));
  }

  /**
   * The seal of the drum shaft.
   *
   * @return the part
   */
  public static Seal ofDrum() {
    return new Seal(
        "drum-seal",
        "seal of the drum shaft",
        dryPaper(),
        leaks("seal of the drum shaft")
            .makes(Symptoms.LEAKS, 0.4, 0.8)
            .makes(Symptoms.LOUD, 0.5, 0.9)
            .makes(Symptoms.VIBRATES, 0.1, 0.3),
        renew("drum-seal", "seal of the drum shaft, with its bearings", 180));
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(kind);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component seal) {
    return Optional.of(
        PartModel.of(seal, kind, Electrical.PRIORS, SealFigure.ALL)
            .faults(row)
            .looks(CONDITION, SealFigure.CONDITION)
            .looks(TRACES, SealFigure.TRACES)
            .looks(paper, SealFigure.PAPER)
            .build());
  }
}
