package kelter.core.file.log;

import java.util.List;
import java.util.Optional;
import kelter.core.file.log.LogFormat.Column;
import kelter.core.file.log.LogFormat.Sureness;
import kelter.core.file.log.cell.FigureForm;
import kelter.core.file.log.time.TimeColumns;
import kelter.core.file.log.time.TimeHeading;

/** Finds the times among the columns of a log. */
final class ClockSearch {

  private final List<Column> columns;
  private final Optional<TimeForm> said;
  private final Optional<String> column;
  private final boolean interval;
  private final ClockNotes notes = new ClockNotes();
  private final NamedTimes named;
  private final SignedTimes signed;

  /**
   * Makes ready.
   *
   * @param file the name of the log
   * @param columns its columns
   * @param rows the cells of some of its rows
   * @param figures how its figures are written
   * @param options what is said of it
   */
  ClockSearch(
      String file,
      List<Column> columns,
      List<List<String>> rows,
      FigureForm figures,
      LogOptions options) {
    this.columns = columns;
    this.said = options.said().time();
    this.column = options.said().timeColumn();
    this.interval = !Double.isNaN(options.every());
    List<TimeHeading> headings =
        columns.stream().map(c -> new TimeHeading(c.name(), c.heading(), c.unit())).toList();
    TimeColumns cells = new TimeColumns(file, headings, rows, figures);
    this.named = NamedTimes.of(cells, columns, said, notes);
    this.signed = new SignedTimes(cells, named, options.said(), notes);
  }

  LogClock find() {
    if (said.equals(Optional.of(TimeForm.NONE))) {
      return LogClock.counted(interval, notes);
    }
    int only = column.map(this::place).orElse(-1);
    if (column.isPresent() && only < 0) {
      notes.open(
          ClockNotes.FLAG + " " + column.get(),
          "no column is called '" + column.get() + "'",
          "there are: " + String.join(", ", columns.stream().map(Column::name).toList()));
      return LogClock.counted(interval, notes);
    }
    boolean figure = said.isPresent() && said.get().isFigure();
    if (only >= 0 && figure) {
      return named.taken(only, said.get(), Sureness.SAID, "");
    }
    boolean signs = !figure || said.get() == TimeForm.BASIC_CLOCK;
    Optional<LogClock> withSigns = signs ? signed.find(only) : Optional.empty();
    LogClock found = withSigns.or(named::find).orElseGet(this::counted);
    requireUse(found);
    return found;
  }

  private int place(String name) {
    for (Column each : columns) {
      if (each.isCalled(name)) {
        return each.place() - 1;
      }
    }
    return -1;
  }

  private LogClock counted() {
    if (!interval) {
      named.refuseUnknown();
    }
    return LogClock.counted(interval, notes);
  }

  /** What somebody says of the times is used, or it is told that it does not fit. */
  private void requireUse(LogClock found) {
    boolean fits = said.equals(Optional.of(TimeForm.HOURS_MINUTES)) && found.clockColumn() >= 0;
    if (said.isPresent() && !notes.usesWhatWasSaid() && !fits && notes.open().isEmpty()) {
      notes.open(
          ClockNotes.FLAG + " " + said.get().word(),
          "the log has no such times that can be told",
          "name their column, for instance %s 'Time=%s'"
              .formatted(ClockNotes.FLAG, said.get().word()));
    }
  }
}
