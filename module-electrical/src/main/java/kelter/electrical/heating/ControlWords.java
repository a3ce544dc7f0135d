package kelter.electrical.heating;

import java.util.List;
import kelter.core.quantity.QuantityKind;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Span;
import kelter.electrical.component.Electrical;
import kelter.electrical.rating.SensorCurve;

/** What can be observed on the parts that switch a heater, protect it and sense for it. */
final class ControlWords {

  /** The resistance of a relay's coil. */
  static final Characteristic COIL =
      new Characteristic("coil-resistance", "resistance of the coil", QuantityKind.RESISTANCE);

  /** Continuity of a thermal link or thermostat. */
  static final Observable LINK_RESISTANCE =
      Observable.logarithmic(
          "resistance",
          "resistance across it when cold",
          QuantityKind.RESISTANCE,
          Electrical.RESISTANCE,
          List.of(Electrical.TEMPERATURE),
          Electrical.dead(
              "Take one wire off and measure across it, leads nulled.", 3, Electrical.OHMMETER));

  /** Resistance of a relay's coil. */
  static final Observable COIL_RESISTANCE =
      Observable.logarithmic(
          "coil-resistance",
          "resistance of the coil",
          QuantityKind.RESISTANCE,
          Electrical.RESISTANCE,
          List.of(Electrical.TEMPERATURE),
          Electrical.dead(
              "Measure across the coil, unplugged from the control.", 5, Electrical.OHMMETER));

  /** Voltage that is lost in the contact. */
  static final Observable VOLTAGE_DROP =
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
  static final Observable CONTACT_BURNS =
      Observable.graded(
          "contact-burns",
          "burnt look of contact, terminals and board",
          List.of("none", "dark", "brown", "charred"),
          Electrical.inside("Look at contact, terminals and solder joints of the relay.", 5));

  /** Whether it smells burnt. */
  static final Observable BURNT_SMELL =
      Observable.yesNo(
          "burnt-smell",
          "it smells of burnt board or lacquer",
          Electrical.look("Smell at the opening of the control, or ask.", 2));

  /** Whether a contact stays closed. */
  static final Observable CLOSED_WHEN_OFF =
      Observable.yesNo(
          "closed-when-off",
          "the contact is closed although the coil is off",
          Electrical.inside("Measure continuity across the contact with the coil off.", 4));

  /** Resistance of a temperature sensor. */
  static final Observable SENSOR_RESISTANCE =
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
  static final Observable SHOWN_ERROR =
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
  static final Observable OFF_ITS_SEAT =
      Observable.yesNo(
          "off-its-seat",
          "the sensor does not touch what it should sense",
          Electrical.inside("Look whether the sensor sits tight in its clip or pocket.", 3));

  /** A thermal link, a thermal cut-out or a limiting thermostat. */
  static final ComponentKind THERMAL_LINK =
      new ComponentKind(
          "thermal-link", "thermal link", List.of(LINK_RESISTANCE), List.of(), List.of());

  /** The relay of a heater. */
  static final ComponentKind RELAY =
      new ComponentKind(
          "relay",
          "relay",
          List.of(COIL_RESISTANCE, VOLTAGE_DROP, CONTACT_BURNS, BURNT_SMELL, CLOSED_WHEN_OFF),
          List.of(COIL),
          List.of());

  /** A thermistor or platinum thermometer. */
  static final ComponentKind TEMPERATURE_SENSOR =
      new ComponentKind(
          "temperature-sensor",
          "temperature sensor",
          List.of(SENSOR_RESISTANCE, SHOWN_ERROR, OFF_ITS_SEAT),
          List.of(SensorCurve.R25, SensorCurve.BETA, SensorCurve.R0),
          List.of(SensorCurve.TABLE));

  private ControlWords() {}
}
