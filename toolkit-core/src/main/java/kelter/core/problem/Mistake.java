package kelter.core.problem;

/** The sorts of mistakes, for programs: a word stays the same whatever the message says. */
public enum Mistake {
  /** A value that cannot be used: outside what is allowed, or not going with the rest. */
  UNUSABLE("unusable"),
  /** Something that is needed is not there. */
  MISSING("missing"),
  /** A member, column or parameter of a name that nobody knows. */
  UNKNOWN_NAME("unknown-name"),
  /** A value that is none of the words that are known. */
  UNKNOWN_WORD("unknown-word"),
  /** A JSON value of another type than is needed. */
  WRONG_TYPE("wrong-type"),
  /** Something is given twice. */
  TWICE("twice"),
  /** A text that is no JSON, or no text. */
  NOT_JSON("not-json"),
  /** A file or folder that cannot be found, read or written. */
  FILE("file"),
  /** A plugin failed, or cannot be used. */
  PLUGIN("plugin"),
  /** A command line that cannot be understood. */
  USAGE("usage"),
  /** A defect of the program. */
  DEFECT("defect");

  private final String id;

  Mistake(String id) {
    this.id = id;
  }

  /**
   * The word for it.
   *
   * @return lower-case letters and hyphens
   */
  public String id() {
    return id;
  }
}
