package kelter.core.numeric;

import java.util.function.DoubleUnaryOperator;

/**
 * Integrals by the rule of Gauss and Legendre with eight points, exact for polynomials up to the
 * fifteenth degree.
 *
 * <p>Source: Abramowitz and Stegun, Handbook of Mathematical Functions, table 25.4, n = 8.
 */
public final class GaussLegendre {

  /** How many points the rule has. */
  public static final int POINTS = 8;

  private static final double[] ABSCISSA = {
    0.183434642495649805, 0.525532409916328986, 0.796666477413626740, 0.960289856497536232
  };

  private static final double[] WEIGHT = {
    0.362683783378361983, 0.313706645877887287, 0.222381034453374471, 0.101228536290376259
  };

  private GaussLegendre() {}

  /**
   * Where a point of the rule lies.
   *
   * @param point its number, from 0; from the middle outwards, on either side in turn
   * @return a place in the interval from -1 to 1
   */
  public static double abscissa(int point) {
    return point % 2 == 0 ? -ABSCISSA[point / 2] : ABSCISSA[point / 2];
  }

  /**
   * By how much a point counts.
   *
   * @param point its number, from 0
   * @return its weight; all of them sum to 2
   */
  public static double weight(int point) {
    return WEIGHT[point / 2];
  }

  /**
   * The integral of a function.
   *
   * @param function the function
   * @param from the lower end
   * @param to the upper end
   * @return the integral
   */
  public static double integral(DoubleUnaryOperator function, double from, double to) {
    double half = (to - from) / 2;
    double middle = (to + from) / 2;
    double sum = 0;
    for (int point = 0; point < POINTS; point++) {
      sum += weight(point) * function.applyAsDouble(middle + half * abscissa(point));
    }
    return half * sum;
  }
}
