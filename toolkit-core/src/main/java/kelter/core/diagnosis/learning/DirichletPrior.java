package kelter.core.diagnosis.learning;

import kelter.core.source.Source;

/**
 * What is expected of the next job once some were counted: the prior stands for as many jobs as it
 * is worth, {@code alpha_k = s p_k}, and the prediction is {@code P(k) = (n_k + alpha_k) / (N + s)}
 * with N the sum of the counts and s the sum of the alphas.
 *
 * <p>Only confirmed causes may be counted, and each job once. A count may be a fraction: older jobs
 * count for less ({@link #faded}).
 */
public final class DirichletPrior {

  /** Where the prediction comes from. */
  public static final Source SOURCE =
      Source.fromMemory("Gelman et al., Bayesian Data Analysis, 3rd edition (2013), 3.4");

  /** What a job still counts for after each year. */
  public static final double KEPT_PER_YEAR = 0.9;

  /** Where {@link #KEPT_PER_YEAR} comes from. */
  public static final Source KEPT_SOURCE =
      Source.commonPractice("a job counts for a tenth less with each year");

  private static final double SUM_TOLERANCE = 1e-9;

  private final double[] alpha;
  private final double equivalentJobs;

  private DirichletPrior(double[] alpha) {
    this.alpha = alpha;
    this.equivalentJobs = sum(alpha);
  }

  /**
   * A prior that is worth so many jobs.
   *
   * @param prior the probability of each class, 0 to 1, summing to 1
   * @param equivalentJobs how many jobs it is worth, above 0
   * @return the prior
   * @throws IllegalArgumentException if the prior is no distribution, or the jobs are not above 0
   */
  public static DirichletPrior of(double[] prior, double equivalentJobs) {
    if (!(equivalentJobs > 0 && equivalentJobs < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "a prior worth " + equivalentJobs + " jobs; more than 0 are allowed");
    }
    double[] alpha = new double[prior.length];
    for (int k = 0; k < alpha.length; k++) {
      notNegative(prior[k], "a probability");
      alpha[k] = prior[k] * equivalentJobs;
    }
    double sum = sum(prior);
    if (!(Math.abs(sum - 1) <= SUM_TOLERANCE)) {
      throw new IllegalArgumentException(
          "probabilities that sum to " + sum + "; those of all classes sum to 1");
    }
    return new DirichletPrior(alpha);
  }

  /**
   * What a count is still worth.
   *
   * @param count how many jobs, 0 or more
   * @param years how long ago, 0 or more
   * @return the count times {@link #KEPT_PER_YEAR} for each year
   * @throws IllegalArgumentException if the count or the years are negative or not finite
   */
  public static double faded(double count, double years) {
    notNegative(count, "a count");
    notNegative(years, "an age in years");
    return count * Math.pow(KEPT_PER_YEAR, years);
  }

  /**
   * The probability of each class in the next job.
   *
   * @param counts how often each class was confirmed, 0 or more
   * @return the probabilities, summing to 1
   * @throws IllegalArgumentException if there are not as many counts as classes, or one is negative
   *     or not finite
   */
  public double[] predictive(double[] counts) {
    double all = jobs(counts) + equivalentJobs;
    double[] p = new double[alpha.length];
    for (int k = 0; k < p.length; k++) {
      p[k] = (counts[k] + alpha[k]) / all;
    }
    return p;
  }

  /**
   * How much of the prediction comes from the counts.
   *
   * @param counts how often each class was confirmed, 0 or more
   * @return N / (N + s), as a ratio from 0 to 1
   * @throws IllegalArgumentException if there are not as many counts as classes, or one is negative
   *     or not finite
   */
  public double weightOfCounts(double[] counts) {
    double jobs = jobs(counts);
    return jobs / (jobs + equivalentJobs);
  }

  /**
   * How well the share of one class is known.
   *
   * @param k the number of the class
   * @param counts how often each class was confirmed, 0 or more
   * @return the distribution of its share
   * @throws IllegalArgumentException if there are not as many counts as classes, one is negative or
   *     not finite, or the class is the only one that can be or one that cannot
   */
  public BetaDistribution share(int k, double[] counts) {
    double all = jobs(counts) + equivalentJobs;
    double own = counts[k] + alpha[k];
    return new BetaDistribution(own, all - own);
  }

  private double jobs(double[] counts) {
    if (counts.length != alpha.length) {
      throw new IllegalArgumentException(
          counts.length + " counts for " + alpha.length + " classes");
    }
    for (double count : counts) {
      notNegative(count, "a count");
    }
    return sum(counts);
  }

  private static void notNegative(double value, String what) {
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(what + " of " + value + "; 0 or more is allowed");
    }
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }
}
