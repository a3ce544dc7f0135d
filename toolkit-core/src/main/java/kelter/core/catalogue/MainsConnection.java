package kelter.core.catalogue;

/** How machines of a kind are connected to the mains. */
public enum MainsConnection {
  /** By a plug. */
  PLUG("plug"),
  /** Wired in, without a plug. */
  FIXED("fixed"),
  /** By the one or the other; taken as wired in until somebody tells. */
  EITHER("either");

  private final String id;

  MainsConnection(String id) {
    this.id = id;
  }

  /**
   * The word for it in files.
   *
   * @return the word
   */
  public String id() {
    return id;
  }
}
