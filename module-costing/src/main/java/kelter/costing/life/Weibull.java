package kelter.costing.life;

import org.apache.commons.numbers.gamma.Gamma;
import org.apache.commons.numbers.gamma.RegularizedGamma;

/**
 * A life that follows a Weibull distribution: {@code S(t) = exp(-(t/scale)^shape)}.
 *
 * <p>Shape above 1: the older, the likelier to fail (wear); 1: age does not matter; below 1: early
 * failures. Times may be in any unit as long as it is the same one for all.
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, 8.1.6.2 (Weibull). The mean residual
 * life is the integral of the survival function from the age onwards, divided by its value there;
 * for the Weibull this is an upper incomplete gamma function.
 *
 * @param scale the characteristic life, at which 63.2 % have failed, in the unit of time, above
 *     zero
 * @param shape the shape, from 0.2 to 50
 */
public record Weibull(double scale, double shape) {

  /** The least shape that is taken: below it the mean says nothing about a machine. */
  public static final double LEAST_SHAPE = 0.2;

  /** The greatest shape that is taken. */
  public static final double GREATEST_SHAPE = 50;

  /** Above this the scaled incomplete gamma function is taken from its asymptotic series. */
  private static final double ASYMPTOTIC = 500;

  private static final int TERMS = 40;

  /**
   * Checks scale and shape.
   *
   * @throws IllegalArgumentException if the scale is not above zero and finite, or the shape is
   *     outside 0.2 to 50
   */
  public Weibull {
    if (!(scale > 0) || Double.isInfinite(scale)) {
      throw new IllegalArgumentException(
          "a characteristic life of %s; it must be above zero and finite".formatted(scale));
    }
    if (!(shape >= LEAST_SHAPE && shape <= GREATEST_SHAPE)) {
      throw new IllegalArgumentException(
          "a Weibull shape of %s; it must lie from %s to %s"
              .formatted(shape, LEAST_SHAPE, GREATEST_SHAPE));
    }
  }

  /**
   * The distribution with a given mean: {@code scale = mean / Gamma(1 + 1/shape)}.
   *
   * @param mean the mean life, in the unit of time, above zero
   * @param shape the shape, from 0.2 to 50
   * @return the distribution
   * @throws IllegalArgumentException if mean or shape is outside its range
   */
  public static Weibull ofMean(double mean, double shape) {
    if (!(mean > 0) || Double.isInfinite(mean)) {
      throw new IllegalArgumentException(
          "a mean life of %s; it must be above zero and finite".formatted(mean));
    }
    Weibull unit = new Weibull(1, shape);
    return new Weibull(mean / unit.mean(), shape);
  }

  /**
   * The same law for lives that are longer by a factor.
   *
   * @param factor how many times as long, above zero
   * @return the stretched distribution
   * @throws IllegalArgumentException if the factor is not above zero and finite
   */
  public Weibull stretched(double factor) {
    return new Weibull(scale * factor, shape);
  }

  /**
   * The mean life, {@code scale * Gamma(1 + 1/shape)}.
   *
   * @return the mean, in the unit of time
   */
  public double mean() {
    return scale * Gamma.value(1 + 1 / shape);
  }

  /**
   * The share that is still alive at an age.
   *
   * @param age the age, in the unit of time, not negative
   * @return a probability from 0 to 1
   * @throws IllegalArgumentException if the age is negative or not finite
   */
  public double survival(double age) {
    return Math.exp(-hazardTo(age));
  }

  /**
   * The share of those alive at an age that are still alive some time later.
   *
   * @param age the age reached, in the unit of time, not negative
   * @param later the time from then on, same unit, not negative
   * @return a probability from 0 to 1
   * @throws IllegalArgumentException if a time is negative or not finite
   */
  public double survival(double age, double later) {
    requireTime(later);
    return Math.exp(hazardTo(age) - hazardTo(age + later));
  }

  /**
   * How long one that has reached an age lasts from then on, on average: {@code (scale/shape)
   * Gamma(1/shape, z) exp(z)} with {@code z = (age/scale)^shape}.
   *
   * @param age the age reached, in the unit of time, not negative
   * @return the mean residual life, in the unit of time
   * @throws IllegalArgumentException if the age is negative or not finite
   */
  public double meanResidual(double age) {
    double z = hazardTo(age);
    return scale / shape * scaledUpperGamma(1 / shape, z);
  }

  /**
   * The time after an age by which a given share of those alive then have failed.
   *
   * @param age the age reached, in the unit of time, not negative
   * @param share the share that has failed, from 0 to below 1
   * @return the time from the age onwards, in the unit of time
   * @throws IllegalArgumentException if the age is negative or not finite, or the share is outside
   *     its range
   */
  public double residualQuantile(double age, double share) {
    if (!(share >= 0 && share < 1)) {
      throw new IllegalArgumentException(
          "a share of %s; it must lie from 0 to below 1".formatted(share));
    }
    return residual(hazardTo(age), -Math.log1p(-share), age);
  }

  /**
   * The residual life that belongs to a draw from the unit exponential distribution.
   *
   * @param hazardToAge the cumulative hazard at the age, {@code (age/scale)^shape}
   * @param exponential the draw, not negative
   * @param age the age, in the unit of time
   * @return the residual life, in the unit of time, not negative
   */
  public double residual(double hazardToAge, double exponential, double age) {
    return Math.max(0, scale * Math.pow(hazardToAge + exponential, 1 / shape) - age);
  }

  /**
   * The cumulative hazard, {@code (age/scale)^shape}.
   *
   * @param age the age, in the unit of time, not negative
   * @return the cumulative hazard
   * @throws IllegalArgumentException if the age is negative or not finite
   */
  public double hazardTo(double age) {
    requireTime(age);
    return Math.pow(age / scale, shape);
  }

  private static void requireTime(double time) {
    if (!(time >= 0) || Double.isInfinite(time)) {
      throw new IllegalArgumentException(
          "a time of %s; it must not be negative and must be finite".formatted(time));
    }
  }

  /** {@code Gamma(a, z) exp(z)}; the asymptotic series is DLMF 8.11.2 (number from memory). */
  private static double scaledUpperGamma(double a, double z) {
    if (z <= ASYMPTOTIC) {
      return Gamma.value(a) * RegularizedGamma.Q.value(a, z) * Math.exp(z);
    }
    double term = Math.pow(z, a - 1);
    double sum = term;
    for (int n = 1; n < TERMS && Math.abs(term) > Math.ulp(sum); n++) {
      term *= (a - n) / z;
      sum += term;
    }
    return sum;
  }
}
