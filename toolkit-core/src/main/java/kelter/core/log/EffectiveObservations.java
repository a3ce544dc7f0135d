package kelter.core.log;

import java.util.Arrays;
import kelter.core.source.Source;

/**
 * How many independent observations a run of samples is worth, each of which resembles the last.
 *
 * <p>The number is {@code n_eff = n / (1 + 2 sum (1 - k/n) r(k))} with the sum over the lags k, and
 * the standard uncertainty of the mean {@code u^2 = sum (x - m)^2 / (n (n_eff - 1))}. For samples
 * that do not resemble each other this is n and the experimental standard deviation of the mean
 * (JCGM 100:2008, equation (5)). The sum over estimated coefficients ends before the first that is
 * not above zero, since those beyond are noise; samples that alternate are therefore taken as
 * independent. It holds for samples at equal intervals of something that stands still: a drift
 * makes the number small.
 *
 * @param observations the number of samples, n
 * @param effective the effective number, above 0 and at most n
 */
public record EffectiveObservations(int observations, double effective) {

  /** Where the formulae and the rule for the last lag come from. */
  public static final Source SOURCE =
      Source.fromMemory(
          "Zieba, Effective number of observations for autocorrelated data, Metrol. Meas. Syst. 17"
              + " (2010) 3; last lag: Zieba and Ramza, same, 18 (2011) 529");

  /**
   * The effective number of a run of samples, from its own autocorrelation.
   *
   * @param samples the samples in order, finite, two or more
   * @return the number; all of them if the samples are equal
   * @throws IllegalArgumentException if there are fewer than two samples
   */
  public static EffectiveObservations of(double[] samples) {
    int n = samples.length;
    if (n < 2) {
      throw new IllegalArgumentException(n + " samples; two or more are needed");
    }
    double mean = Autocorrelation.mean(samples);
    double squares = Autocorrelation.squares(samples, mean);
    double[] coefficients = new double[n - 1];
    int lags = 0;
    double r = squares > 0 ? Autocorrelation.products(samples, mean, 1) / squares : 0;
    while (r > 0) {
      coefficients[lags++] = r;
      r = lags < n - 1 ? Autocorrelation.products(samples, mean, lags + 1) / squares : 0;
    }
    return of(n, Arrays.copyOf(coefficients, lags));
  }

  /**
   * The effective number for known coefficients.
   *
   * @param observations the number of samples, 1 or more
   * @param coefficients the coefficients at lag 1, 2 and so on, fewer than there are samples
   * @return the number
   * @throws IllegalArgumentException if there are too many coefficients, or no samples can have
   *     them
   */
  public static EffectiveObservations of(int observations, double[] coefficients) {
    if (coefficients.length >= observations) {
      throw new IllegalArgumentException(
          "%s coefficients for %s samples; fewer than samples are allowed"
              .formatted(coefficients.length, observations));
    }
    double sum = 0;
    for (int k = 1; k <= coefficients.length; k++) {
      sum += (1 - (double) k / observations) * coefficients[k - 1];
    }
    if (!(1 + 2 * sum > 0)) {
      throw new IllegalArgumentException("no samples have such coefficients: their sum is " + sum);
    }
    return new EffectiveObservations(observations, observations / (1 + 2 * sum));
  }

  /**
   * The standard uncertainty of the mean.
   *
   * @param squares the sum of the squared deviations from the mean
   * @return the standard uncertainty; that of a single sample if they are worth no more than one
   */
  double uncertaintyOfMean(double squares) {
    double freedom = Math.min(effective, observations) - 1;
    double single = squares / Math.max(1, observations - 1);
    return Math.sqrt(freedom > 0 ? Math.min(single, squares / (observations * freedom)) : single);
  }
}
