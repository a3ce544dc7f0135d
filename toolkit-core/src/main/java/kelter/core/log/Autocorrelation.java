package kelter.core.log;

/**
 * How much each sample resembles the one before it, or the one some samples earlier.
 *
 * <p>The coefficient at lag k is {@code r(k) = sum (x(i) - m)(x(i+k) - m) / sum (x(i) - m)^2}, with
 * m the mean of all samples, the upper sum over the pairs k apart and the lower over all samples.
 * It holds for samples at equal intervals. It lies from -1 to 1 (NIST/SEMATECH e-Handbook of
 * Statistical Methods, 1.3.5.12; from memory).
 */
final class Autocorrelation {

  private Autocorrelation() {}

  /**
   * The autocorrelation coefficient at a lag.
   *
   * @param samples the samples in order, finite
   * @param lag how many samples apart, from 0 to one less than there are samples
   * @return the coefficient, from -1 to 1; 0 if all samples are equal
   * @throws IllegalArgumentException if the lag is negative or there is no pair so far apart
   */
  static double coefficient(double[] samples, int lag) {
    if (lag < 0 || lag >= samples.length) {
      throw new IllegalArgumentException(
          "a lag of %s samples; allowed with %s samples: 0 to %s"
              .formatted(lag, samples.length, samples.length - 1));
    }
    double mean = mean(samples);
    double squares = squares(samples, mean);
    return squares == 0 ? 0 : products(samples, mean, lag) / squares;
  }

  /** The mean, corrected once for what rounding left (Chan, Golub and LeVeque 1983). */
  static double mean(double[] samples) {
    double sum = 0;
    for (double x : samples) {
      sum += x;
    }
    double mean = sum / samples.length;
    double rest = 0;
    for (double x : samples) {
      rest += x - mean;
    }
    return mean + rest / samples.length;
  }

  static double squares(double[] samples, double mean) {
    return products(samples, mean, 0);
  }

  static double products(double[] samples, double mean, int lag) {
    double sum = 0;
    for (int i = 0; i + lag < samples.length; i++) {
      sum += (samples[i] - mean) * (samples[i + lag] - mean);
    }
    return sum;
  }
}
