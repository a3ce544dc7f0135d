package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kelter.core.diagnosis.likelihood.Group;
import kelter.core.diagnosis.symptom.exact.CountedSum;

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
  private final CountedSum[] working;
  private final double[][][] weight;

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
    for (int g = 0; g < helps.length; g++) {
      helps[g] = helps(groups.get(g), helping[g]);
      alike[g] = new int[helps[g].length];
      cured[g] = sort(groups.get(g), helps[g], alike[g]);
    }
    this.working = working();
    this.weight = new double[groups.size()][][];
  }

  /** What each set of remedies puts right. */
  private CountedSum[] working() {
    JointPosterior.Counts counts = posterior.countsMadeByGroups();
    double[][][] factors = new double[alike.length][failing.length][];
    int[] helpful = new int[alike.length];
    for (int g = 0; g < helpful.length; g++) {
      helpful[g] = helping(g);
    }
    CountedSum[] counted = new CountedSum[failing.length];
    for (int done = 0; done < counted.length; done++) {
      double[][] own = new double[alike.length][];
      for (int g = 0; g < own.length; g++) {
        int helping = done & helpful[g];
        if (factors[g][helping] == null) {
          factors[g][helping] = factors(g, helping);
        }
        own[g] = factors[g][helping];
      }
      counted[done] = counts.of(own);
    }
    return counted;
  }

  /** The remedies that help any fault of a group. */
  private int helping(int group) {
    int helping = 0;
    for (int[] ofState : helps[group]) {
      for (int each : ofState) {
        helping |= each;
      }
    }
    return helping;
  }

  /** For each state of a group the chance that a set of remedies puts it right. */
  private double[] factors(int group, int done) {
    double[] factors = new double[alike[group].length];
    for (int state = 0; state < factors.length; state++) {
      int kind = alike[group][state];
      factors[state] = kind == NEVER ? 0 : cured[group][kind][done];
    }
    return factors;
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

  /** The chance that the machine does not work once some remedies are done, for each set. */
  double[] notWorking() {
    double[] notWorking = new double[failing.length];
    for (int done = 0; done < notWorking.length; done++) {
      notWorking[done] = Math.max(0, 1 - working[done].mass());
    }
    return notWorking;
  }

  /**
   * The same, times the probability of what was seen of a group.
   *
   * @param likelihood how likely that is in each state of the group
   */
  double[] notWorking(int group, double[] likelihood) {
    double seen = seen(group, likelihood);
    double[] notWorking = new double[failing.length];
    for (int done = 0; done < notWorking.length; done++) {
      notWorking[done] = Math.max(0, seen - working(done, group, likelihood));
    }
    return notWorking;
  }

  /**
   * The same of two groups, which are taken as independent once readings and reports are known.
   * That is so where nothing was reported and something is wrong; elsewhere it is near.
   */
  double[] notWorking(int one, double[] ofOne, int other, double[] ofOther) {
    double seen = seen(one, ofOne) * seen(other, ofOther);
    double[] notWorking = new double[failing.length];
    for (int done = 0; done < notWorking.length; done++) {
      double works = working(done, one, ofOne) * working(done, other, ofOther);
      double all = working[done].mass();
      notWorking[done] = Math.max(0, seen - (all > 0 ? works / all : 0));
    }
    return notWorking;
  }

  private double seen(int group, double[] likelihood) {
    double seen = 0;
    for (int state = 0; state < likelihood.length; state++) {
      seen += likelihood[state] * posterior.marginal(group, state);
    }
    return seen;
  }

  private double working(int done, int group, double[] likelihood) {
    if (weight[group] == null) {
      weight[group] = new double[failing.length][];
    }
    if (weight[group][done] == null) {
      double[] ofState = new double[likelihood.length];
      for (int state = 0; state < ofState.length; state++) {
        ofState[state] = alike[group][state] == NEVER ? 0 : working[done].weight(group, state);
      }
      weight[group][done] = ofState;
    }
    double works = 0;
    for (int state = 0; state < likelihood.length; state++) {
      works += likelihood[state] * weight[group][done][state];
    }
    return works;
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
    return Math.max(0, 1 - posterior.expectation(same));
  }
}
