package kelter.hydraulics.part;

import java.util.List;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.safety.Hazard;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.CurveKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;

/** The drain pump with its strainer, hose and check valve. */
public final class DrainPumpKind {

  /** The word of the kind. */
  public static final String ID = "drain-pump";

  /** What an ordinary meter tells of an open circuit at most, in ohm; judgement. */
  public static final double OPEN_CIRCUIT = 1e8;

  /** The curve of head over flow rate. */
  public static final CurveKind HEAD_CURVE =
      new CurveKind("head", "head over flow rate", QuantityKind.FLOW, QuantityKind.HEAD);

  /** The height of the hose's highest point or outlet above the water in the sump. */
  public static final Characteristic STATIC_LIFT =
      new Characteristic(
          "static-lift", "outlet or highest point of the hose above the water", QuantityKind.HEAD);

  /** The length of the drain hose. */
  public static final Characteristic HOSE_LENGTH =
      new Characteristic("hose-length", "length of the drain hose", QuantityKind.HEAD);

  /** The bore of the drain hose. */
  public static final Characteristic HOSE_BORE =
      new Characteristic("hose-bore", "inner diameter of the drain hose", QuantityKind.LENGTH);

  /** The water that one drain phase moves. */
  public static final Characteristic DRAIN_VOLUME =
      new Characteristic(
          "drain-volume", "water that a full drain phase moves", QuantityKind.VOLUME);

  /** The height that drives the water down the standpipe. */
  public static final Characteristic STANDPIPE_HEIGHT =
      new Characteristic(
          "standpipe-height",
          "brim of the standpipe above the weir of its trap",
          QuantityKind.HEAD);

  /** The bore of the standpipe. */
  public static final Characteristic STANDPIPE_BORE =
      new Characteristic("standpipe-bore", "inner diameter of the standpipe", QuantityKind.LENGTH);

  /** What the winding should have. */
  public static final Characteristic WINDING =
      new Characteristic(
          "winding-resistance", "resistance of the winding at 20 °C", QuantityKind.RESISTANCE);

  /** The greatest torque of a motor behind an inverter; without it the motor runs off the mains. */
  public static final Characteristic TORQUE_LIMIT =
      new Characteristic(
          RatedSupply.TORQUE_LIMIT,
          "greatest torque of a motor behind an inverter, by its rated torque",
          QuantityKind.PERCENT);

  /** Head, at no flow unless a flow rate is stated. */
  public static final Observable HEAD =
      Observable.quantity(
          "head",
          "head of the drain pump, at no flow unless stated",
          QuantityKind.HEAD,
          new Span(0, 6),
          Way.RUNNING_AT_FLOW,
          Way.running(
              "Put a clear hose on the pump outlet as a standpipe, higher than the pump can lift, start"
                  + " draining and read the height of the water in it above that in the sump.",
              8,
              new Accuracy(0, 0.01),
              Caution.HOT_WATER,
              Way.HOSE_END));

  /** Head behind the pump while it drains. */
  public static final Observable OUTLET_HEAD =
      Observable.quantity(
          "outlet-head",
          "height of the water behind the drain pump while it drains",
          QuantityKind.HEAD,
          new Span(0, 6),
          Way.RUNNING,
          Way.running(
              "Set a tee with an upright clear hose between pump and check valve, let it drain, and read"
                  + " the height of the water in the clear hose above that in the sump.",
              12,
              new Accuracy(0, 0.02),
              Caution.HOT_WATER,
              Way.HOSE_END));

  /** Head behind the check valve while it drains. */
  public static final Observable HOSE_HEAD =
      Observable.quantity(
          "hose-head",
          "height of the water behind the check valve while it drains",
          QuantityKind.HEAD,
          new Span(0, 6),
          Way.RUNNING,
          Way.running(
              "Set a tee with an upright clear hose between check valve and drain hose, let it drain, and"
                  + " read the height of the water in the clear hose above that in the sump.",
              12,
              new Accuracy(0, 0.02),
              Caution.HOT_WATER,
              Way.HOSE_END));

  /** Flow rate at the end of the hose. */
  public static final Observable FLOW =
      Observable.quantity(
          "flow",
          "flow rate at the end of the drain hose",
          QuantityKind.FLOW,
          new Span(0, 60.0 / 60_000),
          Way.RUNNING,
          Way.running(
              "Let it drain into a bucket with the hose end at its usual height, and take the time for a"
                  + " known volume once the hose runs full.",
              5,
              new Accuracy(0.05, 0.2 / 60_000),
              Caution.HOT_WATER,
              Way.HOSE_END));

  /** How long it takes. */
  public static final Observable DRAIN_TIME =
      Observable.quantity(
          "drain-time",
          "time in which a full drain phase empties the machine",
          QuantityKind.TIME,
          new Span(0, 900),
          Way.RUNNING,
          Way.running(
              "Fill it as for a cycle, start draining, and take the time until the pump draws air; give up"
                  + " after ten minutes.",
              4,
              new Accuracy(0.02, 2),
              Way.WET_MAINS));

  /** Electric power while it drains. */
  public static final Observable POWER =
      Observable.quantity(
          "power",
          "electric power of the drain pump while it drains",
          QuantityKind.POWER,
          new Span(0, 200),
          Way.RUNNING,
          Way.running(
              "Read a plug-in power meter while only the drain pump runs, and take off what it shows while"
                  + " the machine stands by.",
              4,
              new Accuracy(0.015, 0.5),
              Way.WET_MAINS));

  /** Current of the motor. */
  public static final Observable CURRENT =
      Observable.quantity(
          "current",
          "current of the drain pump while it drains",
          QuantityKind.CURRENT,
          new Span(0, 5),
          Way.RUNNING,
          Way.running(
              "Read the current on a plug-in power meter while only the drain pump runs; what stands by adds"
                  + " little.",
              4,
              new Accuracy(0.015, 0.01),
              Way.WET_MAINS));

  /** Resistance of the winding. */
  public static final Observable WINDING_RESISTANCE =
      Way.winding(
          "resistance of the winding of the drain pump",
          "Wait until the control has discharged, take both wires off the pump, null the leads, and"
              + " measure between its terminals; behind an inverter between each two of them.");

  /** What it sounds like; it hums if it has voltage and does not turn. */
  public static final Observable NOISE =
      Observable.graded(
          "noise",
          "noise of the drain pump with water in it",
          List.of("silent", "hums", "usual", "louder", "rattles"),
          Way.running(
              "Listen while it drains, with water in the sump.",
              1,
              new Accuracy(0, 0),
              Way.WET_MAINS));

  /** What is found in the pump. */
  public static final Observable DEBRIS =
      Observable.graded(
          "debris",
          "debris in the pump chamber and between the vanes",
          List.of("none", "some", "full"),
          Way.opened(
              "Empty the sump, take the pump off and look into its inlet and between the vanes.",
              12));

  /** The state of the strainer. */
  public static final Observable STRAINER =
      Observable.graded(
          "strainer",
          "strainer or debris trap before the pump",
          List.of("clean", "partly", "clogged"),
          Way.opened("Open the debris trap with a tray under it and look at the strainer.", 4));

  /** How the rotor turns by hand. */
  public static final Observable TURNS =
      Observable.graded(
          "turns",
          "how the impeller turns by hand",
          List.of("freely", "stiffly", "stuck"),
          Way.opened(
              "Turn the impeller by hand; a permanent-magnet rotor pulls into even steps, which is in"
                  + " order.",
              10));

  /** Whether the impeller has come loose. */
  public static final Observable LOOSE =
      Observable.yesNo(
          "impeller-loose",
          "the impeller slips on its shaft or its vanes are worn away",
          Way.opened(
              "Hold the rotor and try to turn the impeller against it beyond its free stroke; look at"
                  + " the vanes.",
              10));

  /** Whether the hose is narrowed. */
  public static final Observable NARROWED =
      Observable.yesNo(
          "hose-narrowed",
          "the drain hose is kinked, squeezed or clogged",
          Way.dead(
              "Follow the hose from end to end, squeeze it for deposits, and look into its ends and the"
                  + " trap.",
              8,
              new Accuracy(0, 0)));

  /** Whether the check valve hangs. */
  public static final Observable VALVE_HANGS =
      Observable.yesNo(
          "valve-hangs",
          "the flap of the check valve hangs, open or shut",
          Way.opened("Take the check valve out and move its flap.", 8));

  /** How high the hose goes. */
  public static final Observable LIFT =
      Observable.quantity(
          "lift",
          "outlet or highest point of the hose above the water",
          QuantityKind.HEAD,
          new Span(0, 3),
          List.of(),
          new Procedure(
              "Measure from the water level in the sump to the highest point of the hose.",
              2,
              Hazard.NONE,
              new Accuracy(0, 0.02),
              List.of()));

  /** Whether water comes back. */
  public static final Observable RETURNS =
      Observable.yesNo(
          "water-returns",
          "water runs back into the machine after the pump stops",
          Way.running(
              "Let it drain to the end, stop it, and look whether the level rises again within a minute.",
              4,
              new Accuracy(0, 0),
              Caution.HOT_WATER));

  /** How much water comes back. */
  public static final Observable RETURNED =
      Observable.quantity(
          "returned-volume",
          "water that has run back a minute after the pump stopped",
          QuantityKind.VOLUME,
          new Span(0, 0.005),
          List.of(),
          Way.running(
              "Drain to the end, stop for a minute, hang the hose end over a measuring jug at its usual"
                  + " height, and drain again.",
              6,
              new Accuracy(0.03, 2e-5),
              Caution.HOT_WATER,
              Way.HOSE_END));

  /** Whether water gets out on the way. */
  public static final Observable WATER_OUTSIDE =
      Observable.yesNo(
          "water-outside",
          "water under or behind the machine after it drains",
          Way.look("Ask the owner, or put paper under the hose for one drain phase.", 2));

  /** What the owner sees. */
  public static final Observable DRAINS_SLOWLY =
      Observable.yesNo(
          "drains-slowly",
          "the machine drains slowly or not at all",
          Way.look("Ask the owner, or watch one drain phase.", 1));

  /** The kind. */
  public static final ComponentKind KIND =
      new ComponentKind(
          ID,
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
              VALVE_HANGS,
              LIFT,
              RETURNS,
              RETURNED,
              WATER_OUTSIDE,
              DRAINS_SLOWLY),
          List.of(
              STATIC_LIFT,
              HOSE_LENGTH,
              HOSE_BORE,
              DRAIN_VOLUME,
              STANDPIPE_HEIGHT,
              STANDPIPE_BORE,
              WINDING,
              TORQUE_LIMIT),
          List.of(HEAD_CURVE));

  private DrainPumpKind() {}
}
