package kelter.core.job.work;

import java.util.Optional;
import kelter.core.problem.Required;
import kelter.core.quantity.Money;

/**
 * The offer that an owner took before the work. It stays as it was, whatever is read or done later.
 *
 * @param option its number in the quotation, from 1
 * @param title what was offered, in the words of the owner
 * @param most what it comes to at most, tax included; empty where the price or the tax was open
 * @param date the day on which the owner took it, {@code yyyy-mm-dd}
 */
public record Accepted(int option, String title, Optional<Money> most, String date) {

  /**
   * Checks the number.
   *
   * @throws IllegalArgumentException if the number is below 1 or the title is blank
   */
  public Accepted {
    Required.value(title, "title of an accepted offer");
    Required.optional(most, "amount of an accepted offer");
    Required.value(date, "day of an accepted offer");
    if (option < 1) {
      throw new IllegalArgumentException("an option is numbered from 1");
    }
    if (title.isBlank()) {
      throw new IllegalArgumentException("an accepted offer has a title");
    }
  }
}
