package kelter.core.file.log.cell;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalLong;

/**
 * A cell that holds a date, a time of day or both, split into its numbers; what the numbers mean is
 * for others to say. It knows the usual orders and signs, ISO 8601 in its extended and basic form,
 * names of months in English, German, French, Spanish, Italian and Dutch, halves of the day, and
 * offsets from UTC.
 */
public final class CellTime {

  /** The length of a day, in s. */
  public static final double DAY = 86_400;

  private static final int THIS_CENTURY = 2000;
  private static final int LONGEST = 48;
  private static final String NOT_TOLD = "";

  /** Names of months by their first letters, without accents. */
  private static final Map<String, Integer> MONTHS =
      Map.ofEntries(
          Map.entry("jan", 1),
          Map.entry("ene", 1),
          Map.entry("gen", 1),
          Map.entry("feb", 2),
          Map.entry("fev", 2),
          Map.entry("mar", 3),
          Map.entry("mrz", 3),
          Map.entry("mrt", 3),
          Map.entry("maa", 3),
          Map.entry("apr", 4),
          Map.entry("avr", 4),
          Map.entry("abr", 4),
          Map.entry("may", 5),
          Map.entry("mai", 5),
          Map.entry("mag", 5),
          Map.entry("mei", 5),
          Map.entry("jun", 6),
          Map.entry("giu", 6),
          Map.entry("jul", 7),
          Map.entry("lug", 7),
          Map.entry("aug", 8),
          Map.entry("aou", 8),
          Map.entry("ago", 8),
          Map.entry("sep", 9),
          Map.entry("set", 9),
          Map.entry("oct", 10),
          Map.entry("okt", 10),
          Map.entry("ott", 10),
          Map.entry("nov", 11),
          Map.entry("dec", 12),
          Map.entry("dez", 12),
          Map.entry("dic", 12));

  /** Hours from UTC: RFC 5322, 4.3, and those of Europe (from memory). */
  private static final Map<String, Integer> ZONES =
      Map.ofEntries(
          Map.entry("Z", 0),
          Map.entry("UT", 0),
          Map.entry("UTC", 0),
          Map.entry("GMT", 0),
          Map.entry("EST", -5),
          Map.entry("EDT", -4),
          Map.entry("CST", -6),
          Map.entry("CDT", -5),
          Map.entry("MST", -7),
          Map.entry("MDT", -6),
          Map.entry("PST", -8),
          Map.entry("PDT", -7),
          Map.entry("WET", 0),
          Map.entry("WEST", 1),
          Map.entry("CET", 1),
          Map.entry("CEST", 2),
          Map.entry("EET", 2),
          Map.entry("EEST", 3));

  private final String text;
  private int at;
  private final int[] date = new int[3];
  private final int[] widths = new int[3];
  private char dateSign = ' ';
  private boolean dated;
  private boolean named;
  private int clockParts;
  private final int[] clock = new int[3];
  private char clockSign = ' ';
  private double fraction;
  private boolean fractional;
  private boolean half;
  private double offset;

  private CellTime(String text) {
    this.text = text;
  }

  /**
   * Splits a cell.
   *
   * @param cell a cell without blanks around it
   * @return its parts; neither date nor clock if it is no time
   */
  public static CellTime of(String cell) {
    CellTime time = new CellTime(cell);
    if (cell.length() < 3 || cell.length() > LONGEST || !time.read()) {
      return new CellTime(NOT_TOLD);
    }
    return time;
  }

  private boolean read() {
    skipWeekday();
    dated = readDate();
    if (dated && at == text.length()) {
      return true;
    }
    boolean behind = dated && skipBetween();
    if (dated && !behind) {
      return false;
    }
    return readClock(behind) && at == text.length();
  }

  /**
   * Whether there is a date.
   *
   * @return whether there is
   */
  public boolean hasDate() {
    return dated;
  }

  /**
   * Whether there is a time of day or a time that has passed.
   *
   * @return whether there is
   */
  public boolean hasClock() {
    return clockParts > 0;
  }

  /**
   * Whether there is either.
   *
   * @return whether there is
   */
  public boolean isTime() {
    return dated || clockParts > 0;
  }

  /**
   * Whether only two numbers stand there, which may be hours and minutes or minutes and seconds.
   *
   * @return whether it is so
   */
  public boolean isShort() {
    return clockParts == 2;
  }

  /**
   * The first number of the clock.
   *
   * @return mostly hours
   */
  public int first() {
    return clock[0];
  }

  /**
   * Whether the clock has parts of a second behind its last number.
   *
   * @return whether it has
   */
  public boolean isFractional() {
    return fractional;
  }

  /**
   * Whether the half of the day is told, as AM or PM.
   *
   * @return whether it is
   */
  public boolean tellsHalf() {
    return half;
  }

  /**
   * Whether three numbers of two digits stand between points, which may be a date or hours, minutes
   * and seconds.
   *
   * @return whether it is so
   */
  public boolean isPointed() {
    return dated
        && dateSign == '.'
        && !named
        && clockParts == 0
        && widths[0] <= 2
        && widths[1] == 2
        && widths[2] == 2;
  }

  /**
   * A date between points read as hours, minutes and seconds.
   *
   * @return the seconds after midnight, NaN if it cannot be that
   */
  public double pointed() {
    boolean fits = date[0] < 24 && date[1] < 60 && date[2] < 60;
    return isPointed() && fits ? date[0] * 3600.0 + date[1] * 60.0 + date[2] : Double.NaN;
  }

  /**
   * Whether the numbers of the date stand between points.
   *
   * @return whether they do
   */
  public boolean hasPoints() {
    return dated && dateSign == '.';
  }

  /**
   * Whether the month is told by its name, so that the order of the numbers does not matter.
   *
   * @return whether it is
   */
  public boolean namesMonth() {
    return named;
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
    if (!dated && date[0] == 0) {
      return OptionalLong.empty();
    }
    return named
        ? day(date[0], date[1], date[2], 1)
        : day(date[year], date[month], date[day], Math.max(widths[month], widths[day]));
  }

  private static OptionalLong day(int year, int month, int day, int width) {
    if (width > 2) {
      return OptionalLong.empty();
    }
    try {
      int whole = year < 100 ? THIS_CENTURY + year : year;
      return OptionalLong.of(LocalDate.of(whole, month, day).toEpochDay());
    } catch (DateTimeException noSuchDay) {
      return OptionalLong.empty();
    }
  }

  /**
   * The time of the clock.
   *
   * @param minutesFirst whether two numbers are minutes and seconds
   * @return the seconds after midnight or since the start, with the offset from UTC taken off
   */
  public double clock(boolean minutesFirst) {
    double whole =
        clockParts == 2 && minutesFirst
            ? clock[0] * 60.0 + clock[1]
            : clock[0] * 3600.0 + clock[1] * 60.0 + clock[2];
    return whole + fraction - offset;
  }

  /**
   * The offset from UTC that stands behind the clock.
   *
   * @return the offset, in s; 0 if there is none
   */
  public double offset() {
    return offset;
  }

  private char peek() {
    return peek(0);
  }

  private char peek(int ahead) {
    return at + ahead < text.length() ? text.charAt(at + ahead) : 0;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static boolean isBlank(char c) {
    return c == ' ' || c == '\u00a0' || c == '\u202f';
  }

  private void skipBlanks() {
    while (isBlank(peek())) {
      at++;
    }
  }

  private int digits() {
    int n = 0;
    while (isDigit(peek(n))) {
      n++;
    }
    return n;
  }

  private int number() {
    int value = 0;
    while (isDigit(peek()) && value < 1_000_000) {
      value = value * 10 + (peek() - '0');
      at++;
    }
    return value;
  }

  private int number(int digits) {
    int value = 0;
    for (int i = 0; i < digits; i++) {
      value = value * 10 + (peek() - '0');
      at++;
    }
    return value;
  }

  private String letters() {
    int n = 0;
    while (Character.isLetter(peek(n))) {
      n++;
    }
    return text.substring(at, at + n);
  }

  /** The month of a name; 0 if it is none. */
  private static int month(String name) {
    if (name.length() < 3) {
      return 0;
    }
    String plain =
        name.toLowerCase(Locale.ROOT).replace('é', 'e').replace('û', 'u').replace('ä', 'a');
    if (plain.startsWith("jui")) {
      return plain.startsWith("juil") ? 7 : plain.equals("juin") ? 6 : 0;
    }
    return MONTHS.getOrDefault(plain.substring(0, 3), 0);
  }

  /** A word of letters in front that names no month, with its point or comma. */
  private void skipWeekday() {
    String word = letters();
    if (word.length() < 2 || month(word) > 0) {
      return;
    }
    int next = at + word.length();
    int signs = next;
    while (signs < text.length() && (".,".indexOf(text.charAt(signs)) >= 0)) {
      signs++;
    }
    if (signs < text.length() && isBlank(text.charAt(signs))) {
      at = signs;
      skipBlanks();
    }
  }

  private boolean readDate() {
    int start = at;
    boolean read = Character.isLetter(peek()) ? readMonthFirst() : readNumberFirst();
    if (!read) {
      at = start;
      named = false;
    }
    return read;
  }

  /** Oct 23, 2026, or Oct 23 14:03:05 2026 with the year at the end. */
  private boolean readMonthFirst() {
    String word = letters();
    date[1] = month(word);
    at += word.length();
    if (date[1] == 0 || !skipDateSigns()) {
      return false;
    }
    int width = digits();
    date[2] = number();
    boolean more = width >= 1 && width <= 2 && skipDateSigns();
    if (!more) {
      return false;
    }
    named = true;
    int year = digits();
    if ((year == 4 || year == 2) && peek(year) != ':') {
      date[0] = number();
      return true;
    }
    int yearAt = text.length() - 4;
    boolean last = yearAt > at && isBlank(text.charAt(yearAt - 1));
    for (int i = yearAt; last && i < text.length(); i++) {
      last = isDigit(text.charAt(i));
    }
    if (!last) {
      return false;
    }
    date[0] = Integer.parseInt(text.substring(yearAt));
    return readClockAhead(yearAt);
  }

  /** A clock between month, day and year; the year has been read. */
  private boolean readClockAhead(int yearAt) {
    if (!readClock(true)) {
      return false;
    }
    skipBlanks();
    boolean good = at == yearAt;
    at = text.length();
    return good;
  }

  private boolean skipDateSigns() {
    int from = at;
    while (peek() != 0 && " \u00a0.,-/".indexOf(peek()) >= 0) {
      at++;
    }
    return at > from;
  }

  private boolean readNumberFirst() {
    int width = digits();
    if (width == 8 || width == 14) {
      return readBasic();
    }
    if (width < 1 || width > 4) {
      return false;
    }
    widths[0] = width;
    date[0] = number();
    char sign = peek();
    int from = at;
    if (skipDateSigns() && Character.isLetter(peek())) {
      return readNamed();
    }
    at = from;
    if (sign == 0 || "-/.".indexOf(sign) < 0) {
      return false;
    }
    dateSign = sign;
    for (int i = 1; i < 3; i++) {
      if (peek() != sign) {
        return false;
      }
      at++;
      widths[i] = digits();
      date[i] = number();
    }
    boolean yearFirst = widths[0] == 4;
    boolean year = yearFirst ? widths[2] <= 2 : widths[0] <= 2 && isYear(widths[2]);
    return year && widths[1] >= 1 && widths[1] <= 2 && widths[2] >= 1;
  }

  private static boolean isYear(int width) {
    return width == 1 || width == 2 || width == 4;
  }

  /** 23 Oct 2026 or 2026-Oct-23, behind the first number. */
  private boolean readNamed() {
    String word = letters();
    int month = month(word);
    at += word.length();
    if (month == 0 || !skipDateSigns()) {
      return false;
    }
    int width = digits();
    int last = number();
    if (width != 2 && width != 4 && width != 1) {
      return false;
    }
    named = true;
    boolean yearFirst = widths[0] == 4;
    int first = date[0];
    date[0] = yearFirst ? first : last;
    date[1] = month;
    date[2] = yearFirst ? last : first;
    return true;
  }

  /** 20261023, perhaps with 140305 behind it without a sign: the basic form of ISO 8601. */
  private boolean readBasic() {
    int from = at;
    boolean together = digits() == 14;
    date[0] = number(4);
    date[1] = number(2);
    date[2] = number(2);
    widths[0] = 4;
    widths[1] = 2;
    widths[2] = 2;
    dateSign = '-';
    if (date[0] < 1970 || date[0] > 2099 || day(0, 1, 2).isEmpty()) {
      at = from;
      return false;
    }
    if (together) {
      for (int i = 0; i < 3; i++) {
        clock[i] = number(2);
      }
      clockParts = 3;
      clockSign = ':';
      readFraction();
      if (!isClock() || at < text.length()) {
        clockParts = 0;
        return false;
      }
    }
    return true;
  }

  /** What stands between date and clock. */
  private boolean skipBetween() {
    int from = at;
    while (peek() != 0 && " \u00a0\u202f,_".indexOf(peek()) >= 0) {
      at++;
    }
    if (peek() == 'T' || peek() == 't' || (at == from && (peek() == '-' || peek() == ':'))) {
      at++;
    }
    return at > from && isDigit(peek());
  }

  private boolean readClock(boolean behindDate) {
    int width = digits();
    if (behindDate && (width == 6 || width == 4) && text.charAt(at - 1) == 'T') {
      readBasicClock(width);
    } else if (!readSigned(behindDate, width)) {
      clockParts = 0;
      return false;
    }
    boolean good = readHalf() && isClock() && (!behindDate || clock[0] <= 24);
    if (good) {
      readOffset();
    } else {
      clockParts = 0;
    }
    return good;
  }

  private void readBasicClock(int width) {
    clockParts = width / 2;
    clockSign = ':';
    for (int i = 0; i < clockParts; i++) {
      clock[i] = number(2);
    }
    if (clockParts == 3) {
      readFraction();
    }
  }

  private boolean readSigned(boolean behindDate, int width) {
    clock[0] = number();
    clockSign = peek();
    boolean colon = clockSign == ':';
    if (width < 1 || width > 5 || !(colon || (behindDate && clockSign == '.'))) {
      return false;
    }
    clockParts = 1;
    while (clockParts < 3 && peek() == clockSign && isDigit(peek(1))) {
      at++;
      if (digits() != 2) {
        return false;
      }
      clock[clockParts++] = number();
    }
    if (clockParts > 1) {
      readFraction();
    }
    return clockParts > 1;
  }

  private boolean isClock() {
    return clock[1] < 60 && clock[2] <= 60;
  }

  /** Parts of a second behind a point or a comma, or three digits behind a colon. */
  private void readFraction() {
    boolean milliseconds = clockParts == 3 && peek() == ':' && isDigit(peek(1));
    if (milliseconds) {
      at++;
      milliseconds = digits() == 3;
      at -= milliseconds ? 0 : 1;
    } else if ((peek() == '.' || peek() == ',') && isDigit(peek(1))) {
      at++;
    } else {
      return;
    }
    int from = at;
    while (isDigit(peek())) {
      at++;
    }
    fractional = at > from;
    fraction = fractional ? Double.parseDouble("0." + text.substring(from, at)) : 0;
  }

  /** AM or PM; false if the hour is none of the clock of twelve hours. */
  private boolean readHalf() {
    int from = at;
    skipBlanks();
    String mark = text.substring(at).toLowerCase(Locale.ROOT).replace(".", "");
    boolean before = mark.startsWith("am");
    if (!before && !mark.startsWith("pm")) {
      at = from;
      return true;
    }
    half = true;
    while (Character.isLetter(peek()) || peek() == '.') {
      at++;
    }
    boolean twelve = clock[0] >= 1 && clock[0] <= 12;
    clock[0] = clock[0] % 12 + (before ? 0 : 12);
    return twelve;
  }

  private void readOffset() {
    int from = at;
    skipBlanks();
    Integer zone = ZONES.get(text.substring(at));
    if (zone != null) {
      at = text.length();
      offset = zone * 3600.0;
      return;
    }
    char sign = peek();
    if ((sign != '+' && sign != '-') || !isDigit(peek(1))) {
      at = from;
      return;
    }
    at++;
    int width = digits();
    int hours = number();
    int minutes = 0;
    if (width == 4) {
      minutes = hours % 100;
      hours /= 100;
    } else if (peek() == ':') {
      at++;
      minutes = number();
    }
    offset = (sign == '-' ? -1 : 1) * (hours * 3600.0 + minutes * 60.0);
  }
}
