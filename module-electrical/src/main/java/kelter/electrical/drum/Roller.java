package kelter.electrical.drum;

import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
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
 * What carries or couples something that turns: a roller under a drum, the idler of its belt, the
 * roller ring or the coupler of a turntable. What knocks once a turn of a roller has the speed of
 * the drum times the ratio of the diameters. Chances, those of symptoms too, are from memory.
 */
public final class Roller implements Part {

  /** What faults change. */
  private static final class Run {
    static final FigureSet ALL = new FigureSet("roller");
    static final Figure TURNS = ALL.figure("how badly it turns, from 0 to 1", 0.07);
    static final Figure FLAT = ALL.figure("chance of a flat, a groove or play that one sees", 0.05);
  }

  private final ComponentKind kind;
  private final Observable turning;
  private final Observable flat;
  private final String title;
  private final UnaryOperator<FaultRow> symptoms;

  private Roller(
      String id,
      String title,
      Observable turning,
      Observable flat,
      UnaryOperator<FaultRow> symptoms) {
    this.title = title;
    this.symptoms = symptoms;
    this.turning = turning;
    this.flat = flat;
    kind = new ComponentKind(id, title, List.of(turning, flat), List.of(), List.of());
  }

  /**
   * A roller under a drum.
   *
   * @return the part
   */
  public static Roller ofDrum() {
    return underTheDrum("drum-roller", "drum roller");
  }

  /**
   * The idler that tensions a belt.
   *
   * @return the part
   */
  public static Roller ofBelt() {
    return underTheDrum("idler", "idler pulley");
  }

  private static Roller underTheDrum(String id, String title) {
    return new Roller(
        id,
        title,
        turning("with the belt off", "Take the belt off it. Spin it with a finger and listen.", 6),
        Observable.named("worn-shape", "it has a flat, a groove, or play on its pin")
            .how("Look at its rubber all round and rock it on its pin.")
            .by(Electrical.inside(4)),
        row ->
            row.makes(Symptoms.LOUD, 0.85, 0.95)
                .makes(Symptoms.VIBRATES, 0.1, 0.4)
                .makes(Symptoms.SMELLS_BURNT, 0, 0.2));
  }

  /**
   * The ring of rollers that carries a turntable.
   *
   * @return the part
   */
  public static Roller ofTurntable() {
    return new Roller(
        "roller-ring",
        "roller ring",
        turning("on the floor of the oven", "Take the tray out and push the ring round.", 1),
        Observable.named("worn-shape", "a roller has a flat, is loose or is missing")
            .how("Take the ring out and look at each of its rollers and at its track.")
            .by(Electrical.inside(1)),
        row ->
            row.makes(Symptoms.DOES_NOT_TURN, 0.3, 0.8)
                .makes(Symptoms.UNEVEN_HEAT, 0.3, 0.6)
                .makes(Symptoms.LOUD, 0.6, 0.8));
  }

  /**
   * The coupler between the motor of a turntable and its tray.
   *
   * @return the part
   */
  public static Roller ofCoupler() {
    return new Roller(
        "coupler",
        "coupler of the turntable",
        turning("with the tray on it", "Put the tray on it and turn the tray by a few degrees.", 1),
        Observable.named("worn-shape", "its wings are rounded or cracked, or it sits loose")
            .how("Take the tray out, lift the coupler off its shaft and look at both of its ends.")
            .by(Electrical.inside(1)),
        row ->
            row.makes(Symptoms.DOES_NOT_TURN, 0.5, 0.95)
                .makes(Symptoms.UNEVEN_HEAT, 0.4, 0.7)
                .makes(Symptoms.LOUD, 0.1, 0.2));
  }

  private static Observable turning(String where, String how, int minutes) {
    return Observable.named("turning-by-hand", "how it turns by hand " + where)
        .graded("freely and quietly", "roughly", "rattles or squeaks", "stuck")
        .how(how)
        .by(Electrical.inside(minutes));
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(kind);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component roller) {
    return Optional.of(
        PartModel.of(roller, kind, Electrical.PRIORS, Run.ALL)
            .faults(
                symptoms
                    .apply(fault("worn", title + " worn", 0.025))
                    .wears(Wear.BEARING)
                    .changes(Run.TURNS.becomes(line(0.35, 0.95)), Run.FLAT.becomes(line(0.5, 0.95)))
                    .curedBy(
                        Work.renewing(
                            "renew-" + kind.id(), "renew the " + title, 40, 0.95, Caution.UNPLUG)))
            .looks(turning, Run.TURNS)
            .looks(flat, Run.FLAT)
            .build());
  }
}
