package kelter.core.uncertainty;

import java.util.Objects;

/**
 * One component of the uncertainty of an input quantity: an error whose estimate is zero.
 *
 * @param title what it is, for a person: {@code stated}, {@code scatter of 5 readings}
 * @param shape its distribution
 * @param standardUncertainty the standard uncertainty, in the coherent SI unit of the input
 * @param degreesOfFreedom the degrees of freedom of the standard uncertainty (JCGM 100:2008, G.3
 *     and G.4), above zero; infinite where it is taken as exactly known
 * @param scatter whether it comes from the scatter of readings (type A, JCGM 100:2008, 4.2) and is
 *     thus never the same for two inputs
 */
public record ErrorTerm(
    String title,
    Shape shape,
    double standardUncertainty,
    double degreesOfFreedom,
    boolean scatter) {

  /** The title of an error that somebody stated. */
  public static final String STATED = "stated";

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if the uncertainty is negative or not finite, or the degrees
   *     of freedom are not above zero, or infinite for Student's t
   */
  public ErrorTerm {
    Objects.requireNonNull(title);
    Objects.requireNonNull(shape);
    if (!(standardUncertainty >= 0) || Double.isInfinite(standardUncertainty)) {
      throw new IllegalArgumentException(
          "a standard uncertainty is finite and not negative, not " + standardUncertainty);
    }
    if (!(degreesOfFreedom > 0)) {
      throw new IllegalArgumentException(
          "degrees of freedom are above zero, not " + degreesOfFreedom);
    }
    if (shape == Shape.STUDENT_T && Double.isInfinite(degreesOfFreedom)) {
      throw new IllegalArgumentException("Student's t has finite degrees of freedom");
    }
  }

  /**
   * An error between two limits, a type B component.
   *
   * @param shape rectangular, triangular or U-shaped
   * @param halfWidth half the distance between the limits, in the coherent SI unit
   * @return the component
   * @throws IllegalArgumentException if the shape has no limits or the half-width is negative
   */
  public static ErrorTerm within(Shape shape, double halfWidth) {
    if (Double.isNaN(shape.divisor())) {
      throw new IllegalArgumentException("a " + shape.words() + " distribution has no limits");
    }
    return stated(shape, halfWidth / shape.divisor());
  }

  /**
   * A normal error, a type B component.
   *
   * @param standardUncertainty the standard uncertainty, in the coherent SI unit
   * @return the component
   */
  public static ErrorTerm normal(double standardUncertainty) {
    return stated(Shape.NORMAL, standardUncertainty);
  }

  /**
   * An error of known standard uncertainty, a type B component.
   *
   * @param shape any but Student's t
   * @param standardUncertainty the standard uncertainty, in the coherent SI unit
   * @return the component
   */
  public static ErrorTerm stated(Shape shape, double standardUncertainty) {
    return new ErrorTerm(STATED, shape, standardUncertainty, Double.POSITIVE_INFINITY, false);
  }

  /**
   * The scatter of readings, a type A component of their mean.
   *
   * @param ofMean the experimental standard deviation of the mean, in the coherent SI unit
   * @param readings how many there are, 2 or more
   * @return the component, with a scaled t distribution (JCGM 101:2008, 6.4.9)
   */
  public static ErrorTerm scatter(double ofMean, int readings) {
    return new ErrorTerm("scatter of " + readings, Shape.STUDENT_T, ofMean, readings - 1.0, true);
  }

  /**
   * An error whose standard uncertainty was itself estimated.
   *
   * @param standardUncertainty the standard uncertainty, in the coherent SI unit
   * @param degreesOfFreedom its degrees of freedom, finite and above zero
   * @return the component, with a scaled t distribution (JCGM 101:2008, 6.4.9)
   */
  public static ErrorTerm studentT(double standardUncertainty, double degreesOfFreedom) {
    return new ErrorTerm(STATED, Shape.STUDENT_T, standardUncertainty, degreesOfFreedom, false);
  }
}
