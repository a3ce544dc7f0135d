package kelter.core.uncertainty;

/**
 * The shape of what is known of an error (JCGM 100:2008, 4.3; JCGM 101:2008, 6.4). The ratio of the
 * half-width to the standard uncertainty is that of JCGM 100:2008, equation (7) and 4.3.9.
 */
public enum Shape {
  /** Anywhere between two limits, all equally likely: makers' limits of error, rounding. */
  RECTANGULAR("rectangular", "rectangular", Math.sqrt(3)),
  /** Between two limits, more likely near the middle. */
  TRIANGULAR("triangular", "triangular", Math.sqrt(6)),
  /** Between two limits, mostly near them: something that swings, such as a thermostat. */
  U_SHAPED("u-shaped", "U-shaped", Math.sqrt(2)),
  /** Normal: certificates that state a coverage factor. */
  NORMAL("normal", "normal", Double.NaN),
  /** Student's t, scaled: the scatter of few readings. */
  STUDENT_T("student-t", "t", Double.NaN);

  private final String id;
  private final String words;
  private final double divisor;

  Shape(String id, String words, double divisor) {
    this.id = id;
    this.words = words;
    this.divisor = divisor;
  }

  /**
   * The word for programs; it stays the same when the words change.
   *
   * @return lower-case letters and hyphens
   */
  public String id() {
    return id;
  }

  /**
   * The words that a person sees and writes.
   *
   * @return the words
   */
  public String words() {
    return words;
  }

  /**
   * By what a half-width is divided to get the standard uncertainty.
   *
   * @return a ratio above 1; NaN for a shape without limits, whose coverage factor must be stated
   */
  public double divisor() {
    return divisor;
  }
}
