package kelter.testkit.ledger;

/** What a check is worth, the strongest first. */
public enum Worth {
  /** Figures that were seen in a document or made by a program of others. */
  SEEN("seen in print or computed by a program of others", ""),
  /** Figures of a document that were written down from memory. */
  FROM_MEMORY("held against figures from memory only", " (from memory)"),
  /** Figures that were worked out outside the project from the same law. */
  RECOMPUTED(
      "recomputed outside the code from the same law only", " (recomputed outside the code)");

  private final String words;
  private final String mark;

  Worth(String words, String mark) {
    this.words = words;
    this.mark = mark;
  }

  String words() {
    return words;
  }

  String mark() {
    return mark;
  }
}
