package kelter.electrical.check;

import java.util.Optional;
import kelter.core.check.Limits;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.law.PowerInputBand;
import kelter.electrical.component.Electrical;
import kelter.electrical.rating.MainsRange;
import kelter.electrical.rating.RatedInput;
import kelter.electrical.rating.Stated;

/**
 * What a heater takes against its rated power: the band of IEC 60335-1, clause 10, brought to the
 * voltage of the reading. Where no voltage is stated, the limits span the mains range of 10 % to
 * either side. Where the nameplate has a range of voltages, {@link RatedInput} says to which its
 * power belongs.
 */
final class InputRule {

  private InputRule() {}

  static Optional<LimitCheck.Allowed> power(Job job, Component heater, Measurement measurement) {
    return allowed(job, heater, measurement, 2);
  }

  static Optional<LimitCheck.Allowed> current(Job job, Component heater, Measurement measurement) {
    return allowed(job, heater, measurement, 1);
  }

  /** Power goes with the square of the voltage, current with the voltage itself. */
  private static Optional<LimitCheck.Allowed> allowed(
      Job job, Component heater, Measurement measurement, int exponent) {
    Optional<RatedInput> input = RatedInput.of(job.appliance(), heater);
    if (input.isEmpty() || !input.get().hasBand()) {
      return Optional.empty();
    }
    double stated = Stated.si(measurement.conditions().figure(Electrical.VOLTAGE.id()));
    boolean isStated = stated > 0;
    Limits mains =
        isStated
            ? new Limits(stated, stated)
            : MainsRange.of(Stated.voltage(job.appliance(), heater).orElseThrow());
    Limits power = input.get().power(mains.low(), mains.high());
    return Optional.of(
        new LimitCheck.Allowed(
            exponent == 2
                ? power
                : new Limits(power.low() / mains.low(), power.high() / mains.high()),
            input.get().source(PowerInputBand.SOURCE),
            exponent == 2 ? "power against rated power" : "current against rated power and voltage",
            input
                .get()
                .remark(
                    isStated
                        ? "brought to the voltage of the reading"
                        : "mains of 10 % to either side taken, because no voltage is stated"),
            Optional.empty()));
  }
}
