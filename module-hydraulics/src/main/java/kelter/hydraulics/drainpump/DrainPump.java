package kelter.hydraulics.drainpump;

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
import kelter.core.safety.Hazard;
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

/** The drain pump with its strainer, hose and check valve. */
public final class DrainPump implements Part {

  static final Characteristic STATIC_LIFT =
      new Characteristic(
              "static-lift",
              "outlet or highest point of the hose above the water",
              QuantityKind.HEAD)
          .within(new Span(-5, 50));

  static final Characteristic HOSE_LENGTH =
      new Characteristic("hose-length", "length of the drain hose", QuantityKind.DISTANCE)
          .within(new Span(0.01, 200));

  static final Characteristic HOSE_BORE =
      new Characteristic("hose-bore", "inner diameter of the drain hose", QuantityKind.LENGTH)
          .within(new Span(0.001, 0.5));

  static final Characteristic DRAIN_VOLUME =
      new Characteristic("drain-volume", "water that a full drain phase moves", QuantityKind.VOLUME)
          .within(new Span(1e-5, 5));

  static final Characteristic STANDPIPE_HEIGHT =
      new Characteristic(
              "standpipe-height",
              "brim of the standpipe above the weir of its trap",
              QuantityKind.HEAD)
          .within(new Span(0, 10));

  static final Characteristic STANDPIPE_BORE =
      new Characteristic("standpipe-bore", "inner diameter of the standpipe", QuantityKind.LENGTH)
          .within(new Span(0.001, 0.5));

  static final Observable HEAD =
      PumpWords.head(
          "drain pump",
          6,
          "Put a clear hose on the pump outlet as a standpipe, higher than the pump can lift, start"
              + " draining and read the height of the water in it above that in the sump.",
          8,
          new Accuracy(0, 0.01));

  static final Observable OUTLET_HEAD =
      Observable.named("outlet-head", "height of the water behind the drain pump while it drains")
          .quantity(QuantityKind.HEAD, 0, 6)
          .at(PumpWords.RUNNING)
          .how(
              "Set a tee with an upright clear hose between pump and check valve, let it drain, and read"
                  + " the height of the water in the clear hose above that in the sump.")
          .by(
              Procedure.running(
                  12, new Accuracy(0, 0.02), Caution.HOT_WATER, HydraulicCautions.LOOSE_HOSE_END));

  static final Observable HOSE_HEAD =
      Observable.named("hose-head", "height of the water behind the check valve while it drains")
          .quantity(QuantityKind.HEAD, 0, 6)
          .at(PumpWords.RUNNING)
          .how(
              "Set a tee with an upright clear hose between check valve and drain hose, let it drain, and"
                  + " read the height of the water in the clear hose above that in the sump.")
          .by(
              Procedure.running(
                  12, new Accuracy(0, 0.02), Caution.HOT_WATER, HydraulicCautions.LOOSE_HOSE_END));

  static final Observable FLOW =
      Observable.named("flow", "flow rate at the end of the drain hose")
          .quantity(QuantityKind.FLOW, 0, 60.0 / 60_000)
          .at(PumpWords.RUNNING)
          .how(
              "Let it drain into a bucket with the hose end at its usual height, and take the time for a"
                  + " known volume once the hose runs full.")
          .by(
              Procedure.running(
                  5,
                  new Accuracy(0.05, 0.2 / 60_000),
                  Caution.HOT_WATER,
                  HydraulicCautions.LOOSE_HOSE_END));

  static final Observable DRAIN_TIME =
      Observable.named("drain-time", "time in which a full drain phase empties the machine")
          .quantity(QuantityKind.TIME, 0, 900)
          .at(PumpWords.RUNNING)
          .how(
              "Fill it as for a cycle, start draining, and take the time until the pump draws air; give up"
                  + " after ten minutes.")
          .by(Procedure.running(4, new Accuracy(0.02, 2), HydraulicCautions.WET_MAINS));

  static final Observable POWER =
      PumpWords.power(
          "drain pump while it drains",
          200,
          "Read a plug-in power meter while only the drain pump runs, and take off what it shows while"
              + " the machine stands by.",
          0.5);

  static final Observable CURRENT =
      PumpWords.current(
          "drain pump while it drains",
          5,
          "Read the current on a plug-in power meter while only the drain pump runs; what stands by adds"
              + " little.");

  static final Observable WINDING_RESISTANCE =
      PumpWords.winding(
          "winding of the drain pump",
          "Wait until the control has discharged, take both wires off the pump, null the leads, and"
              + " measure between its terminals; behind an inverter between each two of them.");

  static final Observable NOISE =
      PumpWords.noise("drain pump", "Listen while it drains, with water in the sump.");

  static final Observable DEBRIS =
      PumpWords.debris(
          "Empty the sump, take the pump off and look into its inlet and between the vanes.", 12);

  static final Observable STRAINER =
      Observable.named("strainer", "strainer or debris trap before the pump")
          .graded("clean", "partly", "clogged")
          .how("Open the debris trap with a tray under it and look at the strainer.")
          .by(WaterSide.opened(4));

  static final Observable TURNS =
      PumpWords.turns(
          "Turn the impeller by hand; a permanent-magnet rotor pulls into even steps, which is in"
              + " order.",
          10);

  static final Observable LOOSE =
      PumpWords.loose(
          "Hold the rotor and try to turn the impeller against it beyond its free stroke; look at"
              + " the vanes.",
          10);

  static final Observable NARROWED =
      Observable.named("hose-narrowed", "the drain hose is kinked, squeezed or clogged")
          .how(
              "Follow the hose from end to end, squeeze it for deposits, and look into its ends and the"
                  + " trap.")
          .by(Procedure.dead(8, Procedure.BY_EYE));

  static final Observable HOSE_TRACKS =
      Observable.named("hose-tracks", "tracks of dried water along the drain hose")
          .graded("none", "some", "plain")
          .how(
              "Look along the hose, under its clips and at its nozzle for lime, rust or detergent that"
                  + " dried there.")
          .by(WaterSide.behindCovers(4));

  static final Observable VALVE_HANGS =
      Observable.named("valve-hangs", "the flap of the check valve hangs, open or shut")
          .how("Take the check valve out and move its flap.")
          .by(WaterSide.opened(8));

  static final Observable LIFT =
      Observable.named("lift", "outlet or highest point of the hose above the water")
          .quantity(QuantityKind.HEAD, 0, 3)
          .by(
              new Procedure(
                  "Measure from the water level in the sump to the highest point of the hose.",
                  2,
                  Hazard.NONE,
                  new Accuracy(0, 0.02),
                  List.of()));

  static final Observable RETURNS =
      Observable.named("water-returns", "water runs back into the machine after the pump stops")
          .how(
              "Let it drain to the end, stop it, and look whether the level rises again within a minute.")
          .by(Procedure.running(4, Procedure.BY_EYE, Caution.HOT_WATER));

  static final Observable RETURNED =
      Observable.named("returned-volume", "water that has run back a minute after the pump stopped")
          .quantity(QuantityKind.VOLUME, 0, 0.005)
          .how(
              "Drain to the end, stop for a minute, hang the hose end over a measuring jug at its usual"
                  + " height, and drain again.")
          .by(
              Procedure.running(
                  6,
                  new Accuracy(0.03, 2e-5),
                  Caution.HOT_WATER,
                  HydraulicCautions.LOOSE_HOSE_END));

  static final ComponentKind KIND =
      new ComponentKind(
          "drain-pump",
          "drain pump with strainer, hose and check valve",
          List.of(
              HEAD,
              OUTLET_HEAD,
              HOSE_HEAD,
              FLOW,
              DRAIN_TIME,
              POWER,
              CURRENT,
              WINDING_RESISTANCE,
              NOISE,
              DEBRIS,
              STRAINER,
              TURNS,
              LOOSE,
              NARROWED,
              HOSE_TRACKS,
              VALVE_HANGS,
              LIFT,
              RETURNS,
              RETURNED),
          List.of(
              STATIC_LIFT,
              HOSE_LENGTH,
              HOSE_BORE,
              DRAIN_VOLUME,
              STANDPIPE_HEIGHT,
              STANDPIPE_BORE,
              PumpWords.WINDING,
              PumpWords.TORQUE_LIMIT),
          List.of(PumpWords.HEAD_CURVE));

  private static final PumpWords PUMP =
      new PumpWords(HEAD, POWER, CURRENT, WINDING_RESISTANCE, NOISE, DEBRIS, TURNS, LOOSE);

  private static final Source PRIOR_OF_A_TYPICAL_PUMP =
      Source.fromMemory(
          WaterSide.PRIORS.document()
              + "; the pump's curve is not known, that of a typical pump is taken");

  private static final double FLOW_FLOOR = 0.3 / 60_000; // m3/s
  private static final double FLOW_WITH_A_USUAL_HOSE = 0.15; // ratio; judgement
  private static final double TIME_FLOOR = 5; // s
  private static final double RETURNED_SHARE = 0.12; // ratio of the content of the hose; judgement
  private static final double LIFT_SPREAD = 0.04; // m
  private static final double LIFT_OF_A_USUAL_HOSE = 0.2; // m; judgement

  /** A part without a memory. */
  public DrainPump() {}

  @Override
  public List<ComponentKind> kinds() {
    return List.of(KIND);
  }

  @Override
  public List<Check> checks() {
    PumpChecks pump = new PumpChecks(KIND, PUMP);
    return List.of(
        pump.head(),
        LimitCheck.named("drain-flow", "Flow rate of the drain against its operating point")
            .on(KIND, FLOW, DrainChecks::flow),
        LimitCheck.named("drain-time", "Time to drain against the operating point")
            .on(KIND, DRAIN_TIME, DrainChecks::time),
        LimitCheck.named("drain-hose-lift", "Height of the drain hose")
            .on(KIND, LIFT, DrainChecks::lift),
        LimitCheck.named("drain-hose-standpipe", "What the standpipe of the drain takes")
            .on(KIND, FLOW, DrainChecks::standpipe),
        LimitCheck.named("drain-hose-returned", "What runs back from the drain hose")
            .on(KIND, RETURNED, DrainChecks::returned),
        pump.power(),
        pump.winding());
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component component) {
    Optional<DrainPath> path = DrainPath.of(component, appliance.nameplate());
    return path.isPresent() ? Optional.of(faultModel(component, path.get())) : Optional.empty();
  }

  @Override
  public String whyNot(Appliance appliance, Component component) {
    return DrainPath.of(component, appliance.nameplate()).isPresent()
        ? ""
        : DrainPath.tooHigh(component);
  }

  private static FaultModel faultModel(Component component, DrainPath path) {
    PartModel model =
        PartModel.of(
                component.id() + "-water-out",
                path.pump().known() ? WaterSide.PRIORS : PRIOR_OF_A_TYPICAL_PUMP,
                PumpFigure.ALL)
            .on(component, KIND, DrainFigure.ALL)
            .faults(DrainFaults.ALL)
            .looks(STRAINER, DrainFigure.STRAINER)
            .looks(NARROWED, new Look.Noticed(DrainFigure.HOSE_CLOSED, 0.4365, 0.097))
            .looks(HOSE_TRACKS, DrainFigure.TRACKS)
            .looks(VALVE_HANGS, new Look.Noticed(DrainFigure.VALVE_HANGS, 0.4, 0.1))
            .looks(RETURNS, new Look.Noticed(DrainFigure.VALVE_OPEN, 0.35, 0.08))
            .looks(LIFT, path::lift, Spread.constant(LIFT_SPREAD))
            .looks(RETURNED, path::returned, Spread.constant(RETURNED_SHARE * path.content()));
    Section<Running> running = path.pump().shown(model, PUMP, path::against);
    double lift = path.hoseKnown() ? LIFT_SPREAD : LIFT_OF_A_USUAL_HOSE;
    PumpSpread ofHead =
        PumpSpread.turning(path.pump().headShare(), Math.hypot(path.pump().headFloor(), lift))
            .following(1);
    double flow = flowShare(path);
    if (!Double.isNaN(path.drainVolume())) {
      running.observe(DRAIN_TIME, path::drainTime, PumpSpread.always(flow, TIME_FLOOR));
    }
    return running
        .observe(OUTLET_HEAD, path::outletHead, ofHead)
        .observe(HOSE_HEAD, path::hoseHead, ofHead)
        .observe(FLOW, DrainPath::arriving, PumpSpread.turning(flow, FLOW_FLOOR).following(1))
        .build();
  }

  private static double flowShare(DrainPath path) {
    if (!path.pump().known()) {
      return PumpSpread.FLOW_OF_A_TYPICAL_PUMP;
    }
    return path.hoseKnown() ? PumpSpread.FLOW : FLOW_WITH_A_USUAL_HOSE;
  }
}
