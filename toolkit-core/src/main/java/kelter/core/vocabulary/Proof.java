package kelter.core.vocabulary;

/**
 * A reading that by itself proves one of the faults of its component: a yes, or a value from a
 * limit on, which hardly anything else makes, and at which whoever finds it looks twice.
 *
 * @param from the least value that proves, in the coherent SI unit; 1 of a yes or no
 * @param otherwise the chance, above 0 and below 1, of such a reading where no known fault makes
 *     it: where nothing is known of the machine, or the reading is wrong altogether
 */
public record Proof(double from, double otherwise) {

  /** The chance that a trained eye sees a sign in a component in order; from memory. */
  public static final double FALSE_ALARM = 2e-4;

  /** The chance where nothing is known of the machine; from memory. */
  private static final double OTHERWISE = 0.005;

  /**
   * Checks the chance.
   *
   * @throws IllegalArgumentException if it is not above 0 and below 1
   */
  public Proof {
    if (!(otherwise > 0 && otherwise < 1)) {
      throw new IllegalArgumentException("the chance of a false proof lies above 0 and below 1");
    }
  }

  static Proof from(double value) {
    return new Proof(value, OTHERWISE);
  }
}
