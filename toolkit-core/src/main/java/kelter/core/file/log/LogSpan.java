package kelter.core.file.log;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import kelter.core.file.log.cell.CellTime;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;

/**
 * A stretch of time in a log, as a person says it: {@code 5min..10min} from its start, {@code
 * 14:05..14:20} by the clock, or {@code 2026-10-23T14:05..2026-10-23T14:20}.
 */
public final class LogSpan {

  private static final String BETWEEN = "..";

  private final String text;
  private final Moment from;
  private final Moment to;

  private LogSpan(String text, Moment from, Moment to) {
    this.text = text;
    this.from = from;
    this.to = to;
  }

  /** How a point of time is said: from the start of the log, by the clock or by the calendar. */
  private enum Scale {
    AFTER_START,
    CLOCK,
    CALENDAR
  }

  /** A point of time: s from the start, from midnight, or from 1970-01-01. */
  private record Moment(Scale scale, double seconds) {}

  /**
   * What was said.
   *
   * @return the text as it was read
   */
  public String text() {
    return text;
  }

  /**
   * Reads a span.
   *
   * @param text what a person wrote
   * @return the span
   * @throws IllegalArgumentException if it is none
   */
  public static LogSpan parse(String text) {
    int between = text.indexOf(BETWEEN);
    if (between < 0) {
      throw new IllegalArgumentException(
          "'" + text + "' is not a span of time; write for instance 5min..10min or 14:05..14:20");
    }
    return new LogSpan(
        text,
        moment(text.substring(0, between).strip()),
        moment(text.substring(between + BETWEEN.length()).strip()));
  }

  private static Moment moment(String text) {
    try {
      if (text.indexOf('T') > 0) {
        LocalDateTime time = LocalDateTime.parse(text);
        return new Moment(
            Scale.CALENDAR, time.toEpochSecond(ZoneOffset.UTC) + time.getNano() / 1e9);
      }
      if (text.indexOf(':') > 0) {
        LocalTime time = LocalTime.parse(text.indexOf(':') == 1 ? "0" + text : text);
        return new Moment(Scale.CLOCK, time.toSecondOfDay() + time.getNano() / 1e9);
      }
    } catch (DateTimeException notATime) {
      throw new IllegalArgumentException(
          "'" + text + "' is not a time; write for instance 14:05 or 2026-10-23T14:05", notATime);
    }
    return new Moment(Scale.AFTER_START, QuantityParser.parse(text, QuantityKind.TIME).si());
  }

  /**
   * Where the span lies in a log.
   *
   * @param start the first time of the log, in s
   * @param timing how the log tells its times
   * @return the first and the last time, in s after the start of the log
   * @throws IllegalArgumentException if the log does not tell such times, or the span ends before
   *     it begins
   */
  double[] within(double start, LogFormat.Timing timing) {
    double first = after(from, start, timing);
    double last = after(to, start, timing);
    if (last < first && to.scale() == Scale.CLOCK) {
      last += CellTime.DAY;
    }
    if (!(first <= last)) {
      throw new IllegalArgumentException("'" + text + "' ends before it begins");
    }
    return new double[] {first, last};
  }

  private double after(Moment moment, double start, LogFormat.Timing timing) {
    return switch (moment.scale()) {
      case AFTER_START -> moment.seconds();
      case CLOCK -> {
        require(timing.clock(), "of the clock");
        double clock = start - Math.floor(start / CellTime.DAY) * CellTime.DAY;
        // A log has begun by the time that is asked for, so an earlier one is that of the next day.
        double after = moment.seconds() - clock;
        yield after < 0 ? after + CellTime.DAY : after;
      }
      case CALENDAR -> {
        require(timing.calendar(), "of the calendar");
        if (timing.assumed()) {
          throw new IllegalArgumentException(
              "'%s' names a date, but the order of day and month in the log is a guess; say --dates dmy or --dates mdy"
                  .formatted(text));
        }
        yield moment.seconds() - start;
      }
    };
  }

  private void require(boolean told, String what) {
    if (!told) {
      throw new IllegalArgumentException(
          "'%s' names times %s, which the log does not tell; write for instance 5min..10min from its start"
              .formatted(text, what));
    }
  }
}
