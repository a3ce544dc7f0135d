package kelter.core.uncertainty;

/**
 * An estimate of a quantity in a coherent SI unit, with its standard uncertainty.
 *
 * @param value the estimate
 * @param standardUncertainty the standard uncertainty (JCGM 100:2008, 2.3.1), same unit
 */
public record Estimate(double value, double standardUncertainty) {

  /**
   * Checks the uncertainty.
   *
   * @throws IllegalArgumentException if the uncertainty is negative or not a number
   */
  public Estimate {
    if (!(standardUncertainty >= 0)) {
      throw new IllegalArgumentException(
          "a standard uncertainty is a number that is not negative, not " + standardUncertainty);
    }
  }

  /**
   * A value known exactly.
   *
   * @param value the value
   * @return an estimate without uncertainty
   */
  public static Estimate exact(double value) {
    return new Estimate(value, 0);
  }
}
