package kelter.core.check;

/** What a reading says against its limits. */
public enum Verdict {
  /** Inside the limits, at the stated level. */
  CONFORMS("conforms", "conforms"),
  /** Outside the limits, at the stated level. */
  DOES_NOT_CONFORM("does-not-conform", "does not conform"),
  /** The uncertainty is too large to say. */
  UNDECIDED("undecided", "undecided"),
  /** There is no reading that could be held against the limits. */
  NOT_MEASURED("not-measured", "not measured");

  private final String id;
  private final String words;

  Verdict(String id, String words) {
    this.id = id;
    this.words = words;
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
