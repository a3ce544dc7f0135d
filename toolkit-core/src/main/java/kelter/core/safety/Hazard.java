package kelter.core.safety;

/** How a measurement is taken, the least dangerous way first. */
public enum Hazard {
  /** By looking, listening or asking, nothing opened. */
  NONE("look"),
  /** With the plug out and the machine proved dead. */
  DEAD("dead"),
  /** With the machine running and closed: hot water, moving parts and a wet floor. */
  RUNNING("running"),
  /** On live parts; only for those competent for live work. */
  LIVE("live");

  private final String word;

  Hazard(String word) {
    this.word = word;
  }

  /**
   * The word that a person sees.
   *
   * @return one lower-case word
   */
  public String word() {
    return word;
  }
}
