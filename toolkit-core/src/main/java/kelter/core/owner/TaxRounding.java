package kelter.core.owner;

/** Where tax is rounded, once: half up, to the minor unit of the currency. */
public enum TaxRounding {
  /** For each line by itself. */
  PER_LINE("per line"),
  /** On the sum of all that is taxed at one rate. */
  PER_RATE("per rate");

  private final String id;

  TaxRounding(String id) {
    this.id = id;
  }

  /**
   * The words in a file.
   *
   * @return two lower-case words
   */
  public String id() {
    return id;
  }
}
