package kelter.hydraulics.drain;

import java.util.function.DoubleUnaryOperator;
import kelter.core.numeric.GaussLegendre;

/**
 * The time in which a vessel of constant plan area empties from one level to another: t = A ∫ dh /
 * Q(h).
 *
 * <p>The integral is taken by Gauss-Legendre quadrature in s with h = h1 + (h0 − h1) s², so that it
 * stays exact where the flow rate dies away with the square root of what is left, as it does under
 * gravity and at the cut-off of a pump.
 *
 * <p>Source: continuity, as in Y. A. Çengel and J. M. Cimbala, Fluid Mechanics, chapter 5.
 */
public final class EmptyingTime {

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
    // dh = 2 drop s ds
    return 2
        * area
        * drop
        * GaussLegendre.integral(s -> s / flowAtLevel.applyAsDouble(to + drop * s * s), 0, 1);
  }
}
