package kelter.core.file.log;

import java.nio.charset.Charset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What somebody says of a log, so that it need not be recognised.
 *
 * @param encoding the character set, if it is said
 * @param delimiter what stands between columns, if it is said
 * @param every the time from row to row in s, for a log without times; NaN if it is not said
 * @param spans stretches of time that are looked at by themselves
 * @param said how its figures and times are to be read, as far as it is said
 */
public record LogOptions(
    Optional<Charset> encoding,
    Optional<Character> delimiter,
    double every,
    List<LogSpan> spans,
    Said said) {

  /** Everything is recognised. */
  public static final LogOptions NONE =
      new LogOptions(Optional.empty(), Optional.empty(), Double.NaN, List.of(), Said.NOTHING);

  /**
   * Checks the time from row to row.
   *
   * @throws IllegalArgumentException if the time from row to row is said and not above zero
   */
  public LogOptions {
    Objects.requireNonNull(encoding);
    Objects.requireNonNull(delimiter);
    Objects.requireNonNull(said);
    spans = List.copyOf(spans);
    if (every <= 0 || Double.isInfinite(every)) {
      throw new IllegalArgumentException("the time from row to row is above zero and finite");
    }
  }

  /**
   * How figures and times are to be read.
   *
   * @param decimal the decimal sign, a point or a comma
   * @param dates the order of day, month and year
   * @param time what the times are
   * @param timeColumn the column of the times, by heading or place
   * @param units units of columns, by heading or place
   */
  public record Said(
      Optional<Character> decimal,
      Optional<DateOrder> dates,
      Optional<TimeForm> time,
      Optional<String> timeColumn,
      Map<String, String> units) {

    /** Nothing is said. */
    public static final Said NOTHING =
        new Said(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Map.of());

    public Said {
      Objects.requireNonNull(decimal);
      Objects.requireNonNull(dates);
      Objects.requireNonNull(time);
      Objects.requireNonNull(timeColumn);
      units = Map.copyOf(units);
    }
  }
}
