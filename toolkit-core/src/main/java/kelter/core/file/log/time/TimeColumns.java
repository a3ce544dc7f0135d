package kelter.core.file.log.time;

import java.util.ArrayList;
import java.util.List;
import kelter.core.file.log.cell.CellTime;
import kelter.core.file.log.cell.FigureForm;

/**
 * Columns of a log, any of which may hold times; their places count from 0.
 *
 * @param file the name of the log
 * @param headings the headings
 * @param rows the cells of some of the rows
 * @param figures how figures are written
 */
public record TimeColumns(
    String file, List<TimeHeading> headings, List<List<String>> rows, FigureForm figures) {

  private static final double MOST = 0.5;

  /**
   * Where a column is, for a person.
   *
   * @param place its place
   * @return file, column and name
   */
  public String at(int place) {
    return "%s, column %s (%s)".formatted(file, place + 1, headings.get(place).name());
  }

  /**
   * The first cell of a column that is not empty.
   *
   * @param place its place
   * @return the cell, empty if all are
   */
  public String written(int place) {
    return rows.stream()
        .map(row -> row.get(place))
        .filter(cell -> !cell.isEmpty())
        .findFirst()
        .orElse("");
  }

  /**
   * The cells of a column that are times, if most are.
   *
   * @param place its place
   * @return the times, none if they are fewer
   */
  public List<CellTime> times(int place) {
    List<CellTime> times = new ArrayList<>();
    int cells = 0;
    for (List<String> row : rows) {
      cells += row.get(place).isEmpty() ? 0 : 1;
      CellTime time = CellTime.of(row.get(place));
      if (time.isTime()) {
        times.add(time);
      }
    }
    return times.size() > MOST * cells ? times : List.of();
  }

  /**
   * The figures of a column.
   *
   * @param place its place
   * @return the figures, none if a cell is something else
   */
  public double[] told(int place) {
    double[] told = new double[rows.size()];
    for (int i = 0; i < told.length; i++) {
      String cell = rows.get(i).get(place);
      int end = figures.end(cell);
      if (end == 0) {
        return new double[0];
      }
      told[i] = figures.value(cell.substring(0, end));
    }
    return told;
  }
}
