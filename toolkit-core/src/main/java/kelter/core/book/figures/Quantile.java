package kelter.core.book.figures;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import kelter.core.source.Source;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * What a share of some figures does not exceed, without any law: the figure of rank ceil(n p). Its
 * interval of 95 % runs between two of the figures, whose ranks follow from the binomial
 * distribution; an end that so few figures do not tell is missing.
 *
 * @param number of how many figures, 1 or more
 * @param share the share, above 0 and below 1
 * @param value the figure
 * @param low the lower end of the interval
 * @param high the upper end
 */
public record Quantile(
    int number, double share, double value, OptionalDouble low, OptionalDouble high) {

  /** Where the ranks come from. */
  public static final Source SOURCE =
      Source.fromMemory("David and Nagaraja, Order Statistics, 3rd edition (2003), 7.1");

  /**
   * A quantile of figures.
   *
   * @param figures the figures, in any order
   * @param share the share, above 0 and below 1
   * @return the quantile; empty if there are none
   */
  static Optional<Quantile> of(double[] figures, double share) {
    int n = figures.length;
    if (n == 0) {
      return Optional.empty();
    }
    double[] sorted = figures.clone();
    Arrays.sort(sorted);
    BinomialDistribution below = BinomialDistribution.of(n, share);
    int low = 0;
    while (low < n && below.cumulativeProbability(low) <= Interval.TAIL) {
      low++;
    }
    int high = low;
    while (high < n && below.cumulativeProbability(high) < 1 - Interval.TAIL) {
      high++;
    }
    return Optional.of(
        new Quantile(
            n,
            share,
            sorted[Math.max(1, (int) Math.ceil(n * share)) - 1],
            low == 0 ? OptionalDouble.empty() : OptionalDouble.of(sorted[low - 1]),
            high >= n ? OptionalDouble.empty() : OptionalDouble.of(sorted[high])));
  }
}
