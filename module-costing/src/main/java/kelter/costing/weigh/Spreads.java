package kelter.costing.weigh;

import java.util.Arrays;
import kelter.core.option.Option;

/** Mean and quantiles of draws. */
final class Spreads {

  private static final double LOW = 0.05;
  private static final double MEDIAN = 0.5;
  private static final double HIGH = 0.95;

  private Spreads() {}

  /** The spread of some draws, with their own mean. */
  static Option.Spread of(double[] draws) {
    return of(Arrays.stream(draws).sum() / draws.length, draws);
  }

  /** The spread of some draws around a mean that is known better than by them. */
  static Option.Spread of(double mean, double[] draws) {
    double[] sorted = draws.clone();
    Arrays.sort(sorted);
    return new Option.Spread(mean, at(sorted, LOW), at(sorted, MEDIAN), at(sorted, HIGH));
  }

  private static double at(double[] sorted, double share) {
    return sorted[(int) Math.min(sorted.length - 1.0, Math.floor(share * sorted.length))];
  }
}
