package kelter.core.vocabulary;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Reads a calendar date as ISO 8601 writes it, yyyy-mm-dd. The formats of the platform do so too,
 * but to make them ready takes as long as the rest of a job file.
 */
public final class CalendarDate {

  private static final String FORM = "dddd-dd-dd";

  /** No appliance, price or calibration is older; an earlier year was mistyped. */
  private static final int FIRST_YEAR = 1900;

  private CalendarDate() {}

  /**
   * Reads a date.
   *
   * @param text a text
   * @return the date; empty if it is none
   */
  public static Optional<LocalDate> of(String text) {
    if (!hasForm(text)) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDate.of(number(text, 0, 4), number(text, 5, 7), number(text, 8, 10)));
    } catch (DateTimeException notInTheCalendar) {
      return Optional.empty();
    }
  }

  /**
   * Reads a date that must be one.
   *
   * @param text a text
   * @return the date
   * @throws IllegalArgumentException if it is none, or one before 1900
   */
  public static LocalDate require(String text) {
    Optional<LocalDate> date = of(text);
    if (date.isEmpty()) {
      throw new IllegalArgumentException("'" + text + "' is not a date; write yyyy-mm-dd");
    }
    if (date.get().getYear() < FIRST_YEAR) {
      throw new IllegalArgumentException(
          "the year of '" + text + "' is before " + FIRST_YEAR + "; write yyyy-mm-dd");
    }
    return date.get();
  }

  private static boolean hasForm(String text) {
    if (text.length() != FORM.length()) {
      return false;
    }
    for (int i = 0; i < FORM.length(); i++) {
      char c = text.charAt(i);
      if (FORM.charAt(i) == 'd' ? c < '0' || c > '9' : c != FORM.charAt(i)) {
        return false;
      }
    }
    return true;
  }

  private static int number(String text, int from, int to) {
    return Integer.parseInt(text, from, to, 10);
  }
}
