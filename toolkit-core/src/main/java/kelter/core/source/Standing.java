package kelter.core.source;

/** What a figure is worth, by where it comes from. The words are printed, never hidden. */
public enum Standing {
  /** A standard, a handbook, a data sheet or a paper, named. */
  PUBLISHED("published", "published"),
  /** Published, but known to the project only through a work that cites it. */
  SECOND_HAND("published-second-hand", "published, cited second-hand"),
  /** The nameplate of the appliance or component. */
  NAMEPLATE("nameplate", "nameplate"),
  /** Measured on a machine in good order. */
  MEASURED("measured", "measured on a good machine"),
  /** Counted in the jobs of the shop, as its book has them. */
  COUNTED("counted", "counted in the shop's own jobs"),
  /** What the trade does, without a source that could be named. */
  COMMON_PRACTICE("common-practice", "common practice, no source"),
  /** A published figure that was written down from memory and not looked up again. */
  FROM_MEMORY("from-memory", "from memory"),
  /** Made up; in the demo only. */
  INVENTED("invented", "invented");

  private final String id;
  private final String words;

  Standing(String id, String words) {
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
   * @return for instance {@code common practice, no source}
   */
  public String words() {
    return words;
  }
}
