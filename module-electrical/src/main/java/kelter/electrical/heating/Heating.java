package kelter.electrical.heating;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.SharedQuantity;
import kelter.core.diagnosis.model.Course;
import kelter.core.diagnosis.model.Look;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.law.Celsius;
import kelter.core.module.Part;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.electrical.component.Electrical;
import kelter.electrical.component.SupplyKinds;
import kelter.electrical.contact.ClosedContact;
import kelter.electrical.copper.CopperRule;
import kelter.electrical.heating.HeatingFigures.Circuit;
import kelter.electrical.heating.HeatingFigures.Link;
import kelter.electrical.heating.HeatingFigures.Relay;
import kelter.electrical.heating.HeatingFigures.Sensor;
import kelter.electrical.heating.Operation.OfReading;
import kelter.electrical.insulation.EarthLeak;
import kelter.electrical.rating.HeaterRating;
import kelter.electrical.rating.SensorCurve;

/**
 * The heating of an appliance: heater, thermal links, relays, temperature sensors, supply and cord.
 * Every forecast comes from one operating point of the circuit; the voltage of the mains, where no
 * reading states it, moves power, current and warming together. The spreads say how far machines in
 * the same state differ; those of figures follow from the tolerance of the power input, all others
 * are from memory.
 */
public final class Heating implements Part {

  /** How much the mains of one house differ from their rated voltage, as a ratio. */
  private static final double MAINS_DEVIATION = 0.03;

  /** Spread of the resistance of heaters by their nameplate, and by a service figure, ratio. */
  private static final double BY_NAMEPLATE = 0.05;

  private static final double BY_FIGURE = 0.03;

  private static final Conditions AT_ROOM_TEMPERATURE =
      new Conditions(
          Map.of(
              Electrical.TEMPERATURE.id(),
              Quantity.ofSi(Celsius.TWENTY, 0, QuantityKind.TEMPERATURE)));

  /** Made by the module. */
  public Heating() {}

  @Override
  public List<ComponentKind> kinds() {
    return List.of(
        HeaterWords.WATER.kind(),
        HeaterWords.AIR.kind(),
        ControlWords.THERMAL_LINK,
        ControlWords.RELAY,
        ControlWords.TEMPERATURE_SENSOR,
        SupplyKinds.CORD,
        SupplyKinds.SUPPLY);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        new LimitCheck(
            "appliance-insulation",
            "Is the appliance insulated as its protection class asks?",
            SupplyKinds.CORD,
            SupplyKinds.APPLIANCE_INSULATION,
            CordChecks::insulation),
        new LimitCheck(
            "protective-conductor",
            "Is touchable metal connected to earth well enough?",
            SupplyKinds.CORD,
            SupplyKinds.PROTECTIVE_CONDUCTOR,
            CordChecks::protectiveConductor),
        new LimitCheck(
            "protective-conductor-current",
            "Does too much flow in the protective conductor?",
            SupplyKinds.CORD,
            SupplyKinds.CONDUCTOR_CURRENT,
            CordChecks::conductorCurrent),
        new LimitCheck(
            "touch-current",
            "Can too much flow through a person who touches it?",
            SupplyKinds.CORD,
            SupplyKinds.TOUCH_CURRENT,
            CordChecks::touchCurrent),
        new LimitCheck(
            "thermal-link-continuity",
            "Is the thermal link whole?",
            ControlWords.THERMAL_LINK,
            ControlWords.LINK_RESISTANCE,
            ClosedContact.RULE),
        new LimitCheck(
            "sensor-resistance",
            "Does the temperature sensor read right?",
            ControlWords.TEMPERATURE_SENSOR,
            ControlWords.SENSOR_RESISTANCE,
            ControlChecks::sensor),
        new LimitCheck(
            "shown-temperature",
            "Does the machine show the right temperature?",
            ControlWords.TEMPERATURE_SENSOR,
            ControlWords.SHOWN_ERROR,
            ControlChecks::shown),
        new LimitCheck(
            "relay-voltage-drop",
            "Does the contact of the relay lose voltage?",
            ControlWords.RELAY,
            ControlWords.VOLTAGE_DROP,
            ControlChecks::contactDrop),
        new LimitCheck(
            "relay-coil-resistance",
            "Does the coil of the relay measure what it should?",
            ControlWords.RELAY,
            ControlWords.COIL_RESISTANCE,
            new CopperRule("coil", ControlWords.COIL)),
        new LimitCheck(
            "supply-idle",
            "Is the supply within its range?",
            SupplyKinds.SUPPLY,
            SupplyKinds.IDLE,
            ControlChecks::supply),
        new LimitCheck(
            "supply-loaded",
            "Is the supply within its range under load?",
            SupplyKinds.SUPPLY,
            SupplyKinds.LOADED,
            ControlChecks::supply));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component heater) {
    return Medium.of(heater.kind()).isEmpty()
        ? Optional.empty()
        : HeatingGroup.of(appliance, heater).map(Heating::model);
  }

  private static FaultModel model(HeatingGroup group) {
    HeaterRating rating = group.rating();
    PartModel model =
        PartModel.of(group.heater().id(), HeatingFaults.PRIOR, Circuit.values())
            .moves(mains(rating), Circuit.MAINS.times(1 + mainsDeviation(rating)))
            .moves(
                tolerance(rating), Circuit.TOLERANCE.times(Course.power(1, 1 + ofRating(rating))));
    HeatingCircuit circuit = new HeatingCircuit(rating, group.medium());
    heater(model, group, circuit);
    for (Component link : group.links()) {
      model
          .on(link, ControlWords.THERMAL_LINK, Link.values())
          .faults(HeatingFaults.linkOpen())
          .looks(
              ControlWords.LINK_RESISTANCE,
              state -> state.of(Link.RESISTANCE),
              Spread.constant(0.7));
    }
    for (Component relay : group.relays()) {
      relay(model, relay, circuit);
    }
    for (Component sensor : group.sensors()) {
      sensor(model, sensor, group.medium());
    }
    supply(model, group, circuit);
    if (group.cord().isPresent()) {
      model
          .on(group.cord().get(), SupplyKinds.CORD)
          .faults(HeatingFaults.otherLeak())
          .looks(SupplyKinds.APPLIANCE_INSULATION, Leaking::ofAppliance, EarthLeak.SPREAD)
          .looks(SupplyKinds.PLUG_BURNS, new Look.Shown(Circuit.PLUG_BURNS), Spread.constant(0.15))
          .looks(SupplyKinds.PLUG_HOT, Circuit.PLUG_HOT);
    }
    return model.build();
  }

  private static void heater(PartModel model, HeatingGroup group, HeatingCircuit circuit) {
    HeaterWords words = group.medium().words();
    boolean air = group.medium() == Medium.AIR;
    model
        .on(group.heater(), words.kind())
        .faults(HeatingFaults.ofHeater(group.medium(), group.rating().elements()))
        .looks(HeaterWords.INSULATION, Leaking::ofHeater, EarthLeak.SPREAD)
        .looks(HeaterWords.TRIPS, Leaking::trips)
        .looks(HeaterWords.OVERHEATS, Circuit.OVERHEATS)
        .looks(words.deposit(), Circuit.DEPOSIT)
        .looks(HeaterWords.MARKING_DIFFERS, Circuit.MARKING_DIFFERS)
        .looks(words.sheath(), Circuit.SHEATH_DAMAGED)
        .under(circuit)
        .observe(
            HeaterWords.RESISTANCE, Operation::cold, Spread.constant(Operation.HOT_AGAINST_COLD))
        .observe(words.current(), Operation::current, new OfReading(1, 0.05))
        .observe(words.power(), Operation::power, new OfReading(2, 10))
        .observe(words.voltage(), Operation::terminalVoltage, fromReadingToReading(group.rating()))
        .observe(HeaterWords.TRIPS_BREAKER, Operation::tripsBreaker)
        .observe(words.cold(), Operation::staysCold)
        .observe(words.slow(), Operation::isSlow)
        .usually(ofHeater(group.heater(), words.amount()))
        .observe(
            words.warming(),
            Operation::warming,
            air ? new OfReading(2, 2, 0.12, 0.4) : new OfReading(2, 5e-4, 0.1, 0.4));
  }

  private static void relay(PartModel model, Component relay, HeatingCircuit circuit) {
    model
        .on(relay, ControlWords.RELAY, Relay.values())
        .faults(HeatingFaults.ofRelay())
        .looks(ControlWords.CONTACT_BURNS, Relay.BURNS)
        .looks(ControlWords.BURNT_SMELL, Relay.BURNT_SMELL)
        .looks(ControlWords.CLOSED_WHEN_OFF, Relay.CLOSED_WHEN_OFF)
        .under(circuit)
        .observe(
            ControlWords.VOLTAGE_DROP, Operation::contactDrop, Spread.relative(0.3).atLeast(0.1));
    double coil = relay.si(ControlWords.COIL);
    if (coil > 0) {
      model.looks(
          ControlWords.COIL_RESISTANCE,
          state -> state.has(Relay.COIL_OPEN) ? HeatingFigures.OPEN : coil,
          Spread.constant(0.1));
    }
  }

  private static void sensor(PartModel model, Component sensor, Medium medium) {
    model
        .on(sensor, ControlWords.TEMPERATURE_SENSOR, Sensor.values())
        .faults(HeatingFaults.ofSensor(medium))
        .looks(ControlWords.OFF_ITS_SEAT, Sensor.OFF_SEAT);
    Optional<SensorCurve> curve = SensorCurve.of(sensor);
    if (curve.isPresent()) {
      model
          .under(new Thermometer(curve.get(), Celsius.TWENTY))
          .usually(AT_ROOM_TEMPERATURE)
          .observe(
              ControlWords.SENSOR_RESISTANCE,
              Thermometer.Reading::resistance,
              (value, order, reading) -> reading.spread())
          .under(new Thermometer(curve.get(), Thermometer.WASH))
          .observe(
              ControlWords.SHOWN_ERROR,
              Thermometer.Reading::shownError,
              Spread.relative(0.3).atLeast(2));
    }
  }

  /** Where the job lists no supply, too little voltage is told of the heater. */
  private static void supply(PartModel model, HeatingGroup group, HeatingCircuit circuit) {
    Optional<Component> supply = group.supply();
    model
        .on(
            supply.orElse(group.heater()),
            supply.isPresent() ? SupplyKinds.SUPPLY : group.medium().words().kind())
        .faults(HeatingFaults.lowVoltage());
    if (supply.isPresent()) {
      model
          .under(circuit)
          .observe(SupplyKinds.IDLE, Operation::outletIdle, fromReadingToReading(group.rating()))
          .observe(SupplyKinds.LOADED, Operation::supply, fromReadingToReading(group.rating()));
    }
  }

  private static Spread<Object> fromReadingToReading(HeaterRating rating) {
    return Spread.constant(Operation.FROM_READING_TO_READING * rating.voltage());
  }

  /** The conditions that a service figure of the heater tells. */
  private static Conditions ofHeater(Component heater, Characteristic figure) {
    Optional<Quantity> stated = heater.figure(figure);
    return stated.isPresent() ? new Conditions(Map.of(figure.id(), stated.get())) : Conditions.NONE;
  }

  /** The mains of one house, which may lie anywhere in a rated range. */
  private static double mainsDeviation(HeaterRating rating) {
    double open = rating.mainsOpenness();
    return open == 0 ? MAINS_DEVIATION : Math.hypot(MAINS_DEVIATION, open);
  }

  private static SharedQuantity mains(HeaterRating rating) {
    boolean open = rating.mainsOpenness() != 0;
    return new SharedQuantity(
        "mains-voltage",
        "voltage of the mains, "
            + percent(mainsDeviation(rating))
            + (open ? " of the middle of the rated range" : " of the rated one"),
        Source.commonPractice(
            open
                ? "the mains of one house lie within 3 % of a voltage two times of three, and that may"
                    + " be any of the rated range"
                : "the mains of one house lie within 3 % of the rated voltage two times of three;"
                    + " EN 50160 allows 10 % for 95 % of a week"));
  }

  /**
   * How far heaters of one rating differ, and how far the rating itself is open, as a ratio of
   * their resistance.
   */
  private static double ofRating(HeaterRating rating) {
    double whole = rating.resistanceStated() ? BY_FIGURE : BY_NAMEPLATE;
    double part = Operation.HOT_AGAINST_COLD;
    return Math.hypot(Math.sqrt(whole * whole - part * part), rating.openness());
  }

  private static SharedQuantity tolerance(HeaterRating rating) {
    return new SharedQuantity(
        "heater-tolerance",
        "resistance of this heater within its tolerance, " + percent(ofRating(rating)),
        Source.commonPractice(
            rating.openness() > 0
                ? "heaters of one rating differ by 5 % in resistance; the nameplate has a range of"
                    + " voltages, and the one that its power belongs to was taken"
                : "heaters of one rating differ by 5 % in resistance, by 3 % where a service figure is"
                    + " known"));
  }

  private static String percent(double ratio) {
    return QuantityFormat.plain(Math.round(1000 * ratio) / 10.0) + " %";
  }
}
