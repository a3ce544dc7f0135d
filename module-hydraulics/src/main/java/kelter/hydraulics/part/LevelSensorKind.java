package kelter.hydraulics.part;

import java.util.List;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Span;

/** The level sensor or pressure switch with its air trap and tube. */
public final class LevelSensorKind {

  /** The word of the kind. */
  public static final String ID = "level-sensor";

  /** The height of the water at which readings are usually taken. */
  public static final Characteristic USUAL_HEIGHT =
      new Characteristic(
          "usual-height",
          "water above the mouth of the air trap while it runs",
          QuantityKind.LENGTH);

  /** The volume of the shut-in air by the area of the bell. */
  public static final Characteristic AIR_COLUMN =
      new Characteristic(
          "air-column",
          "volume of bell, tube and sensor divided by the area of the bell",
          QuantityKind.LENGTH);

  /** The height at which the machine should stop filling. */
  public static final Characteristic TRIP_HEIGHT =
      new Characteristic(
          "trip-height",
          "water above the mouth of the air trap at which filling should stop",
          QuantityKind.LENGTH);

  private static final Characteristic AT_HEIGHT =
      new Characteristic("height", "water above the mouth of the air trap", QuantityKind.LENGTH);

  /** Pressure in the tube. */
  public static final Observable TRAP_PRESSURE =
      Observable.quantity(
          "trap-pressure",
          "pressure in the tube of the level sensor",
          QuantityKind.GAUGE_PRESSURE,
          new Span(0, 6000),
          List.of(AT_HEIGHT, Way.AT_TEMPERATURE),
          Way.dead(
              "With water in the machine and the plug out, read a water manometer on a tee in the tube, and"
                  + " dip the height of the water.",
              8,
              new Accuracy(0.01, 10)));

  /** What the machine takes the level to be. */
  public static final Observable SHOWN_LEVEL =
      Observable.quantity(
          "shown-level",
          "height of the water as the machine shows it",
          QuantityKind.LENGTH,
          new Span(0, 0.6),
          List.of(AT_HEIGHT),
          Way.running(
              "Read the level in the service mode, and dip the height of the water above the mouth of the"
                  + " air trap.",
              6,
              new Accuracy(0, 0.003),
              Caution.HOT_WATER));

  /** Where filling stops. */
  public static final Observable FILLED_HEIGHT =
      Observable.quantity(
          "filled-height",
          "height of the water at which filling stops",
          QuantityKind.LENGTH,
          new Span(0, 0.6),
          List.of(),
          Way.running(
              "Let it fill from empty without a load until the valve closes, open it, and dip the height"
                  + " of the water above the mouth of the air trap; stop it by hand before it overflows.",
              8,
              new Accuracy(0, 0.004),
              Caution.HOT_WATER));

  /** How tight trap and tube are. */
  public static final Observable KEPT =
      Observable.quantity(
          "pressure-kept",
          "share of the pressure that the closed tube keeps for a minute",
          QuantityKind.PERCENT,
          new Span(0, 1.05),
          List.of(),
          Way.dead(
              "Close the tube at the trap, blow it up to about 1 kPa through a tee with a manometer, and"
                  + " read it again after a minute; do not hold the tube in your hand.",
              7,
              new Accuracy(0.02, 0.01)));

  /** What is in the trap. */
  public static final Observable TRAP =
      Observable.graded(
          "trap",
          "air trap and its passage to the sump",
          List.of("clean", "partly", "clogged"),
          Way.opened("Take the air trap off and look into its mouth and its tube.", 12));

  /** Whether the tube is damaged. */
  public static final Observable TUBE_DAMAGED =
      Observable.yesNo(
          "tube-damaged",
          "the tube is chafed, cracked or off its nozzle",
          Way.dead("Follow the tube from end to end.", 5, new Accuracy(0, 0)));

  /** Too much water. */
  public static final Observable OVERFILLS =
      Observable.yesNo(
          "overfills", "too much water comes in", Way.look("Ask the owner, or watch a fill.", 2));

  /** Too little water. */
  public static final Observable UNDERFILLS =
      Observable.yesNo(
          "underfills",
          "too little water comes in",
          Way.look("Ask the owner, or watch a fill.", 2));

  /** The kind. */
  public static final ComponentKind KIND =
      new ComponentKind(
          ID,
          "level sensor with air trap and tube",
          List.of(
              TRAP_PRESSURE,
              SHOWN_LEVEL,
              FILLED_HEIGHT,
              KEPT,
              TRAP,
              TUBE_DAMAGED,
              OVERFILLS,
              UNDERFILLS),
          List.of(USUAL_HEIGHT, AIR_COLUMN, TRIP_HEIGHT),
          List.of());

  private LevelSensorKind() {}
}
