package kelter.cli.drawing;

import java.util.DoubleSummaryStatistics;
import java.util.List;

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
   * A scale of equal distances on which some values have room, and 0 where it is no further from
   * them than half of their span.
   *
   * @param values the values; those that are not finite are left out
   * @param from the place of the lower end, in pixels
   * @param to the place of the upper end, in pixels
   * @return the scale, from 0 to 1 if there are no values but 0
   */
  public static Scale withNearZero(List<Double> values, double from, double to) {
    DoubleSummaryStatistics finite =
        values.stream()
            .filter(Double::isFinite)
            .mapToDouble(Double::doubleValue)
            .summaryStatistics();
    double low = finite.getCount() == 0 ? 0 : finite.getMin();
    double high = finite.getCount() == 0 ? 0 : finite.getMax();
    double near = high > low ? (high - low) / 2 : Double.POSITIVE_INFINITY;
    low = low > 0 && low <= near ? 0 : low;
    high = high < 0 && -high <= near ? 0 : high;
    if (low == high) {
      return new Scale(0, 1, from, to, false);
    }
    double margin = MARGIN * (high - low);
    return new Scale(low == 0 ? 0 : low - margin, high == 0 ? 0 : high + margin, from, to, false);
  }

  /**
   * Round values along a scale of equal distances.
   *
   * @return two to seven values from the lower end to the upper one, rising, a step of 1, 2 or 5
   *     times a power of ten apart
   */
  public double[] steps() {
    double span = high - low;
    double power = Math.pow(10, Math.floor(Math.log10(span / 5)));
    double step = 10 * power;
    for (double times : new double[] {5, 2, 1}) {
      step = span / (times * power) <= 6 ? times * power : step;
    }
    long first = (long) Math.ceil(low / step - 1e-9);
    long last = (long) Math.floor(high / step + 1e-9);
    double[] steps = new double[(int) (last - first + 1)];
    for (int i = 0; i < steps.length; i++) {
      steps[i] = Math.round((first + i) * step / power) * power;
    }
    return steps;
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
