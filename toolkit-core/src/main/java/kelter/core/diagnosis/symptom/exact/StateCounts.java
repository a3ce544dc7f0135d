package kelter.core.diagnosis.symptom.exact;

/**
 * Counts the joint states of a posterior, each by a product of one factor for each group, as often
 * as is asked. What two counts have in common is worked out once: factors of a group that are the
 * same array, and groups in a row at the end that have the same. One thread at a time may ask.
 */
public final class StateCounts {

  private final SymptomPosterior posterior;
  private final CausesBehind end;

  StateCounts(SymptomPosterior posterior, CausesBehind end) {
    this.posterior = posterior;
    this.end = end;
  }

  /**
   * Counts.
   *
   * @param factor for each group a factor, 0 or more, for each of its states, which nobody changes
   *     afterwards; null where it is 1
   */
  public CountedStates of(double[]... factor) {
    if (!posterior.isAnyLeft(factor)) {
      return CountedStates.NONE;
    }
    SymptomPosterior counted = posterior.multiplied(end, factor);
    return new CountedStates(counted, counted.total() / posterior.total());
  }
}
