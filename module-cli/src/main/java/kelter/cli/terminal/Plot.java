package kelter.cli.terminal;

import java.util.ArrayList;
import java.util.List;
import kelter.core.quantity.QuantityFormat;

/** A small picture in characters: values over time. */
public final class Plot {

  private static final int ROWS = 6;

  private Plot() {}

  /**
   * Draws a picture.
   *
   * @param outline the least and the greatest value in each column of it, or NaN twice
   * @param rail what stands below each column
   * @return its lines
   */
  public static List<String> lines(List<double[]> outline, String rail) {
    double low = outline.stream().mapToDouble(range -> range[0]).filter(Plot::is).min().orElse(0);
    double high = outline.stream().mapToDouble(range -> range[1]).filter(Plot::is).max().orElse(0);
    String top = QuantityFormat.plain(high);
    String bottom = QuantityFormat.plain(low);
    int width = Math.max(top.length(), bottom.length());
    int rows = high > low ? ROWS : 1;
    List<String> lines = new ArrayList<>();
    for (int row = rows - 1; row >= 0; row--) {
      String label = row == rows - 1 ? top : row == 0 ? bottom : "";
      lines.add(
          "  "
              + " ".repeat(width - label.length())
              + label
              + " |"
              + cells(outline, low, high, rows, row));
    }
    lines.add("  " + " ".repeat(width) + " |" + rail);
    return lines;
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
}
