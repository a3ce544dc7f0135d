package kelter.core.book.learned;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How long a part lasts in machines of a kind that somebody called for, years. Machines that were
 * brought for something else count as parts that last; machines that nobody called for are not in
 * the book, so that lives are rather told too short.
 *
 * @param failures how many parts failed
 * @param lasted how many were seen to last
 * @param weibull the fitted life; empty where it cannot be fitted
 * @param median the age at which half have failed by the lives alone (Kaplan-Meier); empty while
 *     more than half last
 */
public record PartLife(
    double failures, double lasted, Optional<Fitted> weibull, OptionalDouble median) {

  /**
   * A Weibull life with its intervals of 95 %.
   *
   * @param shape the shape; empty with fewer than 5 failures, which tell only an interval
   * @param shapeLow the lower end of the shape
   * @param shapeHigh the upper end
   * @param scale the scale, years; empty with fewer than 5 failures
   * @param scaleLow the lower end of the scale
   * @param scaleHigh the upper end
   */
  public record Fitted(
      OptionalDouble shape,
      double shapeLow,
      double shapeHigh,
      OptionalDouble scale,
      double scaleLow,
      double scaleHigh) {}
}
