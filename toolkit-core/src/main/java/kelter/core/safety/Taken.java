package kelter.core.safety;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** In which condition of the machine something is found out. */
public enum Taken {
  /** By looking, nothing opened. */
  LOOK('l'),
  /** By asking. */
  ASK('k'),
  /** With the plug out and the machine proved dead. */
  DEAD('d'),
  /** Plugged in and not running. */
  POWERED('p'),
  /** Running with its covers on. */
  RUNNING('r'),
  /** On live parts. */
  LIVE('v');

  private final char letter;

  Taken(char letter) {
    this.letter = letter;
  }

  /**
   * The letter in the lock-out table.
   *
   * @return a lower-case letter
   */
  public char letter() {
    return letter;
  }

  /**
   * How a measurement of some hazard is taken.
   *
   * @param hazard how dangerous the way of measuring is
   * @return the condition of the machine
   */
  public static Taken of(Hazard hazard) {
    return switch (hazard) {
      case NONE -> LOOK;
      case DEAD -> DEAD;
      case RUNNING -> RUNNING;
      case LIVE -> LIVE;
    };
  }

  /**
   * Reads letters of the lock-out table.
   *
   * @param letters letters without a space, such as {@code lkd}
   * @return what they stand for; empty if one of them stands for nothing
   */
  public static Optional<Set<Taken>> of(String letters) {
    Set<Taken> all = EnumSet.noneOf(Taken.class);
    for (char letter : letters.toCharArray()) {
      Optional<Taken> one = of(letter);
      if (one.isEmpty()) {
        return Optional.empty();
      }
      all.add(one.get());
    }
    return Optional.of(Collections.unmodifiableSet(all));
  }

  private static Optional<Taken> of(char letter) {
    for (Taken taken : values()) {
      if (taken.letter == letter) {
        return Optional.of(taken);
      }
    }
    return Optional.empty();
  }
}
