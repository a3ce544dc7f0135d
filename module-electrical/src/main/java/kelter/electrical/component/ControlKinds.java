package kelter.electrical.component;

import java.util.List;
import kelter.core.quantity.QuantityKind;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.CurveKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Span;

/** Parts that switch, protect and sense. */
public final class ControlKinds {

  /** The resistance of a thermistor at 25 °C. */
  public static final Characteristic R25 =
      new Characteristic("r25", "resistance at 25 °C", QuantityKind.RESISTANCE);

  /** The constant of a thermistor. */
  public static final Characteristic BETA =
      new Characteristic(
          "beta", "thermistor constant beta", QuantityKind.of("thermistor constant", "K"));

  /** The resistance of a platinum thermometer at 0 °C. */
  public static final Characteristic R0 =
      new Characteristic(
          "r0", "resistance of a platinum thermometer at 0 °C", QuantityKind.RESISTANCE);

  /** The table of a sensor. */
  public static final CurveKind TABLE =
      new CurveKind(
          "resistance",
          "resistance over temperature",
          QuantityKind.TEMPERATURE,
          QuantityKind.RESISTANCE);

  /** The resistance of a relay's coil. */
  public static final Characteristic COIL =
      new Characteristic("coil-resistance", "resistance of the coil", QuantityKind.RESISTANCE);

  /** Continuity of a thermal link or thermostat. */
  public static final Observable LINK_RESISTANCE =
      Observable.logarithmic(
          "resistance",
          "resistance across it when cold",
          QuantityKind.RESISTANCE,
          Electrical.RESISTANCE,
          List.of(Electrical.TEMPERATURE),
          Electrical.dead(
              "Take one wire off and measure across it, leads nulled.", 3, Electrical.OHMMETER));

  /** Resistance of a relay's coil. */
  public static final Observable COIL_RESISTANCE =
      Observable.logarithmic(
          "coil-resistance",
          "resistance of the coil",
          QuantityKind.RESISTANCE,
          Electrical.RESISTANCE,
          List.of(Electrical.TEMPERATURE),
          Electrical.dead(
              "Measure across the coil, unplugged from the control.", 5, Electrical.OHMMETER));

  /** Voltage that is lost in the contact. */
  public static final Observable VOLTAGE_DROP =
      Observable.quantity(
          "voltage-drop",
          "voltage across the closed contact under load",
          QuantityKind.VOLTAGE,
          new Span(0, 500),
          List.of(),
          Electrical.live(
              "Clip on to both sides of the contact, then let the machine heat and read.",
              10,
              new Accuracy(0.01, 0.05)));

  /** How burnt a contact looks. */
  public static final Observable CONTACT_BURNS =
      Observable.graded(
          "contact-burns",
          "burnt look of contact, terminals and board",
          List.of("none", "dark", "brown", "charred"),
          Electrical.inside("Look at contact, terminals and solder joints of the relay.", 5));

  /** Whether it smells burnt. */
  public static final Observable BURNT_SMELL =
      Observable.yesNo(
          "burnt-smell",
          "it smells of burnt board or lacquer",
          Electrical.look("Smell at the opening of the control, or ask.", 2));

  /** Whether a contact stays closed. */
  public static final Observable CLOSED_WHEN_OFF =
      Observable.yesNo(
          "closed-when-off",
          "the contact is closed although the coil is off",
          Electrical.inside("Measure continuity across the contact with the coil off.", 4));

  /** Resistance of a temperature sensor. */
  public static final Observable SENSOR_RESISTANCE =
      Observable.logarithmic(
          "resistance",
          "resistance at a known temperature",
          QuantityKind.RESISTANCE,
          Electrical.RESISTANCE,
          List.of(Electrical.SENSOR_TEMPERATURE),
          Electrical.dead(
              "Unplug the sensor from the control and measure; read a thermometer beside it.",
              5,
              new Accuracy(0.01, 1)));

  /** How wrong the temperature is that the machine makes of a sensor. */
  public static final Observable SHOWN_ERROR =
      Observable.quantity(
          "shown-error",
          "temperature that the machine shows less that of a thermometer",
          QuantityKind.TEMPERATURE_DIFFERENCE,
          new Span(-100, 100),
          List.of(Electrical.SENSOR_TEMPERATURE),
          Electrical.running(
              "Let the machine show the temperature of its sensor, hold a thermometer as near to it"
                  + " as the closed machine allows, wait until both stand still.",
              10,
              new Accuracy(0.01, 1)));

  /** Whether a sensor sits where it should. */
  public static final Observable OFF_ITS_SEAT =
      Observable.yesNo(
          "off-its-seat",
          "the sensor does not touch what it should sense",
          Electrical.inside("Look whether the sensor sits tight in its clip or pocket.", 3));

  /** A thermal link, a thermal cut-out or a limiting thermostat. */
  public static final ComponentKind THERMAL_LINK =
      new ComponentKind(
          "thermal-link", "thermal link", List.of(LINK_RESISTANCE), List.of(), List.of());

  /** The relay of a heater. */
  public static final ComponentKind RELAY =
      new ComponentKind(
          "relay",
          "relay",
          List.of(COIL_RESISTANCE, VOLTAGE_DROP, CONTACT_BURNS, BURNT_SMELL, CLOSED_WHEN_OFF),
          List.of(COIL),
          List.of());

  /** A thermistor or platinum thermometer. */
  public static final ComponentKind TEMPERATURE_SENSOR =
      new ComponentKind(
          "temperature-sensor",
          "temperature sensor",
          List.of(SENSOR_RESISTANCE, SHOWN_ERROR, OFF_ITS_SEAT),
          List.of(R25, BETA, R0),
          List.of(TABLE));

  static final List<ComponentKind> ALL = List.of(THERMAL_LINK, RELAY, TEMPERATURE_SENSOR);

  private ControlKinds() {}
}
