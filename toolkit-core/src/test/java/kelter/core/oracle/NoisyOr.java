package kelter.core.oracle;

import kelter.core.source.Source;

/**
 * The chance of an effect that each of several causes can bring about by itself: {@code P(e) = 1 -
 * (1 - l) prod_i (1 - p_i)} over the causes that are there, with a leak l for causes that are not
 * listed. It holds where the causes do not hinder or help each other.
 */
public final class NoisyOr {

  /** Where the formula comes from. */
  public static final Source SOURCE =
      Source.fromMemory("Pearl, Probabilistic Reasoning in Intelligent Systems (1988), 4.3.2");

  private NoisyOr() {}

  /**
   * The chance of the effect.
   *
   * @param leak the chance of the effect without a listed cause, 0 to 1
   * @param causes for each cause that is there the chance, 0 to 1, that it alone brings it about
   * @return the chance, 0 to 1
   * @throws IllegalArgumentException if a chance is not from 0 to 1
   */
  public static double chance(double leak, double... causes) {
    double not = 1 - probability(leak);
    for (double p : causes) {
      not *= 1 - probability(p);
    }
    return 1 - not;
  }

  private static double probability(double p) {
    if (!(p >= 0 && p <= 1)) {
      throw new IllegalArgumentException("a probability of " + p + "; 0 to 1 is allowed");
    }
    return p;
  }
}
