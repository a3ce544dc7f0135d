package kelter.core.file.log.cell;

import java.util.OptionalLong;
import java.util.regex.Pattern;

/**
 * A cell that holds a date, a time of day or both, split into its numbers; what the numbers mean is
 * for others to say. It knows the usual orders and signs, ISO 8601 in its extended and basic form,
 * names of months in English, German, French, Spanish, Italian and Dutch, halves of the day, and
 * offsets from UTC.
 */
public final class CellTime {

  /** The length of a day, in s. */
  public static final double DAY = 86_400;

  private static final int SHORTEST = 3;
  private static final int LONGEST = 48;
  private static final CellTime NOT_TOLD = new CellTime(CellDate.NONE, CellClock.NONE);

  /** A word in front, with its point or comma; it may be a weekday. */
  private static final Pattern WORD = Pattern.compile("(\\p{L}{2,}+)[.,]*+[ \u00a0\u202f]++");

  private static final Pattern BETWEEN =
      Pattern.compile("(?:[ \u00a0\u202f,_]++[Tt]?|[Tt:-])(?=\\d)");

  private static final Pattern YEAR_AT_END = Pattern.compile("[ \u00a0\u202f]*+\\d{4}\\z");

  private final CellDate date;
  private final CellClock clock;

  private CellTime(CellDate date, CellClock clock) {
    this.date = date;
    this.clock = clock;
  }

  /**
   * Splits a cell.
   *
   * @param cell a cell without blanks around it
   * @return its parts; neither date nor clock if it is no time
   */
  public static CellTime of(String cell) {
    if (cell.length() < SHORTEST || cell.length() > LONGEST) {
      return NOT_TOLD;
    }
    Cursor at = new Cursor(cell, WORD);
    if (at.take(WORD) && MonthName.month(at.group(1)) > 0) {
      at.backTo(0);
    }
    CellDate date = CellDate.read(at);
    if (date.isThere() && at.isAtEnd()) {
      return new CellTime(date, CellClock.NONE);
    }
    CellClock clock = date.isThere() ? behind(date, at) : CellClock.read(at);
    return clock.isThere() && at.isAtEnd() ? new CellTime(date, clock) : NOT_TOLD;
  }

  private static CellClock behind(CellDate date, Cursor at) {
    if (date.hasYearAtEnd()) {
      CellClock clock = CellClock.behindDate(at);
      return at.take(YEAR_AT_END) ? clock : CellClock.NONE;
    }
    return at.take(BETWEEN) ? CellClock.behindDate(at) : CellClock.behindBasicDate(at);
  }

  /**
   * Whether there is a date.
   *
   * @return whether there is
   */
  public boolean hasDate() {
    return date.isThere();
  }

  /**
   * Whether there is a time of day or a time that has passed.
   *
   * @return whether there is
   */
  public boolean hasClock() {
    return clock.isThere();
  }

  /**
   * Whether there is either.
   *
   * @return whether there is
   */
  public boolean isTime() {
    return hasDate() || hasClock();
  }

  /**
   * Whether only two numbers stand there, which may be hours and minutes or minutes and seconds.
   *
   * @return whether it is so
   */
  public boolean isShort() {
    return clock.parts() == 2;
  }

  /**
   * The first number of the clock.
   *
   * @return mostly hours
   */
  public int first() {
    return clock.first();
  }

  /**
   * Whether the clock has parts of a second behind its last number.
   *
   * @return whether it has
   */
  public boolean isFractional() {
    return clock.isFractional();
  }

  /**
   * Whether the half of the day is told, as AM or PM.
   *
   * @return whether it is
   */
  public boolean tellsHalf() {
    return clock.half();
  }

  /**
   * Whether three numbers of two digits stand between points, which may be a date or hours, minutes
   * and seconds.
   *
   * @return whether it is so
   */
  public boolean isPointed() {
    return date.mayBeClock() && !hasClock();
  }

  /**
   * A date between points read as hours, minutes and seconds.
   *
   * @return the seconds after midnight, NaN if it cannot be that
   */
  public double pointed() {
    return isPointed() ? date.asClock() : Double.NaN;
  }

  /**
   * Whether the numbers of the date stand between points.
   *
   * @return whether they do
   */
  public boolean hasPoints() {
    return date.hasPoints();
  }

  /**
   * Whether the month is told by its name, so that the order of the numbers does not matter.
   *
   * @return whether it is
   */
  public boolean namesMonth() {
    return date.namesMonth();
  }

  /**
   * The day, with the numbers of the date in an order.
   *
   * @param year the place of the year among the three numbers, from 0
   * @param month that of the month
   * @param day that of the day
   * @return the days since 1970-01-01; empty if there is no such day or no date
   */
  public OptionalLong day(int year, int month, int day) {
    return date.day(year, month, day);
  }

  /**
   * The time of the clock.
   *
   * @param minutesFirst whether two numbers are minutes and seconds
   * @return the seconds after midnight or since the start, with the offset from UTC taken off
   */
  public double clock(boolean minutesFirst) {
    return clock.seconds(minutesFirst);
  }

  /**
   * The offset from UTC that stands behind the clock.
   *
   * @return the offset, in s; 0 if there is none
   */
  public double offset() {
    return clock.offset();
  }
}
