package kelter.core.safety;

import java.util.Locale;
import java.util.Optional;

/** How an appliance protects against electric shock (IEC 61140). */
public enum ProtectionClass {
  /** Basic insulation and a protective conductor. */
  I,
  /** Double or reinforced insulation. */
  II,
  /** Safety extra-low voltage. */
  III;

  /**
   * Reads a class as people write it.
   *
   * @param text {@code I}, {@code II}, {@code III}, 1, 2 or 3, with {@code class} before it or not,
   *     in capitals or not
   * @return the class; empty if the text is none
   */
  public static Optional<ProtectionClass> of(String text) {
    String word = text.strip().toUpperCase(Locale.ROOT);
    return switch (word.startsWith("CLASS") ? word.substring("CLASS".length()).strip() : word) {
      case "I", "1" -> Optional.of(I);
      case "II", "2" -> Optional.of(II);
      case "III", "3" -> Optional.of(III);
      default -> Optional.empty();
    };
  }
}
