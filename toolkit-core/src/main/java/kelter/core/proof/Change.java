package kelter.core.proof;

import java.util.Locale;

/** What became of a reading by the work. */
public enum Change {
  /** It did not conform, and now does. */
  MENDED("now within its limits"),
  /** It conforms, and did not fail to before. */
  GOOD("within its limits"),
  /** It came nearer to its limits and is not yet within them. */
  BETTER("better, and not yet within its limits"),
  /** It does not conform, as before. */
  SAME("not within its limits, as before"),
  /** It does not conform, and nobody knows how it was before. */
  BAD("not within its limits"),
  /** It is farther from its limits than before, or has left them. */
  WORSE("worse than before"),
  /** Its limit rests on figures that nobody has stated, so that there is no verdict. */
  OPEN_LIMIT("no verdict: its limit rests on figures that the job does not state"),
  /** It is too close to a limit to say. */
  UNDECIDED("too close to its limit to say"),
  /** It is another than before, and there is no limit to hold it against. */
  CHANGED("not as before, and there is no limit to hold it against"),
  /** It is as before, and there is no limit to hold it against. */
  WITHOUT_LIMIT("as before, and there is no limit to hold it against"),
  /** Nobody has read it after the work. */
  OPEN("not read after the work");

  private final String words;

  Change(String words) {
    this.words = words;
  }

  /**
   * The same for a person.
   *
   * @return words that may follow a colon
   */
  public String words() {
    return words;
  }

  /**
   * The word in a result.
   *
   * @return lower-case letters and hyphens
   */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
