package kelter.costing.life;

import kelter.core.uncertainty.Normal;

/**
 * A life whose logarithm is normally distributed: {@code S(t) = Phi(-(ln(t / median)) / sigma)}.
 *
 * <p>Its hazard falls again at great ages, so that it says of very old machines that they go on for
 * long: a law for repair times and for fatigue rather than for whole machines.
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, 8.1.6.4 (lognormal). The mean
 * residual life is the mean beyond an age less the age.
 *
 * @param median the time by which half have failed, in the unit of time, above zero
 * @param sigma the standard deviation of the natural logarithm, above zero
 */
public record Lognormal(double median, double sigma) {

  /**
   * Checks the parameters.
   *
   * @throws IllegalArgumentException if one is not above zero and finite
   */
  public Lognormal {
    requirePositive("a median life", median);
    requirePositive("a standard deviation of the logarithm", sigma);
  }

  private static void requirePositive(String what, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(
          "%s of %s; it must be above zero and finite".formatted(what, value));
    }
  }

  /**
   * The mean life, {@code median exp(sigma^2 / 2)}.
   *
   * @return the mean, in the unit of time
   */
  public double mean() {
    return median * Math.exp(sigma * sigma / 2);
  }

  /**
   * The share that is still alive at an age.
   *
   * @param age the age, in the unit of time, not negative
   * @return a probability from 0 to 1
   * @throws IllegalArgumentException if the age is negative or not finite
   */
  public double survival(double age) {
    return Normal.cdf(-standardized(age));
  }

  /**
   * How long one that has reached an age lasts from then on, on average: {@code mean Phi(sigma - z)
   * / Phi(-z) - age} with {@code z = ln(age / median) / sigma}.
   *
   * @param age the age reached, in the unit of time, not negative
   * @return the mean residual life, in the unit of time
   * @throws IllegalArgumentException if the age is negative or not finite
   */
  public double meanResidual(double age) {
    double z = standardized(age);
    return mean() * Math.exp(Normal.logCdf(sigma - z) - Normal.logCdf(-z)) - age;
  }

  private double standardized(double age) {
    if (!(age >= 0) || Double.isInfinite(age)) {
      throw new IllegalArgumentException(
          "an age of %s; it must not be negative and must be finite".formatted(age));
    }
    return Math.log(age / median) / sigma;
  }
}
