package kelter.core.law;

import kelter.core.check.Limits;

/**
 * By how much what an appliance takes may deviate from its rating, at rated voltage and normal
 * operating temperature: the rows that both tables of IEC 60335-1, clause 10, have.
 *
 * <p>All appliances up to a small rating +20 %. Heating and combined ones above it: up to a step
 * ±10 %; beyond that +5 % or the least deviation, whichever is greater, and −10 %. Motor-operated
 * ones: up to a step +20 %; beyond that +15 % or the least deviation, whichever is greater. Where a
 * table gives no lower deviation, the lower end is 0.
 *
 * @param what what is rated, for a person
 * @param unit its coherent SI unit, in which all figures are
 * @param small up to this rating there is one row for all appliances
 * @param heatingStep up to this rating a heating appliance may deviate by ±10 %
 * @param heatingLeast the least upper deviation of a heating appliance above the step
 * @param motorStep up to this rating a motor-operated appliance may deviate by +20 %
 * @param motorLeast the least upper deviation of a motor-operated appliance above the step
 */
public record DeviationTable(
    String what,
    String unit,
    double small,
    double heatingStep,
    double heatingLeast,
    double motorStep,
    double motorLeast) {

  private static final double PLUS_20 = 0.20;
  private static final double PLUS_15 = 0.15;
  private static final double PLUS_OR_MINUS_10 = 0.10;
  private static final double PLUS_5 = 0.05;

  /**
   * The band of a heating or combined appliance.
   *
   * @param rated the rating, above 0
   * @return the least and the greatest that it may take; the least is 0 up to the small rating
   * @throws IllegalArgumentException if the rating is not finite and above 0
   */
  public Limits heating(double rated) {
    Require.positive(what, rated, unit);
    if (rated <= small) {
      return new Limits(0, rated * (1 + PLUS_20));
    }
    double low = rated * (1 - PLUS_OR_MINUS_10);
    if (rated <= heatingStep) {
      return new Limits(low, rated * (1 + PLUS_OR_MINUS_10));
    }
    return new Limits(low, rated + Math.max(rated * PLUS_5, heatingLeast));
  }

  /**
   * The band of a motor-operated appliance, or of a combined one whose motors take more than half
   * of the input.
   *
   * @param rated the rating, above 0
   * @return 0, for want of a lower deviation, and the greatest that it may take
   * @throws IllegalArgumentException if the rating is not finite and above 0
   */
  public Limits motor(double rated) {
    Require.positive(what, rated, unit);
    if (rated <= motorStep) {
      return new Limits(0, rated * (1 + PLUS_20));
    }
    return new Limits(0, rated + Math.max(rated * PLUS_15, motorLeast));
  }
}
