package kelter.core.safety;

import java.util.Objects;

/**
 * A caution that belongs to a step or a finding and stands in front of it.
 *
 * @param signal how bad it can get
 * @param text what can happen and what to do, one or two sentences
 * @param keepsUnplugged whether the machine must not be powered again before that is mended, so
 *     that no measurement on a running machine may be proposed
 */
public record Caution(Signal signal, String text, boolean keepsUnplugged) {

  /** Unplug before opening. */
  public static final Caution UNPLUG =
      new Caution(
          Signal.DANGER,
          "Electric shock. Pull the plug or lock off the supply, and prove dead before you touch or"
              + " measure.");

  /** A running machine with water in it. */
  public static final Caution HOT_WATER =
      new Caution(
          Signal.WARNING,
          "Hot water and wet floor. Let it cool below 40 °C, have a tray and a cloth ready, and keep"
              + " hands away from moving parts.");

  public Caution {
    Objects.requireNonNull(signal);
    if (text.isBlank()) {
      throw new IllegalArgumentException("a caution says what can happen and what to do");
    }
  }

  /**
   * A caution about a step, after which the machine may be powered again.
   *
   * @param signal how bad it can get
   * @param text what can happen and what to do, one or two sentences
   */
  public Caution(Signal signal, String text) {
    this(signal, text, false);
  }

  /** How bad it can get: the signal words of ANSI Z535.4. */
  public enum Signal {
    /** Death or serious injury will follow. */
    DANGER,
    /** Death or serious injury may follow. */
    WARNING,
    /** Minor injury may follow. */
    CAUTION,
    /** Property only. */
    NOTICE
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
