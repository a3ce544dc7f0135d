package kelter.core.uncertainty.montecarlo;

import kelter.core.uncertainty.Budget;

/**
 * Whether a first-order result holds, by comparison with Monte Carlo (JCGM 101:2008, clause 8): the
 * ends of both coverage intervals may differ by no more than the numerical tolerance of the
 * standard uncertainty.
 *
 * @param tolerance the numerical tolerance, in the coherent SI unit of the result; 0 if the result
 *     has no uncertainty
 * @param lowDifference how far the lower ends lie apart (8.1, equation (21))
 * @param highDifference how far the upper ends lie apart (equation (22))
 * @param noise how steady the Monte Carlo figures are, same unit
 * @param holds the answer
 */
public record Validation(
    double tolerance, double lowDifference, double highDifference, double noise, Answer holds) {

  /** The difference must be this many times farther from the tolerance than figures are steady. */
  private static final double MARGIN = 2;

  /** The answer of the comparison. */
  public enum Answer {
    /** Both differences are within the tolerance. */
    YES("yes", "yes"),
    /** One of them is not. */
    NO("no", "no"),
    /** The difference is as near to the tolerance as the Monte Carlo figures are steady. */
    UNSETTLED("not-settled", "not settled");

    private final String id;
    private final String words;

    Answer(String id, String words) {
      this.id = id;
      this.words = words;
    }

    /**
     * The word for programs; it stays the same when the words change.
     *
     * @return lower-case letters and hyphens
     */
    public String id() {
      return id;
    }

    /**
     * The words that a person sees.
     *
     * @return lower-case words
     */
    public String words() {
      return words;
    }
  }

  /**
   * Compares.
   *
   * @param budget the first-order result
   * @param low the lower end of the coverage interval by Monte Carlo
   * @param high its upper end
   * @param digits how many significant digits of the standard uncertainty are meaningful
   * @param noise how steady the ends are
   * @param undefined whether some values that the inputs may have gave no result; the first-order
   *     result then does not hold, whatever the ends
   * @return the comparison
   */
  static Validation of(
      Budget budget, double low, double high, int digits, double noise, boolean undefined) {
    double u = budget.result().standardUncertainty();
    double y = budget.result().value();
    double tolerance = u > 0 ? Tolerance.of(u, digits) : 0;
    double lowDifference = Math.abs(y - budget.expanded() - low); // (21)
    double highDifference = Math.abs(y + budget.expanded() - high); // (22)
    double greater = Math.max(lowDifference, highDifference);
    Answer holds = undefined ? Answer.NO : answer(greater, tolerance, noise);
    return new Validation(tolerance, lowDifference, highDifference, noise, holds);
  }

  private static Answer answer(double difference, double tolerance, double noise) {
    if (Double.isNaN(difference)) {
      return Answer.NO;
    }
    if (noise > 0 && Math.abs(difference - tolerance) <= MARGIN * noise) {
      return Answer.UNSETTLED;
    }
    return difference <= tolerance ? Answer.YES : Answer.NO;
  }

  /** Whether the figures are steady enough and more trials would not change the answer. */
  boolean isSettled() {
    return noise <= tolerance && holds != Answer.UNSETTLED;
  }
}
