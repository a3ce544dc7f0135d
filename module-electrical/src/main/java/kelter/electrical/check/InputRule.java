package kelter.electrical.check;

import java.util.Optional;
import kelter.core.check.Limits;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.electrical.component.Electrical;
import kelter.electrical.heater.CurrentInputBand;
import kelter.electrical.heater.PowerInputBand;
import kelter.electrical.rating.Stated;

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
    double rated = Stated.si(motor.nameplate().current());
    if (!(rated > 0)) {
      return Optional.empty();
    }
    return Optional.of(
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
    double power = Stated.si(heater.nameplate().power());
    double rated = Stated.voltage(job.appliance(), heater);
    if (!(power > 25) || Double.isNaN(rated)) {
      return Optional.empty();
    }
    double stated = Stated.si(measurement.conditions().figure(Electrical.VOLTAGE.id()));
    boolean isStated = stated > 0;
    double least = (isStated ? stated : rated * (1 - MAINS)) / rated;
    double most = (isStated ? stated : rated * (1 + MAINS)) / rated;
    double unit = exponent == 2 ? 1 : rated;
    Limits band = PowerInputBand.heating(power);
    return Optional.of(
        new LimitCheck.Allowed(
            new Limits(
                band.low() / unit * Math.pow(least, exponent),
                band.high() / unit * Math.pow(most, exponent)),
            PowerInputBand.SOURCE,
            exponent == 2 ? "power against rated power" : "current against rated power and voltage",
            isStated
                ? "brought to the voltage of the reading"
                : "mains of 10 % to either side taken, because no voltage is stated",
            Optional.empty()));
  }
}
