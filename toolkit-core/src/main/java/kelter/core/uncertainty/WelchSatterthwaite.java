package kelter.core.uncertainty;

/**
 * The effective degrees of freedom of a combined standard uncertainty, from those of its
 * components: the fourth power of the combined one over the sum of the fourth powers of the
 * contributions, each over its degrees of freedom.
 *
 * <p>It holds for independent contributions to a sum that is about normal (JCGM 100:2008, G.4.1,
 * equation (G.2b)).
 */
final class WelchSatterthwaite {

  private WelchSatterthwaite() {}

  /**
   * The effective degrees of freedom.
   *
   * @param contributions what each component contributes to the uncertainty of the result, all in
   *     one unit, finite; the sign does not matter
   * @param degreesOfFreedom those of each component, above zero, may be infinite
   * @return the effective degrees of freedom, not rounded; infinite if no component with finite
   *     ones contributes
   * @throws IllegalArgumentException if the two are not as many, or a figure is not allowed
   */
  public static double degreesOfFreedom(double[] contributions, double[] degreesOfFreedom) {
    if (contributions.length != degreesOfFreedom.length) {
      throw new IllegalArgumentException(
          contributions.length + " contributions need as many degrees of freedom");
    }
    double greatest = 0;
    for (int i = 0; i < contributions.length; i++) {
      if (!(degreesOfFreedom[i] > 0) || !Double.isFinite(contributions[i])) {
        throw new IllegalArgumentException(
            "a contribution is finite and its degrees of freedom are above zero, not "
                + contributions[i]
                + " and "
                + degreesOfFreedom[i]);
      }
      greatest = Math.max(greatest, Math.abs(contributions[i]));
    }
    if (greatest == 0) {
      return Double.POSITIVE_INFINITY;
    }
    double variance = 0;
    double sum = 0;
    for (int i = 0; i < contributions.length; i++) {
      double square = contributions[i] / greatest * (contributions[i] / greatest);
      variance += square;
      sum += square * square / degreesOfFreedom[i];
    }
    return variance * variance / sum; // (G.2b)
  }
}
