package kelter.core.diagnosis.symptom.exact;

import java.util.List;
import kelter.core.diagnosis.symptom.GroupChances;
import kelter.core.diagnosis.symptom.cases.SubsetSpace;

/**
 * For every group the most that it and those behind it can make of what is there: {@code B_{G+1} =
 * t, B_g(C) = max over x of sum over S of a_gx(S) B_{g+1}(C u S)}. A row of states of the groups
 * before g that makes f comes to at most {@code sum over C of f(C) B_g(C)}. As long as nothing is
 * wrong the bound is one of its own, without the sound machine, whose weight is known. Derived
 * here.
 *
 * <p>Where groups may be left out, B is at least what it is without each of them, so that it bounds
 * rows in which the states of some groups behind g were chosen first.
 */
final class MostMade {

  private final SubsetSpace space;
  private final List<GroupTables> groups;
  private final double[][][] value;
  private final double[] nothingYet;
  private final double[] first;

  /**
   * Works out the bounds.
   *
   * @param end what comes of each set behind all groups
   * @param nothing the most that comes of nothing wrong behind all groups
   * @param mayBeLeftOut whether each group may be left out
   */
  private MostMade(
      List<GroupTables> groups,
      SubsetSpace space,
      double[] end,
      double nothing,
      boolean mayBeLeftOut) {
    this.groups = groups;
    this.space = space;
    this.value = new double[groups.size()][][];
    this.nothingYet = new double[groups.size() + 1];
    nothingYet[groups.size()] = nothing;
    double[] most = end;
    for (int g = groups.size() - 1; g >= 0; g--) {
      value[g] = values(groups.get(g), most);
      nothingYet[g] = Math.max(ofNothing(g), mayBeLeftOut ? nothingYet[g + 1] : 0);
      most = most(value[g], mayBeLeftOut ? most : space.zero());
    }
    this.first = most;
  }

  /**
   * The bounds of some groups.
   *
   * @param end t, what the reports make of each set
   */
  static MostMade of(List<GroupTables> groups, SubsetSpace space, double[] end) {
    return new MostMade(groups, space, end, 0, false);
  }

  /** The bounds of some groups, each of which may be left out. */
  static MostMade withoutAny(List<GroupTables> groups, SubsetSpace space, double[] end) {
    return new MostMade(groups, space, end, 0, true);
  }

  /** The bounds of some groups whose states are chosen before those of all of these. */
  MostMade after(List<GroupTables> chosenFirst) {
    return new MostMade(chosenFirst, space, first, nothingYet[0], false);
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

  private static double[] most(double[][] values, double[] atLeast) {
    double[] most = atLeast.clone();
    for (double[] ofState : values) {
      for (int i = 0; ofState != null && i < most.length; i++) {
        most[i] = Math.max(most[i], ofState[i]);
      }
    }
    return most;
  }

  private double ofNothing(int group) {
    double most = groups.get(group).healthy() * nothingYet[group + 1];
    for (int state = 1; state < value[group].length; state++) {
      double[] ofState = value[group][state];
      most = ofState == null ? most : Math.max(most, space.atNone(ofState));
    }
    return most;
  }

  /** The most that comes of it, where nothing is chosen yet. */
  double atStart() {
    return nothingYet[0];
  }

  /**
   * The most that a row of states comes to with a further one.
   *
   * @param made what the row makes, or null while nothing is wrong
   * @param soFar the weight of the row while nothing is wrong
   * @param group the group of the further state
   * @param state the further state
   * @return the most, 0 where that cannot be
   */
  double with(double[] made, double soFar, int group, int state) {
    double[] ofState = value[group][state];
    if (ofState == null) {
      return 0;
    }
    if (made != null) {
      return SubsetSpace.dot(made, ofState);
    }
    return state == GroupChances.HEALTHY
        ? soFar * groups.get(group).healthy() * nothingYet[group + 1]
        : soFar * space.atNone(ofState);
  }
}
