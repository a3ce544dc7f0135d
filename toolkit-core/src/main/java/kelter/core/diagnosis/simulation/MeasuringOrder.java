package kelter.core.diagnosis.simulation;

/** By what it is decided which measurement comes next. */
public enum MeasuringOrder {
  /** The diagnosis proposes it; where it proposes none, the fixed order goes on. */
  LED("led-by-diagnosis", "led by the diagnosis"),
  /** The order of the models and of their questions. */
  FIXED("fixed", "fixed order"),
  /** An order drawn anew for each machine. */
  RANDOM("random", "random order");

  private final String id;
  private final String words;

  MeasuringOrder(String id, String words) {
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
   * What a person sees.
   *
   * @return a few words
   */
  public String words() {
    return words;
  }
}
