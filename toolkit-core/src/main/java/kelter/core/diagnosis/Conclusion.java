package kelter.core.diagnosis;

import java.util.List;
import java.util.Objects;

/**
 * Whether the readings decide what is wrong, and if not, which of four reasons that has.
 *
 * @param reason what holds
 * @param about what it concerns, {@code component.fault} or {@code component.observable}
 * @param action what to do next, a sentence without its full stop
 * @param readFirst whether that is to read something, before anything is mended or replaced
 */
public record Conclusion(Reason reason, List<String> about, String action, boolean readFirst) {

  /** Why it is decided or not. */
  public enum Reason {
    /** One state is past the stated level. */
    DECIDED,
    /** Two causes or more would show alike in what was read. */
    NOT_SEPARABLE,
    /** No listed cause explains the readings. */
    NO_CAUSE_FITS,
    /** A finer instrument would tell what the one in use does not. */
    INSTRUMENT_TOO_COARSE,
    /** What would tell was not measured. */
    NOT_MEASURED
  }

  public Conclusion {
    Objects.requireNonNull(reason);
    about = List.copyOf(about);
    Objects.requireNonNull(action);
  }

  /**
   * Whether one state is past the stated level.
   *
   * @return true if it is
   */
  public boolean isDecided() {
    return reason == Reason.DECIDED;
  }
}
