package kelter.electrical.check;

import java.util.Optional;
import kelter.core.check.Limits;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.core.source.Source;
import kelter.electrical.component.HeaterKinds;
import kelter.electrical.heater.HeaterResistance;
import kelter.electrical.rating.RatedInput;
import kelter.electrical.rating.Stated;

/**
 * What a cold heater may measure: at least the least resistance that its nameplate allows, less the
 * 3 % by which heating wire may measure less when cold, and at most the greatest. Without a rated
 * power, its service figure within 10 %.
 */
final class HeaterRule {

  /** How much less a cold heater may measure; {@code AlloyResistance}, as a ratio. */
  private static final double COLD_ALLOWANCE = 0.03;

  /** How far a reading may lie from a service figure, as a ratio; common practice, no source. */
  private static final double FROM_FIGURE = 0.10;

  /** Above this many times the upper limit the element is as good as open. */
  private static final double OPEN = 20;

  /** Below this share of the lower limit it is a short. */
  private static final double SHORT = 0.2;

  private static final Caution DO_NOT_CONNECT =
      new Caution(
          Signal.WARNING,
          "Do not put this heater under voltage again before the reading is explained: a short heats"
              + " wires and contacts within seconds.");

  private HeaterRule() {}

  static Optional<LimitCheck.Allowed> of(Job job, Component heater, Measurement measurement) {
    Optional<RatedInput> input = RatedInput.of(job.appliance(), heater);
    if (input.isPresent() && input.get().hasBand()) {
      Limits hot = input.get().resistance();
      Limits limits = new Limits(hot.low() * (1 - COLD_ALLOWANCE), hot.high());
      return Optional.of(
          allowed(
              limits,
              input.get().source(HeaterResistance.SOURCE),
              "resistance against rated power and voltage",
              measurement,
              input
                  .get()
                  .remark("lower limit less 3 %, because heating wire measures less when cold")));
    }
    double figure = Stated.si(heater.figure(HeaterKinds.COLD_RESISTANCE.id()));
    if (Double.isNaN(figure)) {
      return Optional.empty();
    }
    return Optional.of(
        allowed(
            new Limits(figure * (1 - FROM_FIGURE), figure * (1 + FROM_FIGURE)),
            Source.commonPractice("service figure of the heater, within 10 %"),
            "resistance against service figure",
            measurement,
            ""));
  }

  private static LimitCheck.Allowed allowed(
      Limits limits, Source source, String title, Measurement measurement, String basis) {
    String words = words(measurement.readings().get(0), limits);
    String remark = words.isEmpty() || basis.isEmpty() ? words + basis : words + "; " + basis;
    boolean tooLow = measurement.readings().get(0).most() < limits.low();
    return new LimitCheck.Allowed(
        limits, source, title, remark, tooLow ? Optional.of(DO_NOT_CONNECT) : Optional.empty());
  }

  /** What an extreme reading means. */
  private static String words(Reading reading, Limits limits) {
    if (reading.most() < SHORT * limits.low()) {
      return "a short: the current would be many times the rated one, or the leads touch each"
          + " other";
    }
    return reading.least() > OPEN * limits.high()
        ? "an open element: no current can flow through it, so it cannot heat"
        : "";
  }
}
