package kelter.core.oracle;

import kelter.core.source.Source;

/**
 * How much is not known, in bits: {@code H = -sum p log2 p}. One bit is the answer to a yes or no
 * at even odds.
 */
public final class Entropy {

  /** Where the formula comes from. */
  public static final Source SOURCE =
      Source.fromMemory(
          "Shannon, A mathematical theory of communication, Bell System Technical Journal 27"
              + " (1948) 379, section 6");

  /** Nats in a bit. */
  static final double LN2 = Math.log(2);

  private Entropy() {}

  /**
   * The entropy of a distribution.
   *
   * @param p probabilities, 0 to 1, summing to 1
   * @return the entropy in bits, 0 or more
   * @throws IllegalArgumentException if the probabilities are no distribution
   */
  public static double bits(double[] p) {
    Block.distribution(p, p.length);
    double sum = 0;
    for (double each : p) {
      sum += term(each);
    }
    return Math.max(0, -sum / LN2);
  }

  /** p ln p, which is 0 at 0. */
  static double term(double p) {
    return p > 0 ? p * Math.log(p) : 0;
  }
}
