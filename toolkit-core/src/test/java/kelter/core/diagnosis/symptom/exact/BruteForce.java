package kelter.core.diagnosis.symptom.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import kelter.core.diagnosis.symptom.Background;
import kelter.core.diagnosis.symptom.GroupChances;
import kelter.core.diagnosis.symptom.MachineChances;
import kelter.core.diagnosis.symptom.Report;
import kelter.core.diagnosis.symptom.Reports;
import kelter.core.diagnosis.symptom.StateChances;

/**
 * The definition itself: adds up every state of every group at every node of severity, and every
 * set of symptoms that may be there.
 */
final class BruteForce {

  private final Reports reports;
  private final List<List<Atom>> groups = new ArrayList<>();
  private final double soundFactor;

  /** The weight of each joint state, by the numbers of the states. */
  final Map<List<Integer>, Double> joint = new TreeMap<>(BruteForce::compare);

  /** For each group and state the weight of each node, of a pair those of its first fault. */
  final List<List<double[]>> nodes = new ArrayList<>();

  /** For each group and state that is a pair the weight of each node of its second fault. */
  final List<List<double[]>> seconds = new ArrayList<>();

  /** For each symptom the weight of its being there, and of no group making it. */
  final double[] there;

  final double[] madeByNoGroup;

  double total;

  /** One state at one node of severity. */
  private record Atom(int state, int node, int second, double weight, double[] makes) {}

  BruteForce(MachineChances machine, Reports reports) {
    this.reports = reports;
    this.there = new double[reports.count()];
    this.madeByNoGroup = new double[reports.count()];
    double sound = 1;
    for (GroupChances group : machine.groups()) {
      sound *= Math.exp(group.logPriorHealthy());
      groups.add(atoms(group));
      nodes.add(new ArrayList<>());
      seconds.add(new ArrayList<>());
      for (StateChances state : group.states()) {
        boolean single = state instanceof StateChances.Nodes;
        StateChances.PairOf pair = single ? null : (StateChances.PairOf) state;
        StateChances first = single ? state : group.states().get(pair.one());
        nodes.get(nodes.size() - 1).add(room(first));
        seconds.get(seconds.size() - 1).add(single ? null : room(group.states().get(pair.other())));
      }
    }
    double prior = machine.priorSound();
    this.soundFactor = prior * (1 - sound) / ((1 - prior) * sound);
    add(new ArrayList<>(), 1);
  }

  private static double[] room(StateChances state) {
    return new double[((StateChances.Nodes) state).share().length];
  }

  private static int compare(List<Integer> one, List<Integer> other) {
    for (int i = 0; i < one.size(); i++) {
      if (!one.get(i).equals(other.get(i))) {
        return Integer.compare(one.get(i), other.get(i));
      }
    }
    return 0;
  }

  private List<Atom> atoms(GroupChances group) {
    List<Atom> atoms = new ArrayList<>();
    for (int state = 0; state < group.states().size(); state++) {
      StateChances chances = group.states().get(state);
      double weight = Math.exp(chances.logWeight());
      if (chances instanceof StateChances.Nodes own) {
        for (int n = 0; n < own.share().length; n++) {
          atoms.add(new Atom(state, n, -1, weight * own.share()[n], makes(own, n)));
        }
      } else if (chances instanceof StateChances.PairOf pair) {
        addPair(group, state, pair, atoms);
      }
    }
    return atoms;
  }

  private void addPair(GroupChances group, int state, StateChances.PairOf pair, List<Atom> atoms) {
    StateChances.Nodes one = (StateChances.Nodes) group.states().get(pair.one());
    StateChances.Nodes other = (StateChances.Nodes) group.states().get(pair.other());
    for (int n = 0; n < one.share().length; n++) {
      for (int m = 0; m < other.share().length; m++) {
        double weight = Math.exp(pair.logWeight()) * one.share()[n] * other.share()[m];
        double[] makes = makes(one, n);
        double[] more = makes(other, m);
        for (int i = 0; i < makes.length; i++) {
          makes[i] = 1 - (1 - makes[i]) * (1 - more[i]);
        }
        atoms.add(new Atom(state, n, m, weight, makes));
      }
    }
  }

  private double[] makes(StateChances.Nodes state, int node) {
    double[] makes = new double[reports.count()];
    for (int i = 0; i < makes.length; i++) {
      makes[i] = state.chance()[i] == null ? 0 : state.chance()[i][node];
    }
    return makes;
  }

  private void add(List<Atom> chosen, double weight) {
    if (chosen.size() < groups.size()) {
      for (Atom atom : groups.get(chosen.size())) {
        chosen.add(atom);
        add(chosen, weight * atom.weight);
        chosen.remove(chosen.size() - 1);
      }
      return;
    }
    boolean sound = chosen.stream().allMatch(atom -> atom.state == 0);
    double own = weight * (sound ? soundFactor : 1);
    double[] none = none(chosen);
    double explained = own * explained(none, sound, e -> true, -1);
    total += explained;
    joint.merge(chosen.stream().map(Atom::state).toList(), explained, Double::sum);
    for (int g = 0; g < chosen.size(); g++) {
      Atom atom = chosen.get(g);
      nodes.get(g).get(atom.state)[atom.node] += explained;
      if (atom.second >= 0) {
        seconds.get(g).get(atom.state)[atom.second] += explained;
      }
    }
    for (int i = 0; i < there.length; i++) {
      int symptom = 1 << i;
      there[i] += own * explained(none, sound, e -> (e & symptom) != 0, -1);
      madeByNoGroup[i] += own * explained(none, sound, e -> true, i);
    }
  }

  /** For each symptom the chance that no group makes it. */
  private double[] none(List<Atom> chosen) {
    double[] none = new double[reports.count()];
    for (int i = 0; i < none.length; i++) {
      none[i] = 1;
      for (Atom atom : chosen) {
        none[i] *= 1 - atom.makes[i];
      }
    }
    return none;
  }

  private double explained(double[] none, boolean sound, IntPredicate counts, int leakOnly) {
    double sum = 0;
    for (int e = 0; e < 1 << none.length; e++) {
      if (counts.test(e)) {
        double chance = 1;
        for (int i = 0; i < none.length; i++) {
          Background symptom = reports.symptom(i);
          double leak = sound ? symptom.leakWhenSound() : symptom.leak();
          double absent = none[i] * (1 - leak);
          double present = i == leakOnly ? none[i] * leak : 1 - absent;
          chance *= (e >> i & 1) == 1 ? present : absent;
          chance *= reported(e, i);
        }
        sum += chance;
      }
    }
    return sum;
  }

  private double reported(int e, int i) {
    Report report = reports.report(i);
    for (int masker : reports.symptom(i).maskers()) {
      if ((e >> masker & 1) == 1) {
        return report.ifMasked();
      }
    }
    return (e >> i & 1) == 1 ? report.ifThere() : report.ifAbsent();
  }

  double marginal(int group, int state) {
    double sum = 0;
    for (Map.Entry<List<Integer>, Double> each : joint.entrySet()) {
      sum += each.getKey().get(group) == state ? each.getValue() : 0;
    }
    return sum / total;
  }
}
