package kelter.core.file.log.cell;

import java.util.regex.Pattern;

/**
 * The time of day, or the time that has passed, in a cell.
 *
 * @param parts how many numbers there are; 0 without a clock, else 2 or 3
 * @param first the first of them
 * @param second the second
 * @param third the third, or 0
 * @param fraction what stands behind the last, in s; NaN if nothing does
 * @param half whether the half of the day is told
 * @param offset the offset from UTC, in s
 */
record CellClock(
    int parts, int first, int second, int third, double fraction, boolean half, double offset) {

  static final CellClock NONE = new CellClock(0, 0, 0, 0, Double.NaN, false, 0);

  private static final int LAST_HOUR = 24;

  private static final Pattern SIGNED =
      Pattern.compile("(\\d{1,5}+)([:.])(\\d\\d)(?!\\d)(?:\\2(\\d\\d)(?!\\d)|(?!\\2\\d))");

  /** The basic form of ISO 8601: T140305 or T1403. */
  private static final Pattern BASIC = Pattern.compile("(?<=T)(\\d\\d)()(\\d\\d)(\\d\\d)?(?!\\d)");

  private static final Pattern BEHIND_BASIC_DATE =
      Pattern.compile("(?<=\\d)(\\d\\d)()(\\d\\d)(\\d\\d)(?!\\d)");

  private static final Pattern FRACTION = Pattern.compile("[.,](\\d++)");
  private static final Pattern MILLISECONDS = Pattern.compile(":(\\d{3})(?!\\d)");

  private static final Pattern HALF =
      Pattern.compile(
          "[ \u00a0\u202f]*+(?=\\.*+([ap])\\.*+m)[\\p{L}.]*+", Pattern.CASE_INSENSITIVE);

  /** The clock that stands here by itself. */
  static CellClock read(Cursor cell) {
    boolean taken = cell.take(SIGNED) && cell.group(2).equals(":");
    return taken ? of(cell, true).inHalf(cell).valid().offset(cell) : NONE;
  }

  /** The clock that stands here behind a date and what splits them. */
  static CellClock behindDate(Cursor cell) {
    boolean basic = cell.take(BASIC);
    if (!basic && !cell.take(SIGNED)) {
      return NONE;
    }
    CellClock clock = of(cell, !basic).inHalf(cell).valid();
    return clock.first <= LAST_HOUR ? clock.offset(cell) : NONE;
  }

  /** The clock that stands here right behind a date in the basic form of ISO 8601. */
  static CellClock behindBasicDate(Cursor cell) {
    return cell.take(BEHIND_BASIC_DATE) ? of(cell, true).valid() : NONE;
  }

  private static CellClock of(Cursor cell, boolean signed) {
    int parts = cell.group(4) == null ? 2 : 3;
    int first = cell.number(1);
    int second = cell.number(3);
    int third = cell.number(4);
    boolean fraction =
        (parts == 3 && cell.take(MILLISECONDS)) || ((parts == 3 || signed) && cell.take(FRACTION));
    double behind = fraction ? Double.parseDouble("0." + cell.group(1)) : Double.NaN;
    return new CellClock(parts, first, second, third, behind, false, 0);
  }

  /** With AM or PM, if it follows; none if the hour is none of the clock of twelve hours. */
  private CellClock inHalf(Cursor cell) {
    if (!cell.take(HALF)) {
      return this;
    }
    boolean before = cell.group(1).equalsIgnoreCase("a");
    int hour = first % 12 + (before ? 0 : 12);
    return first >= 1 && first <= 12
        ? new CellClock(parts, hour, second, third, fraction, true, 0)
        : NONE;
  }

  private CellClock valid() {
    return second < 60 && third <= 60 ? this : NONE;
  }

  private CellClock offset(Cursor cell) {
    return isThere()
        ? new CellClock(parts, first, second, third, fraction, half, UtcOffset.read(cell))
        : this;
  }

  boolean isThere() {
    return parts > 0;
  }

  boolean isFractional() {
    return !Double.isNaN(fraction);
  }

  /** The time in s, with the offset from UTC taken off. */
  double seconds(boolean minutesFirst) {
    double whole =
        parts == 2 && minutesFirst ? first * 60.0 + second : first * 3600.0 + second * 60.0 + third;
    return whole + (isFractional() ? fraction : 0) - offset;
  }
}
