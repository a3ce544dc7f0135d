package kelter.core.law;

import kelter.core.quantity.QuantityFormat;

/** Refuses figures that a law cannot take, with what was found and what is allowed. */
public final class Require {

  private static final double ROUNDING = 1e-12;

  private Require() {}

  /**
   * A figure above zero.
   *
   * @param name what it is, for a person
   * @param value the figure in the coherent SI unit
   * @param unit the unit, for the message
   * @return the figure
   * @throws IllegalArgumentException if it is not finite or not above zero
   */
  public static double positive(String name, double value, String unit) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(
          "the %s is %s; it must be finite and above %s"
              .formatted(name, told(value, unit), told(0, unit)));
    }
    return value;
  }

  /**
   * A figure of zero or above.
   *
   * @param name what it is, for a person
   * @param value the figure in the coherent SI unit
   * @param unit the unit, for the message
   * @return the figure
   * @throws IllegalArgumentException if it is not finite or below zero
   */
  public static double notNegative(String name, double value, String unit) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(
          "the %s is %s; it must be finite and not below %s"
              .formatted(name, told(value, unit), told(0, unit)));
    }
    return value;
  }

  /**
   * A whole number.
   *
   * @param name what it is, for a person
   * @param value the number
   * @return the number
   * @throws IllegalArgumentException if it has decimals or is not finite
   */
  public static double whole(String name, double value) {
    if (value != Math.rint(value) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(
          "the %s is %s; it must be a whole number".formatted(name, QuantityFormat.plain(value)));
    }
    return value;
  }

  /**
   * A figure inside a range, ends included; the rounding of the last binary digits is forgiven.
   *
   * @param name what it is, for a person
   * @param value the figure in the unit
   * @param low the least value allowed, in the unit
   * @param high the greatest value allowed, in the unit
   * @param unit the unit, for the message
   * @return the figure
   * @throws IllegalArgumentException if it lies outside or is not a number
   */
  public static double within(String name, double value, double low, double high, String unit) {
    double slack = ROUNDING * (Math.abs(value) + 1);
    if (!(value >= low - slack && value <= high + slack)) {
      throw new IllegalArgumentException(
          "the %s is %s; it must lie from %s to %s"
              .formatted(name, told(value, unit), told(low, unit), told(high, unit)));
    }
    return value;
  }

  private static String told(double value, String unit) {
    return (QuantityFormat.plain(value) + " " + unit).strip();
  }
}
