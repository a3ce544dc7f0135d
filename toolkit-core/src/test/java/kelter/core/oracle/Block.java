package kelter.core.oracle;

/**
 * Observables that may share something which is not the state itself, such as the mains voltage or
 * the zero of one meter. What they share has a finite number of values; given the state and that
 * value they are independent of each other, and given the state alone they are independent of all
 * other blocks:
 *
 * <p>{@code P(block | s) = sum_l P(l | s) prod_k P(o_k | s, l)}
 *
 * <p>Observables that share nothing are blocks of one. What is shared may itself be observed; its
 * table is then that of {@link #sharedItself}. A block does not change.
 */
public final class Block {

  /** A product above this has lost nothing to underflow on the way, since no factor exceeds 1. */
  static final double TINY = 1e-280;

  private static final double SUM_TOLERANCE = 1e-9;

  private final int states;
  private final int shared;

  /** P(l | s), at l * states + s. */
  private final double[] prior;

  /** P(o | s, l), for each observable and outcome at l * states + s. */
  private final double[][][] table;

  /** P(o | s), for each observable and outcome at s. */
  private final double[][][] alone;

  /** sum_o P(o | s) ln P(o | s), for each observable at s. */
  private final double[][] told;

  private Block(double[][] shared, double[][][][] observables) {
    this.states = shared.length;
    this.shared = states == 0 ? 0 : shared[0].length;
    if (this.shared == 0 || observables.length == 0) {
      throw new IllegalArgumentException(
          "a block needs a state, a value of what is shared and an observable; there are "
              + (states + ", " + this.shared + " and " + observables.length));
    }
    this.prior = new double[this.shared * states];
    this.table = new double[observables.length][][];
    this.alone = new double[observables.length][][];
    this.told = new double[observables.length][];
    for (int s = 0; s < states; s++) {
      spread(distribution(shared[s], this.shared), s);
    }
    for (int k = 0; k < observables.length; k++) {
      table[k] = lay(observables[k]);
      alone[k] = this.shared == 1 ? table[k] : predictive(k, prior);
      told[k] = information(alone[k]);
    }
  }

  /**
   * One observable that shares nothing.
   *
   * @param table for each state the probability of each outcome, 0 to 1, summing to 1
   * @return the block
   * @throws IllegalArgumentException if there is no state, or a row is not a distribution over as
   *     many outcomes as the first
   */
  public static Block single(double[][] table) {
    double[][] nothing = new double[table.length][];
    double[][][] rows = new double[table.length][][];
    for (int s = 0; s < table.length; s++) {
      nothing[s] = new double[] {1};
      rows[s] = new double[][] {table[s]};
    }
    return new Block(nothing, new double[][][][] {rows});
  }

  /**
   * Observables that share something.
   *
   * @param shared for each state the probability of each value of what is shared
   * @param observables for each observable, state and value of what is shared the probability of
   *     each outcome
   * @return the block
   * @throws IllegalArgumentException if there is no state or no observable, the tables are not all
   *     of the same states and values, or a row is not a distribution
   */
  public static Block sharing(double[][] shared, double[][][]... observables) {
    return new Block(shared, observables);
  }

  /**
   * The table of what is shared, where that itself is observed without error.
   *
   * @param states how many states there are
   * @param values how many values it has
   * @return the table, for {@link #sharing}
   */
  public static double[][][] sharedItself(int states, int values) {
    double[][] same = new double[values][values];
    for (int l = 0; l < values; l++) {
      same[l][l] = 1;
    }
    double[][][] table = new double[states][][];
    java.util.Arrays.fill(table, same);
    return table;
  }

  private void spread(double[] given, int s) {
    for (int l = 0; l < shared; l++) {
      prior[l * states + s] = given[l];
    }
  }

  private double[][] lay(double[][][] given) {
    int outcomes = given.length == states && given[0].length == shared ? given[0][0].length : -1;
    if (outcomes < 1) {
      throw new IllegalArgumentException(
          "an observable needs a row of outcomes for each of %d states and %d values"
              .formatted(states, shared));
    }
    double[][] rows = new double[outcomes][shared * states];
    for (int s = 0; s < states; s++) {
      for (int l = 0; l < shared; l++) {
        double[] row = distribution(given[s][l], outcomes);
        for (int o = 0; o < outcomes; o++) {
          rows[o][l * states + s] = row[o];
        }
      }
    }
    return rows;
  }

  /** Refuses what is not a distribution over so many outcomes. */
  static double[] distribution(double[] p, int outcomes) {
    double sum = 0;
    for (double each : p) {
      if (!(each >= 0 && each <= 1 + SUM_TOLERANCE)) {
        throw new IllegalArgumentException("a probability of " + each + "; 0 to 1 is allowed");
      }
      sum += each;
    }
    if (p.length != outcomes || Math.abs(sum - 1) > SUM_TOLERANCE) {
      throw new IllegalArgumentException(
          "%d probabilities that sum to %s; %d that sum to 1 are allowed"
              .formatted(p.length, sum, outcomes));
    }
    return p;
  }

  int states() {
    return states;
  }

  /** Whether nothing is shared. */
  boolean isPlain() {
    return shared == 1;
  }

  int observables() {
    return table.length;
  }

  int outcomes(int observable) {
    return table[observable].length;
  }

  double[][] alone(int observable) {
    return alone[observable];
  }

  double[] told(int observable) {
    return told[observable];
  }

  /** Multiplies the weight of each state by the likelihood of what was observed of this block. */
  void weigh(int[] evidence, int from, double[] weight) {
    int seen = 0;
    int last = -1;
    for (int k = 0; k < table.length; k++) {
      if (evidence[from + k] >= 0) {
        seen++;
        last = k;
      }
    }
    if (seen == 1) {
      multiply(weight, alone[last][evidence[from + last]]);
    } else if (seen > 1) {
      weighJointly(evidence, from, weight);
    }
  }

  private void weighJointly(int[] evidence, int from, double[] weight) {
    double[] joint = joint(evidence, from);
    for (int s = 0; s < states; s++) {
      double sum = 0;
      for (int at = s; at < joint.length; at += states) {
        sum += joint[at];
      }
      weight[s] *= sum;
    }
  }

  /** P(l | s) prod_k P(o_k | s, l), at l * states + s. */
  private double[] joint(int[] evidence, int from) {
    double[] joint = prior.clone();
    for (int k = 0; k < table.length; k++) {
      if (evidence[from + k] >= 0) {
        multiply(joint, table[k][evidence[from + k]]);
      }
    }
    return joint;
  }

  static void multiply(double[] weight, double[] factor) {
    for (int i = 0; i < weight.length; i++) {
      weight[i] *= factor[i];
    }
  }

  /** ln of the likelihood of what was observed of this block, for one state; never underflows. */
  double logLikelihood(int[] evidence, int from, int state) {
    if (shared == 1) {
      return logTerm(evidence, from, state);
    }
    double[] terms = logTerms(evidence, from, state);
    return logSum(terms);
  }

  private double[] logTerms(int[] evidence, int from, int state) {
    double[] terms = new double[shared];
    for (int l = 0; l < shared; l++) {
      terms[l] = logTerm(evidence, from, l * states + state);
    }
    return terms;
  }

  private double logTerm(int[] evidence, int from, int at) {
    double sum = Math.log(prior[at]);
    for (int k = 0; k < table.length && sum > Double.NEGATIVE_INFINITY; k++) {
      int outcome = evidence[from + k];
      if (outcome >= 0) {
        sum += Math.log(table[k][outcome][at]);
      }
    }
    return sum;
  }

  /** ln of a sum, from the logarithms of its terms. */
  static double logSum(double[] terms) {
    double greatest = Double.NEGATIVE_INFINITY;
    for (double term : terms) {
      greatest = Math.max(greatest, term);
    }
    if (greatest == Double.NEGATIVE_INFINITY) {
      return greatest;
    }
    double sum = 0;
    for (double term : terms) {
      sum += Math.exp(term - greatest);
    }
    return greatest + Math.log(sum);
  }

  /**
   * P(l | s, what was observed of this block), at l * states + s; all 0 for a state in which that
   * cannot be.
   */
  double[] sharedGiven(int[] evidence, int from) {
    boolean seen = false;
    for (int k = 0; k < table.length; k++) {
      seen |= evidence[from + k] >= 0;
    }
    if (shared == 1 || !seen) {
      return prior;
    }
    double[] joint = joint(evidence, from);
    for (int s = 0; s < states; s++) {
      double sum = 0;
      for (int at = s; at < joint.length; at += states) {
        sum += joint[at];
      }
      if (sum > TINY) {
        scale(joint, s, 1 / sum);
      } else {
        sharedGivenByLogarithms(evidence, from, s, joint);
      }
    }
    return joint;
  }

  private void scale(double[] joint, int s, double factor) {
    for (int at = s; at < joint.length; at += states) {
      joint[at] *= factor;
    }
  }

  private void sharedGivenByLogarithms(int[] evidence, int from, int s, double[] joint) {
    double[] terms = logTerms(evidence, from, s);
    double whole = logSum(terms);
    for (int l = 0; l < shared; l++) {
      boolean possible = terms[l] > Double.NEGATIVE_INFINITY;
      joint[l * states + s] = possible ? Math.exp(terms[l] - whole) : 0;
    }
  }

  /** P(o | s) for each outcome at s, once it is known what is shared. */
  double[][] predictive(int observable, double[] given) {
    if (given == prior && alone[observable] != null) {
      return alone[observable];
    }
    double[][] rows = table[observable];
    double[][] sums = new double[rows.length][states];
    for (int o = 0; o < rows.length; o++) {
      for (int at = 0, s = 0; at < given.length; at++, s = s + 1 == states ? 0 : s + 1) {
        sums[o][s] += given[at] * rows[o][at];
      }
    }
    return sums;
  }

  /** Whether what was observed has told something of what is shared. */
  boolean isPrior(double[] given) {
    return given == prior;
  }

  /** sum_o p ln p for each state. */
  static double[] information(double[][] rows) {
    double[] sum = new double[rows[0].length];
    for (double[] row : rows) {
      for (int s = 0; s < sum.length; s++) {
        sum[s] += Entropy.term(row[s]);
      }
    }
    return sum;
  }
}
