package kelter.hydraulics.drain;

import java.util.function.DoubleUnaryOperator;

/**
 * The time in which a vessel of constant plan area empties from one level to another: t = A ∫ dh /
 * Q(h).
 *
 * <p>The integral is taken by Gauss-Legendre quadrature in s with h = h1 + (h0 − h1) s², so that it
 * stays exact where the flow rate dies away with the square root of what is left, as it does under
 * gravity and at the cut-off of a pump.
 *
 * <p>Source: continuity, as in Y. A. Çengel and J. M. Cimbala, Fluid Mechanics, chapter 5; nodes
 * and weights from Abramowitz and Stegun, Handbook of Mathematical Functions, Table 25.4, n = 8.
 */
public final class EmptyingTime {

  /** Abscissas of Table 25.4, n = 8, the positive half. */
  private static final double[] NODE = {
    0.183434642495650, 0.525532409916329, 0.796666477413627, 0.960289856497536
  };

  /** Weights of Table 25.4, n = 8. */
  private static final double[] WEIGHT = {
    0.362683783378362, 0.313706645877887, 0.222381034453374, 0.101228536290376
  };

  private static final double HALF = 0.5;

  private EmptyingTime() {}

  /**
   * The time to empty.
   *
   * @param flowAtLevel the flow rate out in m3/s at a level in m, above 0 between the levels
   * @param area the plan area of the water in m2, above 0
   * @param from the level at the start in m
   * @param to the level at the end in m, at most that at the start
   * @return the time in s; infinite if the flow rate is 0 somewhere between
   * @throws IllegalArgumentException if the area is not above 0 or the levels are not in order
   */
  public static double of(DoubleUnaryOperator flowAtLevel, double area, double from, double to) {
    if (!(area > 0) || !(to <= from) || !Double.isFinite(area + from + to)) {
      throw new IllegalArgumentException(
          "a vessel of above 0 m2 empties from a level to a lower one, not %s m2 from %s m to %s m"
              .formatted(area, from, to));
    }
    double drop = from - to;
    double sum = 0;
    for (int i = 0; i < NODE.length; i++) {
      for (int side = -1; side <= 1; side += 2) {
        double s = HALF * (1 + side * NODE[i]);
        sum += WEIGHT[i] * s / flowAtLevel.applyAsDouble(to + drop * s * s);
      }
    }
    return area * drop * sum; // dh = 2 drop s ds, and ds is half of the node's interval
  }
}
