package kelter.cli.text.readings;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import kelter.core.file.log.Log;
import kelter.core.file.log.LogFormat;
import kelter.core.quantity.QuantityFormat;

/** Times and lengths of time in a log, as it tells them itself. */
final class LogTimes {

  private static final int SECONDS_PER_DAY = 86_400;

  private final LogFormat.Timing timing;
  private final double start;
  private final double last;

  LogTimes(Log log) {
    this.timing = log.format().timing();
    this.start = log.start();
    this.last = log.recording().lastTime();
  }

  /** When the log begins and how long it is. */
  String whole() {
    return start() + (timing.counted() ? "" : "for ") + duration(last);
  }

  private String start() {
    if (timing.calendar()) {
      return "from " + calendar(start) + ", ";
    }
    return timing.clock() ? "from " + clock(start) + ", " : "";
  }

  private static LocalDateTime calendar(double seconds) {
    Instant instant = Instant.ofEpochMilli(Math.round(seconds * 1000));
    return LocalDateTime.ofInstant(instant.truncatedTo(ChronoUnit.SECONDS), ZoneOffset.UTC);
  }

  private static String clock(double seconds) {
    long ofDay = Math.floorMod(Math.round(seconds), SECONDS_PER_DAY);
    return DateTimeFormatter.ISO_LOCAL_TIME.format(LocalTime.ofSecondOfDay(ofDay));
  }

  /** A length of time; of a log without times a number of rows. */
  String duration(double seconds) {
    if (timing.counted()) {
      return QuantityFormat.plain(seconds) + "\u00a0rows";
    }
    if (seconds < 120) {
      return QuantityFormat.plain(seconds) + "\u00a0s";
    }
    return seconds < 7200
        ? QuantityFormat.plain(seconds / 60) + "\u00a0min"
        : QuantityFormat.plain(seconds / 3600) + "\u00a0h";
  }

  /** A time after the start of the log. */
  String after(double seconds) {
    if (timing.counted()) {
      return QuantityFormat.plain(seconds);
    }
    if (timing.clock() && last < SECONDS_PER_DAY) {
      return clock(start + seconds);
    }
    return timing.calendar()
        ? DateTimeFormatter.ISO_LOCAL_DATE_TIME.format(calendar(start + seconds))
        : elapsed(Math.round(seconds));
  }

  private static String elapsed(long seconds) {
    return seconds < 3600
        ? seconds / 60 + ":" + two(seconds % 60)
        : seconds / 3600 + ":" + two(seconds / 60 % 60) + ":" + two(seconds % 60);
  }

  private static String two(long value) {
    return value < 10 ? "0" + value : String.valueOf(value);
  }
}
