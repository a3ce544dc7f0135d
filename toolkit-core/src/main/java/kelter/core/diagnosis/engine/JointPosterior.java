package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;
import kelter.core.diagnosis.likelihood.Group;

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
      for (double each : weight[g]) {
        sum[g] += each;
      }
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
   * The same where the sums over the states of the groups are known.
   *
   * @param sums the product, over the groups, of the sum of weight times factor
   * @param sound the product of the factors of the states in which nothing is wrong
   * @return the expectation over all joint states
   */
  double expectation(double sums, double sound) {
    return (sums + (soundFactor - 1) * soundProduct(-1) * sound) / total;
  }

  /** The weight of a state of a group, the greatest of the group 1. */
  double weight(int group, int state) {
    return weight[group][state];
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
    int[][] order = new int[groups.size()][];
    for (int g = 0; g < order.length; g++) {
      order[g] = greatestFirst(weight[g]);
    }
    PriorityQueue<Place> queue = new PriorityQueue<>();
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
      if (!isSound(state)) {
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
    Collections.sort(states);
    return states.subList(0, Math.min(count, states.size()));
  }

  private static boolean isSound(int[] states) {
    for (int state : states) {
      if (state != Group.HEALTHY) {
        return false;
      }
    }
    return true;
  }

  /** The states by their weight, the greatest first; ties in their order. */
  private static int[] greatestFirst(double[] weight) {
    List<State> states = new ArrayList<>();
    for (int state = 0; state < weight.length; state++) {
      states.add(new State(state, weight[state]));
    }
    Collections.sort(states);
    int[] order = new int[weight.length];
    for (int rank = 0; rank < order.length; rank++) {
      order[rank] = states.get(rank).number;
    }
    return order;
  }

  private void push(PriorityQueue<Place> queue, Set<String> seen, int[] ranks, int[][] order) {
    double product = 1;
    for (int g = 0; g < ranks.length; g++) {
      product *= weight[g][order[g][ranks[g]]];
    }
    if (product > 0 && seen.add(Arrays.toString(ranks))) {
      queue.add(new Place(ranks, product));
    }
  }

  private record State(int number, double weight) implements Comparable<State> {
    @Override
    public int compareTo(State other) {
      return Double.compare(other.weight, weight);
    }
  }

  private static final class Place implements Comparable<Place> {
    private final int[] ranks;
    private final double weight;

    private Place(int[] ranks, double weight) {
      this.ranks = ranks;
      this.weight = weight;
    }

    @Override
    public int compareTo(Place other) {
      int byWeight = Double.compare(other.weight, weight);
      return byWeight != 0
          ? byWeight
          : Arrays.toString(ranks).compareTo(Arrays.toString(other.ranks));
    }
  }

  /** A joint state; the likeliest comes first. */
  static final class Joint implements Comparable<Joint> {
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

    @Override
    public int compareTo(Joint other) {
      return Double.compare(other.probability, probability);
    }
  }
}
