package kelter.costing.weigh;

import kelter.core.numeric.Root;

/**
 * The age of the machine at which the best repair, at its bill of today, costs as much a year as
 * replacing. Up to {@value #OLDEST} years the saving falls with age for every kind that was
 * studied, but for a little beyond the age of 30 where a single study with hardly any wear is left.
 */
final class BreakEvenAge {

  private static final double OLDEST = 60;
  private static final double CLOSE = 1e-6;

  private BreakEvenAge() {}

  /** The age in years, to within 1e-6; NaN if one costs less at any age up to 60. */
  static double of(OptionComparison comparison) {
    if (!(saving(comparison, 0) > 0) || !(saving(comparison, OLDEST) < 0)) {
      return Double.NaN;
    }
    return Root.between(age -> saving(comparison, age), 0, OLDEST, CLOSE);
  }

  private static double saving(OptionComparison comparison, double age) {
    return comparison.with(comparison.basis().withAge(age)).saving();
  }
}
