package kelter.core.numeric;

import java.util.function.DoubleUnaryOperator;

/**
 * Integrals by Simpson's rule, exact for polynomials up to the third degree.
 *
 * <p>Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 25.4.5 and 25.4.6.
 */
public final class Simpson {

  private Simpson() {}

  /**
   * By how much one of the three points of a panel counts.
   *
   * @param point 0 or 2 for an end, 1 for the middle
   * @return the weight, as a share of the width of the panel
   */
  public static double weight(int point) {
    return point == 1 ? 4.0 / 6 : 1.0 / 6;
  }

  /**
   * The integral of a function.
   *
   * @param function the function
   * @param from the lower end
   * @param to the upper end
   * @param panels into how many panels of two equal steps the interval is cut, 1 or more
   * @return the integral
   */
  public static double integral(DoubleUnaryOperator function, double from, double to, int panels) {
    double step = (to - from) / (2 * panels);
    double sum = 0;
    for (int i = 0; i <= 2 * panels; i++) {
      double weight = i == 0 || i == 2 * panels ? 1 : i % 2 == 1 ? 4 : 2;
      sum += weight * function.applyAsDouble(from + i * step);
    }
    return sum * step / 3;
  }
}
