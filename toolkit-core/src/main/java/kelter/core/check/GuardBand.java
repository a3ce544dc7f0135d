package kelter.core.check;

import kelter.core.uncertainty.InputQuantity;

/**
 * A guard band: how far inside its limits a value must be measured to be accepted, or outside to be
 * rejected (JCGM 106:2012, 8.3; ILAC-G8:09/2019, 4.2).
 *
 * @param width the width, in the unit of the limits, at least 0; 0 is simple acceptance
 */
public record GuardBand(double width) {

  /** The width of ILAC-G8:09/2019, 4.2.2, by the standard uncertainty: U at k = 2 (from memory). */
  private static final double EXPANDED = 2;

  /**
   * Checks the width.
   *
   * @throws IllegalArgumentException if the width is negative or not finite
   */
  public GuardBand {
    if (!(width >= 0) || Double.isInfinite(width)) {
      throw new IllegalArgumentException("a guard band is finite and not negative, not " + width);
    }
  }

  /**
   * The guard band at whose edge a value conforms with a probability, if only one limit is near
   * (JCGM 106:2012, 8.3.2): the quantile of its errors.
   *
   * @param level the probability, at least 0.5 and below 1
   * @param reading what is known of the value by its reading
   * @return the guard band
   * @throws IllegalArgumentException if a figure is not allowed
   */
  public static GuardBand at(double level, InputQuantity reading) {
    if (!(level >= 0.5 && level < 1)) {
      throw new IllegalArgumentException(
          "the level of a guard band is 0.5 or more and below 1, not " + level);
    }
    return new GuardBand(Math.max(0, reading.quantile(level) - reading.value()));
  }

  /**
   * A guard band as wide as the expanded uncertainty with k = 2.
   *
   * @param standardUncertainty the standard uncertainty of the reading, at least 0
   * @return the guard band
   */
  public static GuardBand expanded(double standardUncertainty) {
    return new GuardBand(EXPANDED * standardUncertainty);
  }

  /**
   * Where a value must lie to be accepted (guarded acceptance).
   *
   * @param tolerance what the value may be
   * @return the acceptance limits
   * @throws IllegalArgumentException if the band leaves nothing between the limits
   */
  public Limits acceptance(Limits tolerance) {
    double low = tolerance.low() + width;
    double high = tolerance.high() - width;
    if (!(low <= high)) {
      throw new IllegalArgumentException(
          "the uncertainty is so large that the guard band leaves nothing between the limits");
    }
    return new Limits(low, high);
  }

  /**
   * Where a value must lie to escape rejection (guarded rejection).
   *
   * @param tolerance what the value may be
   * @return the rejection limits
   */
  public Limits rejection(Limits tolerance) {
    return new Limits(tolerance.low() - width, tolerance.high() + width);
  }
}
