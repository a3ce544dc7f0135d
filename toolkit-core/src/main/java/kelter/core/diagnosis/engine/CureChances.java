package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kelter.core.diagnosis.likelihood.Group;

/**
 * What sets of remedies, one bit each, put right. A state of a group is right again when each of
 * its faults is cured by one of the remedies that help it; each of them fails by itself. States
 * whose faults are helped by the same remedies are cured alike, and are added up first.
 */
final class CureChances {

  private static final int NEVER = -1;

  private final JointPosterior posterior;
  private final int[][][] helps;
  private final double[] failing;
  private final int[][] alike;
  private final double[][][] cured;
  private final double[][] usual;

  /**
   * Gets ready.
   *
   * @param groups the groups
   * @param posterior their joint posterior
   * @param helping for each fault of each group the remedies that help it
   * @param failing for each set of remedies the chance that all of them fail
   */
  CureChances(List<Group> groups, JointPosterior posterior, int[][] helping, double[] failing) {
    this.posterior = posterior;
    this.failing = failing;
    this.helps = new int[groups.size()][][];
    this.alike = new int[groups.size()][];
    this.cured = new double[groups.size()][][];
    this.usual = new double[groups.size()][];
    for (int g = 0; g < helps.length; g++) {
      helps[g] = helps(groups.get(g), helping[g]);
      alike[g] = new int[helps[g].length];
      cured[g] = sort(groups.get(g), helps[g], alike[g]);
      usual[g] = working(g, null);
    }
  }

  /** For each fault of each state the remedies that help it, in the order of their bits. */
  private static int[][] helps(Group group, int[] helping) {
    int[][] helps = new int[group.states()][];
    for (int state = 0; state < helps.length; state++) {
      int[] present = group.faultsOf(state);
      helps[state] = new int[present.length];
      for (int i = 0; i < present.length; i++) {
        helps[state][i] = helping[present[i]];
      }
      Arrays.sort(helps[state]);
    }
    return helps;
  }

  /**
   * Sorts the states of a group by what helps them.
   *
   * @param alike takes for each state the number of its kind, {@link #NEVER} where something is
   *     left that no remedy helps
   * @return for each kind and each set of remedies the chance that the set puts it right
   */
  private double[][] sort(Group group, int[][] helps, int[] alike) {
    List<int[]> kinds = new ArrayList<>();
    for (int state = 0; state < helps.length; state++) {
      boolean curable = state != group.unexplainedState();
      for (int helping : helps[state]) {
        curable &= helping != 0;
      }
      alike[state] = curable ? kind(kinds, helps[state]) : NEVER;
    }
    double[][] cured = new double[kinds.size()][failing.length];
    for (int kind = 0; kind < cured.length; kind++) {
      for (int done = 0; done < failing.length; done++) {
        double chance = 1;
        for (int helping : kinds.get(kind)) {
          chance *= cured(helping, done);
        }
        cured[kind][done] = chance;
      }
    }
    return cured;
  }

  private static int kind(List<int[]> kinds, int[] helps) {
    for (int kind = 0; kind < kinds.size(); kind++) {
      if (Arrays.equals(kinds.get(kind), helps)) {
        return kind;
      }
    }
    kinds.add(helps);
    return kinds.size() - 1;
  }

  private double cured(int helping, int done) {
    return 1 - failing[helping & done];
  }

  /**
   * The chance that the machine does not work once some remedies are done, times the probability of
   * what was seen; for each set of remedies.
   *
   * @param likelihood for each group how likely what was seen is in each of its states; null where
   *     nothing was seen of it
   */
  double[] notWorking(double[][] likelihood) {
    double[][] working = new double[usual.length][];
    double sound = 1;
    for (int g = 0; g < working.length; g++) {
      working[g] = likelihood[g] == null ? usual[g] : working(g, likelihood[g]);
      sound *= likelihood[g] == null ? 1 : likelihood[g][Group.HEALTHY];
    }
    double seen = posterior.expectation(likelihood);
    double[] notWorking = new double[failing.length];
    for (int done = 0; done < notWorking.length; done++) {
      double works = 1;
      for (double[] ofGroup : working) {
        works *= ofGroup[done];
      }
      notWorking[done] = Math.max(0, seen - posterior.expectation(works, sound));
    }
    return notWorking;
  }

  /** The weight of the states of a group that each set of remedies puts right. */
  private double[] working(int g, double[] likelihood) {
    double[] weight = new double[cured[g].length];
    for (int state = 0; state < alike[g].length; state++) {
      if (alike[g][state] != NEVER) {
        double own = likelihood == null ? 1 : likelihood[state];
        weight[alike[g][state]] += posterior.weight(g, state) * own;
      }
    }
    double[] working = new double[failing.length];
    for (int kind = 0; kind < weight.length; kind++) {
      for (int done = 0; done < working.length; done++) {
        working[done] += weight[kind] * cured[g][kind][done];
      }
    }
    return working;
  }

  /** The chance that a remedy finds and cures a fault that those before it have left. */
  double chance(int number, int before) {
    double[][] same = new double[helps.length][];
    for (int g = 0; g < same.length; g++) {
      same[g] = new double[helps[g].length];
      for (int state = 0; state < same[g].length; state++) {
        same[g][state] = 1;
        for (int helping : helps[g][state]) {
          same[g][state] *= 1 - cured(helping, before | 1 << number) + cured(helping, before);
        }
      }
    }
    return 1 - posterior.expectation(same);
  }
}
