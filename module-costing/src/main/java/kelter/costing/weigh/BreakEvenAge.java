package kelter.costing.weigh;

/**
 * The age of the machine at which the best repair, at its bill of today, costs as much a year as
 * replacing. Found by bisection; the saving falls with age for every kind that was studied.
 */
final class BreakEvenAge {

  private static final double OLDEST = 60;
  private static final int HALVINGS = 24;

  private BreakEvenAge() {}

  /** The age in years, to within {@code 60 / 2^24}; NaN if one costs less at any age up to 60. */
  static double of(Comparison comparison) {
    double young = 0;
    double old = OLDEST;
    if (!(saving(comparison, young) > 0) || !(saving(comparison, old) < 0)) {
      return Double.NaN;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (young + old) / 2;
      if (saving(comparison, middle) > 0) {
        young = middle;
      } else {
        old = middle;
      }
    }
    return (young + old) / 2;
  }

  private static double saving(Comparison comparison, double age) {
    return comparison.with(comparison.basis().withAge(age)).saving();
  }
}
