package kelter.electrical.drum;

import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.Figure;
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
 * A roller under a drum, or the idler of its belt. What knocks once a turn of a roller has the
 * speed of the drum times the ratio of the diameters. Chances, those of symptoms too, are from
 * memory.
 */
public final class Roller implements Part {

  /** What faults change. */
  private enum Run implements Figure {
    /** How badly it turns, from 0 to 1. */
    TURNS(0.07),
    /** Chance of a flat, a groove or play that one sees. */
    FLAT(0.05);

    private final double inOrder;

    Run(double inOrder) {
      this.inOrder = inOrder;
    }

    @Override
    public double inOrder() {
      return inOrder;
    }
  }

  private final ComponentKind kind;
  private final Observable turning;
  private final Observable flat;
  private final String title;

  private Roller(String id, String title) {
    this.title = title;
    turning =
        Observable.named("turning-by-hand", "how it turns by hand with the belt off")
            .graded("freely and quietly", "roughly", "rattles or squeaks", "stuck")
            .how("Take the belt off it. Spin it with a finger and listen.")
            .by(Electrical.inside(6));
    flat =
        Observable.named("worn-shape", "it has a flat, a groove, or play on its pin")
            .how("Look at its rubber all round and rock it on its pin.")
            .by(Electrical.inside(4));
    kind = new ComponentKind(id, title, List.of(turning, flat), List.of(), List.of());
  }

  /**
   * A roller under a drum.
   *
   * @return the part
   */
  public static Roller ofDrum() {
    return new Roller("drum-roller", "drum roller");
  }

  /**
   * The idler that tensions a belt.
   *
   * @return the part
   */
  public static Roller ofBelt() {
    return new Roller("idler", "idler pulley");
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(kind);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component roller) {
    return Optional.of(
        PartModel.of(roller.id(), Electrical.PRIORS, Run.values())
            .on(roller, kind)
            .faults(
                fault("worn", title + " worn", 0.025)
                    .wears(Wear.BEARING)
                    .changes(Run.TURNS.becomes(line(0.35, 0.95)), Run.FLAT.becomes(line(0.5, 0.95)))
                    .makes(Symptoms.LOUD, 0.85, 0.95)
                    .makes(Symptoms.VIBRATES, 0.1, 0.4)
                    .makes(Symptoms.SMELLS_BURNT, 0, 0.2)
                    .curedBy(
                        Work.renewing(
                            "renew-" + kind.id(), "renew the " + title, 40, 0.95, Caution.UNPLUG)))
            .looks(turning, Run.TURNS)
            .looks(flat, Run.FLAT)
            .build());
  }
}
