package kelter.hydraulics.solve;

import java.util.function.DoubleUnaryOperator;

/**
 * The root of a falling function of a flow rate, by the secant method in the square of the flow
 * rate: heads are nearly parabolas, so that five or six steps reach ten digits. The root is kept
 * between two flow rates throughout; a step that would leave them, and every step beyond the
 * twelfth, halves the gap, so that a function with a jump is solved too, at its jump.
 *
 * <p>Source: secant method (regula falsi with free ends), as in any text on numerical analysis; the
 * square as variable is our own.
 */
public final class SquareSecant {

  private static final int FREE_STEPS = 12;
  private static final int MOST_STEPS = 60;
  private static final double HALF = 0.5;

  private SquareSecant() {}

  /**
   * The root.
   *
   * @param function a falling function
   * @param end the upper end; the lower one is 0
   * @param atZero the function at 0, above 0
   * @param atEnd the function at the end, below 0
   * @param tolerance a step so small ends the search, in the unit of the end
   * @return the root, its error below the square of the relative tolerance for a smooth function;
   *     at a jump the greatest argument found before it
   */
  public static double root(
      DoubleUnaryOperator function, double end, double atZero, double atEnd, double tolerance) {
    double low = 0;
    double high = end;
    double olderSquare = 0;
    double older = atZero;
    double newerSquare = end * end;
    double newer = atEnd;
    double last = end;
    for (int step = 0; step < MOST_STEPS && high - low > tolerance; step++) {
      double square = olderSquare + (newerSquare - olderSquare) * older / (older - newer);
      double x = Math.sqrt(square);
      if (step >= FREE_STEPS || !(x > low && x < high)) {
        x = HALF * (low + high);
      }
      double value = function.applyAsDouble(x);
      if (value > 0) {
        low = x;
      } else {
        high = x;
      }
      if (value == 0 || (Math.abs(x - last) < tolerance && step < FREE_STEPS)) {
        return x;
      }
      last = x;
      olderSquare = newerSquare;
      older = newer;
      newerSquare = x * x;
      newer = value;
    }
    return low;
  }
}
