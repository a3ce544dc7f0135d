package kelter.hydraulics.airway;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.part.WaterSide;

/**
 * The coils of a cold machine, or the condenser of a dryer, by the dirt on their air side. The
 * condenser of a cold machine is warmer than the room by its heat over its conductance: dirt leaves
 * less of that. The sealed circuit is not opened.
 */
public final class Coil implements Part {

  static final Characteristic USUAL_RISE =
      new Characteristic(
              "usual-rise",
              "how much warmer than the room it is in order",
              QuantityKind.TEMPERATURE_DIFFERENCE)
          .within(new Span(1, 40));

  static final Observable DIRT =
      Observable.named("dirt", "how clogged its fins or tubes are")
          .graded("clean", "dusty", "clogged")
          .how("Look at it with a lamp, where the air goes in.")
          .by(Procedure.inside(3, HydraulicCautions.SHARP_FINS));

  static final Observable RISE =
      Observable.named("rise", "how much warmer than the room it is")
          .quantity(QuantityKind.TEMPERATURE_DIFFERENCE, -5, 70)
          .how(
              "Let it run for half an hour with the door shut. Hold a surface thermometer to the middle"
                  + " of the condenser and take the temperature of the room from it.")
          .by(Procedure.running(5, new Accuracy(0, 2), HydraulicCautions.TURNING_FAN));

  private static final ComponentKind CONDENSER =
      new ComponentKind(
          "condenser", "condenser", List.of(DIRT, RISE), List.of(USUAL_RISE), List.of());

  private static final ComponentKind EVAPORATOR =
      new ComponentKind("evaporator", "cold coil", List.of(DIRT), List.of(), List.of());

  private static final double MOST_RISE = 25; // K, from memory

  private static final Work CLEAN =
      Work.byHand(
          "clean-coil",
          "clean the coil with brush and vacuum",
          25,
          0.9,
          Caution.UNPLUG,
          HydraulicCautions.SHARP_FINS);

  private static final FaultRow CONDENSER_DIRTY =
      fault("dirty", "condenser dirty", 0.06)
          .wears(Wear.DEPOSIT)
          .changes(AirwayFigure.DIRT.plus(early(0, 0.69)), AirwayFigure.CONDUCTANCE.times(0.35))
          .makes(Symptoms.RUNS_WITHOUT_END, chance(0.05, 0.8, 0.95))
          .makes(Symptoms.TOO_WARM_INSIDE, chance(0.02, 0.5, 0.9))
          .makes(Symptoms.SHORT_CYCLES, chance(0.02, 0.25, 0.6))
          .makes(Symptoms.STOPS_IN_CYCLE, chance(0.02, 0.2, 0.5))
          .makes(Symptoms.LOUD, chance(0.01, 0.05, 0.15))
          .curedBy(CLEAN);

  private static final FaultRow EVAPORATOR_DIRTY =
      fault("dirty", "cold coil dirty", 0.06)
          .wears(Wear.DEPOSIT)
          .changes(AirwayFigure.DIRT.plus(early(0, 0.69)))
          .makes(Symptoms.WEAK_AIR, chance(0.05, 0.65, 0.9))
          .makes(Symptoms.POOR_RESULT, chance(0.05, 0.65, 0.9))
          .makes(Symptoms.TOO_WARM_INSIDE, chance(0.02, 0.5, 0.85))
          .makes(Symptoms.ICES_UP, chance(0.02, 0.45, 0.8))
          .makes(Symptoms.SMELLS_FOUL, chance(0.05, 0.3, 0.5))
          .curedBy(CLEAN);

  @Override
  public List<ComponentKind> kinds() {
    return List.of(CONDENSER, EVAPORATOR);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("condenser-rise", "Does the condenser give its heat to the room?")
            .on(
                CONDENSER,
                RISE,
                Allowed.of(
                    "condenser against the room",
                    Source.fromMemory(
                        "a condenser in order is less than 25 K warmer than the room"),
                    Limits.atMost(MOST_RISE))));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component coil) {
    boolean warm = coil.kind().equals(CONDENSER.id());
    PartModel model =
        PartModel.of(coil.id(), WaterSide.PRIORS, AirwayFigure.ALL)
            .on(coil, warm ? CONDENSER : EVAPORATOR)
            .faults(warm ? CONDENSER_DIRTY : EVAPORATOR_DIRTY)
            .looks(DIRT, AirwayFigure.DIRT);
    double usual = coil.si(USUAL_RISE);
    if (warm && usual > 0) {
      model.looks(
          RISE,
          state -> usual / state.of(AirwayFigure.CONDUCTANCE),
          Spread.relative(0.1).atLeast(1).andOfEffect(0.2));
    }
    return Optional.of(model.build());
  }
}
