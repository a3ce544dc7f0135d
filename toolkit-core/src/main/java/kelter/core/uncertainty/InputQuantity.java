package kelter.core.uncertainty;

import java.util.List;

/**
 * What is known of an input of a calculation: its estimate, and the components of its uncertainty
 * (JCGM 100:2008, 4.1).
 *
 * @param value the estimate, in the coherent SI unit
 * @param terms the components, independent of each other; empty for an exact value
 */
public record InputQuantity(double value, List<ErrorTerm> terms) {

  /**
   * Checks the estimate.
   *
   * @throws IllegalArgumentException if the value is not finite
   */
  public InputQuantity {
    terms = List.copyOf(terms);
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("an input quantity is finite, not " + value);
    }
  }

  /**
   * A value known exactly.
   *
   * @param value the value
   * @return the input, without uncertainty
   */
  public static InputQuantity exact(double value) {
    return new InputQuantity(value, List.of());
  }

  /**
   * The mean of readings with its type A uncertainty, the experimental standard deviation of the
   * mean (JCGM 100:2008, 4.2.3, equation (5)), and one degree of freedom less than there are
   * readings (G.3.3).
   *
   * @param readings two readings or more, finite, in the coherent SI unit
   * @return the input
   * @throws IllegalArgumentException if there are fewer readings
   */
  public static InputQuantity mean(double... readings) {
    int n = readings.length;
    if (n < 2) {
      throw new IllegalArgumentException("a scatter needs two readings or more, not " + n);
    }
    double mean = 0;
    for (double reading : readings) {
      mean += reading / n;
    }
    double squares = 0;
    for (double reading : readings) {
      squares += (reading - mean) * (reading - mean);
    }
    double u = Math.sqrt(squares / (n - 1) / n); // (5)
    String title = "scatter of " + n;
    return new InputQuantity(
        mean, List.of(new ErrorTerm(title, Shape.STUDENT_T, u, n - 1.0, true)));
  }

  /**
   * The estimate with all components combined.
   *
   * @return the estimate with its standard uncertainty
   */
  public Estimate estimate() {
    double u = 0;
    for (ErrorTerm term : terms) {
      u = Math.hypot(u, term.standardUncertainty());
    }
    return new Estimate(value, u);
  }
}
