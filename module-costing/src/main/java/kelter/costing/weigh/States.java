package kelter.costing.weigh;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import kelter.core.diagnosis.Diagnosis;

/**
 * The states that the machine may be in, with their probabilities, which sum to 1. What the
 * diagnosis does not give counts as a state that nothing cures.
 *
 * @param all the states
 */
record States(List<State> all) {

  /**
   * A state of the machine.
   *
   * @param faults what is wrong, {@code component.fault}
   * @param curable whether the faults explain all that is wrong
   * @param probability its probability, from 0 to 1
   */
  record State(Set<String> faults, boolean curable, double probability) {

    boolean isHealthy() {
      return curable && faults.isEmpty();
    }
  }

  /** Copies the list. */
  States {
    all = List.copyOf(all);
  }

  static States of(Diagnosis diagnosis) {
    List<State> states = new ArrayList<>();
    double sum = 0;
    for (Diagnosis.RankedState ranked : diagnosis.ranking()) {
      Set<String> faults =
          ranked.faults().stream().map(f -> f.fault().key()).collect(Collectors.toSet());
      states.add(new State(faults, !ranked.unexplained(), ranked.probability()));
      sum += ranked.probability();
    }
    if (sum < 1) {
      states.add(new State(Set.of(), false, 1 - sum));
    }
    double total = Math.max(1, sum);
    return new States(
        states.stream().map(s -> new State(s.faults, s.curable, s.probability / total)).toList());
  }

  /** The probability that nothing is wrong. */
  double healthy() {
    return all.stream().filter(State::isHealthy).mapToDouble(State::probability).sum();
  }

  /** The chance that the machine works after some remedies, each tried until one has cured. */
  double chanceOfCure(List<Work.Step> steps) {
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
