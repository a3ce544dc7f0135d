package kelter.electrical.heating;

import kelter.core.diagnosis.model.Circumstances;
import kelter.core.diagnosis.model.State;
import kelter.core.job.Conditions;
import kelter.electrical.component.Electrical;
import kelter.electrical.heating.TemperatureSensor.Sensor;
import kelter.electrical.rating.SensorCurve;

/**
 * A temperature sensor beside a thermometer.
 *
 * @param curve what it has in order over temperature
 * @param usual the temperature where none is stated, K
 */
record Thermometer(SensorCurve curve, double usual) implements Circumstances<Thermometer.Reading> {

  /** Tolerance of sensors, as a natural logarithm; common practice, no source. */
  private static final double TOLERANCE = 0.03;

  /** Relative change of a common thermistor, 1/K; arithmetic on a beta of 3950 K at 40 °C. */
  private static final double USUAL_SLOPE = -0.0403;

  /** How uncertain a temperature is that nobody stated, K. */
  private static final double ROOM_SPREAD = 3;

  /** The same of a resistance of which the curve does not say what it is in order. */
  private static final double ANYTHING = 3;

  /** A resistance of which the curve does not say what it is in order, Ohm. */
  private static final double SOME = 1e3;

  /**
   * A sensor in a state.
   *
   * @param state what faults have left
   * @param normal its resistance in order, Ohm; not finite where its curve does not say
   * @param slope relative change of its resistance for each kelvin, 1/K
   * @param spread how far its resistance differs, as a natural logarithm
   */
  record Reading(State state, double normal, double slope, double spread) {

    /** Its resistance, Ohm. */
    double resistance() {
      double ratio = state.of(Sensor.RESISTANCE);
      return Double.isFinite(normal)
          ? normal * ratio * Math.exp(slope * state.of(Sensor.TOO_WARM))
          : SOME * ratio;
    }

    /**
     * What the machine makes of it less the temperature, K: far out where it is open or shorted.
     */
    double shownError() {
      return Math.log(state.of(Sensor.RESISTANCE)) / slope
          + state.of(Sensor.TOO_WARM)
          + state.of(Sensor.OFF_BY);
    }
  }

  private record At(double normal, double slope, double spread) implements Solver<Reading> {
    @Override
    public Reading in(State state) {
      return new Reading(state, normal, slope, spread);
    }
  }

  @Override
  public Solver<Reading> under(Conditions conditions) {
    double kelvin = conditions.si(Electrical.TEMPERATURE, usual);
    double normal = curve.ohm(kelvin);
    double slope = slope(kelvin);
    boolean stated = conditions.figure(Electrical.TEMPERATURE).isPresent();
    double known = stated ? TOLERANCE : Math.hypot(TOLERANCE, ROOM_SPREAD * Math.abs(slope));
    return new At(normal, slope, Double.isFinite(normal) ? known : ANYTHING);
  }

  /** Relative change of resistance for each kelvin, 1/K; that of common thermistors outside. */
  private double slope(double kelvin) {
    double change = Math.log(curve.ohm(kelvin + 1) / curve.ohm(kelvin - 1)) / 2;
    return Double.isFinite(change) && change != 0 ? change : USUAL_SLOPE;
  }
}
