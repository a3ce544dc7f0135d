package kelter.cli.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kelter.cli.drawing.Scale;
import kelter.cli.drawing.Svg;
import kelter.core.quantity.QuantityFormat;

/** Lines and marks over two axes, told apart by their strokes and named at their ends. */
final class LinesDrawing {

  private static final double WIDTH = 380;
  private static final double HEIGHT = 250;
  private static final double LEFT = 46;
  private static final double RIGHT = 316;
  private static final double TOP = 16;
  private static final double BOTTOM = 210;
  private static final double RADIUS = 6;
  private static final double APART = 15;
  private static final List<String> STROKES = List.of("", "6 4", "2 3", "10 3 2 3");

  /**
   * A line.
   *
   * @param name what stands at its end
   * @param x of its points, rising
   * @param y of its points
   */
  record Line(String name, double[] x, double[] y) {}

  /**
   * A mark.
   *
   * @param name what stands beside it, short
   * @param told the same at length
   * @param x where it lies
   * @param y where it lies; NaN for a line across the whole height
   * @param full whether it is filled
   */
  record Mark(String name, String told, double x, double y, boolean full) {}

  /**
   * What a drawing is about.
   *
   * @param id its id, unique in the page
   * @param title what it is
   * @param description what it shows
   * @param x what runs along the lower axis, with its unit
   * @param y what runs along the other axis, with its unit
   */
  record About(String id, String title, String description, String x, String y) {}

  private final Svg svg;
  private final Scale across;
  private final Scale up;

  private LinesDrawing(About about, List<Line> lines, List<Mark> marks) {
    this.svg = Svg.within(about.id(), WIDTH, HEIGHT, about.title(), about.description());
    List<Double> x = new ArrayList<>();
    List<Double> y = new ArrayList<>();
    for (Line line : lines) {
      Arrays.stream(line.x()).forEach(x::add);
      Arrays.stream(line.y()).forEach(y::add);
    }
    for (Mark mark : marks) {
      x.add(mark.x());
      y.add(mark.y());
    }
    this.across = Scale.withNearZero(x, LEFT, RIGHT);
    this.up = Scale.withNearZero(y, BOTTOM, TOP);
  }

  static String of(About about, List<Line> lines, List<Mark> marks) {
    LinesDrawing drawing = new LinesDrawing(about, lines, marks);
    drawing.axes(about);
    double last = Double.NEGATIVE_INFINITY;
    List<Line> byEnd =
        lines.stream()
            .sorted((one, other) -> Double.compare(drawing.end(one), drawing.end(other)))
            .toList();
    for (Line line : byEnd) {
      double label = Math.max(drawing.end(line) + 4, last + APART);
      drawing.line(line, lines.indexOf(line), label);
      last = label;
    }
    for (int i = 0; i < marks.size(); i++) {
      drawing.mark(marks.get(i), i);
    }
    return drawing.svg.toString();
  }

  private double end(Line line) {
    return up.place(line.y()[line.y().length - 1]);
  }

  private void axes(About about) {
    svg.line(LEFT, BOTTOM, RIGHT, BOTTOM, "class=\"axis\"");
    svg.line(LEFT, BOTTOM, LEFT, TOP, "class=\"axis\"");
    for (double x : across.steps()) {
      svg.line(across.place(x), BOTTOM, across.place(x), BOTTOM + 4, "class=\"axis\"");
      svg.words(
          across.place(x),
          BOTTOM + 17,
          QuantityFormat.plain(x),
          "class=\"s\" text-anchor=\"middle\"");
    }
    for (double y : up.steps()) {
      svg.line(LEFT, up.place(y), RIGHT, up.place(y), "class=\"grid\"");
      svg.words(
          LEFT - 6, up.place(y) + 4, QuantityFormat.plain(y), "class=\"s\" text-anchor=\"end\"");
    }
    svg.words(RIGHT, BOTTOM + 34, about.x(), "class=\"s\" text-anchor=\"end\"");
    svg.words(0, TOP - 4, about.y(), "class=\"s\"");
  }

  private void line(Line line, int number, double label) {
    double[] x = new double[line.x().length];
    double[] y = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = across.place(line.x()[i]);
      y[i] = up.place(line.y()[i]);
    }
    String stroke = STROKES.get(number % STROKES.size());
    svg.points(
        "polyline",
        x,
        y,
        "class=\"line\" stroke-dasharray=\"" + (stroke.isEmpty() ? "none" : stroke) + "\"");
    svg.words(x[x.length - 1] + 8, label, line.name(), "class=\"t\"");
  }

  private void mark(Mark mark, int number) {
    double x = across.place(mark.x());
    if (Double.isNaN(mark.y())) {
      svg.group(mark.told(), () -> across(mark, x, TOP + 10 + APART * number));
      return;
    }
    double y = up.place(mark.y());
    svg.group(
        mark.told(),
        () -> {
          svg.circle(x, y, RADIUS, mark.full() ? "class=\"full\"" : "class=\"open\"");
          svg.words(x + 10, y - 8 + (mark.full() ? 0 : 20), mark.name(), "class=\"s\"");
        });
  }

  private void across(Mark mark, double x, double y) {
    boolean right = x > (LEFT + RIGHT) / 2;
    svg.line(
        x,
        BOTTOM,
        x,
        TOP,
        mark.full() ? "class=\"line\"" : "class=\"line\" stroke-dasharray=\"2 3\"");
    svg.words(
        right ? x - 4 : x + 4,
        y,
        mark.name(),
        "class=\"s\" text-anchor=\"" + (right ? "end" : "start") + "\"");
  }
}
