package kelter.core.file.log;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kelter.core.file.log.cell.FigureColumn;
import kelter.core.file.log.cell.Marks;
import kelter.core.file.log.row.LogSieve;
import kelter.core.file.log.row.RowShape;
import kelter.core.log.Recording;
import kelter.core.log.Series;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import org.apache.commons.csv.CSVRecord;

/** Makes samples out of the rows of a log and notes every mistake on the way. */
final class LogRows {

  private static final int MOST_PROBLEMS = 20;
  private static final int MOST_VALUES = 50;

  /** More rows of words at the end than this are a damaged log and no footer. */
  private static final int LONGEST_FOOTER = 50;

  /** Times of the clock are told apart to 1 us, since 1970 has passed 1.8e9 s; others to 1 ns. */
  private static final double CLOCK_STEPS = 1e6;

  private static final double ELAPSED_STEPS = 1e9;

  private final String file;
  private final LogFormat format;
  private final LogOptions options;
  private final RowShape shape;
  private final RowTimes times;
  private final int timePlace;
  private final Map<Integer, Integer> unitColumns;
  private final List<LogFormat.Column> columns;
  private final Recording recording;
  private final double[] values;
  private final List<FigureColumn> figures = new ArrayList<>();
  private final double steps;
  private final List<Problem> problems = new ArrayList<>();
  private final List<Log.Stretch> stretches = new ArrayList<>();
  private double start = Double.NaN;
  private double last = Double.NEGATIVE_INFINITY;
  private long count;
  private long headings;
  private long lastRow;
  private final List<Problem> pending = new ArrayList<>();
  private String footer = "";
  private long footerRows;

  LogRows(String file, LogFound found, LogOptions options) {
    this.file = file;
    this.format = found.format();
    this.options = options;
    this.times = new RowTimes(found.clock(), found.figures(), options);
    this.timePlace = found.clock().place();
    this.shape =
        new RowShape(
            file,
            format.columns().size(),
            format.delimiter(),
            found.columns().header(),
            Math.max(0, timePlace),
            timePlace >= 0);
    this.unitColumns = found.columns().unitColumns();
    this.steps =
        format.timing().clock() || format.timing().calendar() ? CLOCK_STEPS : ELAPSED_STEPS;
    this.columns = format.values();
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
    for (LogFormat.Column column : columns) {
      figures.add(new FigureColumn(found.figures(), column.unit()));
    }
  }

  long count() {
    return count;
  }

  /** Takes a row in. */
  void take(long row, CSVRecord cells) {
    if (RowShape.isBlank(cells)) {
      return;
    }
    if (shape.isHeading(cells)) {
      headings++;
    } else if (mayBeFooter(cells)) {
      takeFooter(row, cells);
    } else {
      tellFooter();
      footerRows = 0;
      takeReading(row, cells);
    }
  }

  private boolean mayBeFooter(CSVRecord cells) {
    boolean tells = timePlace >= 0 || format.columns().get(0).role() == LogFormat.Role.VALUE;
    return count > 0 && tells && shape.mayBeFooter(cells);
  }

  private void takeFooter(long row, CSVRecord cells) {
    footer = footerRows == 0 ? String.join(" ", cells).strip() : footer;
    footerRows++;
    judge(row, cells, pending);
    if (footerRows > LONGEST_FOOTER) {
      tellFooter();
    }
  }

  /** Words between readings, or too many of them, are no footer but mistakes. */
  private void tellFooter() {
    pending.forEach(this::problem);
    pending.clear();
  }

  private void takeReading(long row, CSVRecord cells) {
    List<Problem> wrong = new ArrayList<>();
    double time = judge(row, cells, wrong);
    wrong.forEach(this::problem);
    if (!wrong.isEmpty()) {
      return;
    }
    if (time < last) {
      backwards(row, cells);
    } else {
      add(row, time);
    }
  }

  /** The time of a row, with its values noted; NaN if something in it is wrong. */
  private double judge(long row, CSVRecord cells, List<Problem> wrong) {
    if (shape.isRagged(cells)) {
      wrong.add(shape.ragged(row, cells));
      return Double.NaN;
    }
    double time = time(row, cells, wrong);
    for (int i = 0; i < values.length; i++) {
      values[i] = value(row, cells, i, wrong);
    }
    return time;
  }

  private double time(long row, CSVRecord cells, List<Problem> wrong) {
    try {
      return times.of(cells, count, last);
    } catch (IllegalArgumentException noTime) {
      wrong.add(
          new Problem(
              at(row, format.columns().get(timePlace)),
              noTime.getMessage(),
              "written here: " + format.timing().description()));
      return Double.NaN;
    }
  }

  private double value(long row, CSVRecord cells, int index, List<Problem> wrong) {
    LogFormat.Column column = columns.get(index);
    String cell = cells.get(column.place() - 1);
    int beyond = Marks.beyond(cell);
    if (beyond != 0) {
      return beyond * Double.POSITIVE_INFINITY;
    }
    if (Marks.isNoValue(cell)) {
      return Double.NaN;
    }
    try {
      return figures.get(index).value(cell, unitBeside(column, cells));
    } catch (IllegalArgumentException noFigure) {
      wrong.add(new Problem(at(row, column), noFigure.getMessage(), ""));
      return Double.NaN;
    }
  }

  private String unitBeside(LogFormat.Column column, CSVRecord cells) {
    Integer place = unitColumns.get(column.place() - 1);
    if (place != null && cells.get(place).isEmpty()) {
      throw new IllegalArgumentException(
          "has no unit in column " + (place + 1) + ", where the others have one");
    }
    return place == null ? "" : cells.get(place);
  }

  private void backwards(long row, CSVRecord cells) {
    LogFormat.Column column = format.columns().get(Math.max(0, timePlace));
    problem(
        at(row, column),
        "the time '%s' comes before that of the row above".formatted(cells.get(column.place() - 1)),
        "put the rows in order, or cut the log where the clock was set");
  }

  private void add(long row, double time) {
    if (count == 0) {
      start = time;
      open(time);
    }
    last = time;
    lastRow = row;
    count++;
    double after = Math.rint((time - start) * steps) / steps;
    recording.add(row, after, values);
    for (Log.Stretch stretch : stretches) {
      if (after >= stretch.from() && after <= stretch.to()) {
        add(stretch.columns(), row, after);
      }
    }
  }

  private void add(List<Series> series, long row, double after) {
    for (int i = 0; i < values.length; i++) {
      if (Double.isFinite(values[i])) {
        series.get(i).add(row, after, values[i]);
      }
    }
  }

  private void open(double time) {
    for (LogSpan span : options.spans()) {
      try {
        double[] within = span.within(time, format.timing());
        within[0] = Math.rint(within[0] * steps) / steps;
        within[1] = Math.rint(within[1] * steps) / steps;
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
    problem(new Problem(where, what, remedy));
  }

  private void problem(Problem problem) {
    problems.add(problem);
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
                "%s, after row %s".formatted(file, lastRow),
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
    List<Double> last = figures.stream().map(FigureColumn::resolution).toList();
    return new Log(
        format, start, recording, last, stretches, new Log.LeftOut(headings, footerRows, footer));
  }
}
