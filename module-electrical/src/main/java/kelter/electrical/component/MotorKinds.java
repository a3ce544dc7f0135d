package kelter.electrical.component;

import java.util.List;
import kelter.core.quantity.QuantityKind;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.electrical.caution.Cautions;

/** Motors, their capacitors, and coils. */
public final class MotorKinds {

  /** What the main winding should have. */
  public static final Characteristic MAIN =
      new Characteristic(
          "winding-resistance", "resistance of the main winding at 20 °C", QuantityKind.RESISTANCE);

  /** What the auxiliary winding should have. */
  public static final Characteristic AUXILIARY =
      new Characteristic(
          "auxiliary-resistance",
          "resistance of the auxiliary winding at 20 °C",
          QuantityKind.RESISTANCE);

  /** What is marked on a capacitor. */
  public static final Characteristic CAPACITANCE =
      new Characteristic("capacitance", "capacitance marked on it", QuantityKind.CAPACITANCE);

  /** What a coil should have. */
  public static final Characteristic COIL =
      new Characteristic(
          "coil-resistance", "resistance of the coil at 20 °C", QuantityKind.RESISTANCE);

  /** Resistance of the main winding. */
  public static final Observable WINDING_RESISTANCE =
      winding("winding-resistance", "resistance of the main winding", motor());

  /** Resistance of the auxiliary winding. */
  public static final Observable AUXILIARY_RESISTANCE =
      winding("auxiliary-resistance", "resistance of the auxiliary winding", motor());

  /** Insulation of the motor. */
  public static final Observable INSULATION =
      Observable.logarithmic(
          "insulation-resistance",
          "insulation resistance to earth",
          QuantityKind.INSULATION_RESISTANCE,
          Electrical.INSULATION,
          List.of(Electrical.TEMPERATURE),
          Electrical.insulation(
              Electrical.DISCHARGE
                  + "Unplug the motor from its control and measure with 500 V from a winding to the"
                  + " frame, one minute."));

  /** Current of the running motor. */
  public static final Observable CURRENT =
      Observable.quantity(
          "current",
          "current of the running motor",
          QuantityKind.CURRENT,
          new Span(0, 100),
          List.of(Electrical.VOLTAGE),
          Electrical.live(
              "Clamp around one wire of the motor while it runs.", 8, Electrical.CLAMP));

  /** Whether it hums without turning. */
  public static final Observable HUMS =
      Observable.yesNo(
          "hums",
          "it hums and does not turn",
          Electrical.look("Listen at the start of the programme.", 2));

  /** Whether it stands still without a sound. */
  public static final Observable SILENT =
      Observable.yesNo(
          "silent",
          "it makes no sound and does not turn",
          Electrical.look("Listen at the start of the programme.", 2));

  /** How hard it turns. */
  public static final Observable TURNING =
      Observable.graded(
          "turning-by-hand",
          "how it turns by hand",
          List.of("freely", "roughly", "stiffly", "stuck"),
          Electrical.discharged(
              "Take the belt off and turn the shaft by hand.", 8, Electrical.BY_EYE));

  /** Whether it smells burnt. */
  public static final Observable BURNT_SMELL =
      Observable.yesNo(
          "burnt-smell", "it smells of burnt lacquer", Electrical.look("Smell at the motor.", 1));

  /** Whether water got at it. */
  public static final Observable WET =
      Observable.yesNo(
          "wet",
          "water marks, drops or fresh rust on it",
          Electrical.inside("Look at the motor and above it with a lamp.", 5));

  /** Whether the residual-current device trips. */
  public static final Observable TRIPS =
      Observable.yesNo(
          "trips-rcd",
          "the residual-current device trips when it starts",
          Electrical.look("Ask whether it trips, and when.", 1));

  /** Capacitance. */
  public static final Observable MEASURED_CAPACITANCE =
      Observable.quantity(
          "capacitance",
          "capacitance",
          QuantityKind.CAPACITANCE,
          new Span(0, 1e-3),
          List.of(),
          Electrical.discharged(
              "Take the motor capacitor out of circuit and measure it; no other capacitor.",
              6,
              new Accuracy(0.02, 1e-8)));

  /** Whether a capacitor is swollen. */
  public static final Observable SWOLLEN =
      Observable.yesNo(
          "swollen",
          "it is swollen, cracked or leaks",
          Electrical.inside(
              "Look at its case, without touching it: nothing is discharged for that.",
              3,
              Cautions.CHARGED_CAPACITOR));

  /** Resistance of a coil. */
  public static final Observable COIL_RESISTANCE =
      winding("coil-resistance", "resistance of the coil", coil());

  /** Whether it acts. */
  public static final Observable DOES_NOT_ACT =
      Observable.yesNo(
          "does-not-act",
          "it does not click, open or pull when it should",
          Electrical.look("Listen and look when the programme should make it act.", 4));

  /** Whether a coil smells. */
  public static final Observable COIL_SMELL =
      Observable.yesNo(
          "burnt-smell",
          "it smells burnt, or its case is melted or dark",
          Electrical.inside("Smell at the coil and look at its case.", 3));

  /** A motor with a main and perhaps an auxiliary winding. */
  public static final ComponentKind MOTOR =
      new ComponentKind(
          "motor",
          "motor",
          List.of(
              WINDING_RESISTANCE,
              AUXILIARY_RESISTANCE,
              INSULATION,
              CURRENT,
              HUMS,
              SILENT,
              TURNING,
              BURNT_SMELL,
              WET,
              TRIPS),
          List.of(MAIN, AUXILIARY),
          List.of());

  /** The capacitor of a motor. */
  public static final ComponentKind RUN_CAPACITOR =
      new ComponentKind(
          "run-capacitor",
          "motor capacitor",
          List.of(MEASURED_CAPACITANCE, SWOLLEN),
          List.of(CAPACITANCE),
          List.of());

  /** The coil of a valve, lock or pump that works by attraction. */
  public static final ComponentKind SOLENOID =
      new ComponentKind(
          "solenoid",
          "solenoid",
          List.of(COIL_RESISTANCE, DOES_NOT_ACT, COIL_SMELL),
          List.of(COIL),
          List.of());

  static final List<ComponentKind> ALL = List.of(MOTOR, RUN_CAPACITOR, SOLENOID);

  private MotorKinds() {}

  private static Procedure motor() {
    return Electrical.discharged(
        "Unplug the motor from its control and measure between its terminals, leads nulled.",
        5,
        Electrical.OHMMETER);
  }

  private static Procedure coil() {
    return Electrical.dead(
        "Unplug it from its control and measure between its terminals, leads nulled.",
        5,
        Electrical.OHMMETER);
  }

  private static Observable winding(String id, String title, Procedure procedure) {
    return Observable.logarithmic(
        id,
        title,
        QuantityKind.RESISTANCE,
        Electrical.RESISTANCE,
        List.of(Electrical.TEMPERATURE),
        procedure);
  }
}
