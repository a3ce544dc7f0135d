package kelter.core.diagnosis.symptom.exact;

import java.util.IdentityHashMap;
import java.util.Map;
import kelter.core.diagnosis.symptom.cases.SubsetSpace;

/**
 * Groups in a row, seen from the start: what they make if something is wrong in one of them, and
 * the weight if nothing is. The joint states are ordered by the first group in which something is
 * wrong, so that the sound machine stands apart and nothing has to be taken off:
 *
 * <p>{@code F_1 = 0, h_1 = 1, h_{g+1} = h_g w_g, F_{g+1}(C) = h_g A_g(C) + (F_g u (A_g + w_g
 * [none]))(C)}, with w_g the weight of nothing wrong in g, A_g the weights with which its faulty
 * states make each set, and u the union product. Derived here. No report is in it. Rows that begin
 * alike share their beginning.
 */
final class CausesBefore {

  /** Most rows go on in one way only. */
  private static final int FEW = 2;

  private final SubsetSpace space;
  private final CausesBefore shorter;
  private final GroupTables last;
  private final double sound;
  private double[] wrong;
  private IntervalSums wrongSums;
  private final Map<GroupTables, CausesBefore> longer = new IdentityHashMap<>(FEW);
  private final Map<CausesBehind, double[]> around = new IdentityHashMap<>(FEW);

  private CausesBefore(SubsetSpace space, CausesBefore shorter, GroupTables last, double sound) {
    this.space = space;
    this.shorter = shorter;
    this.last = last;
    this.sound = sound;
  }

  /** No group. */
  static CausesBefore none(SubsetSpace space) {
    return new CausesBefore(space, null, null, 1);
  }

  /** The same with one group behind them. */
  CausesBefore and(GroupTables group) {
    CausesBefore known = longer.get(group);
    if (known == null) {
      known = new CausesBefore(space, this, group, sound * group.healthy());
      longer.put(group, known);
    }
    return known;
  }

  /** h: the weight of nothing wrong in them. */
  double sound() {
    return sound;
  }

  /** F: what they make if something is wrong in one of them. */
  double[] wrong() {
    if (wrong == null) {
      wrong = shorter == null ? space.zero() : wrongWithLast();
    }
    return wrong;
  }

  private double[] wrongWithLast() {
    double[] all = last.all().union(shorter.wrong());
    SubsetSpace.add(shorter.sound, last.faulty(), all);
    return all;
  }

  /**
   * c: what they and others behind make of each set that a faulty state of a group between them
   * makes, {@code c(S) = h V(S) + sum over W of F(W) V(S u W)}.
   */
  double[] around(CausesBehind behind) {
    double[] known = around.get(behind);
    if (known == null) {
      known = wrongSums().transposed(behind.value());
      SubsetSpace.add(sound, behind.value(), known);
      around.put(behind, known);
    }
    return known;
  }

  private IntervalSums wrongSums() {
    if (wrongSums == null) {
      int[] any = new int[space.cases()];
      for (int c = 0; c < any.length; c++) {
        any[c] = space.subsets(c) - 1;
      }
      wrongSums = new IntervalSums(space, wrong(), any);
    }
    return wrongSums;
  }

  /** What they and others behind make of nothing wrong in a group between them. */
  double aroundHealthy(CausesBehind behind) {
    return sound * behind.soundValue() + SubsetSpace.dot(wrong(), behind.value());
  }
}
