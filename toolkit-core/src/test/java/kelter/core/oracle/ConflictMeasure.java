package kelter.core.oracle;

import kelter.core.source.Source;

/**
 * Whether readings speak against each other: {@code conf(e) = log2( prod_i P(e_i) / P(e) )}.
 * Readings that have one cause support each other and make it negative; above zero they contradict
 * each other, or the case is a rare one.
 */
public final class ConflictMeasure {

  /** Where the measure comes from. */
  public static final Source SOURCE =
      Source.fromMemory(
          "Jensen, Chamberlain, Nordahl and Jensen, Analysis in HUGIN of data conflict, UAI 1990");

  private ConflictMeasure() {}

  /**
   * The measure.
   *
   * @param model the problem
   * @param evidence the outcome of each observable
   * @return the conflict in bits; infinite if the outcomes cannot be together in any state
   * @throws IllegalArgumentException if the evidence does not fit the observables, or one of the
   *     outcomes cannot be by itself
   */
  public static double bits(DiscreteModel model, int[] evidence) {
    double together = model.logEvidence(evidence);
    double apart = 0;
    for (int f = 0; f < evidence.length; f++) {
      if (evidence[f] != DiscreteModel.NOT_OBSERVED) {
        apart += alone(model, f, evidence[f]);
      }
    }
    return (apart - together) / Entropy.LN2;
  }

  private static double alone(DiscreteModel model, int observable, int outcome) {
    int[] one = model.nothingObserved();
    one[observable] = outcome;
    double log = model.logEvidence(one);
    if (log == Double.NEGATIVE_INFINITY) {
      throw new IllegalArgumentException(
          "outcome " + outcome + " of observable " + observable + " cannot be in any state");
    }
    return log;
  }
}
