package kelter.core.diagnosis.symptom.exact;

import java.util.List;
import kelter.core.diagnosis.symptom.cases.SubsetSpace;

/**
 * The groups in a row: what those before each of them make if something is wrong in one of them,
 * and the weight if nothing is. The joint states are ordered by the first group in which something
 * is wrong, so that the sound machine stands apart and nothing has to be taken off:
 *
 * <p>{@code F_1 = 0, h_1 = 1, h_{g+1} = h_g w_g, F_{g+1}(C) = h_g A_g(C) + (F_g u (A_g + w_g
 * [none]))(C)}, with w_g the weight of nothing wrong in g, A_g the weights with which its faulty
 * states make each set, and u the union product. Derived here. No report is in it.
 */
final class CausesBefore {

  private final List<GroupTables> groups;
  private final SubsetSpace space;
  private final double[] sound;
  private double[][] wrong;

  CausesBefore(List<GroupTables> groups, SubsetSpace space) {
    this.groups = groups;
    this.space = space;
    this.sound = new double[groups.size() + 1];
    sound[0] = 1;
    for (int g = 0; g < groups.size(); g++) {
      sound[g + 1] = sound[g] * groups.get(g).healthy();
    }
  }

  private double[][] wrong() {
    double[][] before = new double[sound.length][];
    before[0] = space.zero();
    for (int g = 0; g < groups.size(); g++) {
      before[g + 1] = groups.get(g).all().union(before[g]);
      SubsetSpace.add(sound[g], groups.get(g).faulty(), before[g + 1]);
    }
    return before;
  }

  int count() {
    return groups.size();
  }

  GroupTables group(int group) {
    return groups.get(group);
  }

  /** F_g: what the groups before make if something is wrong in one of them. */
  double[] wrong(int group) {
    if (wrong == null) {
      wrong = wrong();
    }
    return wrong[group];
  }

  /** h_g: the weight of nothing wrong in the groups before. */
  double sound(int group) {
    return sound[group];
  }

  /** The weight of all joint states, whatever they make. */
  double total(double soundFactor) {
    double someWrong = 0;
    for (int g = 0; g < count(); g++) {
      double ofAll = groups.get(g).sum();
      double faultyOnly = 0;
      for (int state = 1; state < groups.get(g).states(); state++) {
        faultyOnly += groups.get(g).weight(state);
      }
      someWrong = someWrong * ofAll + sound[g] * faultyOnly;
    }
    return someWrong + soundFactor * sound[count()];
  }
}
