package kelter.core.diagnosis;

import java.util.Objects;
import kelter.core.source.Source;

/**
 * How the chance of a fault grows, or shrinks, with the age of the machine: as the hazard of a
 * Weibull lifetime, which is proportional to age^(shape - 1) (NIST/SEMATECH e-Handbook of
 * Statistical Methods, 8.1.6.2).
 *
 * @param shape the shape of the lifetime: above 1 for wear, 1 where age does not matter, below 1
 *     for faults of new machines
 * @param usualAge the age in years at which the prior of the fault holds as stated
 * @param source where the figures come from
 */
public record Wear(double shape, double usualAge, Source source) {

  /** The odds of a fault are never taken to change by more than this factor. */
  private static final double MOST = 5;

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if shape or age is not above zero
   */
  public Wear {
    Objects.requireNonNull(source);
    if (!(shape > 0 && usualAge > 0) || Double.isInfinite(shape + usualAge)) {
      throw new IllegalArgumentException("shape and usual age of a wear lie above zero");
    }
  }

  /**
   * By what the prior odds of the fault change at an age.
   *
   * @param age the age of the machine in years, not negative
   * @return the factor, from 1/5 to 5
   */
  public double factor(double age) {
    double ratio = Math.pow(age / usualAge, shape - 1);
    return Math.max(1 / MOST, Math.min(MOST, ratio));
  }
}
