package kelter.core.file.log;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import kelter.core.file.log.time.BasicClock;

/** What a person says of the times of a log where the log does not tell. */
public enum TimeForm {
  /** Elapsed seconds. */
  SECONDS("s", "elapsed, in s", 1),
  /** Elapsed milliseconds. */
  MILLISECONDS("ms", "elapsed, in ms", 1e3),
  /** Elapsed microseconds. */
  MICROSECONDS("us", "elapsed, in µs", 1e6),
  /** Elapsed minutes. */
  MINUTES("min", "elapsed, in min", 1 / 60.0),
  /** Elapsed hours. */
  HOURS("h", "elapsed, in h", 1 / 3600.0),
  /** Elapsed days. */
  DAYS("d", "elapsed, in d", 1 / 86_400.0),
  /** Seconds since 1970-01-01 UTC. */
  EPOCH_SECONDS("epoch-s", "seconds since 1970-01-01, UTC", 1),
  /** Milliseconds since 1970-01-01 UTC. */
  EPOCH_MILLISECONDS("epoch-ms", "milliseconds since 1970-01-01, UTC", 1e3),
  /** Microseconds since 1970-01-01 UTC. */
  EPOCH_MICROSECONDS("epoch-us", "microseconds since 1970-01-01, UTC", 1e6),
  /**
   * Days since 1899-12-30, as spreadsheets count them (ISO/IEC 29500-1, 18.17.4.1; from memory).
   */
  SPREADSHEET_DAYS("sheet-days", "day numbers of a spreadsheet", 1 / 86_400.0),
  /** Hours, minutes and seconds without a sign between them (ISO 8601, basic form). */
  BASIC_CLOCK("hhmmss", "hours, minutes, seconds in one figure", 1),
  /** Hours and minutes. */
  HOURS_MINUTES("hh:mm", "hours and minutes", 1),
  /** Minutes and seconds. */
  MINUTES_SECONDS("mm:ss", "elapsed, minutes and seconds", 1),
  /** Hours, minutes and seconds between points. */
  POINTED_CLOCK("hh.mm.ss", "hours, minutes, seconds between points", 1),
  /** The log has no times: rows are counted. */
  NONE("none", "none; rows are counted", 1);

  /** The day number of 1970-01-01 in a spreadsheet. */
  private static final double SHEET_1970 = 25_569;

  private static final double SHEET_1954 = 20_000;
  private static final double SHEET_2119 = 80_000;

  private static final double EPOCH_2001 = 1e9;
  private static final double EPOCH_2099 = 4.1e9;

  private final String word;
  private final String description;
  private final double perSecond;

  TimeForm(String word, String description, double perSecond) {
    this.word = word;
    this.description = description;
    this.perSecond = perSecond;
  }

  /**
   * The word by which a person names it.
   *
   * @return for instance {@code ms}
   */
  public String word() {
    return word;
  }

  String description() {
    return description;
  }

  /**
   * The form that a person names.
   *
   * @param word the word
   * @return the form, or empty if there is none
   */
  public static Optional<TimeForm> of(String word) {
    return Arrays.stream(values())
        .filter(form -> form.word.equalsIgnoreCase(word.strip()))
        .findFirst();
  }

  /**
   * All words.
   *
   * @return the words, with commas between them
   */
  public static String words() {
    return Arrays.stream(values()).map(TimeForm::word).collect(Collectors.joining(", "));
  }

  /** The same unit counted from a day of the calendar, if only that makes sense. */
  TimeForm dated(double first) {
    return switch (this) {
      case SECONDS -> isOfCentury(first) ? EPOCH_SECONDS : this;
      case MILLISECONDS -> isOfCentury(first / 1e3) ? EPOCH_MILLISECONDS : this;
      case MICROSECONDS -> isOfCentury(first / 1e6) ? EPOCH_MICROSECONDS : this;
      case DAYS -> first >= SHEET_1954 && first <= SHEET_2119 ? SPREADSHEET_DAYS : this;
      default -> this;
    };
  }

  private static boolean isOfCentury(double seconds) {
    return seconds >= EPOCH_2001 && seconds <= EPOCH_2099;
  }

  /** Whether times are told as one figure. */
  boolean isFigure() {
    return compareTo(BASIC_CLOCK) <= 0;
  }

  /** Whether the date can be told. */
  boolean isCalendar() {
    return this == EPOCH_SECONDS
        || this == EPOCH_MILLISECONDS
        || this == EPOCH_MICROSECONDS
        || this == SPREADSHEET_DAYS;
  }

  /**
   * A figure as a time.
   *
   * @return the time in s: since 1970-01-01, since midnight or since the start
   * @throws IllegalArgumentException if the figure is no such time
   */
  double seconds(double figure) {
    if (this == BASIC_CLOCK) {
      return BasicClock.seconds(figure);
    }
    return (this == SPREADSHEET_DAYS ? figure - SHEET_1970 : figure) / perSecond;
  }
}
