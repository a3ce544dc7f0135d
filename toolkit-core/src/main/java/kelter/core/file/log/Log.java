package kelter.core.file.log;

import java.util.List;
import kelter.core.log.Recording;
import kelter.core.log.Series;

/**
 * A log that was read.
 *
 * @param format what was recognised of it
 * @param start its first time in s: from 1970-01-01 or from midnight, as {@code format} tells
 * @param recording its columns with figures, in the order of {@link LogFormat#values}, times in s
 *     after the start
 * @param resolutions the size of the last digit of each of them, in its unit; 0 if it is not known
 * @param spans the stretches that were asked for
 * @param leftOut rows that are no readings
 */
public record Log(
    LogFormat format,
    double start,
    Recording recording,
    List<Double> resolutions,
    List<Stretch> spans,
    LeftOut leftOut) {

  public Log {
    resolutions = List.copyOf(resolutions);
    spans = List.copyOf(spans);
  }

  /**
   * Rows behind the first reading that are no readings.
   *
   * @param headings how often the headings stand there again
   * @param footerRows how many rows of other text stand at the end
   * @param footer the first of them
   */
  public record LeftOut(long headings, long footerRows, String footer) {}

  /**
   * A stretch of time that was asked for.
   *
   * @param span what was asked for
   * @param from its first time, in s after the start of the log
   * @param to its last time, in s after the start of the log
   * @param columns the samples of each column with figures that lie in it
   */
  public record Stretch(LogSpan span, double from, double to, List<Series> columns) {

    public Stretch {
      columns = List.copyOf(columns);
    }
  }
}
