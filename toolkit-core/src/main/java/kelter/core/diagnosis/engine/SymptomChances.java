package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kelter.core.diagnosis.FaultSymptom;
import kelter.core.diagnosis.likelihood.Group;
import kelter.core.diagnosis.symptom.GroupChances;
import kelter.core.diagnosis.symptom.StateChances;
import kelter.core.vocabulary.Symptom;

/** With which chances the states of a group make symptoms, at each of their severities. */
final class SymptomChances {

  private final Group group;
  private final List<Symptom> symptoms;

  /** For each fault and symptom how it makes it; null where it does not. */
  private final FaultSymptom[][] made;

  SymptomChances(Group group, List<Symptom> symptoms) {
    this(group, symptoms, places(symptoms));
  }

  /**
   * The same where the places of the symptoms are known.
   *
   * @param place by the id of a symptom its place in the list
   */
  SymptomChances(Group group, List<Symptom> symptoms, Map<String, Integer> place) {
    this.group = group;
    this.symptoms = symptoms;
    this.made = new FaultSymptom[group.faults().size()][symptoms.size()];
    for (int fault = 0; fault < made.length; fault++) {
      for (FaultSymptom each : group.faults().get(fault).symptoms()) {
        Integer known = place.get(each.symptom());
        if (known != null) {
          made[fault][known] = each;
        }
      }
    }
  }

  private static Map<String, Integer> places(List<Symptom> symptoms) {
    Map<String, Integer> place = new HashMap<>();
    for (Symptom symptom : symptoms) {
      place.put(symptom.id(), place.size());
    }
    return place;
  }

  /**
   * The states of the group.
   *
   * @param logFactor by what the prior of each state is multiplied beside that of its group, as a
   *     natural logarithm; null where it is not
   * @param known the states that are worked out already: all but pairs; or none
   */
  GroupChances chances(double[] logFactor, List<StateChances> known) {
    List<StateChances> states = new ArrayList<>();
    for (int state = 0; state < group.states(); state++) {
      double log = group.logWeight(state) + (logFactor == null ? 0 : logFactor[state]);
      states.add(known.isEmpty() ? state(state, log) : state(state, log, known));
    }
    return new GroupChances(group.logPrior(Group.HEALTHY), states);
  }

  private StateChances state(int state, double log, List<StateChances> known) {
    if (state == group.unexplainedState()) {
      return known.get(known.size() - 1);
    }
    return state < known.size() - 1 ? known.get(state) : state(state, log);
  }

  private StateChances state(int state, double logWeight) {
    int[] faults = group.faultsOf(state);
    if (state == group.unexplainedState()) {
      return new StateChances.Nodes(logWeight, new double[] {1}, unexplained());
    }
    if (faults.length == 2 && group.readings().count() == 0) {
      return new StateChances.PairOf(logWeight, faults[0] + 1, faults[1] + 1);
    }
    double[] shares = symptoms.isEmpty() ? new double[] {1} : group.shares(state);
    return new StateChances.Nodes(logWeight, shares, together(state, shares.length));
  }

  /** For each symptom the chances at the nodes of a state; null where it does not make it. */
  private double[][] together(int state, int nodes) {
    double[][] chance = new double[symptoms.size()][];
    for (int fault : group.faultsOf(state)) {
      for (int i = 0; i < chance.length; i++) {
        if (made[fault][i] != null) {
          chance[i] = together(chance[i], alone(state, fault, made[fault][i], nodes));
        }
      }
    }
    return chance;
  }

  private double[] alone(int state, int fault, FaultSymptom symptom, int nodes) {
    double[] chance = new double[nodes];
    for (int node = 0; node < nodes; node++) {
      chance[node] = symptom.at(group.severityAt(state, node, fault));
    }
    return chance;
  }

  /** Noisy-OR of two causes. */
  private static double[] together(double[] one, double[] other) {
    for (int node = 0; one != null && node < one.length; node++) {
      other[node] = 1 - (1 - one[node]) * (1 - other[node]);
    }
    return other;
  }

  /**
   * What no known fault explains makes each symptom as its faults do on average by their priors.
   */
  private double[][] unexplained() {
    double[][] chance = new double[symptoms.size()][];
    double mass = 0;
    for (int fault = 0; fault < made.length; fault++) {
      mass += group.prior(fault);
    }
    for (int fault = 0; fault < made.length; fault++) {
      for (int i = 0; i < chance.length; i++) {
        if (made[fault][i] != null) {
          double own = group.prior(fault) / mass * made[fault][i].at(FaultSymptom.MIDDLE);
          chance[i] = new double[] {chance[i] == null ? own : chance[i][0] + own};
        }
      }
    }
    return chance;
  }

  /**
   * The mean chances with which a state makes symptoms.
   *
   * @param state the state
   * @param shares the shares of the nodes of the state
   * @return for each symptom its chance, in their order
   */
  double[] means(int state, double[] shares) {
    double[] means = new double[symptoms.size()];
    double[][] chance =
        state == group.unexplainedState() ? unexplained() : together(state, shares.length);
    for (int i = 0; i < means.length; i++) {
      for (int node = 0; chance[i] != null && node < shares.length; node++) {
        means[i] += shares[node] * chance[i][node];
      }
    }
    return means;
  }

  /** The chances of a symptom in the middle of a fault; 0 where it makes none. */
  double middle(int fault, int symptom) {
    return made[fault][symptom] == null ? 0 : made[fault][symptom].at(FaultSymptom.MIDDLE);
  }
}
