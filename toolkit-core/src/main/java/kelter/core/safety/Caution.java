package kelter.core.safety;

import java.util.List;
import java.util.Objects;

/**
 * A caution that belongs to a step or a finding and stands in front of it.
 *
 * @param id its word for programs, lower-case letters, digits and hyphens, unique among all
 *     modules; it stays the same when the text changes
 * @param signal how bad it can get
 * @param text what can happen and what to do, one or two sentences
 * @param keepsUnplugged whether the machine must not be powered again before that is mended, so
 *     that no measurement on a running machine may be proposed
 */
public record Caution(String id, Signal signal, String text, boolean keepsUnplugged) {

  /** Unplug before opening. */
  public static final Caution UNPLUG =
      new Caution(
          "unplug",
          Signal.DANGER,
          "Electric shock. Pull the plug or lock off the supply, and prove dead before you touch or"
              + " measure.");

  /** A running machine with water in it. */
  public static final Caution HOT_WATER =
      new Caution(
          "hot-water",
          Signal.WARNING,
          "Hot water and wet floor. Let it cool below 40 °C, have a tray and a cloth ready, and keep"
              + " hands away from moving parts.");

  /** The cautions that every module may tell. */
  public static final List<Caution> COMMON = List.of(UNPLUG, HOT_WATER);

  /**
   * Checks id and text.
   *
   * @throws IllegalArgumentException if the id or the text is blank
   */
  public Caution {
    Objects.requireNonNull(signal);
    if (id.isBlank() || text.isBlank()) {
      throw new IllegalArgumentException(
          "a caution has an id and says what can happen and what to do");
    }
  }

  /**
   * A caution about a step, after which the machine may be powered again.
   *
   * @param id its word for programs
   * @param signal how bad it can get
   * @param text what can happen and what to do, one or two sentences
   */
  public Caution(String id, Signal signal, String text) {
    this(id, signal, text, false);
  }

  /** How bad it can get: the signal words of ANSI Z535.4. */
  public enum Signal {
    /** Death or serious injury will follow. */
    DANGER("danger"),
    /** Death or serious injury may follow. */
    WARNING("warning"),
    /** Minor injury may follow. */
    CAUTION("caution"),
    /** Property only. */
    NOTICE("notice");

    private final String id;

    Signal(String id) {
      this.id = id;
    }

    /**
     * Its word for programs.
     *
     * @return the signal word in lower case
     */
    public String id() {
      return id;
    }
  }

  /**
   * The same with what its text leaves open.
   *
   * @param open what comes in the place of each {@code %s}, in order
   * @return the caution, of the same id
   */
  public Caution with(Object... open) {
    return new Caution(id, signal, text.formatted(open), keepsUnplugged);
  }

  /**
   * The text that a person sees.
   *
   * @return signal word and text
   */
  public String display() {
    return signal + ": " + text;
  }
}
