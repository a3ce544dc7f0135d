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
 * groups, so that the states of a group have no order of their own; {@link MostMade} bounds what is
 * still to be chosen.
 *
 * <p>Where priors of few groups are multiplied, their states are chosen first: the bounds of all
 * other groups are then those of the posterior that was multiplied, and are worked out once for all
 * that come of it.
 */
final class LikeliestStates {

  /** By how much a bound may fall short of what it bounds, for rounding. */
  private static final double ROUNDING = 1e-12;

  private final List<GroupTables> groups;
  private final SubsetSpace space;
  private final double[] end;
  private final double total;

  /** The groups in the order in which their states are chosen. */
  private final int[] order;

  /** How many of them are chosen first. */
  private final int first;

  private final MostMade ofFirst;
  private final MostMade ofOthers;
  private final List<JointState> found = new ArrayList<>();
  private final PriorityQueue<Row> queue = new PriorityQueue<>();

  /** Rows that were not among those that were asked for. */
  private final List<Row> passedOver = new ArrayList<>();

  /**
   * A search over all states.
   *
   * @param end what the reports make of each set
   * @param total the weight of all states
   * @param chosenFirst the places of groups whose states are chosen before all others
   * @param ofOthers bounds of the groups; where some are chosen first, of groups that may be left
   *     out
   */
  LikeliestStates(
      List<GroupTables> groups,
      SubsetSpace space,
      double[] end,
      double total,
      List<Integer> chosenFirst,
      MostMade ofOthers) {
    this.groups = groups;
    this.space = space;
    this.end = end;
    this.total = total;
    this.first = chosenFirst.size();
    this.order = order(groups.size(), chosenFirst);
    this.ofOthers = ofOthers;
    this.ofFirst = ofOthers.after(chosenFirst.stream().map(groups::get).toList());
  }

  private static int[] order(int count, List<Integer> chosenFirst) {
    int[] order = new int[count];
    int place = 0;
    for (int group : chosenFirst) {
      order[place++] = group;
    }
    for (int group = 0; group < count; group++) {
      if (!chosenFirst.contains(group)) {
        order[place++] = group;
      }
    }
    return order;
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
      queue.add(new Row(null, GroupChances.HEALTHY, -1, ofFirst.atStart()));
    }
    queue.addAll(passedOver);
    passedOver.clear();
    double enough = least(count);
    while (!queue.isEmpty() && mayBeAmong(queue.peek(), enough)) {
      Row row = queue.poll();
      if (row.place < order.length - 1) {
        extend(row, enough);
      } else if (row.isExact) {
        found.add(new JointState(row.states(order), row.bound / total));
        enough = least(count);
      } else {
        add(row.exact(weight(row)), enough);
      }
    }
    Collections.sort(found);
    return List.copyOf(found.subList(0, Math.min(count, found.size())));
  }

  private boolean mayBeAmong(Row row, double enough) {
    return row.bound * (1 + ROUNDING) >= enough * total;
  }

  /** The probability that a further state needs to be one of those asked for. */
  private double least(int count) {
    Collections.sort(found);
    return found.size() < count ? 0 : found.get(count - 1).probability();
  }

  private void add(Row row, double enough) {
    if (!(row.bound > 0)) {
      return;
    }
    if (mayBeAmong(row, enough)) {
      queue.add(row);
    } else {
      passedOver.add(row);
    }
  }

  private void extend(Row row, double enough) {
    int next = row.place + 1;
    boolean isFirst = next < first;
    int group = order[next];
    row.made = made(row);
    for (int state = 0; state < groups.get(group).states(); state++) {
      double bound =
          isFirst
              ? ofFirst.with(row.made, row.soFar, next, state)
              : ofOthers.with(row.made, row.soFar, group, state);
      add(new Row(row, state, next, bound), enough);
    }
  }

  /** The weight of a whole row; the sound machine, which is found before, has none here. */
  private double weight(Row row) {
    double[] made = made(row);
    return made == null ? 0 : SubsetSpace.dot(made, end);
  }

  /** How the symptoms are distributed that a row of states makes; null while nothing is wrong. */
  private double[] made(Row row) {
    if (row.before == null) {
      return null;
    }
    GroupTables group = groups.get(order[row.place]);
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

  /** The states of the groups that are chosen. */
  private static final class Row implements Comparable<Row> {
    private final Row before;
    private final int state;
    private final int place;
    private final double bound;
    private final boolean isExact;
    private double soFar = 1;
    private double[] made;

    private Row(Row before, int state, int place, double bound) {
      this(before, state, place, bound, false);
    }

    private Row(Row before, int state, int place, double bound, boolean isExact) {
      this.before = before;
      this.state = state;
      this.place = place;
      this.bound = bound;
      this.isExact = isExact;
    }

    /** The same with its weight in place of a bound. */
    private Row exact(double weight) {
      return new Row(before, state, place, weight, true);
    }

    private int[] states(int... order) {
      int[] states = new int[order.length];
      for (Row row = this; row.before != null; row = row.before) {
        states[order[row.place]] = row.state;
      }
      return states;
    }

    /** The greatest bound first; of equal ones the row that is further on. */
    @Override
    public int compareTo(Row other) {
      int byBound = Double.compare(other.bound, bound);
      return byBound != 0 ? byBound : Integer.compare(other.place, place);
    }
  }
}
