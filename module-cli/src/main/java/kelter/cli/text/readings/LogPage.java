package kelter.cli.text.readings;

import kelter.cli.terminal.Terminal;
import kelter.cli.text.Layout;
import kelter.core.file.log.LogFormat;
import kelter.core.log.Recording;
import kelter.core.log.measurement.LogReport;

/** What all sections of the text of a log need: the log, where it is shown, and how it is told. */
record LogPage(LogReport report, LogTimes times, Terminal terminal, Layout layout) {

  LogPage(LogReport report, Terminal terminal) {
    this(report, new LogTimes(report.log()), terminal, new Layout(terminal));
  }

  void heading(String words) {
    layout.heading(words);
  }

  void line(String label, String words) {
    layout.hanging(label, words);
  }

  String attention(String words) {
    return terminal.attention(words);
  }

  LogFormat format() {
    return report.log().format();
  }

  Recording recording() {
    return report.log().recording();
  }

  String name(int column) {
    return report.column(column).name();
  }

  String unit(int column) {
    String unit = report.column(column).unit();
    return unit.isEmpty() ? "" : "\u00a0" + unit;
  }

  void overRange(String before, long over, long rows, String tail) {
    if (over > 0) {
      line(before, attention("Over range in %s of %s rows%s.".formatted(over, rows, tail)));
    }
  }

  /** Rows over range beside a window, whose figures are those of the other rows. */
  void overRange(double from, double to, int column, long samples) {
    long over = report.overRange(from, to, column);
    overRange("     ", over, over + samples, ": the figures are those of the others");
  }
}
