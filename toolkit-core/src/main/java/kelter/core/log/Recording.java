package kelter.core.log;

import java.util.ArrayList;
import java.util.List;

/** The columns of a log as they come, a row at a time. To be filled by one thread. */
public final class Recording {

  private final List<Series> columns = new ArrayList<>();
  private final List<Series> overRange = new ArrayList<>();
  private final long[] missing;
  private final Spacing spacing = new Spacing();
  private long rows;
  private double lastTime = Double.NaN;

  /**
   * A recording without samples.
   *
   * @param columns how many columns of values it has
   */
  public Recording(int columns) {
    for (int i = 0; i < columns; i++) {
      this.columns.add(new Series());
      overRange.add(new Series());
    }
    missing = new long[columns];
  }

  /**
   * Takes in a row.
   *
   * @param row where it stands in the log, from 1
   * @param time when, in s, not before the last one
   * @param values a value for each column; NaN where there is none, infinite where the instrument
   *     was over its range
   */
  public void add(long row, double time, double[] values) {
    rows++;
    lastTime = time;
    spacing.add(row, time);
    for (int i = 0; i < values.length; i++) {
      if (Double.isNaN(values[i])) {
        missing[i]++;
      } else if (Double.isInfinite(values[i])) {
        overRange.get(i).add(row, time, Math.signum(values[i]));
      } else {
        columns.get(i).add(row, time, values[i]);
      }
    }
  }

  /**
   * How many rows there are.
   *
   * @return the number
   */
  public long rows() {
    return rows;
  }

  /**
   * When the last row was taken.
   *
   * @return the time, in s; NaN without rows
   */
  public double lastTime() {
    return lastTime;
  }

  /**
   * A column.
   *
   * @param column its place, from 0
   * @return its samples
   */
  public Series column(int column) {
    return columns.get(column);
  }

  /**
   * How many rows have no value in a column.
   *
   * @param column its place, from 0
   * @return the number
   */
  public long missing(int column) {
    return missing[column];
  }

  /**
   * The rows in which the instrument was over its range.
   *
   * @param column its place, from 0
   * @return a sample for each such row: 1, or -1 where it was below its range
   */
  public Series overRange(int column) {
    return overRange.get(column);
  }

  /**
   * How the rows follow each other.
   *
   * @return the usual step, gaps, and rows with the same time
   */
  public Spacing spacing() {
    return spacing;
  }
}
