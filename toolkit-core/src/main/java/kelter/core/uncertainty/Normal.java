package kelter.core.uncertainty;

import org.apache.commons.numbers.gamma.Erfc;

/** The standard normal distribution. */
public final class Normal {

  private static final double LOG_SQRT_TWO_PI = 0.5 * Math.log(2 * Math.PI);
  private static final double TAIL = -30;

  private Normal() {}

  /**
   * The probability that a standard normal variable is at most z.
   *
   * @param z the limit, in standard deviations
   * @return a probability from 0 to 1; NaN for NaN
   */
  public static double cdf(double z) {
    return 0.5 * Erfc.value(-z / Math.sqrt(2));
  }

  /**
   * The natural logarithm of {@link #cdf}, also where the probability itself is below the smallest
   * double: there by the first terms of the asymptotic series of the tail (Abramowitz and Stegun,
   * Handbook of Mathematical Functions, 26.2.12).
   *
   * @param z the limit, in standard deviations
   * @return the natural logarithm of a probability
   */
  public static double logCdf(double z) {
    if (z > TAIL) {
      return Math.log(cdf(z));
    }
    double inverseSquare = 1 / (z * z);
    return logDensity(z)
        - Math.log(-z)
        + Math.log1p(-inverseSquare + 3 * inverseSquare * inverseSquare);
  }

  /**
   * The natural logarithm of the density of a standard normal variable.
   *
   * @param z the value, in standard deviations
   * @return the natural logarithm of the density
   */
  public static double logDensity(double z) {
    return -0.5 * z * z - LOG_SQRT_TWO_PI;
  }
}
