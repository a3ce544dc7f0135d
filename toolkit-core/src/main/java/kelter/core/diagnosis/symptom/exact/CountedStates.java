package kelter.core.diagnosis.symptom.exact;

/**
 * The joint states of a posterior, each counted by a product of one factor for each group. What a
 * further factor f of one group comes to is the sum over its states of {@code f(x) weight(g, x)},
 * so that each outcome of a measurement on a group is a sum over its states only.
 */
public final class CountedStates {

  /** Where some group has no state that counts. */
  static final CountedStates NONE = new CountedStates(null, 0);

  private final SymptomPosterior counted;
  private final double mass;

  CountedStates(SymptomPosterior counted, double mass) {
    this.counted = counted;
    this.mass = mass;
  }

  /** The states with what counts of them; null where none does. */
  SymptomPosterior counted() {
    return counted;
  }

  /** The expectation of the product. */
  public double mass() {
    return mass;
  }

  /** The expectation of the product where a group is in a state, and 0 elsewhere. */
  public double weight(int group, int state) {
    return mass == 0 ? 0 : mass * counted.marginal(group, state);
  }
}
