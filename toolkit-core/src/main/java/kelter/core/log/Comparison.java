package kelter.core.log;

/**
 * What changed from one window to another.
 *
 * <p>The uncertainty is that of the scatter alone (type A): an error of the instrument that is the
 * same in both windows drops out of the difference.
 *
 * @param difference the mean after less the mean before
 * @param uncertainty its standard uncertainty: the root of the sum of both squared (JCGM 100:2008,
 *     equation (10))
 * @param degreesOfFreedom the effective degrees of freedom of that uncertainty (JCGM 100:2008,
 *     equation (G.2b), Welch-Satterthwaite); infinite if it is zero
 */
public record Comparison(double difference, double uncertainty, double degreesOfFreedom) {

  /**
   * Compares two windows of the same column, or of two columns in the same unit.
   *
   * @param before the one
   * @param after the other
   * @return what changed
   */
  public static Comparison of(Window before, Window after) {
    double u = Math.hypot(before.uncertainty(), after.uncertainty());
    double fourth = share(before) + share(after);
    return new Comparison(
        after.mean() - before.mean(),
        u,
        fourth > 0 ? Math.pow(u, 4) / fourth : Double.POSITIVE_INFINITY);
  }

  private static double share(Window window) {
    return Math.pow(window.uncertainty(), 4) / Math.max(1, window.effective() - 1);
  }
}
