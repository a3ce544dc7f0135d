package kelter.core.book.figures;

/**
 * Where a figure lies with 95 %, in its own unit.
 *
 * @param low the lower end
 * @param high the upper end, not below the lower one
 */
public record Interval(double low, double high) {

  /** Of a normal distribution, for 95 % on both sides together. */
  static final double TWO_SIDED_95 = 1.959963984540054;

  /** What lies below the lower end, and above the upper one. */
  static final double TAIL = 0.025;

  /**
   * The same in another unit.
   *
   * @param factor by which both ends are multiplied, 0 or more
   * @return the interval
   */
  public Interval times(double factor) {
    return new Interval(low * factor, high * factor);
  }
}
