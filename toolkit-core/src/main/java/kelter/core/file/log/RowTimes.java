package kelter.core.file.log;

import java.util.OptionalLong;
import kelter.core.file.log.cell.CellTime;
import kelter.core.file.log.cell.FigureColumn;
import kelter.core.file.log.cell.FigureForm;
import org.apache.commons.csv.CSVRecord;

/** Reads the times of rows, in the order of the log. */
final class RowTimes {

  /** A time of day that falls by more than this has passed midnight. */
  private static final double HALF_DAY = CellTime.DAY / 2;

  private final LogClock clock;
  private final FigureForm figures;
  private final double every;
  private double midnights;
  private double offset;

  RowTimes(LogClock clock, FigureForm figures, LogOptions options) {
    this.clock = clock;
    this.figures = figures;
    this.every = Double.isNaN(options.every()) ? 1 : options.every();
  }

  /**
   * The time of a row, in s.
   *
   * @param cells the row
   * @param count how many rows have been taken in
   * @param last the time of the last of them
   * @throws IllegalArgumentException if it has none
   */
  double of(CSVRecord cells, long count, double last) {
    if (clock.place() < 0) {
      return count * every;
    }
    double time = clock.dateColumn() < 0 ? 0 : ofDate(cells.get(clock.dateColumn()));
    if (clock.figureColumn() >= 0) {
      time += ofFigure(cells.get(clock.figureColumn()));
    } else if (clock.clockColumn() >= 0) {
      time += ofClock(cells.get(clock.clockColumn()), count == 0);
    }
    return clock.startsAgain() ? acrossMidnight(time, last) : time;
  }

  private double ofDate(String cell) {
    OptionalLong day = clock.dates().days(CellTime.of(cell));
    return CellTime.DAY
        * day.orElseThrow(() -> new IllegalArgumentException("'" + cell + "' is not a date"));
  }

  private double ofFigure(String cell) {
    double figure = figures.value(figures.leading(cell));
    if (!(Math.abs(figure) < FigureColumn.LARGEST)) {
      throw new IllegalArgumentException("'" + cell + "' is beyond any time");
    }
    return clock.form().seconds(figure);
  }

  /** All times are told by the clock of the first row. */
  private double ofClock(String cell, boolean first) {
    CellTime time = CellTime.of(cell);
    boolean pointed = clock.form() == TimeForm.POINTED_CLOCK;
    double seconds =
        pointed ? time.pointed() : time.clock(clock.form() == TimeForm.MINUTES_SECONDS);
    if (!(pointed || time.hasClock()) || Double.isNaN(seconds)) {
      throw new IllegalArgumentException("'" + cell + "' is not a time");
    }
    offset = first ? time.offset() : offset;
    return seconds + offset;
  }

  private double acrossMidnight(double time, double last) {
    if (time + midnights < last - HALF_DAY) {
      midnights += CellTime.DAY;
    }
    return time + midnights;
  }
}
