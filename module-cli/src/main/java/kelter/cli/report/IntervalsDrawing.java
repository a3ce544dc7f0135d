package kelter.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import kelter.cli.drawing.Scale;
import kelter.cli.drawing.Svg;
import kelter.core.quantity.QuantityFormat;

/** Figures with their intervals, one below the other over one scale that begins at 0. */
final class IntervalsDrawing {

  private static final double WIDTH = 380;
  private static final double ROW = 42;
  private static final double LEFT = 4;
  private static final double RIGHT = 372;
  private static final double RADIUS = 5;
  private static final double FOOT = 22;

  /**
   * A figure.
   *
   * @param name what it is of
   * @param told the figure as it is told, with its interval
   * @param value the figure, 0 or more
   * @param low the lower end of its interval
   * @param high the upper end
   */
  record Row(String name, String told, double value, double low, double high) {}

  private IntervalsDrawing() {}

  static String of(String id, String title, List<Row> rows) {
    String description =
        rows.stream().map(row -> row.name() + ": " + row.told()).collect(Collectors.joining("; "));
    double height = ROW * rows.size() + FOOT;
    Svg svg = Svg.within(id, WIDTH, height, title, description);
    List<Double> values = new ArrayList<>(List.of(0.0));
    rows.forEach(row -> values.add(row.high()));
    Scale scale = Scale.withNearZero(values, LEFT, RIGHT);
    axis(svg, scale, ROW * rows.size());
    for (int i = 0; i < rows.size(); i++) {
      row(svg, scale, rows.get(i), i * ROW);
    }
    return svg.toString();
  }

  private static void axis(Svg svg, Scale scale, double y) {
    svg.line(LEFT, y, RIGHT, y, "class=\"axis\"");
    for (double each : scale.steps()) {
      double x = scale.place(each);
      svg.line(x, 0, x, y + 4, "class=\"grid\"");
      svg.words(
          x,
          y + 17,
          QuantityFormat.plain(each),
          "class=\"s\" text-anchor=\"" + (x < LEFT + 1 ? "start" : "middle") + "\"");
    }
  }

  private static void row(Svg svg, Scale scale, Row row, double y) {
    svg.words(LEFT, y + 15, row.name(), "class=\"t\"");
    svg.words(RIGHT, y + 15, row.told(), "class=\"s\" text-anchor=\"end\"");
    double middle = y + 29;
    double from = scale.place(row.low());
    double to = scale.place(row.high());
    svg.line(from, middle, to, middle, "class=\"line\"");
    svg.line(from, middle - RADIUS, from, middle + RADIUS, "class=\"line\"");
    svg.line(to, middle - RADIUS, to, middle + RADIUS, "class=\"line\"");
    svg.circle(scale.place(row.value()), middle, RADIUS, "class=\"full\"");
  }
}
