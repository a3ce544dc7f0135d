package kelter.hydraulics.circuit;

import java.util.function.DoubleUnaryOperator;

/**
 * The root of a continuous function between two points where its signs differ: inverse quadratic
 * interpolation where it is sure to help, halving otherwise, so that it never leaves the bracket
 * and never takes more than about three times the steps of halving.
 *
 * <p>Source: T. R. Chandrupatla, A new hybrid quadratic/bisection algorithm for finding the zero of
 * a nonlinear function without using derivatives, Advances in Engineering Software 28 (1997) 145.
 */
final class Chandrupatla {

  private static final int MOST_STEPS = 100;
  private static final double HALF = 0.5;

  private Chandrupatla() {}

  /**
   * The root.
   *
   * @param function the function
   * @param from one end of the bracket
   * @param to the other end, where the function has the other sign
   * @param valueFrom the function at the first end
   * @param valueTo the function at the other end
   * @param tolerance the half-width of the bracket at which to stop, in the unit of the ends
   * @return a point within the tolerance of the root
   */
  static double root(
      DoubleUnaryOperator function,
      double from,
      double to,
      double valueFrom,
      double valueTo,
      double tolerance) {
    double a = to;
    double b = from;
    double fa = valueTo;
    double fb = valueFrom;
    double c = a;
    double fc = fa;
    double t = HALF;
    for (int step = 0; step < MOST_STEPS; step++) {
      double x = a + t * (b - a);
      double fx = function.applyAsDouble(x);
      if (Math.signum(fx) == Math.signum(fa)) {
        c = a;
        fc = fa;
      } else {
        c = b;
        b = a;
        fc = fb;
        fb = fa;
      }
      a = x;
      fa = fx;
      double best = Math.abs(fa) < Math.abs(fb) ? a : b;
      double share = tolerance / Math.abs(b - c);
      if (share > HALF || fa == 0) {
        return best;
      }
      t = Math.min(1 - share, Math.max(share, nextShare(a, b, c, fa, fb, fc)));
    }
    return a;
  }

  /** Where in the bracket to look next, as a share of the way from a to b. */
  private static double nextShare(double a, double b, double c, double fa, double fb, double fc) {
    double xi = (a - b) / (c - b);
    double phi = (fa - fb) / (fc - fb);
    if (phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi) {
      return fa / (fb - fa) * fc / (fb - fc) + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb);
    }
    return HALF;
  }
}
