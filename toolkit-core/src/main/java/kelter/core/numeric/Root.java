package kelter.core.numeric;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.numbers.rootfinder.BrentSolver;

/**
 * Where a function crosses zero between two arguments, by Brent's method; at a jump, the place of
 * the jump.
 *
 * <p>Source: R. P. Brent, Algorithms for Minimization Without Derivatives (1973), chapter 4, as
 * Commons Numbers has it.
 */
public final class Root {

  /** Relative to the root, a few units in its last place. */
  private static final double LAST_DIGITS = 1e-15;

  private Root() {}

  /**
   * The root.
   *
   * @param function above zero at one end and below at the other, or zero at one; infinite is taken
   *     for very great
   * @param low the lower end
   * @param high the upper end, above the lower one
   * @param tolerance how far the result may lie from the root, in the unit of the ends, 0 or above;
   *     at least some units in the last place of the root
   * @return the root; one of them where there are several
   * @throws IllegalArgumentException if the function has the same sign at both ends, or a value is
   *     NaN
   */
  public static double between(
      DoubleUnaryOperator function, double low, double high, double tolerance) {
    return new BrentSolver(LAST_DIGITS, tolerance / 2, 0)
        .findRoot(x -> finite(function.applyAsDouble(x), x), low, high);
  }

  private static double finite(double value, double x) {
    if (Double.isNaN(value)) {
      throw new IllegalArgumentException("the function has no value at " + x);
    }
    return Math.max(-Double.MAX_VALUE, Math.min(Double.MAX_VALUE, value));
  }
}
