package kelter.core.book;

import java.time.LocalDate;
import java.util.Optional;
import kelter.core.problem.Required;

/**
 * Which entries are listed, the latest first.
 *
 * @param kind only machines of this kind; empty for all
 * @param from only jobs closed on this day or later
 * @param to only jobs closed on this day or earlier
 * @param most so many at most, 1 or more
 */
public record Selection(String kind, Optional<LocalDate> from, Optional<LocalDate> to, int most) {

  /**
   * Checks the number.
   *
   * @throws IllegalArgumentException if it is below 1
   */
  public Selection {
    Required.value(kind, "kind");
    Required.optional(from, "first day");
    Required.optional(to, "last day");
    if (most < 1) {
      throw new IllegalArgumentException(most + " entries; 1 or more are allowed");
    }
  }
}
