package kelter.hydraulics.part;

import java.util.List;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.CurveKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Span;

/** The circulation pump with its filter, the passage to the jets, and the jets. */
public final class WashPumpKind {

  /** The word of the kind. */
  public static final String ID = "wash-pump";

  /** The curve of head over flow rate. */
  public static final CurveKind HEAD_CURVE = DrainPumpKind.HEAD_CURVE;

  /** The height of the jets above the water. */
  public static final Characteristic JET_LIFT =
      new Characteristic("jet-lift", "jets above the water in the sump", QuantityKind.HEAD);

  /** The open area of the jets, discharge coefficient left out. */
  public static final Characteristic JET_AREA =
      new Characteristic("jet-area", "open area of all jets together", QuantityKind.AREA);

  /** The length of the passage to the jets. */
  public static final Characteristic PASSAGE_LENGTH =
      new Characteristic(
          "passage-length", "length of the passage from pump to jets", QuantityKind.HEAD);

  /** The bore of the passage to the jets. */
  public static final Characteristic PASSAGE_BORE =
      new Characteristic(
          "passage-bore", "inner diameter of the passage from pump to jets", QuantityKind.LENGTH);

  /** The height of the water above the pump inlet while it washes. */
  public static final Characteristic WORKING_LEVEL =
      new Characteristic(
          "working-level", "water above the pump inlet while it washes", QuantityKind.LENGTH);

  /** The net positive suction head that the pump requires. */
  public static final Characteristic NPSH_REQUIRED =
      new Characteristic(
          "npsh-required",
          "net positive suction head that the pump requires at its rated flow",
          QuantityKind.HEAD);

  /** The speed of the pump at its rated point. */
  public static final Characteristic RATED_SPEED =
      new Characteristic("rated-speed", "speed of the pump", QuantityKind.ROTATIONAL_SPEED);

  /** How fast the spray arm of a good machine turns. */
  public static final Characteristic RATED_ARM_SPEED =
      new Characteristic(
          "rated-arm-speed",
          "speed of the spray arm of a good machine",
          QuantityKind.ROTATIONAL_SPEED);

  /** What the main winding should have. */
  public static final Characteristic WINDING = DrainPumpKind.WINDING;

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
          "head of the wash pump, at no flow unless stated",
          QuantityKind.HEAD,
          new Span(0, 15),
          Way.RUNNING_AT_FLOW,
          Way.running(
              "Close the outlet of the pump with a plug that carries a gauge, run it for a few seconds"
                  + " only, and turn the reading into a height of water above that in the sump.",
              15,
              new Accuracy(0.01, 0.05),
              Caution.HOT_WATER,
              Way.HOSE_END));

  /** Pressure at the jets. */
  public static final Observable JET_PRESSURE =
      Observable.quantity(
          "jet-pressure",
          "gauge pressure in the spray arm",
          QuantityKind.GAUGE_PRESSURE,
          new Span(0, 120_000),
          Way.RUNNING,
          Way.running(
              "Fit a gauge in place of one jet or at the arm's bearing, lead its hose out through the door"
                  + " seal, hold the gauge at the height of the jets and read it while it washes.",
              15,
              new Accuracy(0.01, 200),
              Caution.HOT_WATER));

  /** Pressure before the pump. */
  public static final Observable INLET_PRESSURE =
      Observable.quantity(
          "inlet-pressure",
          "gauge pressure at the pump inlet",
          QuantityKind.GAUGE_PRESSURE,
          new Span(-90_000, 5_000),
          Way.RUNNING,
          Way.running(
              "Fit a gauge between filter and pump and read it while it washes; a suction shows below"
                  + " zero.",
              20,
              new Accuracy(0.01, 100),
              Caution.HOT_WATER));

  /** Electric power while it washes. */
  public static final Observable POWER =
      Observable.quantity(
          "power",
          "electric power of the wash pump while it washes",
          QuantityKind.POWER,
          new Span(0, 1500),
          Way.RUNNING,
          Way.running(
              "Read a plug-in power meter while the pump washes with the heater off, and take off what it"
                  + " shows while the machine stands by.",
              4,
              new Accuracy(0.015, 1),
              Way.WET_MAINS));

  /** Speed of the pump. */
  public static final Observable SPEED =
      Observable.quantity(
          "speed",
          "speed of the wash pump",
          QuantityKind.ROTATIONAL_SPEED,
          new Span(0, 100),
          Way.RUNNING,
          Way.running(
              "Read the speed at the motor's far shaft end with an optical tachometer, or from the tone of"
                  + " its hum with a frequency meter.",
              10,
              new Accuracy(0.005, 0.2),
              Way.TURNING,
              Way.WET_MAINS));

  /** Speed of the spray arm. */
  public static final Observable ARM_SPEED =
      Observable.quantity(
          "arm-speed",
          "speed of the spray arm",
          QuantityKind.ROTATIONAL_SPEED,
          new Span(0, 3),
          List.of(),
          Way.running(
              "Count the strokes of the arm's jets against the door over a minute.",
              3,
              new Accuracy(0.03, 0.02),
              Caution.HOT_WATER));

  /** Current of the motor. */
  public static final Observable CURRENT =
      Observable.quantity(
          "current",
          "current of the wash pump while it washes",
          QuantityKind.CURRENT,
          new Span(0, 50),
          Way.RUNNING,
          Way.running(
              "Read the current on a plug-in power meter while the pump washes with the heater off; what"
                  + " stands by adds little.",
              4,
              new Accuracy(0.015, 0.01),
              Way.WET_MAINS));

  /** Resistance of the main winding. */
  public static final Observable WINDING_RESISTANCE =
      Way.winding(
          "resistance of the main winding of the wash pump",
          "Discharge the run capacitor, take all wires off the pump, null the leads, and measure between"
              + " the terminals of the main winding; behind an inverter between each two of them.",
          Way.CHARGED);

  /** What it sounds like; it hums if it has voltage and does not turn. */
  public static final Observable NOISE =
      Observable.graded(
          "noise",
          "noise of the wash pump with water in it",
          List.of("silent", "hums", "usual", "louder", "rattles"),
          Way.running("Listen while it washes.", 1, new Accuracy(0, 0), Way.WET_MAINS));

  /** Whether the pressure swings. */
  public static final Observable SWINGS =
      Observable.yesNo(
          "pressure-swings",
          "the spray or the hum comes and goes, as with air in the water",
          Way.running(
              "Listen for a minute, and watch the jets or the power meter's needle.",
              2,
              new Accuracy(0, 0),
              Way.WET_MAINS));

  /** Height of the water. */
  public static final Observable LEVEL =
      Observable.quantity(
          "level",
          "water above the pump inlet while it washes",
          QuantityKind.LENGTH,
          new Span(0, 0.3),
          List.of(),
          Way.running(
              "Stop it in the wash phase, open the door when the jets are still, and dip the water with a"
                  + " rule.",
              4,
              new Accuracy(0, 0.004),
              Caution.HOT_WATER));

  /** The state of the filter. */
  public static final Observable FILTER =
      Observable.graded(
          "filter",
          "filter before the pump",
          List.of("clean", "partly", "clogged"),
          Way.opened("Take the filter out and hold it against the light.", 3));

  /** How many jets are closed. */
  public static final Observable JETS_CLOSED =
      Observable.quantity(
          "jets-closed",
          "share of the jets that are closed",
          QuantityKind.PERCENT,
          new Span(0, 1),
          List.of(),
          Way.dead(
              "Take the spray arms out, count the jets, and those that are closed or lined with scale.",
              5,
              new Accuracy(0, 0.05)));

  /** What is found in the pump. */
  public static final Observable DEBRIS =
      Observable.graded(
          "debris",
          "debris in the pump chamber and between the vanes",
          List.of("none", "some", "full"),
          Way.opened(
              "Empty the sump, open the pump and look into its inlet and between the vanes.", 20));

  /** How the rotor turns by hand. */
  public static final Observable TURNS =
      Observable.graded(
          "turns",
          "how the impeller turns by hand",
          List.of("freely", "stiffly", "stuck"),
          Way.opened("Turn the impeller by hand through the opened inlet.", 15));

  /** Whether the impeller has come loose. */
  public static final Observable LOOSE =
      Observable.yesNo(
          "impeller-loose",
          "the impeller slips on its shaft or its vanes are worn away",
          Way.opened("Hold the motor shaft, try to turn the impeller, and look at its vanes.", 20));

  /** Whether water escapes before the jets. */
  public static final Observable PASSAGE_LEAKS =
      Observable.yesNo(
          "passage-leaks",
          "water escapes between pump and jets",
          Way.running(
              "Look at the feed pipe, the arm's bearing and the joints for a jet of water, through the"
                  + " door's glass or for wet marks right after a stop.",
              6,
              new Accuracy(0, 0),
              Caution.HOT_WATER));

  /** What the owner sees. */
  public static final Observable WEAK_JETS =
      Observable.yesNo(
          "weak-jets",
          "the spray is weak, or dishes or linen stay dirty",
          Way.look("Ask the owner, or listen to the spray against the door.", 1));

  /** The kind. */
  public static final ComponentKind KIND =
      new ComponentKind(
          ID,
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
              PASSAGE_LEAKS,
              WEAK_JETS),
          List.of(
              JET_LIFT,
              JET_AREA,
              PASSAGE_LENGTH,
              PASSAGE_BORE,
              WORKING_LEVEL,
              NPSH_REQUIRED,
              RATED_SPEED,
              RATED_ARM_SPEED,
              WINDING,
              TORQUE_LIMIT),
          List.of(HEAD_CURVE));

  private WashPumpKind() {}
}
