package kelter.core.file.log;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;

/**
 * Times as instruments write them: a date and a time of day in any of the usual orders, or one of
 * them.
 */
final class LogTime {

  static final double DAY = 86_400;
  private static final int THIS_CENTURY = 2000;

  /** In which order a date is written. */
  enum Order {
    YEAR_FIRST,
    DAY_FIRST,
    MONTH_FIRST
  }

  private final String text;
  private int at;
  private char separator = ' ';
  private double offset;

  private LogTime(String text) {
    this.text = text;
  }

  /** What a cell looks like: three numbers of a date, and whether a time of day follows. */
  record Shape(boolean date, boolean clock, int first, int second, char separator, boolean half) {
    boolean isTime() {
      return date || clock;
    }
  }

  /** The shape of a cell; neither date nor clock if it is no time. */
  static Shape shape(String cell) {
    LogTime time = new LogTime(cell);
    int[] date = time.dateParts();
    time.skipBetween();
    boolean half = cell.toLowerCase(Locale.ROOT).endsWith("m");
    int behindDate = time.at;
    boolean clock = !Double.isNaN(time.clock()) && time.atEnd();
    if (date.length == 0 || (!clock && behindDate < cell.length())) {
      return new Shape(false, clock, 0, 0, ' ', half);
    }
    return new Shape(true, clock, date[0], date[1], time.separator, half);
  }

  /**
   * The time of a cell in s: from 1970-01-01 if it has a date, else from midnight; an offset from
   * UTC is taken off.
   *
   * @throws IllegalArgumentException if it is no time or there is no such day
   */
  static double seconds(String cell, Order order, boolean date, boolean clock) {
    LogTime time = new LogTime(cell);
    double seconds = 0;
    if (date) {
      int[] parts = time.dateParts();
      if (parts.length != 3) {
        throw new IllegalArgumentException("'" + cell + "' is not a date");
      }
      seconds = day(parts, order, cell) * DAY;
      time.skipBetween();
    }
    if (clock) {
      double ofDay = time.clock();
      if (Double.isNaN(ofDay)) {
        throw new IllegalArgumentException("'" + cell + "' is not a time");
      }
      seconds += ofDay;
    }
    if (!time.atEnd()) {
      throw new IllegalArgumentException("'" + cell + "' is not a time");
    }
    return seconds;
  }

  /** The offset from UTC that stands behind a time of day, in s; 0 if there is none. */
  static double offset(String cell) {
    LogTime time = new LogTime(cell);
    time.dateParts();
    time.skipBetween();
    time.clock();
    return time.offset;
  }

  private static long day(int[] parts, Order order, String cell) {
    int year = order == Order.YEAR_FIRST ? parts[0] : parts[2];
    int month = order == Order.MONTH_FIRST ? parts[0] : parts[1];
    int day = order == Order.YEAR_FIRST ? parts[2] : order == Order.DAY_FIRST ? parts[0] : parts[1];
    try {
      return LocalDate.of(year < 100 ? THIS_CENTURY + year : year, month, day).toEpochDay();
    } catch (DateTimeException noSuchDay) {
      throw new IllegalArgumentException("'" + cell + "' is not a date", noSuchDay);
    }
  }

  /** The three numbers of a date, or nothing, in which case the place stays where it was. */
  private int[] dateParts() {
    int start = at;
    int[] parts = new int[3];
    for (int i = 0; i < 3; i++) {
      int from = at;
      parts[i] = number();
      boolean good = at > from && at - from <= 4;
      if (good && i < 2) {
        char c = at < text.length() ? text.charAt(at) : ' ';
        good = (c == '-' || c == '/' || c == '.') && (i == 0 || c == separator);
        separator = c;
        at++;
      }
      if (!good) {
        at = start;
        return new int[0];
      }
    }
    return parts;
  }

  private void skipBetween() {
    while (at < text.length() && (text.charAt(at) == ' ' || text.charAt(at) == ',')) {
      at++;
    }
    if (at > 0 && at < text.length() && text.charAt(at) == 'T') {
      at++;
    }
  }

  /** The time of day in s, with its offset from UTC taken off; NaN if there is none. */
  private double clock() {
    int from = at;
    int hours = number();
    if (at == from || at - from > 5 || at >= text.length() || text.charAt(at) != ':') {
      return Double.NaN;
    }
    at++;
    from = at;
    int minutes = number();
    if (at - from != 2 || minutes > 59) {
      return Double.NaN;
    }
    double seconds = 0;
    if (at < text.length() && text.charAt(at) == ':') {
      at++;
      from = at;
      seconds = number();
      if (at - from != 2 || seconds > 60) {
        return Double.NaN;
      }
      seconds += fraction();
    }
    double ofDay = halfDay(hours) * 3600.0 + minutes * 60.0 + seconds;
    offset = readOffset();
    return ofDay - offset;
  }

  private double fraction() {
    if (at >= text.length() || (text.charAt(at) != '.' && text.charAt(at) != ',')) {
      return 0;
    }
    at++;
    double part = 0;
    double size = 1;
    while (at < text.length() && Character.isDigit(text.charAt(at))) {
      size /= 10;
      part += (text.charAt(at) - '0') * size;
      at++;
    }
    return part;
  }

  private int halfDay(int hours) {
    int next = at;
    while (next < text.length() && text.charAt(next) == ' ') {
      next++;
    }
    String mark = text.substring(next).toLowerCase(Locale.ROOT).replace(".", "");
    if (!mark.equals("am") && !mark.equals("pm")) {
      return hours;
    }
    at = text.length();
    return hours % 12 + (mark.equals("pm") ? 12 : 0);
  }

  private double readOffset() {
    if (at < text.length() && text.charAt(at) == 'Z') {
      at++;
      return 0;
    }
    if (at >= text.length() || (text.charAt(at) != '+' && text.charAt(at) != '-')) {
      return 0;
    }
    int sign = text.charAt(at) == '-' ? -1 : 1;
    int from = ++at;
    int hours = number();
    int minutes = 0;
    if (at - from == 4) {
      minutes = hours % 100;
      hours /= 100;
    } else if (at < text.length() && text.charAt(at) == ':') {
      at++;
      minutes = number();
    }
    return sign * (hours * 3600.0 + minutes * 60.0);
  }

  private int number() {
    int value = 0;
    int from = at;
    while (at < text.length() && at - from < 6) {
      char c = text.charAt(at);
      if (c < '0' || c > '9') {
        break;
      }
      value = value * 10 + (c - '0');
      at++;
    }
    return value;
  }

  private boolean atEnd() {
    return at == text.length();
  }
}
