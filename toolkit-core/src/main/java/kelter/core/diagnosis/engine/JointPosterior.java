package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;
import kelter.core.diagnosis.weighing.Group;

/**
 * The states of the whole machine: one state of each group.
 *
 * <p>Groups share no reading, so the weight of a joint state is the product of the weights of its
 * parts; only the state in which nothing at all is wrong has a weight of its own, since somebody
 * complains or nobody does. The sum over all joint states is therefore a product of sums with one
 * correction, and no joint state needs to be formed but those that are shown.
 */
final class JointPosterior {

  private final List<Group> groups;
  private final double[][] weight;
  private final double[] sum;
  private final double[] leftOut;
  private final double soundFactor;
  private final double total;

  /**
   * Puts the groups together.
   *
   * @param groups the groups
   * @param priorSound the prior probability that nothing at all is wrong
   */
  JointPosterior(List<Group> groups, double priorSound) {
    this.groups = groups;
    this.weight = new double[groups.size()][];
    this.sum = new double[groups.size()];
    this.leftOut = new double[groups.size()];
    double logPriorSound = 0;
    for (int g = 0; g < groups.size(); g++) {
      double top = top(groups.get(g));
      weight[g] = scaled(groups.get(g), top);
      leftOut[g] = Math.exp(groups.get(g).logLeftOut() - top);
      sum[g] = Arrays.stream(weight[g]).sum();
      logPriorSound += groups.get(g).logPrior(Group.HEALTHY);
    }
    double sound = Math.exp(logPriorSound);
    this.soundFactor = priorSound * (1 - sound) / ((1 - priorSound) * sound);
    this.total = product(sum, -1) + (soundFactor - 1) * soundProduct(-1);
  }

  private static double top(Group group) {
    double top = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < group.states(); i++) {
      top = Math.max(top, group.logWeight(i));
    }
    return top;
  }

  /** The weights of a group's states, the greatest of them 1. */
  private static double[] scaled(Group group, double top) {
    double[] scaled = new double[group.states()];
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] = Math.exp(group.logWeight(i) - top);
    }
    return scaled;
  }

  private static double product(double[] factors, int without) {
    double product = 1;
    for (int g = 0; g < factors.length; g++) {
      product *= g == without ? 1 : factors[g];
    }
    return product;
  }

  private double soundProduct(int without) {
    double product = 1;
    for (int g = 0; g < weight.length; g++) {
      product *= g == without ? 1 : weight[g][Group.HEALTHY];
    }
    return product;
  }

  /** The probability that a group is in a state, whatever the others do. */
  double marginal(int group, int state) {
    double others = product(sum, group);
    if (state == Group.HEALTHY) {
      others += (soundFactor - 1) * soundProduct(group);
    }
    return weight[group][state] * others / total;
  }

  /** The probability that a fault of a group is there, whatever else is. */
  double fault(int group, int fault) {
    double sum = 0;
    for (int state = 0; state < weight[group].length; state++) {
      sum += groups.get(group).hasFault(state, fault) ? marginal(group, state) : 0;
    }
    return sum;
  }

  /** A bound of the probability of all states that were left out. */
  double leftOut() {
    double sum = 0;
    for (int g = 0; g < leftOut.length; g++) {
      sum += leftOut[g] * product(this.sum, g) / total;
    }
    return sum;
  }

  /**
   * The expectation of a product of one factor for each group.
   *
   * @param factor for each group, a factor for each of its states; null where it is 1
   * @return the expectation over all joint states
   */
  double expectation(double[][] factor) {
    double all = 1;
    double sound = soundFactor - 1;
    for (int g = 0; g < weight.length; g++) {
      double own = factor[g] == null ? sum[g] : 0;
      for (int state = 0; factor[g] != null && state < weight[g].length; state++) {
        own += weight[g][state] * factor[g][state];
      }
      all *= own;
      sound *= weight[g][Group.HEALTHY] * (factor[g] == null ? 1 : factor[g][Group.HEALTHY]);
    }
    return (all + sound) / total;
  }

  /**
   * The same where the factor is 0 but in some states.
   *
   * @param states for each group those states, the one in which nothing is wrong first
   * @param factor for each group, a factor for each of them
   * @return the expectation over all joint states
   */
  double expectation(int[][] states, double[][] factor) {
    double all = 1;
    double sound = soundFactor - 1;
    for (int g = 0; g < weight.length; g++) {
      double own = 0;
      for (int i = 0; i < states[g].length; i++) {
        own += weight[g][states[g][i]] * factor[g][i];
      }
      all *= own;
      sound *= weight[g][Group.HEALTHY] * factor[g][0];
    }
    return (all + sound) / total;
  }

  /** The probability that nothing at all is wrong. */
  double sound() {
    return soundFactor * soundProduct(-1) / total;
  }

  /** The probability that at least one group does what no known fault explains. */
  double unexplained() {
    double[] explained = new double[sum.length];
    for (int g = 0; g < sum.length; g++) {
      explained[g] = sum[g] - weight[g][groups.get(g).unexplainedState()];
    }
    double all = product(explained, -1) + (soundFactor - 1) * soundProduct(-1);
    return Math.max(0, 1 - all / total);
  }

  /**
   * The likeliest states, one state number for each group.
   *
   * @param count how many
   * @return states with their probability, the likeliest first; ties in the order of the states
   */
  List<Joint> likeliest(int count) {
    Integer[][] order = new Integer[groups.size()][];
    for (int g = 0; g < groups.size(); g++) {
      order[g] = new Integer[weight[g].length];
      Arrays.setAll(order[g], i -> i);
      double[] own = weight[g];
      Arrays.sort(
          order[g],
          (a, b) -> own[a] != own[b] ? Double.compare(own[b], own[a]) : Integer.compare(a, b));
    }
    Comparator<Place> best =
        GreatestFirst.by(place -> place.weight, place -> Arrays.toString(place.ranks));
    PriorityQueue<Place> queue = new PriorityQueue<>(best);
    Set<String> seen = new HashSet<>();
    push(queue, seen, new int[groups.size()], order);
    List<Joint> states = new ArrayList<>();
    states.add(new Joint(new int[groups.size()], sound()));
    while (states.size() <= count && !queue.isEmpty()) {
      Place place = queue.poll();
      int[] state = new int[place.ranks.length];
      for (int g = 0; g < state.length; g++) {
        state[g] = order[g][place.ranks[g]];
      }
      if (Arrays.stream(state).anyMatch(s -> s != Group.HEALTHY)) {
        states.add(new Joint(state, place.weight / total));
      }
      for (int g = 0; g < state.length; g++) {
        if (place.ranks[g] + 1 < order[g].length) {
          int[] next = place.ranks.clone();
          next[g]++;
          push(queue, seen, next, order);
        }
      }
    }
    states.sort((a, b) -> Double.compare(b.probability, a.probability));
    return states.subList(0, Math.min(count, states.size()));
  }

  private void push(PriorityQueue<Place> queue, Set<String> seen, int[] ranks, Integer[][] order) {
    double product = 1;
    for (int g = 0; g < ranks.length; g++) {
      product *= weight[g][order[g][ranks[g]]];
    }
    if (product > 0 && seen.add(Arrays.toString(ranks))) {
      queue.add(new Place(ranks, product));
    }
  }

  private static final class Place {
    private final int[] ranks;
    private final double weight;

    private Place(int[] ranks, double weight) {
      this.ranks = ranks;
      this.weight = weight;
    }
  }

  /** A joint state. */
  static final class Joint {
    private final int[] states;
    private final double probability;

    private Joint(int[] states, double probability) {
      this.states = states;
      this.probability = probability;
    }

    int state(int group) {
      return states[group];
    }

    double probability() {
      return probability;
    }
  }
}
