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
import kelter.electrical.caution.Cautions;
import kelter.electrical.component.Electrical;
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
 * @param cold whether water or air stay cold
 * @param slow whether it takes longer than it did
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
    Observable cold,
    Observable slow,
    Observable deposit,
    Observable sheath) {

  /** How much water it heats. */
  static final Characteristic VOLUME =
      new Characteristic("volume", "volume of the water", QuantityKind.VOLUME);

  /** How much air it heats. */
  static final Characteristic AIRFLOW =
      new Characteristic("airflow", "flow rate of the air", QuantityKind.FLOW);

  /** How the power of a heater is read on the closed machine. */
  private static final String POWER_METER =
      "Plug-in power meter, machine closed: the power while it heats less the power just before.";

  /** Its resistance. */
  static final Observable RESISTANCE =
      Observable.logarithmic(
          "resistance",
          "resistance between its terminals",
          QuantityKind.RESISTANCE,
          Electrical.RESISTANCE,
          List.of(Electrical.TEMPERATURE),
          Electrical.dead(
              "Take both wires off the heater, let it cool, null the leads, and measure between its"
                  + " terminals.",
              4,
              Electrical.OHMMETER,
              Cautions.HOT_PART));

  /** Its insulation. */
  static final Observable INSULATION =
      Observable.logarithmic(
          "insulation-resistance",
          "insulation resistance to earth",
          QuantityKind.INSULATION_RESISTANCE,
          Electrical.INSULATION,
          List.of(Electrical.TEMPERATURE),
          Electrical.insulation(
              "Take both wires off the heater and measure with 500 V from a terminal to its metal"
                  + " sheath, one minute."));

  /** Whether the residual-current device trips. */
  static final Observable TRIPS =
      Observable.yesNo(
          "trips-rcd",
          "the residual-current device trips",
          Electrical.look("Ask whether it trips, and when: at once, or after some heating.", 2));

  /** Whether the fuse or circuit-breaker acts. */
  static final Observable TRIPS_BREAKER =
      Observable.yesNo(
          "trips-breaker",
          "the fuse or circuit-breaker of the circuit acts",
          Electrical.look(
              "Ask which device acts: circuit-breaker, or residual-current device.", 2));

  /** Whether it gets too hot. */
  static final Observable OVERHEATS =
      Observable.yesNo(
          "overheats",
          "it gets hotter than it was set to",
          Electrical.look("Ask for scalded wash, steam, or a smell of hot dust.", 5));

  /** Whether it is the right part. */
  static final Observable MARKING_DIFFERS =
      Observable.yesNo(
          "marking-differs",
          "the marking on the heater is not what the parts list says",
          Electrical.inside("Read voltage and power on the flange or sheath.", 4));

  /** A heater in water. */
  static final HeaterWords WATER =
      of(
          "heater",
          "heater",
          VOLUME,
          current(Caution.HOT_WATER),
          power(Electrical.runningWithWater(POWER_METER, 10, Electrical.POWER_METER)),
          voltage(Caution.HOT_WATER),
          Observable.quantity(
              "heating-rate",
              "rate at which the water warms",
              QuantityKind.HEATING_RATE,
              new Span(0, 0.5),
              List.of(VOLUME, Electrical.VOLTAGE),
              Electrical.runningWithWater(
                  "Read a thermometer in the water, or the machine's own, at the start and after 5 min"
                      + " of heating; divide.",
                  8,
                  new Accuracy(0.03, 0.003))),
          Observable.yesNo(
              "washes-cold",
              "the water stays cold",
              Electrical.look("Ask, or feel the door glass after half an hour.", 5)),
          slow("heats-slowly", "it heats, but takes longer than it did"),
          Observable.graded(
              "scale",
              "scale on the heater",
              List.of("none", "thin", "thick", "solid"),
              Electrical.inside(
                  "Drain, open, and look at the heater with a lamp.",
                  15,
                  Caution.HOT_WATER,
                  Cautions.HOT_PART)),
          sheath(Caution.HOT_WATER, Cautions.HOT_PART));

  /** A heater in air. */
  static final HeaterWords AIR =
      of(
          "air-heater",
          "air heater",
          AIRFLOW,
          current(Cautions.HOT_PART),
          power(Electrical.running(POWER_METER, 10, Electrical.POWER_METER)),
          voltage(Cautions.HOT_PART),
          Observable.quantity(
              "air-temperature-rise",
              "temperature of the air behind the heater less that of the room",
              QuantityKind.TEMPERATURE_DIFFERENCE,
              new Span(0, 200),
              List.of(AIRFLOW, Electrical.VOLTAGE),
              Electrical.running(
                  "Thermometer at the outlet after 5 min of heating with an empty drum, less the room.",
                  8,
                  new Accuracy(0.02, 1))),
          Observable.yesNo(
              "dries-cold",
              "the air stays cold",
              Electrical.look("Ask, or feel the outlet after five minutes.", 5)),
          slow("dries-slowly", "it dries, but takes longer than it did"),
          Observable.graded(
              "lint",
              "lint on the heater and in the way of the air",
              List.of("none", "thin", "thick", "blocked"),
              Electrical.inside(
                  "Open the air duct at the heater and look.", 10, Cautions.HOT_PART)),
          sheath(Cautions.HOT_PART));

  private static HeaterWords of(
      String id,
      String title,
      Characteristic amount,
      Observable current,
      Observable power,
      Observable voltage,
      Observable warming,
      Observable cold,
      Observable slow,
      Observable deposit,
      Observable sheath) {
    ComponentKind kind =
        new ComponentKind(
            id,
            title,
            List.of(
                RESISTANCE,
                INSULATION,
                current,
                power,
                voltage,
                warming,
                TRIPS,
                TRIPS_BREAKER,
                cold,
                slow,
                OVERHEATS,
                deposit,
                MARKING_DIFFERS,
                sheath),
            List.of(HeaterRating.COLD_RESISTANCE, HeaterRating.ELEMENTS, amount),
            List.of());
    return new HeaterWords(
        kind, amount, current, power, voltage, warming, cold, slow, deposit, sheath);
  }

  private static Observable current(Caution hot) {
    return Observable.quantity(
        "current",
        "current",
        QuantityKind.CURRENT,
        new Span(0, 150),
        List.of(Electrical.VOLTAGE),
        Electrical.live(
            "Clamp around one wire of the heater while the machine heats.",
            8,
            Electrical.CLAMP,
            hot));
  }

  private static Observable power(Procedure procedure) {
    return Observable.quantity(
        "power",
        "power taken while it heats",
        QuantityKind.POWER,
        new Span(0, 30000),
        List.of(Electrical.VOLTAGE),
        procedure);
  }

  private static Observable voltage(Caution hot) {
    return Observable.quantity(
        "voltage",
        "voltage at its terminals while it should heat",
        QuantityKind.VOLTAGE,
        new Span(0, 500),
        List.of(),
        Electrical.live(
            "Clip on to both terminals, then let the machine heat and read.",
            10,
            Electrical.VOLTMETER,
            hot));
  }

  private static Observable slow(String id, String title) {
    return Observable.yesNo(
        id, title, Electrical.look("Ask whether the programme takes longer than it did.", 5));
  }

  private static Observable sheath(Caution... hot) {
    return Observable.yesNo(
        "sheath-damaged",
        "its sheath is split, blistered or burnt through",
        Electrical.inside(
            "Take the heater out, or look at all of it with a lamp and a mirror.", 15, hot));
  }
}
