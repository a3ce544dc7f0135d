package kelter.electrical.rating;

import java.util.Optional;
import kelter.core.check.Limits;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.RatedRange;
import kelter.core.source.Source;

/**
 * Between which voltages the mains lie on which a part runs: on a North American net those of ANSI
 * C84.1 at the outlet, elsewhere 10 % below the lower limit of the rated voltage to 10 % above the
 * upper one.
 *
 * @param limits least and greatest voltage, V
 * @param source where they stand
 */
public record MainsRange(Limits limits, Source source) {

  /** Mains range, as a ratio: (EU) 2019/2014, Art. 2, and IEC 60038. */
  private static final double DEVIATION = 0.10;

  /** Where the range of a rated voltage by itself comes from. */
  public static final Source RATED =
      Source.commonPractice("the mains range of 10 % to either side of the rated voltage");

  /**
   * The mains of a heater.
   *
   * @param appliance the machine
   * @param heater one of its heaters
   * @return the range, or empty if neither states a voltage
   */
  public static Optional<MainsRange> of(Appliance appliance, Component heater) {
    Optional<RatedRange> rated = RatedInput.voltage(appliance, heater);
    if (rated.isEmpty()) {
      return Optional.empty();
    }
    Optional<SupplyNet> net =
        NorthAmerica.supplies(appliance.nameplate())
            ? SupplyNet.of(rated.get(), appliance.nameplate().frequency())
            : Optional.empty();
    return Optional.of(
        net.isPresent() ? new MainsRange(net.get().limits(), net.get().source()) : of(rated.get()));
  }

  /**
   * The mains by a rated voltage alone.
   *
   * @param rated the rated voltage
   * @return 10 % beyond it to either side
   */
  public static MainsRange of(RatedRange rated) {
    return new MainsRange(
        new Limits(rated.low().si() * (1 - DEVIATION), rated.high().si() * (1 + DEVIATION)), RATED);
  }
}
