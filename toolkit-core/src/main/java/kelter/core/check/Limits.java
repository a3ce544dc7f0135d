package kelter.core.check;

/**
 * What a value may be, ends included.
 *
 * @param low the lower limit in the coherent SI unit; minus infinity if there is none
 * @param high the upper limit in the coherent SI unit; infinity if there is none
 */
public record Limits(double low, double high) {

  /**
   * Checks the order.
   *
   * @throws IllegalArgumentException if a limit is not a number or the lower is above the upper
   */
  public Limits {
    if (!(low <= high)) {
      throw new IllegalArgumentException("the lower limit is at most the upper one");
    }
  }

  /**
   * A lower limit only.
   *
   * @param low the limit in the coherent SI unit
   * @return the limits
   */
  public static Limits atLeast(double low) {
    return new Limits(low, Double.POSITIVE_INFINITY);
  }

  /**
   * An upper limit only.
   *
   * @param high the limit in the coherent SI unit
   * @return the limits
   */
  public static Limits atMost(double high) {
    return new Limits(Double.NEGATIVE_INFINITY, high);
  }

  /**
   * Whether a value lies inside.
   *
   * @param si a value in the coherent SI unit
   * @return true if it does; false for NaN
   */
  public boolean contain(double si) {
    return si >= low && si <= high;
  }
}
