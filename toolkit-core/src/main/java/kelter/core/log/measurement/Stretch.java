package kelter.core.log.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.file.log.Log;
import kelter.core.file.log.LogSpan;
import kelter.core.problem.InputException;

/**
 * A stretch of time in a log, by the number of a steady window or by its ends.
 *
 * @param words what a person called it
 * @param from its first time, in s after the start of the log
 * @param to its last time, in s after the start of the log
 * @param numbered the steady window, if it was called by its number
 * @param asked the stretch that was read by itself, if it was called by its ends
 */
public record Stretch(
    String words,
    double from,
    double to,
    Optional<LogReport.Numbered> numbered,
    Optional<Log.Stretch> asked) {

  /**
   * The spans among what a person called.
   *
   * @param words numbers of windows and spans
   * @return the spans, which are read by themselves
   * @throws InputException if one is neither
   */
  public static List<LogSpan> spans(List<String> words) {
    List<LogSpan> spans = new ArrayList<>();
    for (String word : words) {
      if (!word.matches("\\d{1,4}")) {
        try {
          spans.add(LogSpan.parse(word));
        } catch (IllegalArgumentException neither) {
          throw new InputException(word, neither.getMessage(), "or the number of a steady window");
        }
      }
    }
    return spans;
  }

  /**
   * Finds a stretch in a log.
   *
   * @param word the number of a window, or a span that was read with the log
   * @param report what the log shows
   * @return the stretch
   * @throws InputException if there is no such window
   */
  public static Stretch of(String word, LogReport report) {
    for (Log.Stretch asked : report.log().spans()) {
      if (asked.span().text().equals(word)) {
        return new Stretch(word, asked.from(), asked.to(), Optional.empty(), Optional.of(asked));
      }
    }
    LogReport.Numbered window =
        report
            .window(Integer.parseInt(word))
            .orElseThrow(
                () ->
                    new InputException(
                        word,
                        "there is no such window",
                        report.windows().isEmpty()
                            ? "no column stands still; name a stretch, for instance 5min..10min"
                            : "there are windows 1 to " + report.windows().size()));
    return of(window);
  }

  /**
   * A steady window as a stretch.
   *
   * @param window the window
   * @return the stretch
   */
  public static Stretch of(LogReport.Numbered window) {
    return new Stretch(
        "window " + window.number(),
        window.steady().window().from(),
        window.steady().window().to(),
        Optional.of(window),
        Optional.empty());
  }
}
