package kelter.core.check;

import kelter.core.uncertainty.Estimate;
import kelter.core.uncertainty.Normal;

/**
 * When a verdict may be given: at or above the stated probability of conformity a value conforms,
 * at or below its complement it does not, in between the uncertainty is too large to say (JCGM
 * 106:2012, clauses 7 and 8).
 *
 * @param level the probability that a verdict needs, above 0.5 and below 1
 */
public record DecisionRule(double level) {

  /** 95 %. */
  public static final DecisionRule USUAL = new DecisionRule(0.95);

  /**
   * Checks the level.
   *
   * @throws IllegalArgumentException if the level is not above 0.5 and below 1
   */
  public DecisionRule {
    if (!(level > 0.5 && level < 1)) {
      throw new IllegalArgumentException("a decision level lies above 0.5 and below 1");
    }
  }

  /**
   * The probability that the true value lies inside the limits, for a normal distribution around
   * the estimate (JCGM 106:2012, 7.3 and 7.4).
   *
   * @param estimate the estimate
   * @param limits the limits, same unit
   * @return a probability from 0 to 1; NaN if the estimate is not finite
   */
  public static double probabilityOfConformity(Estimate estimate, Limits limits) {
    double y = estimate.value();
    double u = estimate.standardUncertainty();
    if (!Double.isFinite(y) || !Double.isFinite(u)) {
      return Double.NaN;
    }
    if (u == 0) {
      return limits.contain(y) ? 1 : 0;
    }
    double upper = Normal.cdf((limits.high() - y) / u);
    double lower = Normal.cdf((limits.low() - y) / u);
    return upper - lower;
  }

  /**
   * The verdict for a probability of conformity.
   *
   * @param probability a probability from 0 to 1, or NaN
   * @return the verdict; never {@code CONFORMS} for NaN
   */
  public Verdict verdict(double probability) {
    if (Double.isNaN(probability)) {
      return Verdict.NOT_MEASURED;
    }
    if (probability >= level) {
      return Verdict.CONFORMS;
    }
    return probability <= 1 - level ? Verdict.DOES_NOT_CONFORM : Verdict.UNDECIDED;
  }
}
