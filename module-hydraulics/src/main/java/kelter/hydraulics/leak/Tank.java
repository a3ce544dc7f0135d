package kelter.hydraulics.leak;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.core.diagnosis.model.Look;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.leak.LeakHunt.Leak;
import kelter.hydraulics.part.WaterSide;

/**
 * A tank: fixed in a water heater, boiler or kettle, or one that is taken out. Which faults it can
 * have follows from the kind of machine. Minutes, chances and what is seen are judgement: common
 * practice, no source.
 */
public final class Tank implements Part {

  private static final LeakHunt HUNT =
      LeakHunt.at("the tank, its seams and each fitting on it", Procedure.look(3));

  static final Observable SEATED =
      Observable.named("badly-seated", "the tank sits skew or its float or magnet hangs")
          .asked(
              1, "Take the tank out, move its float by hand, push it home, and look how it sits.");

  static final Observable DRAINED =
      Observable.named("drained-water", "what comes out with the first bucket from the drain cock")
          .graded("clear", "cloudy", "grit")
          .how("Power off. Let it cool, drain a bucket from the bottom, and let it stand a minute.")
          .by(Procedure.inside(10, HydraulicCautions.HOT_TANK));

  private static final ComponentKind KIND =
      new ComponentKind(
          "tank",
          "tank",
          List.of(HUNT.tracks(), HUNT.wet(), SEATED, DRAINED),
          List.of(),
          List.of());

  /** Machines whose tank is not taken out. */
  private static final Set<String> FIXED =
      Set.of("storage-water-heater", "kettle", "iron", "water-boiler");

  /** Machines whose tank gathers nothing that matters. */
  private static final Set<String> RINSED =
      Set.of("dehumidifier", "kettle", "iron", "water-boiler");

  /** What faults change beside the leak. */
  private static final class Change {
    static final FigureSet ALL = new FigureSet("tank");
    static final Figure SKEW = ALL.figure("how far it sits beside its place, 0 to 1", 0);
    static final Figure GRIT =
        ALL.figure("what lies on its floor, place on the scale from clear to grit", 0.1);
  }

  private static FaultRow leaks() {
    return fault("leaks", "tank leaks", 0.03)
        .wears(Wear.RUBBER)
        .changes(LeakHunt.effects())
        .makes(Symptoms.LEAKS, chance(0.1, 0.9, 0.97))
        .makes(Symptoms.DISCOLOURED_WATER, 0, 0.3)
        .makes(Symptoms.TRIPS_RCD, 0, 0.12)
        .curedBy(
            Work.renewing("renew-tank", "renew the tank", 60, 0.95, HydraulicCautions.DRAIN_FIRST));
  }

  private static FaultRow offSeat() {
    return fault("off-seat", "tank not seated, or its float hangs", 0.04)
        .changes(Change.SKEW.becomes(1))
        .makes(Symptoms.TANK_FULL_SHOWN, 0.89)
        .makes(Symptoms.DOES_NOT_START, 0.65)
        .makes(Symptoms.STOPS_IN_CYCLE, 0.46)
        .curedBy(Work.byHand("seat-tank", "free the float and seat the tank", 3, 0.95));
  }

  private static FaultRow sediment() {
    return fault("sediment", "sediment in the tank", 0.02)
        .wears(Wear.DEPOSIT)
        .changes(Change.GRIT.plus(0.85))
        .makes(Symptoms.RUNS_OUT_EARLY, chance(0.03, 0.59, 0.9))
        .makes(Symptoms.LOUD, chance(0.03, 0.48, 0.8))
        .makes(Symptoms.HEATS_SLOWLY, 0, 0.6)
        .makes(Symptoms.WEAK_FLOW, 0, 0.45)
        .curedBy(
            Work.byHand("flush-tank", "flush the tank", 45, 0.85, HydraulicCautions.DRAIN_FIRST));
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(KIND);
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component tank) {
    PartModel model =
        HUNT.seen(
            PartModel.of(tank.id(), WaterSide.PRIORS, Leak.ALL)
                .on(tank, KIND, Change.ALL)
                .faults(leaks()));
    if (!FIXED.contains(appliance.kind())) {
      model.faults(offSeat()).looks(SEATED, new Look.Noticed(Change.SKEW, 0.5, 0.1));
    }
    if (!RINSED.contains(appliance.kind())) {
      model.faults(sediment()).looks(DRAINED, Change.GRIT);
    }
    return Optional.of(model.build());
  }
}
