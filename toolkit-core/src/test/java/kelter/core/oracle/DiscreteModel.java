package kelter.core.oracle;

import java.util.List;
import java.util.stream.IntStream;

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

  /** The number of outcomes of each observable. */
  private final int[] outcomes;

  /** P(o | s) of each observable that shares nothing, for each outcome at s; otherwise null. */
  private final double[][][] plain;

  /** The numbers of the blocks that share something. */
  private final int[] sharing;

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
    this.outcomes = new int[observables];
    this.plain = new double[observables][][];
    for (int b = 0; b < first.length; b++) {
      number(b);
    }
    this.sharing =
        IntStream.range(0, first.length).filter(b -> !this.blocks[b].isPlain()).toArray();
  }

  private void number(int b) {
    for (int k = 0; k < blocks[b].observables(); k++) {
      int observable = first[b] + k;
      blockOf[observable] = b;
      outcomes[observable] = blocks[b].outcomes(k);
      plain[observable] = blocks[b].isPlain() ? blocks[b].alone(k) : null;
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
    return outcomes[observable];
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
    double sum = weigh(evidence, posterior);
    if (Double.isNaN(sum)) {
      weighByLogarithms(evidence, posterior);
      return posterior;
    }
    if (sum == 0) {
      throw new IllegalArgumentException("what was observed cannot be in any state");
    }
    for (int s = 0; s < posterior.length; s++) {
      posterior[s] /= sum;
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
    double[] weight = new double[prior.length];
    double sum = weigh(evidence, weight);
    return Double.isNaN(sum) ? weighByLogarithms(evidence, weight) : Math.log(sum);
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

  /** Fills in P(s, e) and returns P(e); NaN if one of them has underflowed. */
  private double weigh(int[] evidence, double[] weight) {
    check(evidence);
    System.arraycopy(prior, 0, weight, 0, weight.length);
    for (int f = 0; f < evidence.length; f++) {
      if (evidence[f] >= 0 && plain[f] != null) {
        Block.multiply(weight, plain[f][evidence[f]]);
      }
    }
    for (int b : sharing) {
      blocks[b].weigh(evidence, first[b], weight);
    }
    double sum = 0;
    boolean tiny = false;
    for (double each : weight) {
      sum += each;
      tiny |= each <= Block.TINY;
    }
    return tiny && underflowed(evidence, weight) ? Double.NaN : sum;
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

  /** Fills in the posterior and returns ln P(e). */
  private double weighByLogarithms(int[] evidence, double[] weight) {
    for (int s = 0; s < weight.length; s++) {
      weight[s] = logWeight(evidence, s);
    }
    double whole = Block.logSum(weight);
    for (int s = 0; s < weight.length; s++) {
      weight[s] = Math.min(1, Math.exp(weight[s] - whole));
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
      if (evidence[f] != NOT_OBSERVED && (evidence[f] < 0 || evidence[f] >= outcomes[f])) {
        throw new IllegalArgumentException(
            "outcome %d of observable %d; 0 to %d are allowed, or %d for not observed"
                .formatted(evidence[f], f, outcomes[f] - 1, NOT_OBSERVED));
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
