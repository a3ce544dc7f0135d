package kelter.cli.text.readings;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import kelter.core.log.SteadyRule;
import kelter.core.log.Window;
import kelter.core.log.measurement.LogReport;
import kelter.core.log.measurement.Stretch;
import kelter.core.quantity.QuantityFormat;

/** Windows in which a column stands still, and stretches that were asked for. */
record WindowsText(LogPage log) {

  private static final int OUTLIERS = 5;

  void write() {
    log.heading("Steady windows");
    if (log.report().windows().isEmpty()) {
      log.line("  ", "No column stands still anywhere.");
    }
    log.report().windows().forEach(this::write);
    long perBlock = log.recording().column(0).perBlock();
    if (perBlock > 1) {
      log.line(
          "  ",
          "The log is long: windows are found to %s rows. Name a stretch with --window to look closer."
              .formatted(perBlock));
    }
  }

  private void write(LogReport.Numbered numbered) {
    Window window = numbered.steady().window();
    WindowFigures figures = WindowFigures.of(log, window, numbered.column());
    String band = ", within ± " + QuantityFormat.plain(numbered.steady().band()) + figures.unit();
    log.line(
        "  %s. ".formatted(numbered.number()),
        "%s, %s to %s (%s), rows %s to %s: %s"
            .formatted(
                log.name(numbered.column()),
                log.times().after(window.from()),
                log.times().after(window.to()),
                log.times().duration(window.seconds()),
                window.firstRow(),
                window.lastRow(),
                figures.value()));
    log.line("     ", figures.spread() + band);
    outliers(numbered.steady(), figures.unit());
    log.overRange(window.from(), window.to(), numbered.column(), window.samples());
  }

  private void outliers(SteadyRule.Steady steady, String unit) {
    if (steady.outliers().isEmpty()) {
      return;
    }
    String told =
        steady.outliers().stream()
            .limit(OUTLIERS)
            .map(
                each ->
                    "%s%s in row %s"
                        .formatted(QuantityFormat.plain(each.value()), unit, each.row()))
            .collect(Collectors.joining(", "));
    int count = steady.outliers().size();
    String more = count > OUTLIERS ? ", and %s more".formatted(count - OUTLIERS) : "";
    log.line("     ", log.attention("Outliers, left in: " + told + more));
  }

  void write(List<Stretch> stretches) {
    for (Stretch stretch : stretches) {
      log.heading(
          "Over "
              + stretch.words()
              + ", "
              + log.times().after(stretch.from())
              + " to "
              + log.times().after(stretch.to()));
      for (int column = 0; column < log.format().values().size(); column++) {
        write(stretch, column);
      }
    }
  }

  private void write(Stretch stretch, int column) {
    Optional<WindowFigures> figures =
        log.report().over(stretch, column).map(window -> WindowFigures.of(log, window, column));
    String told = figures.map(WindowFigures::value).orElse("fewer than two samples");
    log.line("  ", log.name(column) + ": " + told);
    figures.ifPresent(each -> log.line("     ", each.spread()));
    long samples = log.recording().column(column).count(stretch.from(), stretch.to());
    log.overRange(stretch.from(), stretch.to(), column, samples);
  }
}
