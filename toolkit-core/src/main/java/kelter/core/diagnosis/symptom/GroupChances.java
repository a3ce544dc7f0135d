package kelter.core.diagnosis.symptom;

import java.util.List;

/**
 * The states of a group.
 *
 * @param logPriorHealthy the natural logarithm of the prior chance that nothing is wrong in it
 * @param states its states, {@link #HEALTHY} first, which makes no symptom
 */
public record GroupChances(double logPriorHealthy, List<StateChances> states) {

  /** The place of the state in which nothing is wrong. */
  public static final int HEALTHY = 0;

  /**
   * Checks the states.
   *
   * @throws IllegalArgumentException if the first state makes a symptom, or the prior is no chance
   *     above 0, or a pair is not one of states with nodes, or no state has a weight
   */
  public GroupChances {
    states = List.copyOf(states);
    if (!(logPriorHealthy <= 0 && logPriorHealthy > Double.NEGATIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "a prior of exp(" + logPriorHealthy + ") that nothing is wrong; above 0 and up to 1");
    }
    requireSilent(states.get(HEALTHY));
    boolean any = false;
    for (StateChances state : states) {
      any |= state.logWeight() > Double.NEGATIVE_INFINITY;
      if (state instanceof StateChances.PairOf pair) {
        requireNodes(states, pair.one());
        requireNodes(states, pair.other());
      }
    }
    if (!any) {
      throw new IllegalArgumentException("no state of the group has a weight");
    }
  }

  private static void requireSilent(StateChances healthy) {
    if (healthy instanceof StateChances.Nodes nodes) {
      for (double[] chance : nodes.chance()) {
        if (chance != null) {
          throw new IllegalArgumentException("a group in which nothing is wrong makes a symptom");
        }
      }
    } else {
      throw new IllegalArgumentException("the first state of a group is a pair of faults");
    }
  }

  private static void requireNodes(List<StateChances> states, int place) {
    if (place <= HEALTHY
        || place >= states.size()
        || !(states.get(place) instanceof StateChances.Nodes)) {
      throw new IllegalArgumentException(
          "a pair of faults refers to state " + place + "; a state with nodes is allowed");
    }
  }

  /** The greatest weight of its states, as a natural logarithm. */
  public double logTop() {
    double top = Double.NEGATIVE_INFINITY;
    for (StateChances state : states) {
      top = Math.max(top, state.logWeight());
    }
    return top;
  }
}
