package kelter.core.diagnosis.discrete;

import java.util.List;

/**
 * A finite problem: states with a prior, and blocks of observables that are independent of each
 * other given the state. The posterior is exact:
 *
 * <p>{@code P(s | e) = P(s) prod_b P(e_b | s) / P(e)} with each block as in {@link Block}.
 *
 * <p>The observables are numbered from 0 through the blocks in their order. What was observed is an
 * array with the number of the outcome of each observable, or {@link #NOT_OBSERVED}. Probabilities
 * of zero are allowed, and any number of observables: where a product would underflow, logarithms
 * take its place. A model does not change and may be used by many threads at once.
 */
public final class DiscreteModel {

  /** Stands for an observable that was not observed. */
  public static final int NOT_OBSERVED = -1;

  private final double[] prior;
  private final Block[] blocks;

  /** The number of the first observable of each block. */
  private final int[] first;

  /** The block of each observable. */
  private final int[] blockOf;

  /**
   * Puts a problem together.
   *
   * @param prior the probability of each state before anything is observed, summing to 1
   * @param blocks the observables
   * @throws IllegalArgumentException if the prior is no distribution, or a block is of another
   *     number of states
   */
  public DiscreteModel(double[] prior, List<Block> blocks) {
    this.prior = Block.distribution(prior, Math.max(1, prior.length)).clone();
    this.blocks = blocks.toArray(new Block[0]);
    this.first = new int[this.blocks.length];
    int observables = 0;
    for (int b = 0; b < first.length; b++) {
      first[b] = observables;
      observables += this.blocks[b].observables();
      if (this.blocks[b].states() != prior.length) {
        throw new IllegalArgumentException(
            "block %d is of %d states, the prior of %d"
                .formatted(b, this.blocks[b].states(), prior.length));
      }
    }
    this.blockOf = new int[observables];
    for (int b = 0; b < first.length; b++) {
      for (int k = 0; k < this.blocks[b].observables(); k++) {
        blockOf[first[b] + k] = b;
      }
    }
  }

  /**
   * How many states there are.
   *
   * @return the number
   */
  public int states() {
    return prior.length;
  }

  /**
   * How many observables there are.
   *
   * @return the number
   */
  public int observables() {
    return blockOf.length;
  }

  /**
   * How many outcomes an observable has.
   *
   * @param observable its number
   * @return the number of outcomes
   */
  public int outcomes(int observable) {
    return block(observable).outcomes(inBlock(observable));
  }

  /**
   * Nothing observed yet.
   *
   * @return a new array with a place for each observable
   */
  public int[] nothingObserved() {
    int[] evidence = new int[blockOf.length];
    java.util.Arrays.fill(evidence, NOT_OBSERVED);
    return evidence;
  }

  /**
   * The probability of each state.
   *
   * @param evidence the outcome of each observable
   * @return the probabilities, summing to 1
   * @throws IllegalArgumentException if the evidence does not fit the observables, or cannot be in
   *     any state
   */
  public double[] posterior(int[] evidence) {
    double[] posterior = new double[prior.length];
    if (weigh(evidence, posterior) == Double.NEGATIVE_INFINITY) {
      throw new IllegalArgumentException("what was observed cannot be in any state");
    }
    return posterior;
  }

  /**
   * The natural logarithm of the probability of what was observed.
   *
   * @param evidence the outcome of each observable
   * @return ln P(e); minus infinity if it cannot be in any state
   * @throws IllegalArgumentException if the evidence does not fit the observables
   */
  public double logEvidence(int[] evidence) {
    return weigh(evidence, new double[prior.length]);
  }

  /**
   * The state of knowledge once something was observed, with all that can be asked of it.
   *
   * @param evidence the outcome of each observable
   * @return the belief
   * @throws IllegalArgumentException if the evidence does not fit the observables, or cannot be in
   *     any state
   */
  public Belief given(int[] evidence) {
    double[] posterior = posterior(evidence);
    double[][] shared = new double[blocks.length][];
    for (int b = 0; b < blocks.length; b++) {
      shared[b] = blocks[b].sharedGiven(evidence, first[b]);
    }
    return new Belief(this, evidence.clone(), posterior, shared);
  }

  /** Fills in the posterior and returns ln P(e), minus infinity if the evidence cannot be. */
  private double weigh(int[] evidence, double[] weight) {
    check(evidence);
    System.arraycopy(prior, 0, weight, 0, weight.length);
    for (int b = 0; b < blocks.length; b++) {
      blocks[b].weigh(evidence, first[b], weight);
    }
    double sum = 0;
    boolean tiny = false;
    for (double each : weight) {
      sum += each;
      tiny |= each <= Block.TINY;
    }
    if (tiny && underflowed(evidence, weight)) {
      return weighByLogarithms(evidence, weight);
    }
    if (sum == 0) {
      return Double.NEGATIVE_INFINITY;
    }
    double inverse = 1 / sum;
    for (int s = 0; s < weight.length; s++) {
      weight[s] *= inverse;
    }
    return Math.log(sum);
  }

  /** Whether a weight is tiny without being ruled out. */
  private boolean underflowed(int[] evidence, double[] weight) {
    for (int s = 0; s < weight.length; s++) {
      if (weight[s] <= Block.TINY && logWeight(evidence, s) > Double.NEGATIVE_INFINITY) {
        return true;
      }
    }
    return false;
  }

  private double weighByLogarithms(int[] evidence, double[] weight) {
    for (int s = 0; s < weight.length; s++) {
      weight[s] = logWeight(evidence, s);
    }
    double whole = Block.logSum(weight);
    for (int s = 0; s < weight.length; s++) {
      weight[s] = Math.exp(weight[s] - whole);
    }
    return whole;
  }

  private double logWeight(int[] evidence, int state) {
    double sum = Math.log(prior[state]);
    for (int b = 0; b < blocks.length && sum > Double.NEGATIVE_INFINITY; b++) {
      sum += blocks[b].logLikelihood(evidence, first[b], state);
    }
    return sum;
  }

  private void check(int[] evidence) {
    if (evidence.length != blockOf.length) {
      throw new IllegalArgumentException(
          evidence.length + " outcomes for " + blockOf.length + " observables");
    }
    for (int f = 0; f < evidence.length; f++) {
      if (evidence[f] != NOT_OBSERVED && (evidence[f] < 0 || evidence[f] >= outcomes(f))) {
        throw new IllegalArgumentException(
            "outcome %d of observable %d; 0 to %d are allowed, or %d for not observed"
                .formatted(evidence[f], f, outcomes(f) - 1, NOT_OBSERVED));
      }
    }
  }

  Block block(int observable) {
    return blocks[blockOf[observable]];
  }

  int blockOf(int observable) {
    return blockOf[observable];
  }

  /** The number of an observable within its block. */
  int inBlock(int observable) {
    return observable - first[blockOf[observable]];
  }
}
