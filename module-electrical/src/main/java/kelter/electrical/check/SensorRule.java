package kelter.electrical.check;

import java.util.Optional;
import kelter.core.check.Limits;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.quantity.Quantity;
import kelter.core.source.Source;
import kelter.electrical.component.Electrical;
import kelter.electrical.rating.SensorCurve;
import kelter.electrical.rating.Stated;

/**
 * What a temperature sensor may measure: what its table or curve says at the temperature stated,
 * within 5 %. Where no temperature is stated, the limits span what it may have from 15 °C to 25 °C.
 */
final class SensorRule {

  /** How far a reading may lie from the table, as a ratio; common practice, no source. */
  private static final double FROM_TABLE = 0.05;

  /** The room where no temperature is stated, K. */
  private static final double COOL_ROOM = 288.15;

  private static final double WARM_ROOM = 298.15;

  /** How far the machine's own temperature may be off, K; common practice, no source. */
  private static final double SHOWN = 5;

  private SensorRule() {}

  static Optional<LimitCheck.Allowed> shown(Job job, Component sensor, Measurement measurement) {
    return Optional.of(
        new LimitCheck.Allowed(
            new Limits(-SHOWN, SHOWN),
            Source.commonPractice("the machine shows the temperature within 5 K"),
            "temperature shown against a thermometer",
            "",
            Optional.empty()));
  }

  static Optional<LimitCheck.Allowed> of(Job job, Component sensor, Measurement measurement) {
    Optional<SensorCurve> curve = SensorCurve.of(sensor);
    return curve.isPresent()
        ? allowed(curve.get(), measurement.conditions().figure(Electrical.TEMPERATURE.id()))
        : Optional.empty();
  }

  private static Optional<LimitCheck.Allowed> allowed(
      SensorCurve curve, Optional<Quantity> stated) {
    double a;
    double b;
    try {
      a = curve.resistance().applyAsDouble(Stated.si(stated, COOL_ROOM));
      b = curve.resistance().applyAsDouble(Stated.si(stated, WARM_ROOM));
    } catch (IllegalArgumentException outsideTheCurve) {
      return Optional.empty();
    }
    if (!Double.isFinite(a + b)) {
      return Optional.empty();
    }
    return Optional.of(
        new LimitCheck.Allowed(
            new Limits(Math.min(a, b) * (1 - FROM_TABLE), Math.max(a, b) * (1 + FROM_TABLE)),
            Source.commonPractice(
                "within 5 % of the sensor's curve; curve: " + curve.source().display()),
            "sensor resistance against its curve",
            stated.isPresent() ? "" : "15 °C to 25 °C taken, because no temperature is stated",
            Optional.empty()));
  }
}
