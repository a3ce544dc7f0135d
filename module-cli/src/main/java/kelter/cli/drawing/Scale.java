package kelter.cli.drawing;

/**
 * Where a value lies along an axis.
 *
 * @param low the value at the lower end
 * @param high the value at the upper end, above the lower one
 * @param from the place of the lower end, in pixels
 * @param to the place of the upper end, in pixels
 * @param logarithmic whether equal distances are equal ratios; both values are then above zero
 */
public record Scale(double low, double high, double from, double to, boolean logarithmic) {

  /** What is left free at both ends, as a ratio of the span. */
  private static final double MARGIN = 0.08;

  /**
   * A scale on which some values have room.
   *
   * @param least the least of them, finite
   * @param most the greatest of them, finite
   * @param from the place of the lower end, in pixels
   * @param to the place of the upper end, in pixels
   * @param logarithmic whether equal distances are equal ratios; where the least value is not above
   *     zero they are not
   * @return the scale
   */
  public static Scale around(
      double least, double most, double from, double to, boolean logarithmic) {
    if (logarithmic && least > 0 && most > least) {
      double margin = Math.pow(most / least, MARGIN);
      return new Scale(least / margin, most * margin, from, to, true);
    }
    double span = most - least;
    double margin = span > 0 ? MARGIN * span : Math.max(Math.abs(most), 1) * MARGIN;
    return new Scale(least - margin, most + margin, from, to, false);
  }

  /**
   * Where a value lies; one beyond an end lies at that end.
   *
   * @param value the value; an infinite one is beyond an end
   * @return the place, in pixels
   */
  public double place(double value) {
    double held = Math.max(low, Math.min(high, value));
    double share =
        logarithmic ? Math.log(held / low) / Math.log(high / low) : (held - low) / (high - low);
    return from + share * (to - from);
  }
}
