package kelter.core.oracle;

import java.util.Objects;

/**
 * What is known once something was observed: how probable each state is, what each observable that
 * is left would show, and how much it would tell. It does not change.
 */
public final class Belief {

  private final DiscreteModel model;
  private final int[] evidence;
  private final double[] posterior;

  /** For each block P(l | s, e). */
  private final double[][] shared;

  Belief(DiscreteModel model, int[] evidence, double[] posterior, double[][] shared) {
    this.model = model;
    this.evidence = evidence;
    this.posterior = posterior;
    this.shared = shared;
  }

  /**
   * The probability of each state.
   *
   * @return the probabilities, summing to 1
   */
  public double[] posterior() {
    return posterior.clone();
  }

  /**
   * What is not known about the state.
   *
   * @return the entropy in bits
   */
  public double entropy() {
    return Entropy.bits(posterior);
  }

  /**
   * Whether an observable was observed.
   *
   * @param observable its number
   * @return whether it was
   */
  public boolean isObserved(int observable) {
    return evidence[observable] != DiscreteModel.NOT_OBSERVED;
  }

  /**
   * The belief once one more observable was observed.
   *
   * @param observable its number
   * @param outcome the number of its outcome
   * @return the new belief
   * @throws IllegalArgumentException if there is no such outcome, or it cannot be in any state
   */
  public Belief and(int observable, int outcome) {
    int[] more = evidence.clone();
    more[Objects.checkIndex(observable, more.length)] = outcome;
    return model.given(more);
  }

  /**
   * What an observable would show.
   *
   * @param observable its number
   * @return the probability of each outcome, summing to 1
   */
  public double[] outcomes(int observable) {
    double[][] rows = predictive(observable);
    double[] p = new double[rows.length];
    for (int o = 0; o < p.length; o++) {
      p[o] = Math.min(1, dot(posterior, rows[o]));
    }
    return p;
  }

  /**
   * How probable a state and an outcome are together.
   *
   * @param observable the number of an observable
   * @return for each outcome the joint probability of it and each state; over all they sum to 1
   */
  public double[][] joint(int observable) {
    double[][] rows = predictive(observable);
    double[][] joint = new double[rows.length][posterior.length];
    for (int o = 0; o < rows.length; o++) {
      for (int s = 0; s < posterior.length; s++) {
        joint[o][s] = posterior[s] * rows[o][s];
      }
    }
    return joint;
  }

  /**
   * The expected information of each observable about the state: their mutual information, {@code I
   * = sum_s P(s) sum_o P(o|s) log2 P(o|s) - sum_o P(o) log2 P(o)} (Shannon, from memory).
   *
   * @return for each observable the information in bits, 0 or more; 0 for one that was observed
   */
  public double[] information() {
    double[] bits = new double[evidence.length];
    for (int f = 0; f < bits.length; f++) {
      bits[f] = isObserved(f) ? 0 : information(f);
    }
    return bits;
  }

  private double information(int observable) {
    Block block = model.block(observable);
    int k = model.inBlock(observable);
    double[] given = shared[model.blockOf(observable)];
    double[][] rows = block.predictive(k, given);
    double[] told = block.isPrior(given) ? block.told(k) : Block.information(rows);
    double sum = dot(posterior, told);
    for (double[] row : rows) {
      sum -= Entropy.term(dot(posterior, row));
    }
    return Math.max(0, sum / Entropy.LN2);
  }

  /** P(o | s, e) for each outcome at s. */
  private double[][] predictive(int observable) {
    return model
        .block(observable)
        .predictive(model.inBlock(observable), shared[model.blockOf(observable)]);
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
