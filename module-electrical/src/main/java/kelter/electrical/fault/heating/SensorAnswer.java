package kelter.electrical.fault.heating;

import java.util.Optional;
import kelter.core.job.Conditions;
import kelter.electrical.component.Electrical;
import kelter.electrical.fault.StateModel.Answer;
import kelter.electrical.fault.StateModel.Forecast;
import kelter.electrical.rating.SensorCurve;

/**
 * How the state of a heating circuit shows at one of its temperature sensors.
 *
 * @param observable what is asked
 * @param place the place of the sensor among those of the circuit
 * @param normal its resistance in order, Ohm; not finite where its curve does not say
 * @param slope relative change of its resistance for each kelvin, 1/K
 * @param spread spread of its resistance, as a natural logarithm
 */
record SensorAnswer(String observable, int place, double normal, double slope, double spread)
    implements Answer<HeatingState> {

  /** The room where nothing is stated, K. */
  static final double ROOM = 293.15;

  /** Water for washing, K. */
  private static final double WASH = 313.15;

  /** Tolerance of sensors, as a natural logarithm; common practice, no source. */
  private static final double TOLERANCE = 0.03;

  /** What a machine's display and a thermometer beside differ, K; from memory. */
  private static final double SHOWN_SPREAD = 2;

  /** Relative change of a common thermistor, 1/K; arithmetic on a beta of 3950 K at 40 °C. */
  private static final double USUAL_SLOPE = -0.0403;

  /** How uncertain a temperature is that nobody stated, K. */
  private static final double ROOM_SPREAD = 3;

  /** Makes ready to answer under conditions; only whether it sits right needs no curve. */
  static SensorAnswer to(
      String observable, Conditions conditions, int place, Optional<SensorCurve> curve) {
    return switch (observable) {
      case "resistance" -> {
        boolean stated = conditions.figure(Electrical.TEMPERATURE.id()).isPresent();
        double kelvin = conditions.si(Electrical.TEMPERATURE.id(), ROOM);
        double slope = slope(curve.orElseThrow(), kelvin);
        double spread = stated ? TOLERANCE : Math.hypot(TOLERANCE, ROOM_SPREAD * Math.abs(slope));
        yield new SensorAnswer(observable, place, ohm(curve.get(), kelvin), slope, spread);
      }
      case "shown-error" -> {
        double kelvin = conditions.si(Electrical.TEMPERATURE.id(), WASH);
        double slope = slope(curve.orElseThrow(), kelvin);
        yield new SensorAnswer(observable, place, Double.NaN, slope, Double.NaN);
      }
      default -> new SensorAnswer(observable, place, Double.NaN, Double.NaN, Double.NaN);
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

  @Override
  public Forecast of(HeatingState state) {
    return switch (observable) {
      case "resistance" -> resistance(state);
      case "shown-error" -> shownError(state);
      case "off-its-seat" -> Forecast.chance(state.offSeat[place]);
      default -> throw new IllegalArgumentException("no forecast of '" + observable + "'");
    };
  }

  private Forecast resistance(HeatingState state) {
    if (!Double.isFinite(normal)) {
      return new Forecast(1e3 * state.sensorFactor[place], 3);
    }
    return new Forecast(
        normal * state.sensorFactor[place] * Math.exp(slope * state.tooWarm[place]), spread);
  }

  /** What the machine makes of the sensor: far out where it is open or shorted. */
  private Forecast shownError(HeatingState state) {
    double byFactor = Math.log(state.sensorFactor[place]) / slope;
    double error = byFactor + state.tooWarm[place] + state.offBy[place];
    return new Forecast(error, Math.hypot(SHOWN_SPREAD, 0.3 * error));
  }
}
