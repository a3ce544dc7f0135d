package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.List;
import kelter.core.diagnosis.Fault;
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
    this.group = group;
    this.symptoms = symptoms;
    this.made = new FaultSymptom[group.faults().size()][symptoms.size()];
    for (int fault = 0; fault < made.length; fault++) {
      for (FaultSymptom each : group.faults().get(fault).symptoms()) {
        for (int i = 0; i < symptoms.size(); i++) {
          if (symptoms.get(i).id().equals(each.symptom())) {
            made[fault][i] = each;
          }
        }
      }
    }
  }

  /**
   * The states of the group.
   *
   * @param logFactor by what the prior of each state is multiplied beside that of its group, as a
   *     natural logarithm; null where it is not
   */
  GroupChances chances(double[] logFactor) {
    List<StateChances> states = new ArrayList<>();
    for (int state = 0; state < group.states(); state++) {
      double log = group.logWeight(state) + (logFactor == null ? 0 : logFactor[state]);
      states.add(state(state, log));
    }
    return new GroupChances(group.logPrior(Group.HEALTHY), states);
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
    double[][] chance = new double[symptoms.size()][];
    for (int fault : faults) {
      for (int i = 0; i < chance.length; i++) {
        if (made[fault][i] != null) {
          chance[i] = together(chance[i], alone(state, fault, made[fault][i], shares.length));
        }
      }
    }
    return new StateChances.Nodes(logWeight, shares, chance);
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
   * The mean chance that a state makes a symptom, whether that is weighed or not.
   *
   * @param state the state
   * @param symptom the id of the symptom
   * @param shares the shares of the nodes of the state
   */
  double mean(int state, String symptom, double[] shares) {
    double sum = 0;
    if (state == group.unexplainedState()) {
      return meanUnexplained(symptom);
    }
    for (int node = 0; node < shares.length; node++) {
      double absent = 1;
      for (int fault : group.faultsOf(state)) {
        FaultSymptom own = of(group.faults().get(fault), symptom);
        absent *= own == null ? 1 : 1 - own.at(group.severityAt(state, node, fault));
      }
      sum += shares[node] * (1 - absent);
    }
    return sum;
  }

  private double meanUnexplained(String symptom) {
    double mass = 0;
    double sum = 0;
    for (int fault = 0; fault < group.faults().size(); fault++) {
      FaultSymptom own = of(group.faults().get(fault), symptom);
      mass += group.prior(fault);
      sum += own == null ? 0 : group.prior(fault) * own.at(FaultSymptom.MIDDLE);
    }
    return sum / mass;
  }

  private static FaultSymptom of(Fault fault, String symptom) {
    for (FaultSymptom each : fault.symptoms()) {
      if (each.symptom().equals(symptom)) {
        return each;
      }
    }
    return null;
  }
}
