package kelter.hydraulics.fault;

/**
 * How something that is seen or heard follows from a figure. The thresholds are those of a
 * practised person: common practice, no source.
 */
public final class Symptom {

  /** The chance that it is said though nothing is there, and that it is missed though it is. */
  private static final double BLUNDER = 0.03;

  private static final double LEAST_GRADE = 0.0;
  private static final double GREATEST_GRADE = 1.0;

  private Symptom() {}

  /**
   * The probability that something is noticed.
   *
   * @param figure the figure that it follows
   * @param threshold the figure at which half of all people notice it, same unit
   * @param width how sharp that is, same unit: above 0 if a larger figure is noticed more, below 0
   *     if less
   * @return a probability from 0.03 to 0.97
   */
  public static double noticed(double figure, double threshold, double width) {
    double logistic = 1 / (1 + Math.exp((threshold - figure) / width));
    return BLUNDER + (1 - 2 * BLUNDER) * logistic;
  }

  /**
   * The probability that something is noticed for one of two reasons.
   *
   * @param one the probability by the one, from 0 to 1
   * @param other the probability by the other, from 0 to 1
   * @return the probability that not both fail
   */
  public static double either(double one, double other) {
    return 1 - (1 - one) * (1 - other);
  }

  /**
   * A place on the scale of a grade.
   *
   * @param place any figure
   * @return the nearest from 0 to 1
   */
  public static double grade(double place) {
    return Math.min(GREATEST_GRADE, Math.max(LEAST_GRADE, place));
  }
}
