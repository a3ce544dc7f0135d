package kelter.cli.text.readings;

import java.util.Arrays;
import kelter.cli.terminal.Plot;
import kelter.core.file.log.LogFormat;
import kelter.core.log.measurement.LogReport;
import kelter.core.quantity.QuantityFormat;

/** The columns of a log with their outlines. */
record ColumnsText(LogPage log) {

  private static final int PLOTS = 8;
  private static final int PLOT_WIDTH = 60;

  void write() {
    int places = log.format().values().size();
    for (int column = 0; column < places; column++) {
      log.heading(title(column));
      long missing = log.recording().missing(column);
      if (missing > 0) {
        log.line("  ", "No value in %s %s.".formatted(missing, missing == 1 ? "row" : "rows"));
      }
      if (log.report().resolution(column) > log.report().log().resolutions().get(column)) {
        log.line(
            "  ",
            "Told in steps of %s%s."
                .formatted(
                    QuantityFormat.plain(log.report().resolution(column)), log.unit(column)));
      }
      long over = log.recording().overRange(column).count();
      log.overRange("  ", over, log.recording().rows(), "");
      if (column < PLOTS && log.recording().column(column).count() > 0) {
        Plot.lines(log.recording().column(column).outline(PLOT_WIDTH), rail(column))
            .forEach(log.layout()::asIs);
      }
    }
  }

  /** Under each part of the time the last digit of the number of the window that it lies in. */
  private String rail(int column) {
    char[] rail = new char[PLOT_WIDTH];
    Arrays.fill(rail, '.');
    double length = log.recording().lastTime();
    for (LogReport.Numbered numbered : log.report().windows()) {
      if (numbered.column() == column) {
        int from = part(numbered.steady().window().from(), length);
        int to = part(numbered.steady().window().to(), length);
        Arrays.fill(rail, from, to + 1, (char) ('0' + numbered.number() % 10));
      }
    }
    return new String(rail);
  }

  private static int part(double time, double length) {
    return length == 0 ? 0 : (int) Math.min(PLOT_WIDTH - 1, PLOT_WIDTH * time / length);
  }

  private String title(int column) {
    LogFormat.Column known = log.report().column(column);
    return known.name() + (known.unit().isEmpty() ? "" : " in " + known.unit());
  }
}
