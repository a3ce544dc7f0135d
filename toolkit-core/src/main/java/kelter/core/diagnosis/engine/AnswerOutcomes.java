package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.List;

/**
 * What a measurement may show, in a finite number of outcomes, and how likely each is in each state
 * of a group.
 */
final class AnswerOutcomes {

  private static final int COARSE = 5;

  private final double[] probability;
  private final List<double[][]> given;
  private final double[][] mean;
  private final double[] all;

  /**
   * Prepares the averages.
   *
   * @param probability the probability of each state of the group
   * @param given for each state considered the probability of each outcome at each of its
   *     severities, by severity and outcome; empty for the others
   */
  AnswerOutcomes(double[] probability, List<double[][]> given) {
    this.probability = probability;
    this.given = given;
    int count = 0;
    for (double[][] ofState : given) {
      count = ofState.length > 0 ? ofState[0].length : count;
    }
    this.mean = new double[given.size()][];
    this.all = new double[count];
    double mass = 0;
    for (int state = 0; state < mean.length; state++) {
      double[][] own = given.get(state);
      if (own.length > 0) {
        mean[state] = new double[count];
        mass += probability[state];
        for (int outcome = 0; outcome < count; outcome++) {
          for (double[] severity : own) {
            mean[state][outcome] += severity[outcome] / own.length;
          }
          all[outcome] += probability[state] * mean[state][outcome];
        }
      }
    }
    for (int outcome = 0; outcome < count; outcome++) {
      all[outcome] /= mass;
    }
  }

  /** How many outcomes there are. */
  int count() {
    return all.length;
  }

  /** The probability of an outcome in a state; as over all where the state was not considered. */
  private double given(int state, int outcome) {
    return mean[state] == null ? all[outcome] : mean[state][outcome];
  }

  /** How likely an outcome is in each state of the group. */
  double[] likelihood(int outcome) {
    double[] likelihood = new double[mean.length];
    for (int state = 0; state < likelihood.length; state++) {
      likelihood[state] = given(state, outcome);
    }
    return likelihood;
  }

  /** The same with outcomes that are neighbours put together, so that few are left. */
  AnswerOutcomes coarse() {
    if (all.length <= COARSE) {
      return this;
    }
    List<double[][]> few = new ArrayList<>();
    for (double[][] ofState : given) {
      double[][] own = new double[ofState.length][COARSE];
      for (int node = 0; node < own.length; node++) {
        for (int outcome = 0; outcome < all.length; outcome++) {
          own[node][outcome * COARSE / all.length] += ofState[node][outcome];
        }
      }
      few.add(own);
    }
    return new AnswerOutcomes(probability, few);
  }

  /**
   * The mutual information between outcome and state, in bits: I = sum p(i) p(o|i) log2(p(o|i) /
   * p(o)) (Cover and Thomas, Elements of Information Theory, 2nd edition, equation 2.28, from
   * memory).
   */
  double bits() {
    double nats = 0;
    for (int state = 0; state < mean.length; state++) {
      for (int outcome = 0; mean[state] != null && outcome < all.length; outcome++) {
        double own = mean[state][outcome];
        nats += own > 0 ? probability[state] * own * Math.log(own / all[outcome]) : 0;
      }
    }
    return Math.max(0, nats / Math.log(2));
  }

  /** Two measurements on one group together; given a severity they are independent. */
  AnswerOutcomes with(AnswerOutcomes other) {
    List<double[][]> both = new ArrayList<>();
    for (int state = 0; state < given.size(); state++) {
      double[][] one = given.get(state);
      double[][] product = new double[one.length][];
      for (int node = 0; node < one.length; node++) {
        product[node] = product(one[node], other.given.get(state)[node]);
      }
      both.add(product);
    }
    return new AnswerOutcomes(probability, both);
  }

  private static double[] product(double[] one, double[] other) {
    double[] product = new double[one.length * other.length];
    for (int a = 0; a < one.length; a++) {
      for (int b = 0; b < other.length; b++) {
        product[a * other.length + b] = one[a] * other[b];
      }
    }
    return product;
  }
}
