package kelter.core.check;

/** What a reading says against its limits. */
public enum Verdict {
  /** Inside the limits, at the stated level. */
  CONFORMS("conforms"),
  /** Outside the limits, at the stated level. */
  DOES_NOT_CONFORM("does not conform"),
  /** The uncertainty is too large to say. */
  UNDECIDED("undecided"),
  /** There is no reading that could be held against the limits. */
  NOT_MEASURED("not measured");

  private final String words;

  Verdict(String words) {
    this.words = words;
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
