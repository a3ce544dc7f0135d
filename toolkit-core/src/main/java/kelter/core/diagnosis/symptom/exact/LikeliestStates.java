package kelter.core.diagnosis.symptom.exact;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.PriorityQueue;
import kelter.core.diagnosis.symptom.GroupChances;
import kelter.core.diagnosis.symptom.cases.SubsetSpace;

/**
 * The likeliest joint states, found best first over the groups. The weight of a joint state is
 * {@code sum over C of t(C) (union product of what its states make)(C)}, no product over the
 * groups, so that the states of a group have no order of their own.
 *
 * <p>For every group the most that it and those behind it can make of what is there is {@code
 * B_{G+1} = t, B_g(C) = max over x of sum over S of a_gx(S) B_{g+1}(C u S)}; a row of states that
 * makes f so far comes to at most {@code sum over C of f(C) B(C)}. As long as nothing is wrong the
 * bound is one of its own, without the sound machine, whose weight is known. Derived here.
 */
final class LikeliestStates {

  /** By how much a bound may fall short of what it bounds, for rounding. */
  private static final double ROUNDING = 1e-12;

  private final List<GroupTables> groups;
  private final SubsetSpace space;
  private final double total;
  private final double[][][] value;
  private final double[] nothingYet;
  private final List<JointState> found = new ArrayList<>();
  private final PriorityQueue<Row> queue = new PriorityQueue<>();

  LikeliestStates(
      List<GroupTables> groups, ReportWeights weights, SubsetSpace space, double total) {
    this.groups = groups;
    this.space = space;
    this.total = total;
    this.value = new double[groups.size()][][];
    this.nothingYet = new double[groups.size() + 1];
    double[] most = weights.ofMade();
    for (int g = groups.size() - 1; g >= 0; g--) {
      value[g] = values(groups.get(g), most);
      most = most(value[g]);
      nothingYet[g] = nothingYet(g);
    }
  }

  /**
   * For each state of a group what the value of the set of symptoms comes to with it; null where it
   * cannot be.
   */
  private static double[][] values(GroupTables group, double[] value) {
    double[][] values = new double[group.states()][];
    for (int state = 0; state < values.length; state++) {
      if (group.weight(state) == 0) {
        continue;
      }
      double[] ofState = group.table(state).averaged(value);
      for (int i = 0; i < ofState.length; i++) {
        ofState[i] *= group.weight(state);
      }
      values[state] = ofState;
    }
    return values;
  }

  private double[] most(double[][] values) {
    double[] most = space.zero();
    for (double[] ofState : values) {
      for (int i = 0; ofState != null && i < most.length; i++) {
        most[i] = Math.max(most[i], ofState[i]);
      }
    }
    return most;
  }

  private double nothingYet(int group) {
    double most = groups.get(group).healthy() * nothingYet[group + 1];
    for (int state = 1; state < value[group].length; state++) {
      double[] ofState = value[group][state];
      most = ofState == null ? most : Math.max(most, space.atNone(ofState));
    }
    return most;
  }

  /**
   * The likeliest states. Who asks for more goes on where the search ended before.
   *
   * @param count how many
   * @param sound the probability of the sound machine
   */
  List<JointState> find(int count, double sound) {
    if (found.isEmpty()) {
      found.add(new JointState(new int[groups.size()], sound));
      queue.add(new Row(null, GroupChances.HEALTHY, -1, nothingYet[0]));
    }
    double enough = least(count);
    while (!queue.isEmpty() && queue.peek().bound * (1 + ROUNDING) >= enough * total) {
      Row row = queue.poll();
      if (row.group == groups.size() - 1) {
        found.add(new JointState(row.states(groups.size()), row.bound / total));
        enough = least(count);
      } else {
        extend(row, queue);
      }
    }
    Collections.sort(found);
    return List.copyOf(found.subList(0, Math.min(count, found.size())));
  }

  /** The probability that a further state needs to be one of those asked for. */
  private double least(int count) {
    Collections.sort(found);
    return found.size() < count ? 0 : found.get(count - 1).probability();
  }

  private void extend(Row row, PriorityQueue<Row> queue) {
    int next = row.group + 1;
    double[] made = made(row);
    for (int state = 0; state < value[next].length; state++) {
      double bound;
      if (value[next][state] == null) {
        continue;
      }
      if (made != null) {
        bound = SubsetSpace.dot(made, value[next][state]);
      } else if (state == GroupChances.HEALTHY) {
        bound = row.soFar * groups.get(next).healthy() * nothingYet[next + 1];
      } else {
        bound = row.soFar * space.atNone(value[next][state]);
      }
      if (bound > 0) {
        queue.add(new Row(row, state, next, bound));
      }
    }
    row.made = made;
  }

  /** How the symptoms are distributed that a row of states makes; null while nothing is wrong. */
  private double[] made(Row row) {
    if (row.before == null) {
      return null;
    }
    GroupTables group = groups.get(row.group);
    double weight = group.weight(row.state);
    double[] before = row.before.made;
    row.soFar = row.before.soFar * weight;
    double[] made = null;
    if (before != null) {
      made = group.table(row.state).sums().union(before);
      for (int i = 0; i < made.length; i++) {
        made[i] *= weight;
      }
    } else if (row.state != GroupChances.HEALTHY) {
      made = space.zero();
      group.table(row.state).addTo(made, row.soFar);
    }
    return made;
  }

  /** The states of the first groups. */
  private static final class Row implements Comparable<Row> {
    private final Row before;
    private final int state;
    private final int group;
    private final double bound;
    private double soFar = 1;
    private double[] made;

    private Row(Row before, int state, int group, double bound) {
      this.before = before;
      this.state = state;
      this.group = group;
      this.bound = bound;
    }

    private int[] states(int count) {
      int[] states = new int[count];
      for (Row row = this; row.before != null; row = row.before) {
        states[row.group] = row.state;
      }
      return states;
    }

    /** The greatest bound first; of equal ones the row that is further on. */
    @Override
    public int compareTo(Row other) {
      int byBound = Double.compare(other.bound, bound);
      return byBound != 0 ? byBound : Integer.compare(other.group, group);
    }
  }
}
