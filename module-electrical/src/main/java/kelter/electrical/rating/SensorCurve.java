package kelter.electrical.rating;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import kelter.core.job.Component;
import kelter.core.job.Curve;
import kelter.core.quantity.Quantity;
import kelter.core.source.Source;
import kelter.electrical.component.ControlKinds;
import kelter.electrical.sensor.BetaThermistor;
import kelter.electrical.sensor.PlatinumThermometer;

/**
 * What a temperature sensor in good order has, over temperature.
 *
 * @param resistance resistance in Ohm by temperature in K; NaN outside the sensor's own table
 * @param source where it comes from
 */
public record SensorCurve(DoubleUnaryOperator resistance, Source source) {

  /**
   * Reads the curve of a sensor: its own table, else R25 and beta, else the platinum curve.
   *
   * @param sensor a temperature sensor
   * @return the curve, or empty if the job states none
   */
  public static Optional<SensorCurve> of(Component sensor) {
    Optional<Curve> table = sensor.curve(ControlKinds.TABLE.id());
    if (table.isPresent()) {
      double[] kelvin = table.get().xSi();
      double[] ohm = table.get().ySi();
      return Optional.of(new SensorCurve(t -> interpolate(kelvin, ohm, t), sensor.source()));
    }
    Optional<Double> r25 = figure(sensor, ControlKinds.R25.id());
    Optional<Double> beta = figure(sensor, ControlKinds.BETA.id());
    if (r25.isPresent() && beta.isPresent()) {
      BetaThermistor thermistor = new BetaThermistor(r25.get(), beta.get());
      return Optional.of(new SensorCurve(thermistor::resistance, sensor.source()));
    }
    return figure(sensor, ControlKinds.R0.id())
        .map(
            r0 ->
                new SensorCurve(
                    t -> PlatinumThermometer.resistance(r0, t), PlatinumThermometer.SOURCE));
  }

  private static Optional<Double> figure(Component sensor, String name) {
    return sensor.figure(name).map(Quantity::si).filter(value -> value > 0);
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
