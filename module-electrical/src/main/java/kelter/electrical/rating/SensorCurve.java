package kelter.electrical.rating;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import kelter.core.job.Component;
import kelter.core.job.Curve;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.CurveKind;
import kelter.core.vocabulary.Span;
import kelter.electrical.sensor.BetaThermistor;
import kelter.electrical.sensor.PlatinumThermometer;

/**
 * What a temperature sensor in good order has, over temperature.
 *
 * @param resistance resistance in Ohm by temperature in K; NaN outside the sensor's own table
 * @param source where it comes from
 */
public record SensorCurve(DoubleUnaryOperator resistance, Source source) {

  /** The resistance of a thermistor at 25 °C. */
  public static final Characteristic R25 =
      new Characteristic("r25", "resistance at 25 °C", QuantityKind.RESISTANCE)
          .within(new Span(1, 1e7));

  /** The constant of a thermistor. */
  public static final Characteristic BETA =
      new Characteristic(
              "beta", "thermistor constant beta", QuantityKind.of("thermistor constant", "K"))
          .within(new Span(500, 10_000));

  /** The resistance of a platinum thermometer at 0 °C. */
  public static final Characteristic R0 =
      new Characteristic(
              "r0", "resistance of a platinum thermometer at 0 °C", QuantityKind.RESISTANCE)
          .within(new Span(1, 1e4));

  /** The table of a sensor. */
  public static final CurveKind TABLE =
      new CurveKind(
          "resistance",
          "resistance over temperature",
          QuantityKind.TEMPERATURE,
          QuantityKind.RESISTANCE);

  /**
   * Reads the curve of a sensor: its own table, else R25 and beta, else the platinum curve.
   *
   * @param sensor a temperature sensor
   * @return the curve, or empty if the job states none
   */
  public static Optional<SensorCurve> of(Component sensor) {
    Optional<Curve> table = sensor.curve(TABLE);
    if (table.isPresent()) {
      double[] kelvin = table.get().xSi();
      double[] ohm = table.get().ySi();
      return Optional.of(new SensorCurve(t -> interpolate(kelvin, ohm, t), sensor.source()));
    }
    double r25 = sensor.si(R25);
    double beta = sensor.si(BETA);
    if (r25 > 0 && beta > 0) {
      BetaThermistor thermistor = new BetaThermistor(r25, beta);
      return Optional.of(new SensorCurve(thermistor::resistance, sensor.source()));
    }
    double r0 = sensor.si(R0);
    if (r0 > 0) {
      return Optional.of(
          new SensorCurve(t -> PlatinumThermometer.resistance(r0, t), PlatinumThermometer.SOURCE));
    }
    return Optional.empty();
  }

  /**
   * Its resistance.
   *
   * @param kelvin the temperature, K
   * @return the resistance, Ohm; NaN where the curve does not hold
   */
  public double ohm(double kelvin) {
    try {
      return resistance.applyAsDouble(kelvin);
    } catch (IllegalArgumentException outside) {
      return Double.NaN;
    }
  }

  /** Linear in 1/T and ln R between points, which a thermistor nearly is; NaN outside. */
  private static double interpolate(double[] kelvin, double[] ohm, double t) {
    if (!(t >= kelvin[0] && t <= kelvin[kelvin.length - 1])) {
      return Double.NaN;
    }
    int i = 1;
    while (t > kelvin[i]) {
      i++;
    }
    double share = (1 / t - 1 / kelvin[i - 1]) / (1 / kelvin[i] - 1 / kelvin[i - 1]);
    return ohm[i - 1] * Math.pow(ohm[i] / ohm[i - 1], share);
  }
}
