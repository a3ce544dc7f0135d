package kelter.core.check;

import java.util.Optional;
import kelter.core.vocabulary.Statement;

/** What would settle a finding that is undecided. */
public enum ToSettle {
  /** Nothing now: the machine is locked out from the reading. */
  LOCKED_OUT("locked-out"),
  /** Read a value where only a bound or the end of a range was read. */
  READ_VALUE("read-value"),
  /** State what the limit depends on. */
  STATE_LIMIT("state-limit"),
  /** Nothing: the value lies on the limit. */
  ON_LIMIT("on-limit"),
  /** Read it more often. */
  READ_OFTENER("read-oftener"),
  /** Read it better than so well. */
  READ_FINER("read-finer"),
  /** Which instruments, ranges or repeats come up to that. */
  INSTRUMENTS("instruments");

  private final String id;

  ToSettle(String id) {
    this.id = id;
  }

  /**
   * The word for programs; it stays the same when the words change.
   *
   * @return lower-case letters and hyphens
   */
  public String id() {
    return id;
  }

  Optional<Statement> told(String text) {
    return Optional.of(new Statement(id, text));
  }
}
