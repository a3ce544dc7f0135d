package kelter.core.uncertainty;

import java.util.ArrayList;
import java.util.List;
import kelter.core.numeric.Root;

/**
 * What is known of an input of a calculation: its estimate, and the components of its uncertainty
 * (JCGM 100:2008, 4.1).
 *
 * @param value the estimate, in the coherent SI unit
 * @param terms the components, independent of each other; empty for an exact value
 */
public record InputQuantity(double value, List<ErrorTerm> terms) {

  /** How closely a quantile is found, as a ratio of its distance from the value. */
  private static final double CLOSE = 1e-9;

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
   * A value with a normal error, a type B component.
   *
   * @param estimate a finite estimate with its standard uncertainty
   * @return the input
   * @throws IllegalArgumentException if the estimate is not finite
   */
  public static InputQuantity normal(Estimate estimate) {
    return new InputQuantity(
        estimate.value(), List.of(ErrorTerm.normal(estimate.standardUncertainty())));
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
    return new InputQuantity(mean, List.of(ErrorTerm.scatter(u, n)));
  }

  /**
   * The same times a factor.
   *
   * @param factor above zero
   * @return the value and its errors, each times the factor
   */
  public InputQuantity times(double factor) {
    List<ErrorTerm> scaled = new ArrayList<>();
    for (ErrorTerm term : terms) {
      scaled.add(
          new ErrorTerm(
              term.title(),
              term.shape(),
              term.standardUncertainty() * factor,
              term.degreesOfFreedom(),
              term.scatter()));
    }
    return new InputQuantity(value * factor, scaled);
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

  /**
   * The probability that the quantity lies between two limits, all errors convolved (JCGM 106:2012,
   * 7.1): a rectangular one is not taken as normal.
   *
   * @param low the lower limit, in the coherent SI unit, may be infinite
   * @param high the upper limit, at least the lower one, may be infinite
   * @return a probability from 0 to 1; without uncertainty 1 where the value lies between the
   *     limits or on one
   */
  public double probabilityBetween(double low, double high) {
    ErrorSum errors = ErrorSum.of(terms);
    if (errors.isExact()) {
      return low <= value && value <= high ? 1 : 0;
    }
    return errors.atMost(high - value) - errors.atMost(low - value);
  }

  /**
   * The value below which the quantity lies with a probability, all errors convolved.
   *
   * @param probability above 0 and below 1
   * @return the quantile, in the coherent SI unit
   * @throws IllegalArgumentException if the probability is outside its range
   */
  public double quantile(double probability) {
    if (!(probability > 0 && probability < 1)) {
      throw new IllegalArgumentException(
          "a quantile is asked for at a probability above 0 and below 1, not " + probability);
    }
    ErrorSum errors = ErrorSum.of(terms);
    double reach = estimate().standardUncertainty();
    if (errors.isExact() || probability == 0.5) {
      return value;
    }
    double side = probability > 0.5 ? 1 : -1;
    double most = Math.max(probability, 1 - probability);
    while (errors.atMost(reach) < most) {
      reach *= 2;
    }
    double end = reach;
    return value + side * Root.between(x -> errors.atMost(x) - most, 0, end, CLOSE * end);
  }
}
