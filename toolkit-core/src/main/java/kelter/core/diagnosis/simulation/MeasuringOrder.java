package kelter.core.diagnosis.simulation;

/** By what it is decided which measurement comes next. */
public enum MeasuringOrder {
  /** The diagnosis proposes it; where it proposes none, the fixed order goes on. */
  LED("led by the diagnosis"),
  /** The order of the models and of their questions. */
  FIXED("fixed order"),
  /** An order drawn anew for each machine. */
  RANDOM("random order");

  private final String words;

  MeasuringOrder(String words) {
    this.words = words;
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
