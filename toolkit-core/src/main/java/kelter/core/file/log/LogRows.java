package kelter.core.file.log;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kelter.core.log.Recording;
import kelter.core.log.Series;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import org.apache.commons.csv.CSVRecord;

/** Makes samples out of the rows of a log and notes every mistake on the way. */
final class LogRows {

  private static final int MOST_PROBLEMS = 20;
  private static final int MOST_VALUES = 50;
  private static final int MOST_DECIMALS = 12;

  /** A time of day that falls by more than this has passed midnight. */
  private static final double HALF_DAY = LogTime.DAY / 2;

  private final String file;
  private final LogFormat format;
  private final LogClock clock;
  private final LogOptions options;
  private final char point;
  private final List<LogFormat.Column> columns;
  private final int width;
  private final Recording recording;
  private final double[] values;
  private final int[] decimals;
  private final List<Problem> problems = new ArrayList<>();
  private final List<Log.Stretch> stretches = new ArrayList<>();
  private double start = Double.NaN;
  private double last = Double.NEGATIVE_INFINITY;
  private double days;
  private double offset;
  private long count;

  LogRows(String file, LogHead.Found found, LogOptions options) {
    this.file = file;
    this.format = found.format();
    this.clock = found.clock();
    this.options = options;
    this.point = format.decimalComma() ? ',' : '.';
    this.columns = format.values();
    this.width = format.columns().size();
    if (columns.isEmpty()) {
      throw new InputException(file, "no column holds figures", "");
    }
    if (columns.size() > MOST_VALUES) {
      throw new InputException(
          file,
          "%s columns hold figures".formatted(columns.size()),
          "up to %s can be read at once: take out those that are not wanted"
              .formatted(MOST_VALUES));
    }
    recording = new Recording(columns.size());
    values = new double[columns.size()];
    decimals = new int[columns.size()];
  }

  long count() {
    return count;
  }

  /** Takes a row in. */
  void take(long row, CSVRecord cells) {
    if (cells.size() == 1 && cells.get(0).isBlank()) {
      return;
    }
    if (cells.size() != width && !endsWithDelimiter(cells)) {
      ragged(row, cells);
      return;
    }
    int before = problems.size();
    double time = time(row, cells);
    for (int i = 0; i < values.length; i++) {
      values[i] = value(row, columns.get(i), cells, i);
    }
    if (problems.size() > before) {
      return;
    }
    if (time < last) {
      backwards(row, cells);
      return;
    }
    add(row, time);
  }

  /** A row with one delimiter more at its end than the others has no more cells than they have. */
  private boolean endsWithDelimiter(CSVRecord cells) {
    return cells.size() == width + 1 && cells.get(width).isBlank();
  }

  private void ragged(long row, CSVRecord cells) {
    String other = otherDelimiter(cells);
    String remedy =
        other.isEmpty()
            ? "complete the row, or take it out"
            : "it seems to be split by '%s' where the others are by '%s'"
                .formatted(other, shown(format.delimiter()));
    problem(
        "%s, row %s, column %s".formatted(file, row, Math.min(cells.size(), width) + 1),
        "the row has %s %s, the others have %s"
            .formatted(cells.size(), cells.size() == 1 ? "column" : "columns", width),
        remedy);
  }

  private String otherDelimiter(CSVRecord cells) {
    String line = String.join(String.valueOf(format.delimiter()), cells);
    for (char c : LogHead.DELIMITERS) {
      if (c != format.delimiter() && LogHead.cells(line, c).size() == width) {
        return shown(c);
      }
    }
    return "";
  }

  private static String shown(char delimiter) {
    return delimiter == '\t' ? "tab" : String.valueOf(delimiter);
  }

  private double time(long row, CSVRecord cells) {
    try {
      if (clock.figureColumn() >= 0) {
        return figure(cells.get(clock.figureColumn()), "") * clock.factor();
      }
      if (clock.dateColumn() < 0 && clock.clockColumn() < 0) {
        return count * (Double.isNaN(options.every()) ? 1 : options.every());
      }
      double time = 0;
      if (clock.dateColumn() >= 0) {
        boolean both = clock.dateColumn() == clock.clockColumn();
        time = LogTime.seconds(cells.get(clock.dateColumn()), clock.order(), true, both);
      }
      if (clock.clockColumn() >= 0 && clock.clockColumn() != clock.dateColumn()) {
        time += LogTime.seconds(cells.get(clock.clockColumn()), clock.order(), false, true);
      }
      if (count == 0 && clock.clockColumn() >= 0) {
        offset = LogTime.offset(cells.get(clock.clockColumn()));
      }
      // All times are told by the clock of the first row.
      return clock.startsAgain() ? acrossMidnight(time + offset) : time + offset;
    } catch (IllegalArgumentException noTime) {
      problem(at(row, timeColumn()), noTime.getMessage(), "written here: " + timing());
      return Double.NaN;
    }
  }

  private double acrossMidnight(double time) {
    if (time + days < last - HALF_DAY) {
      days += LogTime.DAY;
    }
    return time + days;
  }

  private String timing() {
    return format.timing().description();
  }

  private LogFormat.Column timeColumn() {
    int place = Math.max(clock.figureColumn(), Math.max(clock.dateColumn(), clock.clockColumn()));
    return format.columns().get(Math.max(0, place));
  }

  private void backwards(long row, CSVRecord cells) {
    LogFormat.Column column = timeColumn();
    problem(
        at(row, column),
        "the time '%s' comes before that of the row above".formatted(cells.get(column.place() - 1)),
        "put the rows in order, or cut the log where the clock was set");
  }

  private double value(long row, LogFormat.Column column, CSVRecord cells, int index) {
    String cell = cells.get(column.place() - 1);
    if (LogCells.isNoValue(cell)) {
      return Double.NaN;
    }
    if (LogCells.isOverRange(cell)) {
      return cell.charAt(0) == '-' ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    }
    try {
      double value = figure(cell, column.unit());
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("'" + cell + "' is too large");
      }
      int places = LogCells.decimals(cell, point);
      decimals[index] = Math.max(decimals[index], Math.min(places, MOST_DECIMALS));
      return value;
    } catch (IllegalArgumentException noFigure) {
      problem(at(row, column), noFigure.getMessage(), "");
      return Double.NaN;
    }
  }

  private double figure(String cell, String unit) {
    int end = LogCells.figureEnd(cell, point);
    if (end == 0 || (end < cell.length() && !cell.substring(end).strip().equals(unit))) {
      char other = point == '.' ? ',' : '.';
      String why =
          LogCells.isFigure(cell, other)
              ? "; the others have a decimal " + (point == '.' ? "point" : "comma")
              : "";
      throw new IllegalArgumentException("'" + cell + "' is not a figure" + why);
    }
    return LogCells.value(end == cell.length() ? cell : cell.substring(0, end), point);
  }

  private void add(long row, double time) {
    if (count == 0) {
      start = time;
      open(time);
    }
    last = time;
    count++;
    double after = time - start;
    recording.add(row, after, values);
    for (Log.Stretch stretch : stretches) {
      if (after >= stretch.from() && after <= stretch.to()) {
        for (int i = 0; i < values.length; i++) {
          if (Double.isFinite(values[i])) {
            stretch.columns().get(i).add(row, after, values[i]);
          }
        }
      }
    }
  }

  private void open(double time) {
    for (LogSpan span : options.spans()) {
      try {
        double[] within = span.within(time, format.timing());
        List<Series> series = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
          series.add(new Series());
        }
        stretches.add(new Log.Stretch(span, within[0], within[1], series));
      } catch (IllegalArgumentException elsewhere) {
        throw new InputException(span.text(), elsewhere.getMessage(), "");
      }
    }
  }

  private String at(long row, LogFormat.Column column) {
    return "%s, row %s, column %s (%s)".formatted(file, row, column.place(), column.name());
  }

  private void problem(String where, String what, String remedy) {
    problems.add(new Problem(where, what, remedy));
    if (problems.size() == MOST_PROBLEMS) {
      problems.add(new Problem(file, "there may be more; reading stopped here", ""));
      throw new InputException(problems);
    }
  }

  /** Ends the reading for a mistake that nothing can be read behind. */
  void stop(IOException reason) {
    problems.add(
        reason instanceof LogSieve.Stopped stopped
            ? stopped.problem()
            : new Problem(
                "%s, after row %s".formatted(file, format.firstRow() + count),
                "cannot be read: " + reason.getMessage(),
                ""));
    throw new InputException(problems);
  }

  /** What was read; a log with a mistake is not used at all. */
  Log log() {
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    if (count == 0) {
      throw new InputException(file, "has no row of readings", "");
    }
    List<Double> resolutions =
        Arrays.stream(decimals).mapToObj(places -> Math.pow(10, -places)).toList();
    return new Log(format, start, recording, resolutions, stretches);
  }
}
