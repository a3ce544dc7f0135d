package kelter.core.book;

/** How a job ended. */
public enum Outcome {
  /** The complaint is gone, and the machine was seen to work. */
  CURED("cured"),
  /** Work was done, and the complaint is still there. */
  NOT_CURED("not-cured"),
  /** The owner or the technician decided against the repair. */
  NOT_REPAIRED("not-repaired"),
  /** The job was broken off, for instance for the licensed trade. */
  STOPPED("stopped"),
  /** Nothing was wrong with the machine. */
  NOTHING_WRONG("nothing-wrong"),
  /** Nobody wrote it down. */
  UNKNOWN("unknown");

  private final String id;

  Outcome(String id) {
    this.id = id;
  }

  /**
   * The word in a file.
   *
   * @return lower-case letters and hyphens
   */
  public String id() {
    return id;
  }
}
