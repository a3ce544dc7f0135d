package kelter.core.log.measurement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kelter.core.file.log.Log;
import kelter.core.file.log.LogFormat;
import kelter.core.log.Series;
import kelter.core.log.Spacing;
import kelter.core.log.SteadyRule;
import kelter.core.log.Window;
import kelter.core.log.change.ChangeSearch;
import kelter.core.log.change.LevelChange;

/**
 * What a log shows.
 *
 * @param name the name of the file
 * @param log the log
 * @param gaps the gaps, in the order of time
 * @param windows the steady windows, numbered from 1, column by column
 * @param steps the changes of level, column by column
 */
public record LogReport(
    String name, Log log, List<Spacing.Gap> gaps, List<Numbered> windows, List<ColumnStep> steps) {

  public LogReport {
    gaps = List.copyOf(gaps);
    windows = List.copyOf(windows);
    steps = List.copyOf(steps);
  }

  /**
   * A steady window with its number.
   *
   * @param number its number, from 1
   * @param column the place of its column among those with figures, from 0
   * @param steady the window
   */
  public record Numbered(int number, int column, SteadyRule.Steady steady) {}

  /**
   * A change in a column.
   *
   * @param column the place of the column among those with figures, from 0
   * @param step the change
   */
  public record ColumnStep(int column, LevelChange step) {}

  /**
   * Looks at a log.
   *
   * @param name the name of the file
   * @param log the log
   * @param rule when a column counts as standing still
   * @return what it shows
   */
  public static LogReport of(String name, Log log, SteadyRule rule) {
    Spacing spacing = log.recording().spacing();
    List<Series> columns = new ArrayList<>();
    List<Double> resolutions = new ArrayList<>();
    for (int column = 0; column < log.format().values().size(); column++) {
      columns.add(log.recording().column(column));
      resolutions.add(resolution(log, column));
    }
    List<List<LevelChange>> changes = ChangeSearch.in(columns, spacing.breaks(), resolutions);
    List<Numbered> windows = new ArrayList<>();
    List<ColumnStep> steps = new ArrayList<>();
    for (int column = 0; column < columns.size(); column++) {
      List<Series.Break> breaks = breaks(spacing.breaks(), changes.get(column));
      for (SteadyRule.Steady steady :
          rule.windows(columns.get(column), breaks, resolutions.get(column))) {
        windows.add(new Numbered(windows.size() + 1, column, steady));
      }
      for (LevelChange change : changes.get(column)) {
        steps.add(new ColumnStep(column, change));
      }
    }
    return new LogReport(name, log, spacing.gaps(), windows, steps);
  }

  /** Gaps and changes in the order of rows: no window spans one. */
  private static List<Series.Break> breaks(List<Series.Break> gaps, List<LevelChange> changes) {
    List<Series.Break> breaks = new ArrayList<>(gaps);
    changes.forEach(change -> breaks.add(change.asBreak()));
    breaks.sort(Comparator.comparingLong(Series.Break::lastRow));
    return breaks;
  }

  private static double resolution(Log log, int column) {
    return log.recording().column(column).resolution(log.resolutions().get(column));
  }

  /**
   * The step in which a column is told: its last digit, or a greater step that its samples show.
   *
   * @param column the place of the column among those with figures, from 0
   * @return the step, in the unit of the column; 0 if it is not known
   */
  public double resolution(int column) {
    return resolution(log, column);
  }

  /**
   * A column with figures.
   *
   * @param place its place among those with figures, from 0
   * @return the column
   */
  public LogFormat.Column column(int place) {
    return log.format().values().get(place);
  }

  /**
   * A steady window by its number.
   *
   * @param number the number
   * @return the window, or empty if there is none
   */
  public Optional<Numbered> window(int number) {
    return number < 1 || number > windows.size()
        ? Optional.empty()
        : Optional.of(windows.get(number - 1));
  }

  /**
   * In how many rows of a time the instrument was over its range.
   *
   * @param from the first time, in s after the start of the log
   * @param to the last time, in s after the start of the log
   * @param column the place of the column among those with figures, from 0
   * @return the number of rows
   */
  public long overRange(double from, double to, int column) {
    return log.recording().overRange(column).count(from, to);
  }

  /**
   * A column over the time of a stretch.
   *
   * @param stretch the stretch
   * @param column the place of the column among those with figures, from 0
   * @return the window; empty if the column has fewer than two samples there
   */
  public Optional<Window> over(Stretch stretch, int column) {
    if (stretch.numbered().isPresent() && stretch.numbered().get().column() == column) {
      return Optional.of(stretch.numbered().get().steady().window());
    }
    if (stretch.asked().isPresent()) {
      return stretch.asked().get().columns().get(column).whole();
    }
    return log.recording().column(column).between(stretch.from(), stretch.to());
  }

  /**
   * The samples of a column over the time of a stretch.
   *
   * @param stretch the stretch
   * @param column the place of the column among those with figures, from 0
   * @return the samples, or the means of blocks of them, in order
   */
  public double[] values(Stretch stretch, int column) {
    if (stretch.asked().isPresent()) {
      return stretch.asked().get().columns().get(column).means();
    }
    return log.recording().column(column).means(stretch.from(), stretch.to());
  }
}
