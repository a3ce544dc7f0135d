package kelter.core.file.log.cell;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.OptionalLong;
import java.util.regex.Pattern;

/** The date in a cell: three numbers, whose order is not known unless the month has a name. */
final class CellDate {

  private static final int THIS_CENTURY = 2000;
  private static final char NO_SIGN = ' ';
  private static final char NAME = 'M';

  static final CellDate NONE = new CellDate(new int[3], new int[3], NO_SIGN, false);

  private static final String SIGNS = "[ \u00a0.,/-]++";

  /** 2026-10-23, 23.10.2026 or 10/23/26. */
  private static final Pattern SIGNED =
      Pattern.compile("(\\d{1,4}+)([-/.])(\\d{1,2}+)\\2(\\d{4}|\\d{1,2})(?!\\d)");

  /** 20261023, perhaps with 140305 behind it without a sign: the basic form of ISO 8601. */
  private static final Pattern BASIC =
      Pattern.compile("(\\d{4})(\\d\\d)(\\d\\d)(?=(?:\\d{6})?(?!\\d))");

  /** 23 Oct 2026 or 2026-Oct-23. */
  private static final Pattern NAMED =
      Pattern.compile("(\\d{1,4}+)" + SIGNS + "(\\p{L}++)" + SIGNS + "(\\d{4}|\\d{1,2})(?!\\d)");

  /** Oct 23, 2026, or Oct 23 14:03:05 2026 with the year at the end. */
  private static final Pattern MONTH_FIRST =
      Pattern.compile(
          "(\\p{L}++)"
              + SIGNS
              + "(\\d{1,2}+)"
              + SIGNS
              + "(?:(\\d{4}|\\d\\d)(?![\\d:])|(?=.*[ \u00a0\u202f](\\d{4})\\z))",
          Pattern.DOTALL);

  private final int[] numbers;
  private final int[] widths;
  private final char sign;
  private final boolean yearAtEnd;

  private CellDate(int[] numbers, int[] widths, char sign, boolean yearAtEnd) {
    this.numbers = numbers;
    this.widths = widths;
    this.sign = sign;
    this.yearAtEnd = yearAtEnd;
  }

  /** The date that stands here; none, and the cursor stays, if it is none. */
  static CellDate read(Cursor cell) {
    int start = cell.place();
    CellDate date = NONE;
    if (cell.take(SIGNED)) {
      date = signed(cell);
    } else if (cell.take(BASIC)) {
      date = basic(cell);
    } else if (cell.take(NAMED)) {
      date = named(cell);
    } else if (cell.take(MONTH_FIRST)) {
      date = monthFirst(cell);
    }
    if (!date.isThere()) {
      cell.backTo(start);
    }
    return date;
  }

  /** The year stands first with four digits, or last. */
  private static CellDate signed(Cursor cell) {
    int first = cell.group(1).length();
    int last = cell.group(4).length();
    if (first == 4 ? last > 2 : first > 2) {
      return NONE;
    }
    return new CellDate(
        new int[] {cell.number(1), cell.number(3), cell.number(4)},
        new int[] {first, cell.group(3).length(), last},
        cell.group(2).charAt(0),
        false);
  }

  private static CellDate basic(Cursor cell) {
    int[] numbers = {cell.number(1), cell.number(2), cell.number(3)};
    CellDate date = new CellDate(numbers, new int[] {4, 2, 2}, '-', false);
    boolean near = numbers[0] >= 1970 && numbers[0] <= 2099;
    return near && date.day(0, 1, 2).isPresent() ? date : NONE;
  }

  private static CellDate named(Cursor cell) {
    boolean yearFirst = cell.group(1).length() == 4;
    return named(
        cell.number(yearFirst ? 1 : 3), cell.group(2), cell.number(yearFirst ? 3 : 1), false);
  }

  private static CellDate monthFirst(Cursor cell) {
    boolean yearAtEnd = cell.group(4) != null;
    return named(cell.number(yearAtEnd ? 4 : 3), cell.group(1), cell.number(2), yearAtEnd);
  }

  private static CellDate named(int year, String name, int day, boolean yearAtEnd) {
    int month = MonthName.month(name);
    return month == 0
        ? NONE
        : new CellDate(new int[] {year, month, day}, new int[3], NAME, yearAtEnd);
  }

  boolean isThere() {
    return sign != NO_SIGN;
  }

  boolean namesMonth() {
    return sign == NAME;
  }

  boolean hasPoints() {
    return sign == '.';
  }

  /** Whether a clock stands between the day and the year. */
  boolean hasYearAtEnd() {
    return yearAtEnd;
  }

  /** Whether three numbers of two digits, or one and twice two, stand between points. */
  boolean mayBeClock() {
    return hasPoints() && widths[0] <= 2 && widths[1] == 2 && widths[2] == 2;
  }

  /** The numbers as hours, minutes and seconds, in s; NaN if they cannot be that. */
  double asClock() {
    boolean fits = mayBeClock() && numbers[0] < 24 && numbers[1] < 60 && numbers[2] < 60;
    return fits ? numbers[0] * 3600.0 + numbers[1] * 60.0 + numbers[2] : Double.NaN;
  }

  /** The days since 1970-01-01, with the numbers in an order; empty if there is no such day. */
  OptionalLong day(int year, int month, int day) {
    if (namesMonth()) {
      return daysTo(numbers[0], numbers[1], numbers[2]);
    }
    return isThere() && Math.max(widths[month], widths[day]) <= 2
        ? daysTo(numbers[year], numbers[month], numbers[day])
        : OptionalLong.empty();
  }

  private static OptionalLong daysTo(int year, int month, int day) {
    try {
      int whole = year < 100 ? THIS_CENTURY + year : year;
      return OptionalLong.of(LocalDate.of(whole, month, day).toEpochDay());
    } catch (DateTimeException noSuchDay) {
      return OptionalLong.empty();
    }
  }
}
