package kelter.costing.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import kelter.core.diagnosis.Diagnosis;

/**
 * The states that the machine may be in, with their probabilities, which sum to 1. What the
 * diagnosis neither shows nor blames on a fault counts as a state that nothing cures.
 *
 * @param all the states
 */
public record States(List<State> all) {

  /**
   * A state of the machine.
   *
   * @param faults what is wrong, {@code component.fault}
   * @param curable whether the faults explain all that is wrong
   * @param probability its probability, from 0 to 1
   */
  public record State(Set<String> faults, boolean curable, double probability) {

    /**
     * Whether nothing is wrong.
     *
     * @return true if there is no fault and nothing unexplained
     */
    public boolean isHealthy() {
      return curable && faults.isEmpty();
    }
  }

  public States {
    all = List.copyOf(all);
  }

  /**
   * The states that a diagnosis speaks of.
   *
   * @param diagnosis the diagnosis
   * @return the states
   */
  public static States of(Diagnosis diagnosis) {
    List<State> found = new ArrayList<>();
    for (Diagnosis.RankedState ranked : diagnosis.ranking()) {
      Set<String> faults =
          ranked.faults().stream().map(each -> each.fault().key()).collect(Collectors.toSet());
      found.add(new State(faults, !ranked.unexplained(), ranked.probability()));
    }
    addNotShown(diagnosis, found);
    double total = 0;
    for (State state : found) {
      total += state.probability();
    }
    List<State> states = new ArrayList<>();
    for (State state : found) {
      states.add(new State(state.faults, state.curable, state.probability / total));
    }
    return new States(states);
  }

  /**
   * What is left of the probability where the ranking shows only the likeliest states: sound and
   * unexplained states as the diagnosis counts them, and single faults in proportion to what is
   * left of their own probabilities.
   */
  private static void addNotShown(Diagnosis diagnosis, List<State> states) {
    double shown = 0;
    double shownUnexplained = 0;
    double shownSound = 0;
    for (State state : states) {
      shown += state.probability();
      shownUnexplained += state.curable() ? 0 : state.probability();
      shownSound += state.isHealthy() ? state.probability() : 0;
    }
    double left = Math.max(0, 1 - shown);
    double unexplained = diagnosis.unexplained().probability() - shownUnexplained;
    unexplained = Math.min(left, Math.max(0, unexplained));
    double sound = Math.max(0, diagnosis.healthy() - shownSound);
    sound = Math.min(left - unexplained, sound);
    Map<String, Double> faults = notShown(diagnosis.faults(), states);
    double rest = 0;
    for (double each : faults.values()) {
      rest += each;
    }
    double single = rest > 0 ? left - unexplained - sound : 0;
    for (Map.Entry<String, Double> each : faults.entrySet()) {
      addIfLikely(states, new State(Set.of(each.getKey()), true, single * each.getValue() / rest));
    }
    addIfLikely(states, new State(Set.of(), true, sound));
    addIfLikely(states, new State(Set.of(), false, left - sound - single));
  }

  /** What is left of the probability of each fault, sorted. */
  private static Map<String, Double> notShown(
      List<Diagnosis.FaultProbability> faults, List<State> states) {
    Map<String, Double> left = new TreeMap<>();
    for (Diagnosis.FaultProbability each : faults) {
      String key = each.fault().key();
      double shown = 0;
      for (State state : states) {
        shown += state.faults().contains(key) ? state.probability() : 0;
      }
      double rest = Math.max(0, each.probability() - shown);
      left.merge(key, rest, Double::sum);
    }
    return left;
  }

  private static void addIfLikely(List<State> states, State state) {
    if (state.probability() > 0) {
      states.add(state);
    }
  }

  /**
   * How likely the states are.
   *
   * @return the probability of each, in their order
   */
  public double[] probabilities() {
    return all.stream().mapToDouble(State::probability).toArray();
  }

  /**
   * The probability that nothing is wrong.
   *
   * @return a probability from 0 to 1
   */
  public double healthy() {
    double healthy = 0;
    for (State state : all) {
      healthy += state.isHealthy() ? state.probability() : 0;
    }
    return healthy;
  }

  /**
   * The probability that no known fault explains what is wrong, or not all of it.
   *
   * @return a probability from 0 to 1
   */
  public double incurable() {
    double incurable = 0;
    for (State state : all) {
      incurable += state.curable() ? 0 : state.probability();
    }
    return incurable;
  }

  /**
   * The chance that the machine works after some remedies.
   *
   * @param steps the remedies, tried until the machine works
   * @return a probability from 0 to 1
   */
  public double chanceOfCure(List<PlannedWork.Step> steps) {
    double chance = 0;
    for (State state : all) {
      Cures cures = new Cures(state, steps);
      for (int i = 0; i < steps.size(); i++) {
        cures.take(i);
      }
      chance += state.probability() * cures.chance();
    }
    return chance;
  }
}
