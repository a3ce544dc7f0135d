package kelter.electrical.component;

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

/** Heaters of water and of air. */
public final class HeaterKinds {

  /** Its resistance as the maker states it, when cold. */
  public static final Characteristic COLD_RESISTANCE =
      new Characteristic("resistance", "resistance at 20 °C", QuantityKind.RESISTANCE);

  /** How many like elements lie in parallel. */
  public static final Characteristic ELEMENTS =
      new Characteristic("elements", "number of like elements in parallel", QuantityKind.RATIO);

  /** How much water it heats. */
  public static final Characteristic VOLUME =
      new Characteristic("volume", "volume of the water", QuantityKind.VOLUME);

  /** How much air it heats. */
  public static final Characteristic AIRFLOW =
      new Characteristic("airflow", "flow rate of the air", QuantityKind.FLOW);

  /** How the power of a heater is read on the closed machine. */
  private static final String POWER_METER =
      "Plug-in power meter, machine closed: the power while it heats less the power just before.";

  /** Its resistance. */
  public static final Observable RESISTANCE =
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
  public static final Observable INSULATION =
      Observable.logarithmic(
          "insulation-resistance",
          "insulation resistance to earth",
          QuantityKind.INSULATION_RESISTANCE,
          Electrical.INSULATION,
          List.of(Electrical.TEMPERATURE),
          Electrical.insulation(
              "Take both wires off the heater and measure with 500 V from a terminal to its metal"
                  + " sheath, one minute."));

  /** Its current. */
  public static final Observable CURRENT = current(Caution.HOT_WATER);

  /** Its power. */
  public static final Observable POWER =
      power(Electrical.runningWithWater(POWER_METER, 10, Electrical.POWER_METER));

  /** The voltage at its terminals. */
  public static final Observable TERMINAL_VOLTAGE = terminalVoltage(Caution.HOT_WATER);

  /** How fast the water warms. */
  public static final Observable HEATING_RATE =
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
              new Accuracy(0.03, 0.003)));

  /** How much the air is warmed. */
  public static final Observable AIR_RISE =
      Observable.quantity(
          "air-temperature-rise",
          "temperature of the air behind the heater less that of the room",
          QuantityKind.TEMPERATURE_DIFFERENCE,
          new Span(0, 200),
          List.of(AIRFLOW, Electrical.VOLTAGE),
          Electrical.running(
              "Thermometer at the outlet after 5 min of heating with an empty drum, less the room.",
              8,
              new Accuracy(0.02, 1)));

  /** Whether the residual-current device trips. */
  public static final Observable TRIPS =
      Observable.yesNo(
          "trips-rcd",
          "the residual-current device trips",
          Electrical.look("Ask whether it trips, and when: at once, or after some heating.", 2));

  /** Whether the fuse or circuit-breaker acts. */
  public static final Observable TRIPS_BREAKER =
      Observable.yesNo(
          "trips-breaker",
          "the fuse or circuit-breaker of the circuit acts",
          Electrical.look(
              "Ask which device acts: circuit-breaker, or residual-current device.", 2));

  /** Whether it stays cold. */
  public static final Observable WASHES_COLD =
      Observable.yesNo(
          "washes-cold",
          "the water stays cold",
          Electrical.look("Ask, or feel the door glass after half an hour.", 5));

  /** Whether it is slow. */
  public static final Observable HEATS_SLOWLY =
      Observable.yesNo(
          "heats-slowly",
          "it heats, but takes longer than it did",
          Electrical.look("Ask whether the programme takes longer than it did.", 5));

  /** Whether the air stays cold. */
  public static final Observable DRIES_COLD =
      Observable.yesNo(
          "dries-cold",
          "the air stays cold",
          Electrical.look("Ask, or feel the outlet after five minutes.", 5));

  /** Whether drying is slow. */
  public static final Observable DRIES_SLOWLY =
      Observable.yesNo(
          "dries-slowly",
          "it dries, but takes longer than it did",
          Electrical.look("Ask whether the programme takes longer than it did.", 5));

  /** Whether it gets too hot. */
  public static final Observable OVERHEATS =
      Observable.yesNo(
          "overheats",
          "it gets hotter than it was set to",
          Electrical.look("Ask for scalded wash, steam, or a smell of hot dust.", 5));

  /** How much scale is on it. */
  public static final Observable SCALE =
      Observable.graded(
          "scale",
          "scale on the heater",
          List.of("none", "thin", "thick", "solid"),
          Electrical.inside(
              "Drain, open, and look at the heater with a lamp.",
              15,
              Caution.HOT_WATER,
              Cautions.HOT_PART));

  /** How much lint is in the way of the air. */
  public static final Observable LINT =
      Observable.graded(
          "lint",
          "lint on the heater and in the way of the air",
          List.of("none", "thin", "thick", "blocked"),
          Electrical.inside("Open the air duct at the heater and look.", 10, Cautions.HOT_PART));

  /** Whether it is the right part. */
  public static final Observable MARKING_DIFFERS =
      Observable.yesNo(
          "marking-differs",
          "the marking on the heater is not what the parts list says",
          Electrical.inside("Read voltage and power on the flange or sheath.", 4));

  /** How its sheath looks. */
  public static final Observable SHEATH_DAMAGED =
      sheathDamaged(Caution.HOT_WATER, Cautions.HOT_PART);

  /** The current of a heater in air. */
  public static final Observable AIR_CURRENT = current(Cautions.HOT_PART);

  /** The power of a heater in air. */
  public static final Observable AIR_POWER =
      power(Electrical.running(POWER_METER, 10, Electrical.POWER_METER));

  /** The voltage at the terminals of a heater in air. */
  public static final Observable AIR_TERMINAL_VOLTAGE = terminalVoltage(Cautions.HOT_PART);

  /** How the sheath of a heater in air looks. */
  public static final Observable AIR_SHEATH_DAMAGED = sheathDamaged(Cautions.HOT_PART);

  /** A heater in water. */
  public static final ComponentKind HEATER =
      new ComponentKind(
          "heater",
          "heater",
          List.of(
              RESISTANCE,
              INSULATION,
              CURRENT,
              POWER,
              TERMINAL_VOLTAGE,
              HEATING_RATE,
              TRIPS,
              TRIPS_BREAKER,
              WASHES_COLD,
              HEATS_SLOWLY,
              OVERHEATS,
              SCALE,
              MARKING_DIFFERS,
              SHEATH_DAMAGED),
          List.of(COLD_RESISTANCE, ELEMENTS, VOLUME),
          List.of());

  /** A heater in air. */
  public static final ComponentKind AIR_HEATER =
      new ComponentKind(
          "air-heater",
          "air heater",
          List.of(
              RESISTANCE,
              INSULATION,
              AIR_CURRENT,
              AIR_POWER,
              AIR_TERMINAL_VOLTAGE,
              AIR_RISE,
              TRIPS,
              TRIPS_BREAKER,
              DRIES_COLD,
              DRIES_SLOWLY,
              OVERHEATS,
              LINT,
              MARKING_DIFFERS,
              AIR_SHEATH_DAMAGED),
          List.of(COLD_RESISTANCE, ELEMENTS, AIRFLOW),
          List.of());

  static final List<ComponentKind> ALL = List.of(HEATER, AIR_HEATER);

  private HeaterKinds() {}

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

  private static Observable terminalVoltage(Caution hot) {
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

  private static Observable power(Procedure procedure) {
    return Observable.quantity(
        "power",
        "power taken while it heats",
        QuantityKind.POWER,
        new Span(0, 30000),
        List.of(Electrical.VOLTAGE),
        procedure);
  }

  private static Observable sheathDamaged(Caution... hot) {
    return Observable.yesNo(
        "sheath-damaged",
        "its sheath is split, blistered or burnt through",
        Electrical.inside(
            "Take the heater out, or look at all of it with a lamp and a mirror.", 15, hot));
  }

  /**
   * What may be observed on a kind of heater in the way that fits it.
   *
   * @param kind the word in a job file for a kind of part
   * @param observable an observable of a heater in water, or of any other part
   * @return the observable of the same id of a heater in air where the kind is that and has one,
   *     else the one given
   */
  public static Observable as(String kind, Observable observable) {
    if (kind.equals(AIR_HEATER.id())) {
      for (Observable own : AIR_HEATER.observables()) {
        if (own.id().equals(observable.id())) {
          return own;
        }
      }
    }
    return observable;
  }

  /**
   * Whether a kind of part is a heater, of water or of air.
   *
   * @param kind the word in a job file
   * @return true if it is
   */
  public static boolean isHeater(String kind) {
    return kind.equals(HEATER.id()) || kind.equals(AIR_HEATER.id());
  }
}
