package kelter.core.uncertainty;

import org.apache.commons.statistics.distribution.TDistribution;

/**
 * The coverage factor by which a combined standard uncertainty is multiplied to get an expanded
 * one: the quantile of Student's t (JCGM 100:2008, G.3.4 and table G.2).
 *
 * <p>It holds where the result is about normal, and is off where one component with limits
 * outweighs all others (G.6.5); a Monte Carlo check tells.
 */
public final class CoverageFactor {

  private CoverageFactor() {}

  /**
   * The coverage factor.
   *
   * @param probability the coverage probability, above 0 and below 1: 95 % is 0.95
   * @param degreesOfFreedom at least 1; cut to the next lower whole number (G.4.1, note 1)
   * @return the factor, above 0
   * @throws IllegalArgumentException if a figure is not allowed
   */
  public static double of(double probability, double degreesOfFreedom) {
    if (!(probability > 0 && probability < 1)) {
      throw new IllegalArgumentException(
          "a coverage probability lies above 0 and below 1, not " + probability);
    }
    if (!(degreesOfFreedom >= 1)) {
      throw new IllegalArgumentException(
          "a coverage factor needs 1 degree of freedom or more, not " + degreesOfFreedom);
    }
    return TDistribution.of(Math.floor(degreesOfFreedom))
        .inverseSurvivalProbability((1 - probability) / 2);
  }
}
