package kelter.core.diagnosis.learning;

import java.util.List;
import kelter.core.source.Source;
import org.apache.commons.numbers.gamma.LogGamma;

/**
 * As how many jobs a table counts against what was counted: the strength s of Dirichlet priors
 * about the table that makes the counts and a guess of s most likely together. Counts that keep to
 * the table speak for a great s, counts that stray from it for a small one.
 *
 * <p>ln P(n | s) is the sum over all samples of ln G(s) - ln G(s + N) + sum_k [ln G(s p_k + n_k) -
 * ln G(s p_k)] with the gamma function G, and the guess is log-normal. It is looked for on a grid
 * of {@value #STEPS} steps between the bounds.
 */
public final class Strength {

  /** Where the marginal likelihood comes from. */
  public static final Source SOURCE =
      Source.fromMemory(
          "Minka, Estimating a Dirichlet distribution (2000), on the Polya distribution");

  private static final int STEPS = 60;

  private Strength() {}

  /**
   * What was counted where a table tells the shares.
   *
   * @param prior the share of each class by the table, 0 or more, summing to 1
   * @param counts how often each was met, 0 or more; old jobs may count for less than one
   */
  public record Sample(double[] prior, double[] counts) {

    double logLikelihood(double strength) {
      double jobs = 0;
      double sum = 0;
      for (int k = 0; k < counts.length; k++) {
        double alpha = strength * prior[k];
        if (counts[k] > 0) {
          sum += LogGamma.value(alpha + counts[k]) - LogGamma.value(alpha);
          jobs += counts[k];
        }
      }
      return sum + LogGamma.value(strength) - LogGamma.value(strength + jobs);
    }

    /**
     * How many were counted.
     *
     * @return the sum of the counts
     */
    public double number() {
      double sum = 0;
      for (double each : counts) {
        sum += each;
      }
      return sum;
    }

    /** A class that was met although the table gives it no share tells nothing of s. */
    private boolean isPossible() {
      for (int k = 0; k < counts.length; k++) {
        if (counts[k] > 0 && !(prior[k] > 0)) {
          return false;
        }
      }
      return true;
    }
  }

  /**
   * What is taken for granted of a strength.
   *
   * @param usual the likeliest before anything was counted, jobs
   * @param spread the standard deviation of its natural logarithm, above 0
   * @param least the least that is allowed, jobs, above 0
   * @param most the greatest that is allowed, jobs
   */
  public record Guess(double usual, double spread, double least, double most) {

    /**
     * Checks the order of the figures.
     *
     * @throws IllegalArgumentException if the usual strength is not between the bounds, or a figure
     *     is not above 0
     */
    public Guess {
      if (!(least > 0 && least <= usual && usual <= most && spread > 0)) {
        throw new IllegalArgumentException(
            "a strength of %s within %s to %s, spread %s".formatted(usual, least, most, spread));
      }
    }

    double logDensity(double strength) {
      double deviate = Math.log(strength / usual) / spread;
      return -deviate * deviate / 2;
    }
  }

  /**
   * The likeliest strength.
   *
   * @param samples what was counted, each against its own table; all share one strength
   * @param guess what is taken for granted of it
   * @return jobs, within the bounds of the guess; the usual one if nothing was counted
   */
  public static double of(List<Sample> samples, Guess guess) {
    List<Sample> telling = samples.stream().filter(Sample::isPossible).toList();
    double best = guess.usual();
    double highest = at(best, telling, guess);
    double step = Math.log(guess.most() / guess.least()) / STEPS;
    for (int i = 0; i <= STEPS; i++) {
      double strength = Math.min(guess.most(), guess.least() * Math.exp(i * step));
      double height = at(strength, telling, guess);
      if (height > highest) {
        highest = height;
        best = strength;
      }
    }
    return best;
  }

  private static double at(double strength, List<Sample> samples, Guess guess) {
    double sum = guess.logDensity(strength);
    for (Sample sample : samples) {
      sum += sample.logLikelihood(strength);
    }
    return sum;
  }
}
