package kelter.electrical.suspension;

import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.FaultModel;
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

/** The bolts that hold a machine to the floor. Chances, those of symptoms too, are from memory. */
public final class AnchorBolts implements Part {

  static final Observable MOVES =
      Observable.named("moves", "the frame moves against the floor, or its bolts show fresh marks")
          .asked(2, "Plug out: push the frame at the top and look at each foot for movement.");

  static final Observable TURNS =
      Observable.named("turns", "how a nut turns under a spanner")
          .graded("stands", "turns a little", "turns freely or pulls out")
          .how("Put a spanner on each nut in turn. Write the loosest.")
          .by(Electrical.inside(6));

  static final ComponentKind ANCHOR_BOLTS =
      new ComponentKind(
          "anchor-bolts", "anchor bolts", List.of(MOVES, TURNS), List.of(), List.of());

  /** What faults change. */
  private static final class Hold {
    static final FigureSet ALL = new FigureSet("anchor-bolts");
    static final Figure MOVES = ALL.figure("chance that it is seen to move", 0.03);
    static final Figure LOOSE = ALL.figure("how loose the loosest nut is, from 0 to 1", 0.1);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(ANCHOR_BOLTS);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component bolts) {
    return Optional.of(
        PartModel.of(bolts, ANCHOR_BOLTS, Electrical.PRIORS, Hold.ALL)
            .faults(
                fault("loose", "anchor bolts loose or torn out", 0.015)
                    .changes(
                        Hold.MOVES.becomes(line(0.5, 0.95)), Hold.LOOSE.becomes(line(0.4, 0.97)))
                    .makes(Symptoms.VIBRATES, 0.7, 0.95)
                    .makes(Symptoms.LOUD, 0.3, 0.7)
                    .makes(Symptoms.DOES_NOT_SPIN, 0.2, 0.5)
                    .makes(Meaning.IMBALANCE.symptom(), 0.4, 0.6)
                    .curedBy(
                        Work.byHand(
                            "tighten-anchors",
                            "tighten the anchors, set anew what has torn out",
                            40,
                            0.9,
                            Caution.UNPLUG,
                            ElectricalCautions.LOOSE_ANCHORS)))
            .looks(MOVES, Hold.MOVES)
            .looks(TURNS, Hold.LOOSE)
            .build());
  }
}
