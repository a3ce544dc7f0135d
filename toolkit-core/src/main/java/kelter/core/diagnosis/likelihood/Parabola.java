package kelter.core.diagnosis.likelihood;

/** Interpolation through three points at equal steps. */
final class Parabola {

  private Parabola() {}

  /**
   * Lagrange's parabola, held between the least and the greatest of its points.
   *
   * @param t where, from 0 at the first point to 1 at the third
   * @param a the first point
   * @param b the second, at 1/2
   * @param c the third
   */
  static double at(double t, double a, double b, double c) {
    double parabola = (1 - t) * (1 - 2 * t) * a + 4 * t * (1 - t) * b + t * (2 * t - 1) * c;
    double least = a < c ? a : c;
    double most = a < c ? c : a;
    least = b < least ? b : least;
    most = b > most ? b : most;
    return parabola < least ? least : parabola > most ? most : parabola;
  }

  /** By how much each of the three points counts, without holding. */
  static double[] weights(double t) {
    return new double[] {(1 - t) * (1 - 2 * t), 4 * t * (1 - t), t * (2 * t - 1)};
  }
}
