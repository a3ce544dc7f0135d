package kelter.costing.survival;

import java.util.List;
import kelter.core.uncertainty.Normal;
import kelter.costing.life.Lognormal;

/**
 * The lognormal life that makes observed lives likeliest, censored ones included: to be held
 * against {@link WeibullFit} by Akaike's criterion.
 *
 * <p>Found by expectation and maximization: each censored logarithm is replaced by its mean and its
 * square by the mean square of a normal variable known to lie beyond it, then mean and standard
 * deviation are taken, until neither moves by more than 10^-12 of the standard deviation.
 *
 * <p>Source: Dempster, Laird and Rubin, J. R. Statist. Soc. B 39 (1977) 1, from memory.
 *
 * @param life the fitted life, in the unit of the observed times
 * @param failures how many of the lives ended by failure
 * @param logLikelihood the natural logarithm of the likelihood
 */
public record LognormalFit(Lognormal life, int failures, double logLikelihood) {

  private static final double CLOSE = 1e-12;
  private static final int MOST_ROUNDS = 100_000;
  private static final int PARAMETERS = 2;

  /**
   * Fits a life.
   *
   * @param observed the lives
   * @return the fit
   * @throws IllegalArgumentException if fewer than two different failures were observed
   * @throws ArithmeticException if the rounds do not settle, which needs nearly all lives censored
   *     early
   */
  public static LognormalFit of(List<Observed> observed) {
    double[] failed =
        observed.stream().filter(Observed::failed).mapToDouble(Observed::time).distinct().toArray();
    if (failed.length < 2) {
      throw new IllegalArgumentException(
          "%s different failures; a lognormal fit needs two or more".formatted(failed.length));
    }
    double mean = observed.stream().mapToDouble(o -> Math.log(o.time())).average().orElseThrow();
    double deviation = 1;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double[] next = maximized(observed, mean, deviation);
      double moved = Math.abs(next[0] - mean) + Math.abs(next[1] - deviation);
      mean = next[0];
      deviation = next[1];
      if (moved < CLOSE * deviation) {
        int failures = (int) observed.stream().filter(Observed::failed).count();
        return new LognormalFit(
            new Lognormal(Math.exp(mean), deviation),
            failures,
            logLikelihood(observed, mean, deviation));
      }
    }
    throw new ArithmeticException("the fit did not settle in " + MOST_ROUNDS + " rounds");
  }

  private static double[] maximized(List<Observed> observed, double mean, double deviation) {
    double sum = 0;
    double squares = 0;
    for (Observed life : observed) {
      double z = (Math.log(life.time()) - mean) / deviation;
      double hazard = Math.exp(Normal.logDensity(z) - Normal.logCdf(-z));
      sum += life.failed() ? z : hazard;
      squares += life.failed() ? z * z : 1 + z * hazard;
    }
    double shift = sum / observed.size();
    double variance = squares / observed.size() - shift * shift;
    return new double[] {mean + shift * deviation, deviation * Math.sqrt(variance)};
  }

  private static double logLikelihood(List<Observed> observed, double mean, double deviation) {
    double sum = 0;
    for (Observed life : observed) {
      double z = (Math.log(life.time()) - mean) / deviation;
      sum +=
          life.failed()
              ? Normal.logDensity(z) - Math.log(deviation * life.time())
              : Normal.logCdf(-z);
    }
    return sum;
  }

  /**
   * Akaike's information criterion: of two kinds of life fitted to the same data, the smaller one
   * fits better.
   *
   * @return twice the number of parameters less twice the log-likelihood
   */
  public double aic() {
    return 2 * PARAMETERS - 2 * logLikelihood;
  }
}
