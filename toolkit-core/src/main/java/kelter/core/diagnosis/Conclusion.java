package kelter.core.diagnosis;

import java.util.List;
import java.util.Objects;

/**
 * Whether the readings decide what is wrong, and if not, which of four reasons that has.
 *
 * @param reason what holds
 * @param about what it concerns, {@code component.fault} or {@code component.observable}
 * @param advice what kind of thing is to be done next
 * @param action the same in words: what to do next, a sentence without its full stop
 * @param readFirst whether that is to read something, before anything is mended or replaced
 */
public record Conclusion(
    Reason reason, List<String> about, Advice advice, String action, boolean readFirst) {

  /** Why it is decided or not. */
  public enum Reason {
    /** One state is past the stated level. */
    DECIDED("decided", "decided"),
    /** Two causes or more would show alike in what was read. */
    NOT_SEPARABLE("not-separable", "not separable"),
    /** No listed cause explains the readings. */
    NO_CAUSE_FITS("no-cause-fits", "no cause fits"),
    /** A finer instrument would tell what the one in use does not. */
    INSTRUMENT_TOO_COARSE("instrument-too-coarse", "instrument too coarse"),
    /** What would tell was not measured. */
    NOT_MEASURED("not-measured", "not measured");

    private final String id;
    private final String words;

    Reason(String id, String words) {
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
     * @return lower-case words
     */
    public String words() {
      return words;
    }
  }

  /** What kind of thing is to be done next. */
  public enum Advice {
    /** Go by the order of work. */
    WORK("go-by-order-of-work"),
    /** Nothing is to be mended by these readings. */
    NOTHING("nothing-to-mend"),
    /** Take readings again that do not fit. */
    READ_AGAIN("read-again"),
    /** Take a reading with a finer instrument. */
    READ_FINER("read-with-finer-instrument"),
    /** Take the reading that tells most. */
    MEASURE("measure"),
    /** Take readings; none is known that tells more than another. */
    TAKE_READINGS("take-readings"),
    /** Look for what is not listed; no reading that could be taken again would help. */
    LOOK_BEYOND("look-beyond-listed-causes"),
    /** Tell a component with its figures in the job. */
    NAME_COMPONENT("name-component");

    private final String id;

    Advice(String id) {
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
  }

  public Conclusion {
    Objects.requireNonNull(reason);
    about = List.copyOf(about);
    Objects.requireNonNull(advice);
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
