package kelter.cli.text.readings;

import java.util.stream.Collectors;
import kelter.core.file.log.Log;
import kelter.core.file.log.LogFormat;
import kelter.core.log.Spacing;

/** How a log was read: its form, its times, what was made out, and what is missing. */
record RecognisedText(LogPage log) {

  private static final int GAPS = 5;

  void write() {
    log.heading("Log " + log.report().name());
    log.line(
        "  Read as:  ",
        "%s%s, columns between %s, decimal %s, %s"
            .formatted(
                log.format().encoding(),
                log.format().encodingAssumed() ? " (a guess: it is not UTF-8)" : "",
                delimiter(log.format().delimiter()),
                log.format().decimalComma() ? "comma" : "point",
                log.format().headerRow() == 0
                    ? "no headings"
                    : "headings in row " + log.format().headerRow()));
    double usual = log.recording().spacing().usual();
    log.line(
        "  Times:    ",
        log.format().timing().description()
            + "; "
            + log.times().whole()
            + ", a row every "
            + log.times().duration(usual));
    long repeated = log.recording().spacing().repeated();
    log.line(
        "  Rows:     ",
        "%s from row %s%s"
            .formatted(
                log.recording().rows(),
                log.format().firstRow(),
                repeated > 0 ? "; %s have the time of the row above".formatted(repeated) : ""));
    guesses();
    leftOut();
    gaps();
    others();
  }

  /** What was made out, and how sure it is. */
  private void guesses() {
    for (LogFormat.Guess guess : log.format().guesses()) {
      String why = guess.why().isEmpty() ? "" : ": " + guess.why();
      String told = guess.taken() + " (" + guess.sureness().words() + why + ")";
      boolean sure =
          guess.sureness() == LogFormat.Sureness.CERTAIN
              || guess.sureness() == LogFormat.Sureness.SAID;
      String label = guess.about().equals("decimals") ? "  Decimals: " : "  Told by:  ";
      log.line(
          guess.about().equals("dates") ? "  Dates:    " : label,
          sure ? told : log.attention(told));
    }
  }

  private void leftOut() {
    Log.LeftOut left = log.report().log().leftOut();
    if (left.headings() > 0) {
      log.line(
          "  Left out: ",
          "the headings, which stand there %s times more".formatted(left.headings()));
    }
    if (left.footerRows() > 0) {
      log.line(
          "  Left out: ",
          log.attention(
              "%s %s of other text at the end: '%s'"
                  .formatted(
                      left.footerRows(), left.footerRows() == 1 ? "row" : "rows", left.footer())));
    }
  }

  private static String delimiter(char delimiter) {
    return delimiter == '\t' ? "tabs" : "'" + delimiter + "'";
  }

  private void gaps() {
    if (log.report().gaps().isEmpty()) {
      return;
    }
    String longest =
        log.report().gaps().stream()
            .sorted((a, b) -> Double.compare(b.seconds(), a.seconds()))
            .limit(GAPS)
            .map(
                gap ->
                    "%s after row %s (%s)"
                        .formatted(
                            log.times().duration(gap.seconds()),
                            gap.row(),
                            log.times().after(gap.time())))
            .collect(Collectors.joining(", "));
    String count =
        log.report().gaps().size() + (log.report().gaps().size() == Spacing.GAPS ? " or more" : "");
    log.line("  Gaps:     ", log.attention(count + ", the longest: " + longest));
  }

  private void others() {
    String others =
        log.format().columns().stream()
            .filter(column -> column.role() == LogFormat.Role.OTHER)
            .map(LogFormat.Column::name)
            .collect(Collectors.joining(", "));
    if (!others.isEmpty()) {
      log.line("  Not read: ", others);
    }
  }
}
