package kelter.core.diagnosis.learning;

import kelter.core.source.Source;

/**
 * What is known of a share, such as how often a remedy cures, once cases were counted: {@code
 * Beta(a, b)} with a cases for and b against, those that the prior is worth included.
 *
 * @param a cases for, above 0
 * @param b cases against, above 0
 */
public record BetaDistribution(double a, double b) {

  /** Where the update and the moments come from. */
  public static final Source SOURCE =
      Source.fromMemory("Gelman et al., Bayesian Data Analysis, 3rd edition (2013), 2.4 and A.1");

  /**
   * Checks that both are above 0.
   *
   * @throws IllegalArgumentException if they are not, or not finite
   */
  public BetaDistribution {
    if (!(a > 0 && b > 0 && a + b < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          a + " cases for and " + b + " against; more than 0 of each are allowed");
    }
  }

  /**
   * What is known once more cases were counted.
   *
   * @param cases how many, 0 or more
   * @param successes how many of them were for, at most all
   * @return the new distribution
   * @throws IllegalArgumentException if there are more successes than cases, or fewer than 0
   */
  public BetaDistribution and(double cases, double successes) {
    if (!(successes >= 0 && successes <= cases)) {
      throw new IllegalArgumentException(
          successes + " of " + cases + " cases were for; 0 to all are allowed");
    }
    return new BetaDistribution(a + successes, b + cases - successes);
  }

  /**
   * The mean share.
   *
   * @return a ratio from 0 to 1
   */
  public double mean() {
    return a / (a + b);
  }

  /**
   * The standard deviation of the share.
   *
   * @return a ratio
   */
  public double standardDeviation() {
    double n = a + b;
    return Math.sqrt(a / n * (b / n) / (n + 1));
  }

  /**
   * The share below which the true one lies with a given probability.
   *
   * @param probability from 0 to 1
   * @return a ratio from 0 to 1
   * @throws IllegalArgumentException if the probability is not from 0 to 1
   */
  public double quantile(double probability) {
    if (!(probability >= 0 && probability <= 1)) {
      throw new IllegalArgumentException("a quantile at " + probability + "; 0 to 1 is allowed");
    }
    return org.apache.commons.statistics.distribution.BetaDistribution.of(a, b)
        .inverseCumulativeProbability(probability);
  }
}
