package kelter.costing.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
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

  /** Copies the list. */
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
    List<State> states = new ArrayList<>();
    for (Diagnosis.RankedState ranked : diagnosis.ranking()) {
      Set<String> faults =
          ranked.faults().stream().map(f -> f.fault().key()).collect(Collectors.toSet());
      states.add(new State(faults, !ranked.unexplained(), ranked.probability()));
    }
    states.addAll(notShown(diagnosis, states));
    double total = sum(states, state -> true);
    return new States(
        states.stream().map(s -> new State(s.faults, s.curable, s.probability / total)).toList());
  }

  /**
   * What is left of the probability where the ranking shows only the likeliest states: sound and
   * unexplained states as the diagnosis counts them, and single faults in proportion to what is
   * left of their own probabilities.
   */
  private static List<State> notShown(Diagnosis diagnosis, List<State> shown) {
    double left = Math.max(0, 1 - sum(shown, state -> true));
    double unexplained = diagnosis.unexplained().probability() - sum(shown, s -> !s.curable());
    unexplained = Math.min(left, Math.max(0, unexplained));
    double sound = diagnosis.healthy() - sum(shown, State::isHealthy);
    sound = Math.min(left - unexplained, Math.max(0, sound));
    Map<String, Double> faults = new TreeMap<>();
    for (Diagnosis.FaultProbability each : diagnosis.faults()) {
      String key = each.fault().key();
      double rest = each.probability() - sum(shown, s -> s.faults().contains(key));
      faults.merge(key, Math.max(0, rest), Double::sum);
    }
    double rest = faults.values().stream().mapToDouble(Double::doubleValue).sum();
    double single = rest > 0 ? left - unexplained - sound : 0;
    List<State> states = new ArrayList<>();
    faults.forEach((key, share) -> states.add(new State(Set.of(key), true, single * share / rest)));
    states.add(new State(Set.of(), true, sound));
    states.add(new State(Set.of(), false, left - sound - single));
    states.removeIf(state -> !(state.probability() > 0));
    return states;
  }

  private static double sum(List<State> states, Predicate<State> which) {
    return states.stream().filter(which).mapToDouble(State::probability).sum();
  }

  /**
   * The probability that nothing is wrong.
   *
   * @return a probability from 0 to 1
   */
  public double healthy() {
    return all.stream().filter(State::isHealthy).mapToDouble(State::probability).sum();
  }

  /**
   * The chance that the machine works after some remedies.
   *
   * @param steps the remedies, tried until the machine works
   * @return a probability from 0 to 1
   */
  public double chanceOfCure(List<Work.Step> steps) {
    return all.stream().mapToDouble(s -> s.probability() * chanceOfCure(s, steps)).sum();
  }

  /**
   * The chance that all faults of a state are cured by some remedies. A remedy cures each fault
   * that it is meant for with its own chance, whatever else it or another remedy does.
   */
  static double chanceOfCure(State state, List<Work.Step> steps) {
    if (!state.curable()) {
      return 0;
    }
    double all = 1;
    for (String fault : state.faults()) {
      double left = 1;
      for (Work.Step step : steps) {
        left *= step.cures().contains(fault) ? 1 - step.remedy().probabilityOfCure() : 1;
      }
      all *= 1 - left;
    }
    return all;
  }
}
