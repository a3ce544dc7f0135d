package kelter.hydraulics.part;

import java.util.List;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Span;

/**
 * The inlet valve with its screen, hose and supply; what is electric about it is another module's.
 */
public final class InletValveKind {

  /** The word of the kind. */
  public static final String ID = "inlet-valve";

  /** The pressure of the supply without flow, as it should be. */
  public static final Characteristic SUPPLY_PRESSURE =
      new Characteristic(
          "supply-pressure", "usual pressure of the supply", QuantityKind.GAUGE_PRESSURE);

  /** The flow rate of the open tap, as it should be. */
  public static final Characteristic USUAL_TAP_FLOW =
      new Characteristic("usual-tap-flow", "usual flow rate of the open tap", QuantityKind.FLOW);

  /** The flow rate that the regulator washer holds. */
  public static final Characteristic RATED_FLOW =
      new Characteristic(
          "rated-flow", "flow rate that the valve's regulator holds", QuantityKind.FLOW);

  /** The flow coefficient of the open valve. */
  public static final Characteristic COEFFICIENT =
      new Characteristic("kv", "flow coefficient of the open valve", QuantityKind.FLOW);

  /** The length of the fill hose. */
  public static final Characteristic HOSE_LENGTH =
      new Characteristic("hose-length", "length of the fill hose", QuantityKind.HEAD);

  /** The bore of the fill hose. */
  public static final Characteristic HOSE_BORE =
      new Characteristic("hose-bore", "inner diameter of the fill hose", QuantityKind.LENGTH);

  /** The length of the pipe of the house. */
  public static final Characteristic PIPE_LENGTH =
      new Characteristic(
          "pipe-length", "length of the pipe from the riser to the tap", QuantityKind.HEAD);

  /** The bore of the pipe of the house. */
  public static final Characteristic PIPE_BORE =
      new Characteristic(
          "pipe-bore", "inner diameter of the pipe from riser to tap", QuantityKind.LENGTH);

  /** Flow rate into the machine. */
  public static final Observable FILL_FLOW =
      Observable.quantity(
          "fill-flow",
          "flow rate while the machine fills",
          QuantityKind.FLOW,
          new Span(0, 40.0 / 60_000),
          List.of(),
          Way.running(
              "Take the time from the opening of the valve to a known volume: by the water meter, or by the"
                  + " level in a machine of known plan area.",
              5,
              new Accuracy(0.05, 0.2 / 60_000),
              Caution.HOT_WATER));

  /** Pressure of the supply. */
  public static final Observable STATIC_PRESSURE =
      Observable.quantity(
          "static-pressure",
          "pressure of the supply with nothing drawn",
          QuantityKind.GAUGE_PRESSURE,
          new Span(0, 1_500_000),
          List.of(),
          Way.dead(
              "Close the tap, take the hose off, screw a gauge on, open the tap, and read it.",
              6,
              new Accuracy(0.016, 5000)));

  /** Flow rate of the open tap. */
  public static final Observable TAP_FLOW =
      Observable.quantity(
          "tap-flow",
          "flow rate of the open tap",
          QuantityKind.FLOW,
          new Span(0, 60.0 / 60_000),
          List.of(),
          Way.dead(
              "Take the hose off and time a bucket under the fully open tap.",
              4,
              new Accuracy(0.05, 0.2 / 60_000)));

  /** The state of the screens. */
  public static final Observable SCREEN =
      Observable.graded(
          "screen",
          "screens in the hose end and the valve",
          List.of("clean", "partly", "clogged"),
          Way.opened("Close the tap, take the hose off and look at both screens.", 6));

  /** Whether the hose is narrowed. */
  public static final Observable KINKED =
      Observable.yesNo(
          "hose-kinked",
          "the fill hose is kinked, or its stop valve has tripped",
          Way.look("Follow the fill hose from end to end and look at its stop valve.", 3));

  /** Whether water runs in when it should not. */
  public static final Observable LEAKS_BY =
      Observable.yesNo(
          "leaks-by",
          "water runs in with the plug out",
          Way.dead(
              "Pull the plug, leave the tap open, and look whether water still runs in.",
              5,
              new Accuracy(0, 0)));

  /** Whether the machine fills by itself. */
  public static final Observable CREEPS =
      Observable.yesNo(
          "water-creeps-in",
          "water stands in the machine after it has been off for hours",
          Way.look("Ask the owner, or look in before the first start of the day.", 1));

  /** What the owner sees. */
  public static final Observable FILLS_SLOWLY =
      Observable.yesNo(
          "fills-slowly",
          "the machine fills slowly or gives up filling",
          Way.look("Ask the owner, or watch one fill.", 1));

  /** What the owner hears. */
  public static final Observable BANGS =
      Observable.yesNo(
          "bangs",
          "the pipes bang when the valve closes",
          Way.look("Ask the owner, or listen at the end of a fill.", 1));

  /** The kind. */
  public static final ComponentKind KIND =
      new ComponentKind(
          ID,
          "inlet valve",
          List.of(
              FILL_FLOW,
              STATIC_PRESSURE,
              TAP_FLOW,
              SCREEN,
              KINKED,
              LEAKS_BY,
              CREEPS,
              FILLS_SLOWLY,
              BANGS),
          List.of(
              SUPPLY_PRESSURE,
              USUAL_TAP_FLOW,
              RATED_FLOW,
              COEFFICIENT,
              HOSE_LENGTH,
              HOSE_BORE,
              PIPE_LENGTH,
              PIPE_BORE),
          List.of());

  private InletValveKind() {}
}
