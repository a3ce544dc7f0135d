package kelter.core.diagnosis.symptom.exact;

import java.util.IdentityHashMap;
import java.util.Map;
import kelter.core.diagnosis.symptom.GroupChances;
import kelter.core.diagnosis.symptom.StateChances;
import kelter.core.diagnosis.symptom.cases.SubsetSpace;
import kelter.core.diagnosis.symptom.cases.Tracking;

/**
 * The states of a group with the symptoms that they make. Weights are scaled so that the greatest
 * of the group is 1: the scale cancels in all that is asked, and no product of groups runs out of
 * the range of a double by it.
 */
final class GroupTables {

  /** Most groups are multiplied by few factors. */
  private static final int FEW = 2;

  private final SubsetSpace space;
  private final GroupChances group;
  private final Tracking tracking;
  private final double[] weight;
  private final StateTable[] table;
  private final Map<double[], GroupTables> multiplied = new IdentityHashMap<>(FEW);
  private double[] faulty;
  private IntervalSums all;

  private GroupTables(GroupTables other, double[] factor) {
    this.space = other.space;
    this.group = other.group;
    this.tracking = other.tracking;
    this.table = other.table;
    this.weight = other.weight.clone();
    for (int state = 0; state < weight.length; state++) {
      weight[state] *= factor[state];
    }
  }

  GroupTables(GroupChances group, Tracking tracking) {
    this(group, tracking, Map.of());
  }

  /**
   * Works out the tables.
   *
   * @param known tables of some of the states, as they are tracked here
   */
  GroupTables(GroupChances group, Tracking tracking, Map<StateChances.Nodes, StateTable> known) {
    this.space = tracking.space();
    this.group = group;
    this.tracking = tracking;
    this.weight = new double[group.states().size()];
    this.table = new StateTable[weight.length];
    double top = group.logTop();
    for (int state = 0; state < weight.length; state++) {
      weight[state] = Math.exp(group.states().get(state).logWeight() - top);
      if (group.states().get(state) instanceof StateChances.Nodes nodes) {
        StateTable before = known.get(nodes);
        table[state] = before != null ? before : StateTable.of(nodes, tracking);
      }
    }
    for (int state = 0; state < weight.length; state++) {
      if (group.states().get(state) instanceof StateChances.PairOf pair) {
        table[state] = table[pair.one()].with(table[pair.other()]);
      }
    }
  }

  /** The tables of the states with nodes. */
  Map<StateChances.Nodes, StateTable> known() {
    Map<StateChances.Nodes, StateTable> known = new IdentityHashMap<>();
    for (int state = 0; state < table.length; state++) {
      if (group.states().get(state) instanceof StateChances.Nodes nodes) {
        known.put(nodes, table[state]);
      }
    }
    return known;
  }

  /**
   * The same where one folded report is taken back, with weights as they are here.
   *
   * @param rest what is tracked and folded without it
   * @param folded the symptom of the report
   */
  GroupTables without(Tracking rest, int folded) {
    Map<StateChances.Nodes, StateTable> known = known();
    known.keySet().removeIf(nodes -> nodes.makes(folded));
    GroupTables without = new GroupTables(group, rest, known);
    System.arraycopy(weight, 0, without.weight, 0, weight.length);
    return without;
  }

  /**
   * The same states, their weights multiplied by a factor each.
   *
   * @param factor the factors; the same array makes the same tables
   */
  GroupTables times(double[] factor) {
    GroupTables known = multiplied.get(factor);
    if (known == null) {
      known = new GroupTables(this, factor);
      multiplied.put(factor, known);
    }
    return known;
  }

  int states() {
    return weight.length;
  }

  double weight(int state) {
    return weight[state];
  }

  StateTable table(int state) {
    return table[state];
  }

  /** The weight of a state times what all others make of it. */
  double around(int state, CausesBefore before, CausesBehind behind) {
    if (weight[state] == 0) {
      return 0;
    }
    double others =
        state == GroupChances.HEALTHY
            ? before.aroundHealthy(behind)
            : table[state].dot(before.around(behind));
    return weight[state] * others;
  }

  /** Whether a state has a weight. */
  boolean isAnyLeft() {
    for (double each : weight) {
      if (each > 0) {
        return true;
      }
    }
    return false;
  }

  /** The weight of nothing wrong. */
  double healthy() {
    return weight[GroupChances.HEALTHY];
  }

  /** The weight of all states together, whatever they make. */
  double sum() {
    return healthy() + faultySum();
  }

  /** The weight of all faulty states together, whatever they make. */
  double faultySum() {
    double sum = 0;
    for (int state = 1; state < weight.length; state++) {
      sum += weight[state];
    }
    return sum;
  }

  /** The weight with which faulty states make each set of symptoms. */
  double[] faulty() {
    if (faulty == null) {
      faulty = space.zero();
      for (int state = 1; state < weight.length; state++) {
        if (weight[state] > 0) {
          table[state].addTo(faulty, weight[state]);
        }
      }
    }
    return faulty;
  }

  /** The interval sums of the weight with which all states, healthy as well, make each set. */
  IntervalSums all() {
    if (all == null) {
      double[] function = faulty().clone();
      space.addAtNone(healthy(), function);
      int[] made = new int[space.cases()];
      for (int state = 1; state < weight.length; state++) {
        if (weight[state] > 0) {
          table[state].addMade(made);
        }
      }
      all = new IntervalSums(space, function, made);
    }
    return all;
  }

  /**
   * The shares of the nodes of a state with nodes, once the reports are known.
   *
   * @param state the state
   * @param value what the others make of each set that the state makes
   */
  double[] nodeShares(int state, double[] value) {
    StateChances.Nodes nodes = (StateChances.Nodes) group.states().get(state);
    double[] shares = table[state].factors(nodes, tracking, value);
    double sum = 0;
    for (int node = 0; node < shares.length; node++) {
      shares[node] *= nodes.share()[node];
      sum += shares[node];
    }
    for (int node = 0; node < shares.length; node++) {
      shares[node] /= sum;
    }
    return shares;
  }

  /** The same for the nodes of one fault of a pair, whose other fault adds its symptoms. */
  double[] nodeShares(int state, int member, double[] value) {
    StateChances.PairOf pair = (StateChances.PairOf) group.states().get(state);
    int own = member == 0 ? pair.one() : pair.other();
    int other = member == 0 ? pair.other() : pair.one();
    return nodeShares(own, table[other].averaged(value));
  }
}
