package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kelter.core.diagnosis.Brings;
import kelter.core.diagnosis.likelihood.Brought;
import kelter.core.diagnosis.likelihood.Group;

/**
 * A cause in one group that brings an effect in another.
 *
 * <p>The prior of a joint state is multiplied by {@code (1 + sum of r_b [cause and effect of b are
 * there]) prod 1 / N_i} over the causes i that are there. With q the prior chance of the effect by
 * coincidence, c the chance that it is there beside the cause, and d = (c - q) / (1 - q): N_i = 1 /
 * (1 - sum of d over all that i brings) and r = N_i d / q. The cause is then as frequent as before,
 * and each effect is there beside it with its chance. Derived here.
 *
 * @param causeGroup the group of the cause
 * @param cause its place among the faults of the group
 * @param effectGroup the group of the effect
 * @param effect its place among the faults of the group
 * @param ratio r
 * @param norm N of the cause
 */
record BroughtAcross(
    int causeGroup, int cause, int effectGroup, int effect, double ratio, double norm) {

  /**
   * Those of some relations whose cause and effect lie in different groups.
   *
   * @throws IllegalArgumentException if the chances of what one cause brings sum to 1 or more
   */
  static List<BroughtAcross> among(List<Group> groups, List<Brings> all) {
    List<BroughtAcross> across = new ArrayList<>();
    Map<String, Double> sums = new LinkedHashMap<>();
    for (Brings brings : all) {
      int[] cause = place(groups, brings.cause());
      int[] effect = place(groups, brings.effect());
      if (cause != null && effect != null && cause[0] != effect[0]) {
        double chance = excess(brings, groups.get(effect[0]).priorOf(effect[1]));
        across.add(new BroughtAcross(cause[0], cause[1], effect[0], effect[1], chance, 1));
        sums.merge(brings.cause(), brings.chance(), Double::sum);
      }
    }
    Brought.requireBelowOne(sums);
    List<BroughtAcross> normed = new ArrayList<>();
    for (BroughtAcross each : across) {
      double sum = 0;
      for (BroughtAcross other : across) {
        boolean same = other.causeGroup == each.causeGroup && other.cause == each.cause;
        sum += same ? other.ratio : 0;
      }
      double norm = 1 / (1 - sum);
      double coincidence = groups.get(each.effectGroup).priorOf(each.effect);
      normed.add(
          new BroughtAcross(
              each.causeGroup,
              each.cause,
              each.effectGroup,
              each.effect,
              norm * each.ratio / coincidence,
              norm));
    }
    return List.copyOf(normed);
  }

  /** d: by how much the effect is likelier beside its cause; 0 if coincidence is as likely. */
  private static double excess(Brings brings, double coincidence) {
    return Math.max(0, (brings.chance() - coincidence) / (1 - coincidence));
  }

  private static int[] place(List<Group> groups, String key) {
    for (int g = 0; g < groups.size(); g++) {
      for (int fault = 0; fault < groups.get(g).faults().size(); fault++) {
        if (groups.get(g).faults().get(fault).key().equals(key)) {
          return new int[] {g, fault};
        }
      }
    }
    return null;
  }

  /**
   * By what the prior of each state of a group is multiplied for the causes that it holds.
   *
   * @return natural logarithms; null where nothing is
   */
  static double[] logFactors(List<BroughtAcross> all, int group, Group states) {
    double[] log = null;
    for (int cause = 0; cause < states.faults().size(); cause++) {
      double norm = norm(all, group, cause);
      if (norm != 1) {
        log = log == null ? new double[states.states()] : log;
        for (int state = 0; state < log.length; state++) {
          log[state] -= states.hasFault(state, cause) ? Math.log(norm) : 0;
        }
      }
    }
    return log;
  }

  private static double norm(List<BroughtAcross> all, int group, int cause) {
    for (BroughtAcross each : all) {
      if (each.causeGroup == group && each.cause == cause) {
        return each.norm;
      }
    }
    return 1;
  }

  /** For each group which of its states the term holds: 1 or 0; null where all. */
  double[][] holding(List<Group> groups) {
    double[][] holding = new double[groups.size()][];
    holding[causeGroup] = holding(groups.get(causeGroup), cause);
    holding[effectGroup] = holding(groups.get(effectGroup), effect);
    return holding;
  }

  private static double[] holding(Group group, int fault) {
    double[] holding = new double[group.states()];
    for (int state = 0; state < holding.length; state++) {
      holding[state] = group.hasFault(state, fault) ? 1 : 0;
    }
    return holding;
  }
}
