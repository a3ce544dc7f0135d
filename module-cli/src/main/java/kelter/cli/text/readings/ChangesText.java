package kelter.cli.text.readings;

import java.util.List;
import kelter.core.log.change.LevelChange;
import kelter.core.log.measurement.Change;
import kelter.core.log.measurement.LogReport;
import kelter.core.log.measurement.Stretch;
import kelter.core.quantity.QuantityFormat;

/** Where columns change, and what changed between two stretches. */
record ChangesText(LogPage log) {

  private static final int STEPS = 12;

  void write() {
    if (log.report().steps().isEmpty()) {
      return;
    }
    log.heading("Changes");
    List<LogReport.ColumnStep> steps = log.report().steps();
    for (LogReport.ColumnStep each : steps.subList(0, Math.min(STEPS, steps.size()))) {
      log.line("  ", step(each));
    }
    if (steps.size() > STEPS) {
      log.line("  ", "and %s more".formatted(steps.size() - STEPS));
    }
  }

  private String step(LogReport.ColumnStep each) {
    LevelChange step = each.step();
    String levels =
        "%s from %s to %s%s"
            .formatted(
                log.name(each.column()),
                QuantityFormat.plain(step.comparison().before()),
                QuantityFormat.plain(step.comparison().after()),
                log.unit(each.column()));
    return step.gradual()
        ? "%s, gradually from %s to %s (%s, rows %s to %s)"
            .formatted(
                levels,
                log.times().after(step.time()),
                log.times().after(step.time() + step.seconds()),
                log.times().duration(step.seconds()),
                step.row(),
                step.endRow())
        : "%s at %s, within %s (row %s)"
            .formatted(
                levels,
                log.times().after(step.time()),
                log.times().duration(step.seconds()),
                step.row());
  }

  void write(List<Change> changes) {
    if (changes.isEmpty()) {
      return;
    }
    log.heading(
        "From " + changes.get(0).before().words() + " to " + changes.get(0).after().words());
    changes.forEach(this::write);
    log.line(
        "  ",
        "The uncertainty is that of scatter, of drift as %s shows it, and of the steps of the figures. An error of the instrument that stays the same drops out. Of all columns that are told as changed, 5 %% at most are so by chance."
            .formatted(changes.get(0).healthy().words()));
  }

  private void write(Change change) {
    double d = change.comparison().difference();
    double u = change.comparison().uncertainty();
    log.line(
        "  ",
        "%s: from %s to %s%s, a change of %s%s: %s"
            .formatted(
                log.name(change.column()),
                QuantityFormat.plain(change.first().mean()),
                QuantityFormat.plain(change.second().mean()),
                log.unit(change.column()),
                WindowFigures.nonBreaking(QuantityFormat.withUncertainty(d, u)),
                log.unit(change.column()),
                change.seen()
                    ? "more than scatter and drift explain"
                    : "within scatter and drift"));
    for (Stretch each : List.of(change.before(), change.after())) {
      long over = log.report().overRange(each.from(), each.to(), change.column());
      long samples = log.recording().column(change.column()).count(each.from(), each.to());
      log.overRange("     ", over, over + samples, " of " + each.words());
    }
  }
}
