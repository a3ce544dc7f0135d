package kelter.electrical.check;

import java.util.Optional;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.electrical.heater.CurrentInputBand;
import kelter.electrical.rating.Stated;

/** What a motor takes against its rated current. */
final class InputRule {

  private InputRule() {}

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
}
