package kelter.core.file.log.time;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The heading of a column that may hold times.
 *
 * @param name the heading without the unit
 * @param heading the whole heading
 * @param unit the unit, may be empty
 */
public record TimeHeading(String name, String heading, String unit) {

  private static final Set<String> NAMES =
      Set.of(
          "t",
          "time",
          "date",
          "datetime",
          "date time",
          "date/time",
          "date & time",
          "date and time",
          "elapsed",
          "elapsed time",
          "time elapsed",
          "rel. time",
          "relative time",
          "seconds",
          "minutes",
          "hours",
          "millis",
          "milliseconds",
          "zeit",
          "uhrzeit",
          "datum",
          "datum/zeit",
          "datum/uhrzeit",
          "zeitstempel",
          "temps",
          "heure",
          "tid",
          "tijd",
          "tijdstip",
          "tiempo",
          "hora",
          "fecha",
          "ora",
          "tempo",
          "timestamp",
          "time stamp",
          "runtime",
          "run time",
          "duration",
          "epoch",
          "unix",
          "unix time",
          "unixtime",
          "local time",
          "utc",
          "clock");

  private static final Set<String> DAY_WORDS =
      Set.of("date", "datum", "fecha", "timestamp", "stamp", "stempel");

  private static final Set<String> PASSED_WORDS =
      Set.of("elapsed", "duration", "runtime", "run time", "rel. time", "relative", "passed");

  private static final Map<String, Set<String>> UNITS =
      Map.of(
          "s", Set.of("s", "sec", "secs", "second", "seconds"),
          "ms", Set.of("ms", "msec", "millis", "milliseconds"),
          "us", Set.of("us", "µs", "μs", "usec", "microseconds"),
          "min", Set.of("min", "mins", "minute", "minutes"),
          "h", Set.of("h", "hr", "hrs", "hour", "hours"),
          "d", Set.of("d", "day", "days"),
          "hhmmss", Set.of("hhmmss"));

  /**
   * Whether the heading names a time.
   *
   * @return whether it does
   */
  public boolean namesTime() {
    return NAMES.contains(plainName())
        || (NAMES.contains(withoutLastWord()) && unitCode().isPresent());
  }

  /**
   * The unit of a time.
   *
   * @return s, ms, us, min, h, d or hhmmss; empty if none of them is told
   */
  public Optional<String> unitCode() {
    String word = unitWord().isEmpty() ? plainName() : unitWord();
    return UNITS.entrySet().stream()
        .filter(each -> each.getValue().contains(word))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /**
   * Whether a unit is told that is none of time.
   *
   * @return whether it is so
   */
  public boolean hasOtherUnit() {
    return !unitWord().isEmpty() && unitCode().isEmpty();
  }

  /** The unit as it is told; a last word tells it too, if only the rest names a time. */
  private String unitWord() {
    if (!unit.isBlank()) {
      return unit.toLowerCase(Locale.ROOT).strip();
    }
    return lastBreak() > 0 && !NAMES.contains(plainName()) && NAMES.contains(withoutLastWord())
        ? plainName().substring(lastBreak() + 1)
        : "";
  }

  private String plainName() {
    return name.toLowerCase(Locale.ROOT).strip();
  }

  private int lastBreak() {
    return Math.max(plainName().lastIndexOf('_'), plainName().lastIndexOf(' '));
  }

  private String withoutLastWord() {
    return lastBreak() < 0
        ? plainName()
        : plainName().substring(0, lastBreak()).replace('_', ' ').strip();
  }

  /**
   * Whether the heading says that times have passed since a start.
   *
   * @return whether it does
   */
  public boolean tellsPassed() {
    return contains(PASSED_WORDS);
  }

  /**
   * Whether the heading says that times tell the day.
   *
   * @return whether it does
   */
  public boolean tellsDay() {
    return contains(DAY_WORDS);
  }

  private boolean contains(Set<String> words) {
    return words.stream().anyMatch(small()::contains);
  }

  private String small() {
    return heading.toLowerCase(Locale.ROOT);
  }

  /**
   * Whether the heading says that minutes come first.
   *
   * @return whether it does
   */
  public boolean tellsMinutesFirst() {
    return small().contains("mm:ss") && !small().contains("h:mm:ss");
  }

  /**
   * Whether the heading says that hours come first.
   *
   * @return whether it does
   */
  public boolean tellsHoursFirst() {
    return small().contains("h:mm");
  }

  /**
   * Whether the name is t, so that only times that rise are some.
   *
   * @return whether it is
   */
  public boolean isLetter() {
    return name.equalsIgnoreCase("t");
  }

  /**
   * Whether the name is T, as of a temperature.
   *
   * @return whether it is
   */
  public boolean mayBeTemperature() {
    return name.equals("T");
  }
}
