package kelter.core.diagnosis;

import java.util.Objects;

/**
 * A cause that brings an effect, such as lint that makes a thermal cut-out open: beside the cause
 * the effect is likelier than by coincidence.
 *
 * @param cause the fault that comes first, {@code component.fault}
 * @param effect the fault that it brings, {@code component.fault}
 * @param chance the chance, above 0 and below 1, that the effect is there when somebody is called
 *     to a machine that has the cause
 */
public record Brings(String cause, String effect, double chance) {

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if the chance is not above 0 and below 1, or a fault brings
   *     itself
   */
  public Brings {
    Objects.requireNonNull(cause);
    Objects.requireNonNull(effect);
    if (!(chance > 0 && chance < 1) || cause.equals(effect)) {
      throw new IllegalArgumentException(
          cause + " brings " + effect + ": another fault, with a chance above 0 and below 1");
    }
  }
}
