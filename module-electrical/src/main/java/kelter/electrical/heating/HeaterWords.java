package kelter.electrical.heating;

import java.util.List;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.ContactWords;
import kelter.electrical.rating.HeaterRating;

/**
 * What can be observed on a heater of water or of air.
 *
 * @param kind the kind of component
 * @param amount how much water or air it heats
 * @param current its current
 * @param power its power
 * @param voltage the voltage at its terminals
 * @param warming how fast the water warms, or how much warmer the air is than the room
 * @param deposit how much scale is on it, or lint in the way of the air
 * @param sheath whether its sheath is damaged
 */
record HeaterWords(
    ComponentKind kind,
    Characteristic amount,
    Observable current,
    Observable power,
    Observable voltage,
    Observable warming,
    Observable deposit,
    Observable sheath) {

  static final Characteristic VOLUME =
      new Characteristic("volume", "volume of the water", QuantityKind.VOLUME)
          .within(new Span(1e-5, 5));

  static final Characteristic LOAD =
      new Characteristic("load", "dry mass of wash or crockery in it", QuantityKind.MASS);

  static final Characteristic AIRFLOW =
      new Characteristic("airflow", "flow rate of the air", QuantityKind.FLOW)
          .within(new Span(1e-5, 10));

  /** How the power of a heater is read on the closed machine. */
  private static final String POWER_METER =
      "Plug-in power meter, machine closed: the power while it heats less the power just before.";

  static final Observable RESISTANCE =
      Observable.named("resistance", "resistance between its terminals")
          .logarithmic(QuantityKind.RESISTANCE, Electrical.RESISTANCE)
          .provingFrom(ContactWords.OPEN)
          .at(Electrical.TEMPERATURE)
          .how(
              "Take both wires off the heater, let it cool, null the leads, and measure between its"
                  + " terminals. On three phases: wires off, its links as found, between two of the"
                  + " three terminals.")
          .by(Electrical.dead(4, Electrical.OHMMETER, ElectricalCautions.HOT_PART));

  static final Observable READINGS_DIFFER =
      Observable.named(
              "readings-differ",
              "highest resistance by the lowest, of the three pairs of its terminals")
          .logarithmic(QuantityKind.RATIO, new Span(0.5, 100))
          .provingFrom(1.5)
          .how(
              "On three phases: dead, wires off, its links as found. Measure between each two of the"
                  + " three terminals and divide the highest by the lowest; over range: 100.")
          .by(Electrical.dead(6, Electrical.OHMMETER, ElectricalCautions.HOT_PART));

  static final Observable INSULATION =
      Observable.named("insulation-resistance", "insulation resistance to earth")
          .logarithmic(QuantityKind.INSULATION_RESISTANCE, Electrical.INSULATION)
          .at(Electrical.TEMPERATURE)
          .how(
              "Take both wires off the heater and measure with 500 V from a terminal to its metal"
                  + " sheath, one minute.")
          .by(Electrical.insulation());

  static final Observable JOINT_DROP =
      Observable.named("joint-drop", "highest voltage across a joint of its circuit while it heats")
          .logarithmic(QuantityKind.VOLTAGE, Electrical.DROP)
          .at(Electrical.CURRENT)
          .how(
              "Clip on to wire and terminal on both sides of the joint that looks worst, meter on a"
                  + " range that bears the mains; let the machine heat and read. Write the highest.")
          .by(Electrical.live(12, Electrical.DROP_METER, ElectricalCautions.HOT_PART));

  static final Observable TERMINAL_BURNS =
      Observable.named(
              "terminal-burns", "burnt look of terminals, connectors and wires of the heater")
          .graded("none", "dark", "brown", "charred")
          .how("Look at each terminal and connector, and whether it sits tight.")
          .by(Electrical.inside(5, ElectricalCautions.HOT_PART));

  static final Observable MARKING_DIFFERS =
      Observable.named(
              "marking-differs", "the marking on the heater is not what the parts list says")
          .how("Read voltage and power on the flange or sheath.")
          .by(Electrical.inside(4));

  /** A heater in water. */
  static final HeaterWords WATER =
      of(
          "heater",
          "heater",
          VOLUME,
          current(Caution.HOT_WATER),
          power(Electrical.runningWithWater(10, Electrical.POWER_METER)),
          voltage(Caution.HOT_WATER),
          Observable.named("heating-rate", "rate at which the water warms")
              .quantity(QuantityKind.HEATING_RATE, 0, 0.5)
              .at(VOLUME, LOAD, Electrical.VOLTAGE)
              .how(
                  "Read a thermometer in the water, or the machine's own, at the start and after 5 min"
                      + " of heating; divide.")
              .by(Electrical.runningWithWater(8, new Accuracy(0.03, 0.003))),
          Observable.named("scale", "scale on the heater")
              .graded("none", "thin", "thick", "solid")
              .how("Drain, open, and look at the heater with a lamp.")
              .by(Electrical.inside(15, Caution.HOT_WATER, ElectricalCautions.HOT_PART)),
          sheath(Caution.HOT_WATER, ElectricalCautions.HOT_PART));

  /** A heater in air. */
  static final HeaterWords AIR =
      of(
          "air-heater",
          "air heater",
          AIRFLOW,
          current(ElectricalCautions.HOT_PART),
          power(Electrical.running(10, Electrical.POWER_METER)),
          voltage(ElectricalCautions.HOT_PART),
          Observable.named(
                  "air-temperature-rise",
                  "temperature of the air behind the heater less that of the room")
              .quantity(QuantityKind.TEMPERATURE_DIFFERENCE, 0, 200)
              .at(AIRFLOW, Electrical.VOLTAGE)
              .how(
                  "Thermometer at the outlet after 5 min of heating with an empty drum, less the room.")
              .by(Electrical.running(8, new Accuracy(0.02, 1))),
          Observable.named("lint", "lint on the heater and in the way of the air")
              .graded("none", "thin", "thick", "blocked")
              .how("Open the air duct at the heater and look.")
              .by(Electrical.inside(10, ElectricalCautions.HOT_PART)),
          sheath(ElectricalCautions.HOT_PART));

  private static HeaterWords of(
      String id,
      String title,
      Characteristic amount,
      Observable current,
      Observable power,
      Observable voltage,
      Observable warming,
      Observable deposit,
      Observable sheath) {
    ComponentKind kind =
        new ComponentKind(
            id,
            title,
            List.of(
                RESISTANCE,
                READINGS_DIFFER,
                INSULATION,
                current,
                power,
                voltage,
                JOINT_DROP,
                warming,
                deposit,
                TERMINAL_BURNS,
                MARKING_DIFFERS,
                sheath),
            List.of(HeaterRating.COLD_RESISTANCE, HeaterRating.ELEMENTS, amount),
            List.of());
    return new HeaterWords(kind, amount, current, power, voltage, warming, deposit, sheath);
  }

  private static Observable current(Caution hot) {
    return Observable.named("current", "current")
        .quantity(QuantityKind.CURRENT, 0, 150)
        .at(Electrical.VOLTAGE)
        .how("Clamp around one wire of the heater while the machine heats.")
        .by(Electrical.live(8, Electrical.CLAMP, hot));
  }

  private static Observable power(Procedure procedure) {
    return Observable.named("power", "power taken while it heats")
        .quantity(QuantityKind.POWER, 0, 30000)
        .at(Electrical.VOLTAGE)
        .how(POWER_METER)
        .by(procedure);
  }

  private static Observable voltage(Caution hot) {
    return Observable.named("voltage", "voltage at its terminals while it should heat")
        .quantity(QuantityKind.VOLTAGE, 0, 500)
        .how("Clip on to both terminals, then let the machine heat and read.")
        .by(Electrical.live(10, Electrical.VOLTMETER, hot));
  }

  private static Observable sheath(Caution... hot) {
    return Observable.named("sheath-damaged", "its sheath is split, blistered or burnt through")
        .proving()
        .how("Take the heater out, or look at all of it with a lamp and a mirror.")
        .by(Electrical.inside(15, hot));
  }
}
