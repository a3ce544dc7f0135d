package kelter.core.file.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import kelter.core.file.log.LogFormat.Column;
import kelter.core.file.log.LogFormat.Role;
import kelter.core.file.log.LogFormat.Timing;

/**
 * Where the times of a log stand and how they are read.
 *
 * @param dateColumn the place of the dates, from 0; -1 if there are none
 * @param clockColumn the place of the times of day, the same if they stand together; -1 if there
 *     are none
 * @param figureColumn the place of times that are told as figures; -1 if there are none
 * @param order how dates are written
 * @param factor the size of one unit of such a figure, in s
 * @param timing how it is told
 */
record LogClock(
    int dateColumn,
    int clockColumn,
    int figureColumn,
    LogTime.Order order,
    double factor,
    Timing timing) {

  private static final double MOST = 0.5;
  private static final String SHORT_NAME = "t";

  /** Headings of times that are told as figures. */
  private static final Set<String> NAMES =
      Set.of(
          SHORT_NAME,
          "time",
          "elapsed",
          "elapsed time",
          "seconds",
          "zeit",
          "temps",
          "tid",
          "tijd",
          "tiempo",
          "timestamp",
          "runtime",
          "duration");

  private static final Map<String, Double> UNITS =
      Map.of("ms", 1e-3, "s", 1.0, "sec", 1.0, "min", 60.0, "h", 3600.0);

  /**
   * Finds the times among the columns of a log.
   *
   * @param columns its columns
   * @param rows the cells of its first rows
   * @param every the time from row to row in s, for a log without times; NaN if it is not said
   * @return where the times stand
   */
  static LogClock find(List<Column> columns, List<List<String>> rows, double every) {
    int date = -1;
    int clock = -1;
    Ordering ordering = new Ordering(LogTime.Order.YEAR_FIRST, false);
    for (int i = 0; i < columns.size(); i++) {
      List<LogTime.Shape> times = new ArrayList<>();
      for (List<String> row : rows) {
        LogTime.Shape shape = LogTime.shape(row.get(i));
        if (shape.isTime()) {
          times.add(shape);
        }
      }
      if (times.size() <= MOST * rows.size()) {
        continue;
      }
      boolean dated = times.get(0).date();
      if (dated && date < 0 && clock < 0) {
        date = i;
        clock = times.get(0).clock() ? i : -1;
        ordering = Ordering.of(times);
      } else if (!dated && clock < 0) {
        clock = i;
      }
    }
    if (date < 0 && clock < 0) {
      return ofFigures(columns, every);
    }
    return new LogClock(
        date,
        clock,
        -1,
        ordering.order(),
        1,
        new Timing(
            words(date, clock, ordering.order()),
            clock >= 0,
            date >= 0,
            ordering.assumed(),
            false));
  }

  private static LogClock ofFigures(List<Column> columns, double every) {
    for (Column column : columns) {
      String name = column.name().toLowerCase(Locale.ROOT);
      String unit = column.unit().toLowerCase(Locale.ROOT);
      boolean told = UNITS.containsKey(unit) || (unit.isEmpty() && !name.equals(SHORT_NAME));
      if (column.role() == Role.VALUE && NAMES.contains(name) && told) {
        String inUnit = unit.isEmpty() ? "s" : unit;
        return new LogClock(
            -1,
            -1,
            column.place() - 1,
            LogTime.Order.YEAR_FIRST,
            UNITS.get(inUnit),
            new Timing("elapsed, in " + inUnit, false, false, false, false));
      }
    }
    Timing timing =
        Double.isNaN(every)
            ? new Timing("none; rows are counted", false, false, false, true)
            : new Timing("none; from row to row as was said", false, false, false, false);
    return new LogClock(-1, -1, -1, LogTime.Order.YEAR_FIRST, 1, timing);
  }

  private static String words(int date, int clock, LogTime.Order order) {
    String day =
        switch (order) {
          case YEAR_FIRST -> "year, month, day";
          case DAY_FIRST -> "day, month, year";
          case MONTH_FIRST -> "month, day, year";
        };
    if (date < 0) {
      return "time of day";
    }
    return clock < 0 ? day : day + " and time of day";
  }

  /** Whether times of day stand without a date, so that they start again at midnight. */
  boolean startsAgain() {
    return dateColumn < 0 && clockColumn >= 0;
  }

  /** Whether a column holds times. */
  boolean isAt(Column column) {
    int place = column.place() - 1;
    return place == dateColumn || place == clockColumn || place == figureColumn;
  }

  /** In which order the dates of a column are written, and whether that is a guess. */
  private record Ordering(LogTime.Order order, boolean assumed) {

    private static final int MONTHS = 12;
    private static final int DAYS = 31;

    static Ordering of(List<LogTime.Shape> shapes) {
      int first = 0;
      int second = 0;
      char separator = ' ';
      boolean half = false;
      for (LogTime.Shape shape : shapes) {
        half |= shape.half();
        if (shape.date()) {
          first = Math.max(first, shape.first());
          second = Math.max(second, shape.second());
          separator = shape.separator();
        }
      }
      if (first > DAYS) {
        return new Ordering(LogTime.Order.YEAR_FIRST, false);
      }
      if (first > MONTHS || separator == '.') {
        return new Ordering(LogTime.Order.DAY_FIRST, false);
      }
      if (second > MONTHS) {
        return new Ordering(LogTime.Order.MONTH_FIRST, false);
      }
      // Where the day has two halves, the month is written first; common practice, no source.
      return new Ordering(half ? LogTime.Order.MONTH_FIRST : LogTime.Order.DAY_FIRST, true);
    }
  }
}
