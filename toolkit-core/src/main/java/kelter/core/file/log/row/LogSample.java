package kelter.core.file.log.row;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import kelter.core.file.log.cell.CellTime;

/**
 * Rows of a log of which each shows something that those before it do not: a cell of another shape,
 * or another date or hour.
 */
public final class LogSample {

  private static final int MOST_ROWS = 4000;
  private static final int MOST_SHAPES = 50_000;

  /** So much of a time tells its date, or its hour and minute. */
  private static final int OF_TIME = 11;

  private final Set<String> seen = new HashSet<>();
  private final List<List<String>> rows = new ArrayList<>();

  /** Nothing is seen yet. */
  public LogSample() {}

  /**
   * Keeps a row if it shows something new.
   *
   * @param row its cells
   */
  public void take(List<String> row) {
    boolean more = false;
    for (int i = 0; i < row.size() && seen.size() < MOST_SHAPES; i++) {
      more |= seen.add(i + shape(row.get(i)));
    }
    if (more && rows.size() < MOST_ROWS) {
      rows.add(List.copyOf(row));
    }
  }

  /**
   * The rows that were kept.
   *
   * @return the rows, in order
   */
  public List<List<String>> rows() {
    return rows;
  }

  private static String shape(String cell) {
    CellTime time = CellTime.of(cell);
    if (time.isTime()) {
      int of = time.hasDate() ? OF_TIME : OF_TIME / 2;
      return " " + cell.length() + cell.substring(0, Math.min(of, cell.length()));
    }
    StringBuilder shape = new StringBuilder(cell.length());
    for (int i = 0; i < cell.length(); i++) {
      char c = cell.charAt(i);
      shape.append(c >= '1' && c <= '9' ? '9' : c);
    }
    return shape.toString();
  }
}
