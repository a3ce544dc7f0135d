package kelter.hydraulics.washpump;

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
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.part.WaterSide;
import kelter.hydraulics.pumppart.PumpChecks;
import kelter.hydraulics.pumppart.PumpFigure;
import kelter.hydraulics.pumppart.PumpSpread;
import kelter.hydraulics.pumppart.PumpWords;
import kelter.hydraulics.pumppart.Running;

/** The circulation pump with its filter, the passage to the jets, and the jets. */
public final class WashPump implements Part {

  static final Characteristic JET_LIFT =
      new Characteristic("jet-lift", "jets above the water in the sump", QuantityKind.HEAD)
          .within(new Span(-5, 50));

  /** The discharge coefficient is left out of it. */
  static final Characteristic JET_AREA =
      new Characteristic("jet-area", "open area of all jets together", QuantityKind.AREA)
          .within(new Span(1e-7, 0.1));

  static final Characteristic PASSAGE_LENGTH =
      new Characteristic(
              "passage-length", "length of the passage from pump to jets", QuantityKind.DISTANCE)
          .within(new Span(0.01, 50));

  static final Characteristic PASSAGE_BORE =
      new Characteristic(
              "passage-bore",
              "inner diameter of the passage from pump to jets",
              QuantityKind.LENGTH)
          .within(new Span(0.001, 0.5));

  static final Characteristic WORKING_LEVEL =
      new Characteristic(
              "working-level", "water above the pump inlet while it washes", QuantityKind.LENGTH)
          .within(new Span(0, 5));

  static final Characteristic NPSH_REQUIRED =
      new Characteristic(
              "npsh-required",
              "net positive suction head that the pump requires at its rated flow",
              QuantityKind.HEAD)
          .within(new Span(0, 20));

  static final Characteristic RATED_SPEED =
      new Characteristic("rated-speed", "speed of the pump", QuantityKind.ROTATIONAL_SPEED)
          .within(new Span(0.5, 1000));

  static final Characteristic RATED_ARM_SPEED =
      new Characteristic(
              "rated-arm-speed",
              "speed of the spray arm of a good machine",
              QuantityKind.ROTATIONAL_SPEED)
          .within(new Span(0.01, 100));

  static final Observable HEAD =
      PumpWords.head(
          "wash pump",
          15,
          "Close the outlet of the pump with a plug that carries a gauge, run it for a few seconds"
              + " only, and turn the reading into a height of water above that in the sump.",
          15,
          new Accuracy(0.01, 0.05));

  static final Observable JET_PRESSURE =
      Observable.named("jet-pressure", "gauge pressure in the spray arm")
          .quantity(QuantityKind.GAUGE_PRESSURE, 0, 120_000)
          .at(PumpWords.RUNNING)
          .how(
              "Fit a gauge in place of one jet or at the arm's bearing, lead its hose out through the door"
                  + " seal, hold the gauge at the height of the jets and read it while it washes.")
          .by(Procedure.running(15, new Accuracy(0.01, 200), Caution.HOT_WATER));

  static final Observable INLET_PRESSURE =
      Observable.named("inlet-pressure", "gauge pressure at the pump inlet")
          .quantity(QuantityKind.GAUGE_PRESSURE, -90_000, 5_000)
          .at(PumpWords.RUNNING)
          .how(
              "Fit a gauge between filter and pump and read it while it washes; a suction shows below"
                  + " zero.")
          .by(Procedure.running(20, new Accuracy(0.01, 100), Caution.HOT_WATER));

  static final Observable POWER =
      PumpWords.power(
          "wash pump while it washes",
          1500,
          "Read a plug-in power meter while the pump washes with the heater off, and take off what it"
              + " shows while the machine stands by.",
          1);

  static final Observable CURRENT =
      PumpWords.current(
          "wash pump while it washes",
          50,
          "Read the current on a plug-in power meter while the pump washes with the heater off; what"
              + " stands by adds little.");

  static final Observable WINDING_RESISTANCE =
      PumpWords.winding(
          "main winding of the wash pump",
          "Discharge the run capacitor, take all wires off the pump, null the leads, and measure between"
              + " the terminals of the main winding; behind an inverter between each two of them.",
          HydraulicCautions.RUN_CAPACITOR_READ);

  static final Observable SPEED =
      Observable.named("speed", "speed of the wash pump")
          .quantity(QuantityKind.ROTATIONAL_SPEED, 0, 100)
          .at(PumpWords.RUNNING)
          .how(
              "Read the speed at the motor's far shaft end with an optical tachometer, or from the tone of"
                  + " its hum with a frequency meter.")
          .by(
              Procedure.running(
                  10,
                  new Accuracy(0.005, 0.2),
                  HydraulicCautions.PUMP_CAN_START,
                  HydraulicCautions.WET_MAINS));

  static final Observable ARM_SPEED =
      Observable.named("arm-speed", "speed of the spray arm")
          .quantity(QuantityKind.ROTATIONAL_SPEED, 0, 3)
          .how("Count the strokes of the arm's jets against the door over a minute.")
          .by(Procedure.running(3, new Accuracy(0.03, 0.02), Caution.HOT_WATER));

  static final Observable NOISE = PumpWords.noise("wash pump", "Listen while it washes.");

  static final Observable SWINGS =
      Observable.named(
              "pressure-swings", "the spray or the hum comes and goes, as with air in the water")
          .how("Listen for a minute, and watch the jets or the power meter's needle.")
          .by(Procedure.running(2, Procedure.BY_EYE, HydraulicCautions.WET_MAINS));

  static final Observable LEVEL =
      Observable.named("level", "water above the pump inlet while it washes")
          .quantity(QuantityKind.LENGTH, 0, 0.3)
          .how(
              "Stop it in the wash phase, open the door when the jets are still, and dip the water with a"
                  + " rule.")
          .by(Procedure.running(4, new Accuracy(0, 0.004), Caution.HOT_WATER));

  static final Observable FILTER =
      Observable.named("filter", "filter before the pump")
          .graded("clean", "partly", "clogged")
          .how("Take the filter out and hold it against the light.")
          .by(WaterSide.opened(3));

  static final Observable JETS_CLOSED =
      Observable.named("jets-closed", "share of the jets that are closed")
          .quantity(QuantityKind.PERCENT, 0, 1)
          .how(
              "Take the spray arms out, count the jets, and those that are closed or lined with scale.")
          .by(Procedure.dead(5, new Accuracy(0, 0.05)));

  static final Observable DEBRIS =
      PumpWords.debris(
          "Empty the sump, open the pump and look into its inlet and between the vanes.", 20);

  static final Observable TURNS =
      PumpWords.turns("Turn the impeller by hand through the opened inlet.", 15);

  static final Observable LOOSE =
      PumpWords.loose("Hold the motor shaft, try to turn the impeller, and look at its vanes.", 20);

  static final Observable PASSAGE_LEAKS =
      Observable.named("passage-leaks", "water escapes between pump and jets")
          .how(
              "Look at the feed pipe, the arm's bearing and the joints for a jet of water, through the"
                  + " door's glass or for wet marks right after a stop.")
          .by(Procedure.running(6, Procedure.BY_EYE, Caution.HOT_WATER));

  static final ComponentKind KIND =
      new ComponentKind(
          "wash-pump",
          "wash pump with filter, passage and jets",
          List.of(
              HEAD,
              JET_PRESSURE,
              INLET_PRESSURE,
              POWER,
              CURRENT,
              WINDING_RESISTANCE,
              SPEED,
              ARM_SPEED,
              NOISE,
              SWINGS,
              LEVEL,
              FILTER,
              JETS_CLOSED,
              DEBRIS,
              TURNS,
              LOOSE,
              PASSAGE_LEAKS),
          List.of(
              JET_LIFT,
              JET_AREA,
              PASSAGE_LENGTH,
              PASSAGE_BORE,
              WORKING_LEVEL,
              NPSH_REQUIRED,
              RATED_SPEED,
              RATED_ARM_SPEED,
              PumpWords.WINDING,
              PumpWords.TORQUE_LIMIT),
          List.of(PumpWords.HEAD_CURVE));

  private static final PumpWords PUMP =
      new PumpWords(HEAD, POWER, CURRENT, WINDING_RESISTANCE, NOISE, DEBRIS, TURNS, LOOSE);

  private static final Source PRIOR_OF_A_TYPICAL_PUMP =
      Source.fromMemory(
          WaterSide.PRIORS.document()
              + "; curve or jets are not known, those of a typical machine are taken");

  private static final double PRESSURE_FLOOR = 300; // Pa
  private static final double INLET_FLOOR = 250; // Pa
  private static final double INLET_SHARE = 0.2; // ratio; judgement
  private static final double SPEED_FLOOR = 0.2; // 1/s
  private static final double ARM_FLOOR = 0.03; // 1/s
  private static final double ARM_SHARE = 0.15; // ratio; judgement
  private static final double LEVEL_SPREAD = 0.008; // m
  private static final double COUNT_SPREAD = 0.04; // ratio

  /** A part without a memory. */
  public WashPump() {}

  @Override
  public List<ComponentKind> kinds() {
    return List.of(KIND);
  }

  @Override
  public List<Check> checks() {
    PumpChecks pump = new PumpChecks(KIND, PUMP);
    return List.of(
        pump.head(),
        LimitCheck.named("jet-pressure", "Pressure before the jets against the operating point")
            .on(KIND, JET_PRESSURE, WashChecks::jetPressure),
        LimitCheck.named("spray-arm-jets", "Jets of the spray arm")
            .on(KIND, JETS_CLOSED, WashChecks.JETS_CLOSED),
        LimitCheck.named("spray-arm-speed", "Speed of the spray arm")
            .on(KIND, ARM_SPEED, WashChecks::armSpeed),
        LimitCheck.named("suction-cavitation", "Suction of the wash pump: boiling")
            .on(KIND, INLET_PRESSURE, WashChecks::cavitation),
        LimitCheck.named("suction-filter", "Suction of the wash pump: filter")
            .on(KIND, INLET_PRESSURE, WashChecks::filter),
        LimitCheck.named("suction-level", "Suction of the wash pump: air")
            .on(KIND, LEVEL, WashChecks::level),
        pump.power(),
        pump.winding());
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component component) {
    Optional<WashCircuit> wash = WashCircuit.of(component, appliance.nameplate());
    return wash.isPresent() ? Optional.of(faultModel(component, wash.get())) : Optional.empty();
  }

  @Override
  public String whyNot(Appliance appliance, Component component) {
    return WashCircuit.of(component, appliance.nameplate()).isPresent()
        ? ""
        : WashCircuit.tooHigh(component);
  }

  private static FaultModel faultModel(Component component, WashCircuit wash) {
    boolean known = wash.pump().known();
    PartModel model =
        PartModel.of(
                component.id() + "-wash-water",
                known ? WaterSide.PRIORS : PRIOR_OF_A_TYPICAL_PUMP,
                PumpFigure.ALL)
            .on(component, KIND, WashFigure.ALL)
            .faults(WashFaults.ALL)
            .looks(SWINGS, WashCircuit::swings)
            .looks(FILTER, WashFigure.FILTER)
            .looks(PASSAGE_LEAKS, new Look.Noticed(WashFigure.ESCAPE, 0.45, 0.12))
            .looks(LEVEL, wash::level, Spread.constant(LEVEL_SPREAD))
            .looks(JETS_CLOSED, WashCircuit::jetsClosed, Spread.constant(COUNT_SPREAD));
    Section<Running> running = wash.pump().shown(model, PUMP, wash::against);
    if (!Double.isNaN(wash.speed())) {
      running.observe(SPEED, wash::speed, PumpSpread.turning(PumpSpread.SPEED, SPEED_FLOOR));
    }
    if (!Double.isNaN(wash.armSpeed())) {
      running.observe(
          ARM_SPEED, wash::armSpeed, PumpSpread.turning(ARM_SHARE, ARM_FLOOR).following(0.5));
    }
    // The pressure before jets goes with the square of the flow rate.
    double pressureShare = 2 * (known ? PumpSpread.FLOW : PumpSpread.FLOW_OF_A_TYPICAL_PUMP);
    return running
        .observe(
            JET_PRESSURE,
            wash::jetPressure,
            PumpSpread.turning(pressureShare, PRESSURE_FLOOR).following(1))
        .observe(INLET_PRESSURE, wash::inletPressure, PumpSpread.always(INLET_SHARE, INLET_FLOOR))
        .build();
  }
}
