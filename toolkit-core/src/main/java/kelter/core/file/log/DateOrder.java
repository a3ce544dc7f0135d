package kelter.core.file.log;

import java.util.Optional;
import java.util.OptionalLong;
import kelter.core.file.log.cell.CellTime;

/** In which order the numbers of a date are written. */
public enum DateOrder {
  /** 2026-10-23 (ISO 8601). */
  YEAR_FIRST("ymd", "year, month, day", 0, 1, 2),
  /** 23.10.2026. */
  DAY_FIRST("dmy", "day, month, year", 2, 1, 0),
  /** 10/23/2026. */
  MONTH_FIRST("mdy", "month, day, year", 2, 0, 1);

  private final String code;
  private final String words;
  private final int year;
  private final int month;
  private final int day;

  DateOrder(String code, String words, int year, int month, int day) {
    this.code = code;
    this.words = words;
    this.year = year;
    this.month = month;
    this.day = day;
  }

  /**
   * The letters by which a person names it.
   *
   * @return for instance {@code dmy}
   */
  public String code() {
    return code;
  }

  /**
   * The order for a person.
   *
   * @return for instance {@code day, month, year}
   */
  public String words() {
    return words;
  }

  /**
   * The order that a person names.
   *
   * @param code three letters
   * @return the order, or empty if there is none
   */
  public static Optional<DateOrder> of(String code) {
    for (DateOrder order : values()) {
      if (order.code.equalsIgnoreCase(code.strip())) {
        return Optional.of(order);
      }
    }
    return Optional.empty();
  }

  /** The days since 1970-01-01 of a date in this order; empty if there is no such day. */
  OptionalLong days(CellTime date) {
    return date.day(year, month, day);
  }
}
