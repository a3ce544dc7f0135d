package kelter.core.vocabulary;

/**
 * How likely something is, in the words of the IPCC's scale of likelihood (Guidance Note AR4,
 * 2005).
 */
public enum Likelihood {
  /** Above 0.99. */
  VIRTUALLY_CERTAIN("virtually-certain", "virtually certain", 0.99),
  /** Above 0.9. */
  VERY_LIKELY("very-likely", "very likely", 0.9),
  /** Above 0.66. */
  LIKELY("likely", "likely", 0.66),
  /** Above 0.33. */
  AS_LIKELY_AS_NOT("about-as-likely-as-not", "about as likely as not", 0.33),
  /** Above 0.1. */
  UNLIKELY("unlikely", "unlikely", 0.1),
  /** Above 0.01. */
  VERY_UNLIKELY("very-unlikely", "very unlikely", 0.01),
  /** All below. */
  EXCEPTIONALLY_UNLIKELY("exceptionally-unlikely", "exceptionally unlikely", -1);

  private final String id;
  private final String words;
  private final double above;

  Likelihood(String id, String words, double above) {
    this.id = id;
    this.words = words;
    this.above = above;
  }

  /**
   * How likely a probability is.
   *
   * @param probability a probability, 0 to 1
   * @return its place on the scale
   */
  public static Likelihood of(double probability) {
    for (Likelihood each : values()) {
      if (probability > each.above) {
        return each;
      }
    }
    return EXCEPTIONALLY_UNLIKELY;
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
   * The words that a person sees.
   *
   * @return lower-case words
   */
  public String words() {
    return words;
  }
}
