package kelter.cli.text;

import java.util.Arrays;
import java.util.List;
import kelter.cli.readings.LogReport;
import kelter.core.quantity.QuantityFormat;

/** A column of a log as a small picture, with the steady windows by their numbers below. */
final class Plot {

  private static final int COLUMNS = 60;
  private static final int ROWS = 6;

  private Plot() {}

  static void write(LogReport report, int column, Layout layout) {
    List<double[]> outline = report.log().recording().column(column).outline(COLUMNS);
    double low = outline.stream().mapToDouble(range -> range[0]).filter(Plot::is).min().orElse(0);
    double high = outline.stream().mapToDouble(range -> range[1]).filter(Plot::is).max().orElse(0);
    String top = QuantityFormat.plain(high);
    String bottom = QuantityFormat.plain(low);
    int width = Math.max(top.length(), bottom.length());
    int rows = high > low ? ROWS : 1;
    for (int row = rows - 1; row >= 0; row--) {
      String label = row == rows - 1 ? top : row == 0 ? bottom : "";
      layout.asIs(
          "  "
              + " ".repeat(width - label.length())
              + label
              + " |"
              + cells(outline, low, high, rows, row));
    }
    layout.asIs("  " + " ".repeat(width) + " |" + rail(report, column));
  }

  private static boolean is(double value) {
    return !Double.isNaN(value);
  }

  private static String cells(List<double[]> outline, double low, double high, int rows, int row) {
    StringBuilder line = new StringBuilder();
    for (double[] range : outline) {
      boolean marked =
          is(range[0])
              && at(range[0], low, high, rows) <= row
              && row <= at(range[1], low, high, rows);
      line.append(marked ? '*' : ' ');
    }
    return line.toString().stripTrailing();
  }

  private static int at(double value, double low, double high, int rows) {
    return high > low ? (int) Math.min(rows - 1, rows * (value - low) / (high - low)) : 0;
  }

  /** Under each part of the time the last digit of the number of the window that it lies in. */
  private static String rail(LogReport report, int column) {
    char[] rail = new char[COLUMNS];
    Arrays.fill(rail, '.');
    double length = report.log().recording().lastTime();
    for (LogReport.Numbered numbered : report.windows()) {
      if (numbered.column() == column) {
        int from = part(numbered.steady().window().from(), length);
        int to = part(numbered.steady().window().to(), length);
        Arrays.fill(rail, from, to + 1, (char) ('0' + numbered.number() % 10));
      }
    }
    return new String(rail);
  }

  private static int part(double time, double length) {
    return length == 0 ? 0 : (int) Math.min(COLUMNS - 1, COLUMNS * time / length);
  }
}
