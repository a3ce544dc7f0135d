package kelter.hydraulics.levelsensor;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.model.Look;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Section;
import kelter.core.diagnosis.model.Spread;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.hydraulics.part.WaterSide;

/** The level sensor or pressure switch with its air trap and tube. */
public final class LevelSensor implements Part {

  static final Characteristic USUAL_HEIGHT =
      new Characteristic(
              "usual-height",
              "water above the mouth of the air trap while it runs",
              QuantityKind.LENGTH)
          .within(new Span(0, 5));

  static final Characteristic AIR_COLUMN =
      new Characteristic(
              "air-column",
              "volume of bell, tube and sensor divided by the area of the bell",
              QuantityKind.LENGTH)
          .within(new Span(0, 10));

  static final Characteristic TRIP_HEIGHT =
      new Characteristic(
              "trip-height",
              "water above the mouth of the air trap at which filling should stop",
              QuantityKind.LENGTH)
          .within(new Span(0, 5));

  static final Characteristic AT_HEIGHT =
      new Characteristic("height", "water above the mouth of the air trap", QuantityKind.LENGTH)
          .within(new Span(0, 5));

  static final Observable TRAP_PRESSURE =
      Observable.named("trap-pressure", "pressure in the tube of the level sensor")
          .quantity(QuantityKind.GAUGE_PRESSURE, 0, 6000)
          .at(AT_HEIGHT, WaterSide.AT_TEMPERATURE)
          .how(
              "With water in the machine and the plug out, read a water manometer on a tee in the tube, and"
                  + " dip the height of the water.")
          .by(Procedure.dead(8, new Accuracy(0.01, 10)));

  static final Observable SHOWN_LEVEL =
      Observable.named("shown-level", "height of the water as the machine shows it")
          .quantity(QuantityKind.LENGTH, 0, 0.6)
          .at(AT_HEIGHT)
          .how(
              "Read the level in the service mode, and dip the height of the water above the mouth of the"
                  + " air trap.")
          .by(Procedure.running(6, new Accuracy(0, 0.003), Caution.HOT_WATER));

  static final Observable FILLED_HEIGHT =
      Observable.named("filled-height", "height of the water at which filling stops")
          .quantity(QuantityKind.LENGTH, 0, 0.6)
          .how(
              "Let it fill from empty without a load until the valve closes, open it, and dip the height"
                  + " of the water above the mouth of the air trap; stop it by hand before it overflows.")
          .by(Procedure.running(8, new Accuracy(0, 0.004), Caution.HOT_WATER));

  static final Observable KEPT =
      Observable.named(
              "pressure-kept", "share of the pressure that the closed tube keeps for a minute")
          .quantity(QuantityKind.PERCENT, 0, 1.05)
          .how(
              "Close the tube at the trap, blow it up to about 1 kPa through a tee with a manometer, and"
                  + " read it again after a minute; do not hold the tube in your hand.")
          .by(Procedure.dead(7, new Accuracy(0.02, 0.01)));

  static final Observable TRAP =
      Observable.named("trap", "air trap and its passage to the sump")
          .graded("clean", "partly", "clogged")
          .how("Take the air trap off and look into its mouth and its tube.")
          .by(WaterSide.opened(12));

  static final Observable TUBE_DAMAGED =
      Observable.named("tube-damaged", "the tube is chafed, cracked or off its nozzle")
          .how("Follow the tube from end to end.")
          .by(Procedure.inside(5));

  static final Observable UNDERFILLS =
      Observable.named("underfills", "too little water comes in")
          .asked(2, "Ask the owner, or watch a fill.");

  private static final ComponentKind KIND =
      new ComponentKind(
          "level-sensor",
          "level sensor with air trap and tube",
          List.of(TRAP_PRESSURE, SHOWN_LEVEL, FILLED_HEIGHT, KEPT, TRAP, TUBE_DAMAGED, UNDERFILLS),
          List.of(USUAL_HEIGHT, AIR_COLUMN, TRIP_HEIGHT),
          List.of());

  private static final double OF_EFFECT = 0.1; // ratio of the effect of the fault; judgement

  @Override
  public List<ComponentKind> kinds() {
    return List.of(KIND);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("level-pressure", "Air trap against the height of the water")
            .on(KIND, TRAP_PRESSURE, LevelChecks::pressure),
        LimitCheck.named("level-shown", "Level sensor against the height of the water")
            .on(KIND, SHOWN_LEVEL, LevelChecks::shown),
        LimitCheck.named("level-filled", "Level at which filling stops")
            .on(KIND, FILLED_HEIGHT, LevelChecks::filled),
        LimitCheck.named("level-tightness", "Tightness of air trap and tube")
            .on(KIND, KEPT, LevelChecks.KEPT));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component sensor) {
    WaterInTrap trap = WaterInTrap.of(sensor);
    Section<WaterInTrap.Sensed> sensed =
        PartModel.of(sensor.id() + "-level", WaterSide.PRIORS, LevelFigure.ALL)
            .on(sensor, KIND)
            .faults(LevelFaults.ALL)
            .looks(TRAP, LevelFigure.DEBRIS)
            .looks(TUBE_DAMAGED, new Look.Noticed(LevelFigure.LEAK, 0.4, 0.1))
            .looks(UNDERFILLS, new Look.Noticed(LevelFigure.SHOWN, 1.25, 0.05))
            .under(trap)
            .observe(TRAP_PRESSURE, WaterInTrap.Sensed::pressure, spread(0.03, 12)) // Pa
            .observe(SHOWN_LEVEL, WaterInTrap.Sensed::shown, spread(0.05, 0.003)) // m
            .observe(KEPT, WaterInTrap.Sensed::kept, spread(0, 0.03));
    if (sensor.figure(TRIP_HEIGHT).isPresent()) {
      sensed.observe(FILLED_HEIGHT, WaterInTrap.Sensed::filled, spread(0.05, 0.003)); // m
    }
    return Optional.of(sensed.build());
  }

  private static Spread<Object> spread(double share, double floor) {
    return Spread.relative(share).atLeast(floor).andOfEffect(OF_EFFECT);
  }
}
