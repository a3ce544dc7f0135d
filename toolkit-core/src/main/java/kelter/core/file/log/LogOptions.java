package kelter.core.file.log;

import java.nio.charset.Charset;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What somebody says of a log, so that it need not be recognised.
 *
 * @param encoding the character set, if it is said
 * @param delimiter what stands between columns, if it is said
 * @param every the time from row to row in s, for a log without times; NaN if it is not said
 * @param spans stretches of time that are looked at by themselves
 */
public record LogOptions(
    Optional<Charset> encoding, Optional<Character> delimiter, double every, List<LogSpan> spans) {

  /** Everything is recognised. */
  public static final LogOptions NONE =
      new LogOptions(Optional.empty(), Optional.empty(), Double.NaN, List.of());

  /**
   * Checks the time from row to row.
   *
   * @throws IllegalArgumentException if the time from row to row is said and not above zero
   */
  public LogOptions {
    Objects.requireNonNull(encoding);
    Objects.requireNonNull(delimiter);
    spans = List.copyOf(spans);
    if (every <= 0 || Double.isInfinite(every)) {
      throw new IllegalArgumentException("the time from row to row is above zero and finite");
    }
  }
}
