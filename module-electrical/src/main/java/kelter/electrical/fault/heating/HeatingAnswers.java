package kelter.electrical.fault.heating;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.diagnosis.Question;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Observable;
import kelter.electrical.component.ControlKinds;
import kelter.electrical.component.Electrical;
import kelter.electrical.component.HeaterKinds;
import kelter.electrical.component.SupplyKinds;
import kelter.electrical.fault.EarthLeak;
import kelter.electrical.fault.StateModel.Answer;
import kelter.electrical.fault.StateModel.Forecast;
import kelter.electrical.heater.HeatUp;
import kelter.electrical.rating.HeaterRating;
import kelter.electrical.rating.SensorCurve;

/**
 * How the state of a heating circuit shows in each observable. The spreads say how far machines in
 * the same state differ; those of figures follow from the tolerance of the power input, all others
 * are from memory.
 */
final class HeatingAnswers {

  /**
   * How many watts are taken up for each kelvin by a cubic metre of warm air a second, J/(m³ K).
   */
  private static final double AIR_HEAT_CAPACITY = 1206;

  /** Density of water, kg/m³, close enough here. */
  private static final double WATER_DENSITY = 998;

  /** Share of the heat that stays in the water; from memory. */
  private static final double STAYS_IN_WATER = 0.85;

  /** Water and air where nothing is stated; from memory. */
  private static final double USUAL_WATER = 0.012;

  private static final double USUAL_AIR = 0.05;

  /** Spread of the resistance of heaters by their nameplate, and by a service figure, ratio. */
  private static final double BY_NAMEPLATE = 0.05;

  private static final double BY_FIGURE = 0.03;

  /**
   * The part of it by which cold and hot resistance of one heater do not agree, ratio: 0.03 either
   * way, as {@link HeaterRating#HOT_OVER_COLD} has it.
   */
  private static final double HOT_AGAINST_COLD = 0.03 / Math.sqrt(3);

  /** How much the mains change from one reading to the next, as a ratio; from memory. */
  private static final double FROM_READING_TO_READING = 0.01;

  private static final double ROOM = 293.15;

  /** Water for washing, K. */
  private static final double WASH = 313.15;

  /** Tolerance of sensors, as a natural logarithm; common practice, no source. */
  private static final double SENSOR = 0.03;

  /** What a machine's display and a thermometer beside differ, K; from memory. */
  private static final double SHOWN_SPREAD = 2;

  /** Relative change of a common thermistor, 1/K; arithmetic on a beta of 3950 K at 40 °C. */
  private static final double USUAL_SLOPE = -0.0403;

  /** How uncertain a temperature is that nobody stated, K. */
  private static final double ROOM_SPREAD = 3;

  private final HeatingGroup group;
  private final Map<String, Integer> places = new HashMap<>();
  private final Map<String, SensorCurve> curves = new HashMap<>();

  HeatingAnswers(HeatingGroup group) {
    this.group = group;
    for (List<Component> parts : List.of(group.links(), group.relays(), group.sensors())) {
      for (int i = 0; i < parts.size(); i++) {
        places.put(parts.get(i).id(), i);
      }
    }
    for (Component sensor : group.sensors()) {
      SensorCurve.of(sensor).ifPresent(curve -> curves.put(sensor.id(), curve));
    }
  }

  /** How far heaters of one rating differ, as a ratio of their resistance. */
  static double tolerance(HeatingGroup group) {
    double whole = group.rating().resistanceStated() ? BY_FIGURE : BY_NAMEPLATE;
    return Math.sqrt(whole * whole - HOT_AGAINST_COLD * HOT_AGAINST_COLD);
  }

  /** All questions, under the usual conditions. */
  List<Question> questions() {
    List<Question> all = new ArrayList<>();
    String heater = group.heater().id();
    List<Observable> known =
        group.heatsAir() ? HeaterKinds.AIR_HEATER.observables() : HeaterKinds.HEATER.observables();
    known.forEach(observable -> all.add(new Question(heater, observable, usual(observable))));
    for (Component link : group.links()) {
      all.add(new Question(link.id(), ControlKinds.LINK_RESISTANCE, Conditions.NONE));
    }
    for (Component relay : group.relays()) {
      ControlKinds.RELAY.observables().stream()
          .filter(o -> o != ControlKinds.COIL_RESISTANCE || coil(relay).isPresent())
          .forEach(o -> all.add(new Question(relay.id(), o, Conditions.NONE)));
    }
    for (Component sensor : group.sensors()) {
      if (curves.containsKey(sensor.id())) {
        all.add(
            new Question(
                sensor.id(),
                ControlKinds.SENSOR_RESISTANCE,
                usual(ControlKinds.SENSOR_RESISTANCE)));
      }
      if (curves.containsKey(sensor.id())) {
        all.add(new Question(sensor.id(), ControlKinds.SHOWN_ERROR, Conditions.NONE));
      }
      all.add(new Question(sensor.id(), ControlKinds.OFF_ITS_SEAT, Conditions.NONE));
    }
    group
        .supply()
        .ifPresent(
            supply -> {
              all.add(new Question(supply.id(), SupplyKinds.IDLE, Conditions.NONE));
              all.add(new Question(supply.id(), SupplyKinds.LOADED, Conditions.NONE));
            });
    group
        .cord()
        .ifPresent(
            cord -> {
              all.add(new Question(cord.id(), SupplyKinds.APPLIANCE_INSULATION, Conditions.NONE));
              all.add(new Question(cord.id(), SupplyKinds.PLUG_BURNS, Conditions.NONE));
              all.add(new Question(cord.id(), SupplyKinds.PLUG_HOT, Conditions.NONE));
            });
    return List.copyOf(all);
  }

  private Conditions usual(Observable observable) {
    Map<String, Quantity> figures = new HashMap<>();
    if (observable == ControlKinds.SENSOR_RESISTANCE) {
      figures.put(Electrical.TEMPERATURE.id(), Quantity.ofSi(ROOM, 0, QuantityKind.TEMPERATURE));
    }
    if (observable == HeaterKinds.HEATING_RATE) {
      group
          .heater()
          .figure(HeaterKinds.VOLUME.id())
          .ifPresent(volume -> figures.put(HeaterKinds.VOLUME.id(), volume));
    }
    if (observable == HeaterKinds.AIR_RISE) {
      group
          .heater()
          .figure(HeaterKinds.AIRFLOW.id())
          .ifPresent(airflow -> figures.put(HeaterKinds.AIRFLOW.id(), airflow));
    }
    return new Conditions(figures);
  }

  private static Optional<Double> coil(Component relay) {
    return relay.figure(ControlKinds.COIL.id()).map(Quantity::si).filter(r -> r > 0);
  }

  /** Makes ready to answer a question. */
  Answer<HeatingState> answer(Question question) {
    if (question.component().equals(group.heater().id())) {
      return heater(question.observable().id(), question.conditions());
    }
    if (group.supply().filter(s -> s.id().equals(question.component())).isPresent()) {
      return supply(question.observable().id());
    }
    if (question.observable().id().equals(SupplyKinds.APPLIANCE_INSULATION.id())) {
      return state -> EarthLeak.shown(state.applianceInsulation(), state.anyLeak());
    }
    if (question.observable().id().equals(SupplyKinds.PLUG_BURNS.id())) {
      return state -> new Forecast(state.plugBurns, 0.15);
    }
    if (question.observable().id().equals(SupplyKinds.PLUG_HOT.id())) {
      return state -> Forecast.chance(state.plugHot);
    }
    int place = places.get(question.component());
    return switch (question.observable().id()) {
      case "coil-resistance" -> {
        double coil = coil(part(group.relays(), question.component())).orElseThrow();
        yield state -> new Forecast(coil * state.coil[place], 0.1);
      }
      case "voltage-drop" ->
          state -> {
            boolean stays = state.coil[place] > 1;
            double drop = stays ? state.supply() : state.current() * state.contact[place];
            return new Forecast(drop, Math.hypot(0.1, 0.3 * drop));
          };
      case "contact-burns" -> state -> new Forecast(state.burns[place], 0.13);
      case "burnt-smell" -> state -> Forecast.chance(state.burntSmell[place]);
      case "closed-when-off" -> state -> Forecast.chance(state.closedWhenOff[place]);
      case "off-its-seat" -> state -> Forecast.chance(state.offSeat[place]);
      case "shown-error" ->
          shownError(curves.get(question.component()), question.conditions(), place);
      default ->
          curves.containsKey(question.component())
              ? sensor(curves.get(question.component()), question.conditions(), place)
              : state -> new Forecast(state.link[place], 0.7);
    };
  }

  private static Component part(List<Component> parts, String id) {
    return parts.stream().filter(part -> part.id().equals(id)).findFirst().orElseThrow();
  }

  private static Answer<HeatingState> supply(String observable) {
    boolean loaded = observable.equals(SupplyKinds.LOADED.id());
    double lost = loaded ? 1 : 0.2;
    return state -> {
      double voltage = state.mains * (1 - lost * (1 - state.reaching));
      return new Forecast(voltage, FROM_READING_TO_READING * state.ratedVoltage);
    };
  }

  private static Answer<HeatingState> sensor(SensorCurve curve, Conditions conditions, int place) {
    boolean stated = conditions.figure(Electrical.TEMPERATURE.id()).isPresent();
    double kelvin = conditions.si(Electrical.TEMPERATURE.id(), ROOM);
    double normal = ohm(curve, kelvin);
    if (!Double.isFinite(normal)) {
      return state -> new Forecast(1e3 * state.sensorFactor[place], 3);
    }
    double slope = slope(curve, kelvin);
    double spread = stated ? SENSOR : Math.hypot(SENSOR, ROOM_SPREAD * Math.abs(slope));
    return state ->
        new Forecast(
            normal * state.sensorFactor[place] * Math.exp(slope * state.tooWarm[place]), spread);
  }

  /** What the machine makes of the sensor: far out where it is open or shorted. */
  private static Answer<HeatingState> shownError(
      SensorCurve curve, Conditions conditions, int place) {
    double slope = slope(curve, conditions.si(Electrical.TEMPERATURE.id(), WASH));
    return state -> {
      double byFactor = Math.log(state.sensorFactor[place]) / slope;
      double error = byFactor + state.tooWarm[place] + state.offBy[place];
      return new Forecast(error, Math.hypot(SHOWN_SPREAD, 0.3 * error));
    };
  }

  /** Relative change of resistance for each kelvin, 1/K; that of common thermistors outside. */
  private static double slope(SensorCurve curve, double kelvin) {
    double change = Math.log(ohm(curve, kelvin + 1) / ohm(curve, kelvin - 1)) / 2;
    return Double.isFinite(change) && change != 0 ? change : USUAL_SLOPE;
  }

  private static double ohm(SensorCurve curve, double kelvin) {
    try {
      return curve.resistance().applyAsDouble(kelvin);
    } catch (IllegalArgumentException outside) {
      return Double.NaN;
    }
  }

  private Answer<HeatingState> heater(String observable, Conditions conditions) {
    return switch (observable) {
      case "resistance" -> state -> new Forecast(state.cold(), HOT_AGAINST_COLD);
      case "insulation-resistance" ->
          state -> EarthLeak.shown(state.insulation(), !Double.isInfinite(state.leak));
      case "current" -> current(conditions);
      case "power" -> power(conditions);
      case "voltage" ->
          state ->
              new Forecast(state.terminalVoltage(), FROM_READING_TO_READING * state.ratedVoltage);
      case "heating-rate" -> heatingRate(conditions);
      case "air-temperature-rise" -> airRise(conditions);
      case "scale", "lint" -> state -> new Forecast(state.deposit, 0.13);
      case "marking-differs" -> state -> Forecast.chance(state.markingDiffers);
      case "sheath-damaged" -> state -> Forecast.chance(state.sheathDamaged);
      default -> seen(observable);
    };
  }

  private static Answer<HeatingState> seen(String observable) {
    return switch (observable) {
      case "trips-rcd" -> state -> Forecast.chance(trips(state));
      case "trips-breaker" -> state -> Forecast.chance(state.overloaded() ? 0.95 : 0.02);
      case "washes-cold", "dries-cold" -> state -> Forecast.chance(staysCold(state));
      case "heats-slowly", "dries-slowly" -> state -> Forecast.chance(slow(state));
      case "overheats" -> state -> Forecast.chance(state.overheats);
      default -> throw new IllegalArgumentException("no forecast of '" + observable + "'");
    };
  }

  private Answer<HeatingState> current(Conditions conditions) {
    double stated = conditions.si(Electrical.VOLTAGE.id(), Double.NaN);
    double relative = relative(stated, 1);
    return state -> {
      double current = state.current(voltage(stated, state));
      return new Forecast(current, Math.hypot(0.05, current * relative));
    };
  }

  private Answer<HeatingState> power(Conditions conditions) {
    double stated = conditions.si(Electrical.VOLTAGE.id(), Double.NaN);
    double relative = relative(stated, 2);
    return state -> {
      double power = state.power(voltage(stated, state));
      return new Forecast(power, Math.hypot(10, power * relative));
    };
  }

  private Answer<HeatingState> heatingRate(Conditions conditions) {
    double stated = conditions.si(Electrical.VOLTAGE.id(), Double.NaN);
    double volume = conditions.si(HeaterKinds.VOLUME.id(), Double.NaN);
    boolean guessed = !(volume > 0);
    double capacity = (guessed ? USUAL_WATER : volume) * WATER_DENSITY * HeatUp.WATER_HEAT_CAPACITY;
    double relative = Math.hypot(relative(stated, 2), guessed ? 0.4 : 0.1);
    return state -> {
      double power = state.power(voltage(stated, state)) * state.duty;
      double rate = STAYS_IN_WATER * power / capacity;
      return new Forecast(rate, Math.hypot(5e-4, rate * relative));
    };
  }

  private Answer<HeatingState> airRise(Conditions conditions) {
    double stated = conditions.si(Electrical.VOLTAGE.id(), Double.NaN);
    double airflow = conditions.si(HeaterKinds.AIRFLOW.id(), Double.NaN);
    boolean guessed = !(airflow > 0);
    double capacity = (guessed ? USUAL_AIR : airflow) * AIR_HEAT_CAPACITY;
    double relative = Math.hypot(relative(stated, 2), guessed ? 0.4 : 0.12);
    return state -> {
      double power = state.power(voltage(stated, state)) * state.duty;
      double rise = power / (capacity * state.airflow);
      return new Forecast(rise, Math.hypot(2, rise * relative));
    };
  }

  /** Spread of what goes with a power of the voltage, mains and heater of that day left out. */
  private static double relative(double statedVoltage, double power) {
    return Math.hypot(
        HOT_AGAINST_COLD, Double.isNaN(statedVoltage) ? power * FROM_READING_TO_READING : 0);
  }

  /** A voltage stated with the reading takes the place of the one in the state. */
  private static double voltage(double stated, HeatingState state) {
    return stated > 0 ? stated : state.supply();
  }

  private static double trips(HeatingState state) {
    return EarthLeak.trips(state.applianceInsulation());
  }

  private static double staysCold(HeatingState state) {
    double byShare = 0.03 + 0.93 * logistic((0.45 - state.share()) / 0.1);
    return Math.max(byShare, 0.6 * trips(state));
  }

  private static double slow(HeatingState state) {
    double off = (state.share() - 0.6) / 0.2;
    return 0.04 + 0.85 * Math.exp(-off * off);
  }

  private static double logistic(double x) {
    return 1 / (1 + Math.exp(-x));
  }
}
