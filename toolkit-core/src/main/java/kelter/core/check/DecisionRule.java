package kelter.core.check;

import kelter.core.uncertainty.Estimate;
import kelter.core.uncertainty.InputQuantity;

/**
 * When a verdict may be given: a value conforms when it lies inside the limits with the stated
 * probability, it does not when it lies beyond one of them with that probability, and otherwise the
 * uncertainty is too large to say (JCGM 106:2012, clauses 7 and 8).
 *
 * <p>Beyond one of them, not beyond either: of a reading that is worth far less than the limits are
 * apart nothing can be said, although it is unlikely to lie between them.
 *
 * @param level the probability that a verdict needs, above 0.5 and below 1
 */
public record DecisionRule(double level) {

  /** A value this many standard uncertainties from a limit has a verdict at any usual level. */
  private static final double FARTHEST = 40;

  private static final int HALVINGS = 30;

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
   * The probability that the true value lies inside the limits, with each error as it is
   * distributed (JCGM 106:2012, 7.1 and 7.2).
   *
   * @param quantity what is known of the value
   * @param limits the limits, same unit
   * @return a probability from 0 to 1
   */
  public static double probabilityOfConformity(InputQuantity quantity, Limits limits) {
    return quantity.probabilityBetween(limits.low(), limits.high());
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
    return isFinite(estimate)
        ? probabilityOfConformity(InputQuantity.normal(estimate), limits)
        : Double.NaN;
  }

  private static boolean isFinite(Estimate estimate) {
    return Double.isFinite(estimate.value()) && Double.isFinite(estimate.standardUncertainty());
  }

  /**
   * The verdict on an estimate with a normal distribution around it.
   *
   * @param estimate the estimate
   * @param limits the limits, same unit
   * @return the verdict; never {@code CONFORMS} for an estimate that is not finite
   */
  public Verdict verdict(Estimate estimate, Limits limits) {
    return isFinite(estimate)
        ? verdict(InputQuantity.normal(estimate), limits)
        : Verdict.NOT_MEASURED;
  }

  /**
   * The verdict on a value, with each error as it is distributed.
   *
   * @param quantity what is known of the value
   * @param limits the limits, same unit
   * @return the verdict
   */
  public Verdict verdict(InputQuantity quantity, Limits limits) {
    if (probabilityOfConformity(quantity, limits) >= level) {
      return Verdict.CONFORMS;
    }
    double below = probabilityOfConformity(quantity, Limits.atMost(limits.low()));
    double above = probabilityOfConformity(quantity, Limits.atLeast(limits.high()));
    return Math.max(below, above) >= level ? Verdict.DOES_NOT_CONFORM : Verdict.UNDECIDED;
  }

  /**
   * The verdict for a probability of conformity with limits that are settled one way or the other.
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

  /**
   * The uncertainty with which a reading of this value would get a verdict, if its error is normal;
   * with limits of error a little more would do.
   *
   * @param value the value, finite
   * @param limits the limits, same unit
   * @return the greatest standard uncertainty, same unit, at which the verdict is not {@code
   *     UNDECIDED}; 0 if the value lies on a limit, where no uncertainty gives a verdict; infinite
   *     if there is no limit
   */
  public double settlingUncertainty(double value, Limits limits) {
    double distance = Math.min(Math.abs(limits.low() - value), Math.abs(limits.high() - value));
    if (distance == 0 || Double.isInfinite(distance)) {
      return distance;
    }
    double settled = distance / FARTHEST;
    double open = distance * FARTHEST;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = Math.sqrt(settled) * Math.sqrt(open);
      if (verdict(new Estimate(value, middle), limits) == Verdict.UNDECIDED) {
        open = middle;
      } else {
        settled = middle;
      }
    }
    return settled;
  }
}
