package kelter.costing.survival;

import java.util.List;
import java.util.SortedSet;
import kelter.core.source.Source;
import org.apache.commons.numbers.gamma.RegularizedGamma;

/**
 * Whether two groups of lives differ: at each failure time the failures of the first group are held
 * against those expected if both groups were alike.
 *
 * <p>{@code chi-squared = (observed - expected)^2 / variance}, one degree of freedom, with the
 * hypergeometric variance. Good for a dozen failures or more.
 *
 * <p>Source: Mantel, Cancer Chemother. Rep. 50 (1966) 163 (from memory).
 *
 * @param observed the failures of the first group
 * @param expected the failures of the first group if both were alike
 * @param variance the variance of the failures if both were alike
 */
public record LogRank(int observed, double expected, double variance) {

  /** Where the method comes from. */
  public static final Source SOURCE =
      Source.fromMemory("Mantel, Cancer Chemother. Rep. 50 (1966) 163");

  /**
   * Compares two groups.
   *
   * @param first the lives of one group
   * @param second the lives of the other
   * @return the comparison
   * @throws IllegalArgumentException if no failure tells the groups apart
   */
  public static LogRank of(List<Observed> first, List<Observed> second) {
    SortedSet<Double> times = Observed.failures(first);
    times.addAll(Observed.failures(second));
    double expected = 0;
    double variance = 0;
    for (double time : times) {
      double atRiskFirst = Observed.atRisk(first, time);
      double atRisk = atRiskFirst + Observed.atRisk(second, time);
      double failed = Observed.failed(first, time) + Observed.failed(second, time);
      double share = atRiskFirst / atRisk;
      expected += failed * share;
      if (atRisk > 1) {
        variance += failed * share * (1 - share) * (atRisk - failed) / (atRisk - 1);
      }
    }
    if (!(variance > 0)) {
      throw new IllegalArgumentException(
          "no failure at which lives of both groups were at risk; the groups cannot be compared");
    }
    int observed = (int) first.stream().filter(Observed::failed).count();
    return new LogRank(observed, expected, variance);
  }

  /**
   * How far the groups are apart.
   *
   * @return the statistic, chi-squared with one degree of freedom if both are alike
   */
  public double chiSquared() {
    return (observed - expected) * (observed - expected) / variance;
  }

  /**
   * How often groups that are alike are at least so far apart.
   *
   * @return a probability from 0 to 1
   */
  public double probability() {
    return RegularizedGamma.Q.value(0.5, chiSquared() / 2);
  }
}
