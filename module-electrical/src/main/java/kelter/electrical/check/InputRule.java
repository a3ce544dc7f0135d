package kelter.electrical.check;

import java.util.Optional;
import kelter.core.check.Limits;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.quantity.Quantity;
import kelter.electrical.component.Electrical;
import kelter.electrical.heater.CurrentInputBand;
import kelter.electrical.heater.PowerInputBand;

/**
 * What a heater takes against its rated power: the band of IEC 60335-1, clause 10, brought to the
 * voltage of the reading. Where no voltage is stated, the limits span the mains range of 10 % to
 * either side.
 */
final class InputRule {

  /** Mains range, as a ratio: (EU) 2019/2014, Art. 2, and IEC 60038. */
  private static final double MAINS = 0.10;

  private InputRule() {}

  static Optional<LimitCheck.Allowed> power(Job job, Component heater, Measurement measurement) {
    return allowed(job, heater, measurement, 2);
  }

  static Optional<LimitCheck.Allowed> current(Job job, Component heater, Measurement measurement) {
    return allowed(job, heater, measurement, 1);
  }

  static Optional<LimitCheck.Allowed> motor(Job job, Component motor, Measurement measurement) {
    return motor
        .nameplate()
        .current()
        .map(Quantity::si)
        .filter(rated -> rated > 0)
        .map(
            rated ->
                new LimitCheck.Allowed(
                    CurrentInputBand.motor(rated),
                    CurrentInputBand.SOURCE,
                    "motor current against rated current",
                    "no lower limit: a motor without load takes less",
                    Optional.empty()));
  }

  /** Power goes with the square of the voltage, current with the voltage itself. */
  private static Optional<LimitCheck.Allowed> allowed(
      Job job, Component heater, Measurement measurement, int exponent) {
    Optional<Double> power = heater.nameplate().power().map(Quantity::si).filter(p -> p > 25);
    Optional<Double> rated =
        heater
            .nameplate()
            .voltage()
            .or(() -> job.appliance().nameplate().voltage())
            .map(Quantity::si);
    if (power.isEmpty() || rated.isEmpty()) {
      return Optional.empty();
    }
    Optional<Double> stated =
        measurement
            .conditions()
            .figure(Electrical.VOLTAGE.id())
            .map(Quantity::si)
            .filter(u -> u > 0);
    double least = stated.orElse(rated.get() * (1 - MAINS)) / rated.get();
    double most = stated.orElse(rated.get() * (1 + MAINS)) / rated.get();
    double unit = exponent == 2 ? 1 : rated.get();
    Limits band = PowerInputBand.heating(power.get());
    return Optional.of(
        new LimitCheck.Allowed(
            new Limits(
                band.low() / unit * Math.pow(least, exponent),
                band.high() / unit * Math.pow(most, exponent)),
            PowerInputBand.SOURCE,
            exponent == 2 ? "power against rated power" : "current against rated power and voltage",
            stated.isPresent()
                ? "brought to the voltage of the reading"
                : "mains of 10 % to either side taken, because no voltage is stated",
            Optional.empty()));
  }
}
