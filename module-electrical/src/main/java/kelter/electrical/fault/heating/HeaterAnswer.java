package kelter.electrical.fault.heating;

import kelter.core.job.Conditions;
import kelter.electrical.component.Electrical;
import kelter.electrical.component.HeaterKinds;
import kelter.electrical.fault.EarthLeak;
import kelter.electrical.fault.StateModel.Answer;
import kelter.electrical.fault.StateModel.Forecast;
import kelter.electrical.heater.HeatUp;
import kelter.electrical.rating.HeaterRating;

/**
 * How the state of a heating circuit shows at the heater, and in how the appliance heats.
 *
 * @param observable what is asked
 * @param stated the voltage stated with the reading, V; NaN if none is
 * @param relative the spread of the figure beside mains and heater, as a ratio
 * @param capacity what the water takes up for each kelvin, J/K, or warm air for each kelvin in a
 *     second, W/K; NaN where neither is asked
 */
record HeaterAnswer(String observable, double stated, double relative, double capacity)
    implements Answer<HeatingState> {

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
  static final double FROM_READING_TO_READING = 0.01;

  /**
   * How far heaters of one rating differ, and how far the rating itself is open, as a ratio of
   * their resistance.
   */
  static double tolerance(HeaterRating rating) {
    double whole = rating.resistanceStated() ? BY_FIGURE : BY_NAMEPLATE;
    double ofOneRating = Math.sqrt(whole * whole - HOT_AGAINST_COLD * HOT_AGAINST_COLD);
    return rating.openness() > 0 ? Math.hypot(ofOneRating, rating.openness()) : ofOneRating;
  }

  /** Makes ready to answer under conditions. */
  static HeaterAnswer to(String observable, Conditions conditions) {
    double stated = conditions.si(Electrical.VOLTAGE.id(), Double.NaN);
    return switch (observable) {
      case "current" -> new HeaterAnswer(observable, stated, relative(stated, 1), Double.NaN);
      case "heating-rate" -> {
        double volume = conditions.si(HeaterKinds.VOLUME.id(), Double.NaN);
        boolean guessed = !(volume > 0);
        double water = (guessed ? USUAL_WATER : volume) * WATER_DENSITY;
        yield new HeaterAnswer(
            observable,
            stated,
            Math.hypot(relative(stated, 2), guessed ? 0.4 : 0.1),
            water * HeatUp.WATER_HEAT_CAPACITY);
      }
      case "air-temperature-rise" -> {
        double airflow = conditions.si(HeaterKinds.AIRFLOW.id(), Double.NaN);
        boolean guessed = !(airflow > 0);
        yield new HeaterAnswer(
            observable,
            stated,
            Math.hypot(relative(stated, 2), guessed ? 0.4 : 0.12),
            (guessed ? USUAL_AIR : airflow) * AIR_HEAT_CAPACITY);
      }
      default -> new HeaterAnswer(observable, stated, relative(stated, 2), Double.NaN);
    };
  }

  /** Spread of what goes with a power of the voltage, mains and heater of that day left out. */
  private static double relative(double statedVoltage, double power) {
    return Math.hypot(
        HOT_AGAINST_COLD, Double.isNaN(statedVoltage) ? power * FROM_READING_TO_READING : 0);
  }

  @Override
  public Forecast of(HeatingState state) {
    return switch (observable) {
      case "resistance" -> new Forecast(state.cold(), HOT_AGAINST_COLD);
      case "insulation-resistance" ->
          EarthLeak.shown(state.insulation(), !Double.isInfinite(state.leak));
      case "current" -> figure(state.current(voltage(state)), 0.05);
      case "power" -> figure(state.power(voltage(state)), 10);
      case "voltage" ->
          new Forecast(state.terminalVoltage(), FROM_READING_TO_READING * state.ratedVoltage);
      case "heating-rate" -> figure(STAYS_IN_WATER * heat(state) / capacity, 5e-4);
      case "air-temperature-rise" -> figure(heat(state) / (capacity * state.airflow), 2);
      case "scale", "lint" -> new Forecast(state.deposit, 0.13);
      default -> Forecast.chance(chance(state));
    };
  }

  /** A figure with its spread, which is at least the floor in its unit. */
  private Forecast figure(double value, double floor) {
    return new Forecast(value, Math.hypot(floor, value * relative));
  }

  /** A voltage stated with the reading takes the place of the one in the state. */
  private double voltage(HeatingState state) {
    return stated > 0 ? stated : state.supply();
  }

  /** The mean power while it should heat, W. */
  private double heat(HeatingState state) {
    return state.power(voltage(state)) * state.duty;
  }

  private double chance(HeatingState state) {
    return switch (observable) {
      case "marking-differs" -> state.markingDiffers;
      case "sheath-damaged" -> state.sheathDamaged;
      case "trips-rcd" -> trips(state);
      case "trips-breaker" -> state.overloaded() ? 0.95 : 0.02;
      case "washes-cold", "dries-cold" -> staysCold(state);
      case "heats-slowly", "dries-slowly" -> slow(state);
      case "overheats" -> state.overheats;
      default -> throw new IllegalArgumentException("no forecast of '" + observable + "'");
    };
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
