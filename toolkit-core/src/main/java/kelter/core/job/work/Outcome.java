package kelter.core.job.work;

/** How a job ended. The person who closes it says so; no reading does. */
public enum Outcome {
  /** The machine does again what it should. */
  CURED("cured", "mended"),
  /** Something was done, and the fault is still there. */
  NOT_CURED("not-cured", "not mended: the fault is still there"),
  /** The owner keeps it as it is: nothing was mended. */
  LEFT("left", "left as it was"),
  /** Looked at and found in order: its use, its supply or its surroundings made the complaint. */
  NOTHING_WRONG("nothing-wrong", "nothing wrong was found with the machine"),
  /** The owner takes another machine. */
  REPLACED("replaced", "to be replaced by another machine"),
  /** Not for this trade, or not for these hands. */
  STOPPED("stopped", "stopped and passed on");

  private final String id;
  private final String words;

  Outcome(String id, String words) {
    this.id = id;
    this.words = words;
  }

  /**
   * The word in a file.
   *
   * @return lower-case letters and hyphens
   */
  public String id() {
    return id;
  }

  /**
   * The same for a person.
   *
   * @return words that may end a sentence
   */
  public String words() {
    return words;
  }
}
