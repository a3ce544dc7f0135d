package kelter.core.file.log;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import kelter.core.file.log.cell.CellTime;
import kelter.core.file.log.cell.FigureForm;
import kelter.core.file.log.cell.Marks;
import kelter.core.log.Recording;
import kelter.core.log.Series;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.QuantityFormat;
import org.apache.commons.csv.CSVRecord;

/** Makes samples out of the rows of a log and notes every mistake on the way. */
final class LogRows {

  private static final int MOST_PROBLEMS = 20;
  private static final int MOST_VALUES = 50;
  private static final int FINEST = -12;

  /** Beyond this a figure is no reading; within it, squares and their sums stay finite. */
  private static final double LARGEST = 1e30;

  /** More rows of words at the end than this are a damaged log and no footer. */
  private static final int LONGEST_FOOTER = 50;

  /** Times of the clock are told apart to 1 us, since 1970 has passed 1.8e9 s; others to 1 ns. */
  private static final double CLOCK_STEPS = 1e6;

  private static final double ELAPSED_STEPS = 1e9;

  /** A time of day that falls by more than this has passed midnight. */
  private static final double HALF_DAY = CellTime.DAY / 2;

  private final String file;
  private final LogFormat format;
  private final LogClock clock;
  private final LogOptions options;
  private final FigureForm figures;
  private final LogFound found;
  private final List<LogFormat.Column> columns;
  private final int width;
  private final Recording recording;
  private final double[] values;
  private final List<LogUnits> units = new ArrayList<>();
  private final double steps;
  private final List<Problem> problems = new ArrayList<>();
  private final List<Log.Stretch> stretches = new ArrayList<>();
  private double start = Double.NaN;
  private double last = Double.NEGATIVE_INFINITY;
  private double days;
  private double offset;
  private long count;
  private long headings;
  private long lastRow;
  private final List<Problem> pending = new ArrayList<>();
  private String footer = "";
  private long footerRows;

  LogRows(String file, LogFound found, LogOptions options) {
    this.file = file;
    this.found = found;
    this.format = found.format();
    this.clock = found.clock();
    this.options = options;
    this.figures = found.figures();
    this.steps =
        format.timing().clock() || format.timing().calendar() ? CLOCK_STEPS : ELAPSED_STEPS;
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
    for (LogFormat.Column column : columns) {
      units.add(new LogUnits(column.unit()));
    }
  }

  long count() {
    return count;
  }

  /** Takes a row in. */
  void take(long row, CSVRecord cells) {
    if (cells.size() == 1 && cells.get(0).isBlank()) {
      return;
    }
    if (isHeading(cells)) {
      headings++;
      return;
    }
    if (mayBeFooter(cells)) {
      footer = footerRows == 0 ? String.join(" ", cells).strip() : footer;
      footerRows++;
      judge(row, cells, pending);
      if (footerRows > LONGEST_FOOTER) {
        pending.forEach(this::problem);
        pending.clear();
      }
      return;
    }
    // Words between readings are no footer.
    pending.forEach(this::problem);
    pending.clear();
    footerRows = 0;
    List<Problem> wrong = new ArrayList<>();
    double time = judge(row, cells, wrong);
    wrong.forEach(this::problem);
    if (!wrong.isEmpty()) {
      return;
    }
    if (time < last) {
      backwards(row, cells);
      return;
    }
    add(row, time);
  }

  /** The headings again, as of a meter that was switched on again, perhaps with their units. */
  private boolean isHeading(CSVRecord cells) {
    List<String> header = found.columns().header();
    if (header.isEmpty() || cells.size() < header.size()) {
      return false;
    }
    for (int i = 0; i < header.size(); i++) {
      if (!cells.get(i).equals(header.get(i))) {
        return false;
      }
    }
    return true;
  }

  /**
   * A row that is no reading by its first cells: it has no time where the others have one, or words
   * in front where they have figures.
   */
  private boolean mayBeFooter(CSVRecord cells) {
    int place = timePlace();
    if (count == 0 || (place < 0 && format.columns().get(0).role() != LogFormat.Role.VALUE)) {
      return false;
    }
    String cell = cells.size() > Math.max(0, place) ? cells.get(Math.max(0, place)) : "";
    return isWords(cell)
        || (place >= 0 && cell.isEmpty() && cells.stream().anyMatch(LogRows::isWords));
  }

  private static boolean isWords(String cell) {
    return Character.isLetter(letter(cell)) && LogHead.look(cell) == LogHead.Look.WORDS;
  }

  private static char letter(String cell) {
    int i = 0;
    while (i < cell.length() && !Character.isLetterOrDigit(cell.charAt(i))) {
      i++;
    }
    return i < cell.length() ? cell.charAt(i) : ' ';
  }

  private int timePlace() {
    return Math.max(clock.figureColumn(), Math.max(clock.dateColumn(), clock.clockColumn()));
  }

  /** The time of a row, with its values noted; NaN if something in it is wrong. */
  private double judge(long row, CSVRecord cells, List<Problem> wrong) {
    if (cells.size() != width && !endsWithDelimiter(cells)) {
      wrong.add(ragged(row, cells));
      return Double.NaN;
    }
    double time = time(row, cells, wrong);
    for (int i = 0; i < values.length; i++) {
      values[i] = value(row, columns.get(i), cells, i, wrong);
    }
    return time;
  }

  /** A row with one delimiter more at its end than the others has no more cells than they have. */
  private boolean endsWithDelimiter(CSVRecord cells) {
    return cells.size() == width + 1 && cells.get(width).isBlank();
  }

  private Problem ragged(long row, CSVRecord cells) {
    String other = otherDelimiter(cells);
    String remedy =
        other.isEmpty()
            ? "complete the row, or take it out"
            : "it seems to be split by '%s' where the others are by '%s'"
                .formatted(other, shown(format.delimiter()));
    return new Problem(
        "%s, row %s, column %s".formatted(file, row, Math.min(cells.size(), width) + 1),
        "the row has %s %s, the others have %s"
            .formatted(cells.size(), cells.size() == 1 ? "column" : "columns", width),
        remedy);
  }

  private String otherDelimiter(CSVRecord cells) {
    String line = String.join(String.valueOf(format.delimiter()), cells);
    for (char c : LogHead.DELIMITERS) {
      boolean splits = LogCsv.rows(line, c, 1).stream().anyMatch(row -> row.size() == width);
      if (c != format.delimiter() && splits) {
        return shown(c);
      }
    }
    return "";
  }

  private static String shown(char delimiter) {
    return delimiter == '\t' ? "tab" : String.valueOf(delimiter);
  }

  private double time(long row, CSVRecord cells, List<Problem> wrong) {
    try {
      if (timePlace() < 0) {
        return count * (Double.isNaN(options.every()) ? 1 : options.every());
      }
      double time = clock.dateColumn() < 0 ? 0 : date(cells.get(clock.dateColumn()));
      if (clock.figureColumn() >= 0) {
        String cell = cells.get(clock.figureColumn());
        double figure = figures.value(figure(cell));
        if (!(Math.abs(figure) < LARGEST)) {
          throw new IllegalArgumentException("'" + cell + "' is beyond any time");
        }
        time += clock.form().seconds(figure);
      } else if (clock.clockColumn() >= 0) {
        time += ofClock(cells.get(clock.clockColumn()));
      }
      return clock.startsAgain() ? acrossMidnight(time) : time;
    } catch (IllegalArgumentException noTime) {
      wrong.add(
          new Problem(
              at(row, format.columns().get(timePlace())),
              noTime.getMessage(),
              "written here: " + format.timing().description()));
      return Double.NaN;
    }
  }

  private double date(String cell) {
    OptionalLong day = clock.dates().days(CellTime.of(cell));
    return CellTime.DAY
        * day.orElseThrow(() -> new IllegalArgumentException("'" + cell + "' is not a date"));
  }

  private double ofClock(String cell) {
    CellTime time = CellTime.of(cell);
    double seconds =
        clock.form() == TimeForm.POINTED_CLOCK
            ? time.pointed()
            : time.clock(clock.form() == TimeForm.MINUTES_SECONDS);
    boolean told = clock.form() == TimeForm.POINTED_CLOCK || time.hasClock();
    if (!told || Double.isNaN(seconds)) {
      throw new IllegalArgumentException("'" + cell + "' is not a time");
    }
    if (count == 0) {
      offset = time.offset();
    }
    // All times are told by the clock of the first row.
    return seconds + offset;
  }

  private double acrossMidnight(double time) {
    if (time + days < last - HALF_DAY) {
      days += CellTime.DAY;
    }
    return time + days;
  }

  private void backwards(long row, CSVRecord cells) {
    LogFormat.Column column = format.columns().get(Math.max(0, timePlace()));
    problem(
        at(row, column),
        "the time '%s' comes before that of the row above".formatted(cells.get(column.place() - 1)),
        "put the rows in order, or cut the log where the clock was set");
  }

  private double value(
      long row, LogFormat.Column column, CSVRecord cells, int index, List<Problem> wrong) {
    String cell = cells.get(column.place() - 1);
    int beyond = Marks.beyond(cell);
    if (beyond != 0) {
      return beyond * Double.POSITIVE_INFINITY;
    }
    if (Marks.isNoValue(cell)) {
      return Double.NaN;
    }
    try {
      return value(cell, unitBeside(column, cells), index);
    } catch (IllegalArgumentException noFigure) {
      wrong.add(new Problem(at(row, column), noFigure.getMessage(), ""));
      return Double.NaN;
    }
  }

  private String unitBeside(LogFormat.Column column, CSVRecord cells) {
    Integer place = found.columns().unitColumns().get(column.place() - 1);
    if (place != null && cells.get(place).isEmpty()) {
      throw new IllegalArgumentException(
          "has no unit in column " + (place + 1) + ", where the others have one");
    }
    return place == null ? "" : cells.get(place);
  }

  private double value(String cell, String beside, int index) {
    String figure = figure(cell);
    String behind = cell.substring(figure.length()).strip();
    if (!LogHead.isUnitBehind(behind)) {
      throw notAFigure(cell);
    }
    LogUnits.Change change = units.get(index).from(behind.isEmpty() ? beside : behind);
    double read = figures.value(figure);
    double value = Marks.meant(read);
    if (Double.isFinite(value)) {
      value = change.of(value);
      units.get(index).note(change, Math.max(FINEST, figures.lastDigit(figure)));
    }
    if (Double.isInfinite(read) || (Double.isFinite(value) && Math.abs(value) > LARGEST)) {
      throw new IllegalArgumentException(
          "'%s' is beyond any reading; figures up to %s are read"
              .formatted(cell, QuantityFormat.plain(LARGEST)));
    }
    return value;
  }

  private String figure(String cell) {
    int end = figures.end(cell);
    if (end == 0) {
      throw notAFigure(cell);
    }
    return end == cell.length() ? cell : cell.substring(0, end);
  }

  private IllegalArgumentException notAFigure(String cell) {
    FigureForm other = new FigureForm(figures.other(), false);
    boolean fits = !cell.isEmpty() && other.end(cell) == cell.length();
    String why =
        fits ? "; the others have a decimal " + (figures.decimal() == '.' ? "point" : "comma") : "";
    return new IllegalArgumentException("'" + cell + "' is not a figure" + why);
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
    List<Double> last = units.stream().map(LogUnits::resolution).toList();
    return new Log(
        format, start, recording, last, stretches, new Log.LeftOut(headings, footerRows, footer));
  }
}
