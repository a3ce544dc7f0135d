package kelter.cli.report;

import java.util.List;
import java.util.stream.Collectors;
import kelter.cli.drawing.Svg;

/** How likely faults were as found, and are as left: two bars for each. */
final class OddsDrawing {

  private static final double WIDTH = 380;
  private static final double ROW = 50;
  private static final double LEFT = 62;
  private static final double LENGTH = 250;
  private static final double BAR = 10;

  /** Longer words than a chance stand in the place of the bar. */
  private static final int LONGEST_BESIDE = 8;

  /**
   * A fault.
   *
   * @param title its title
   * @param found its chance as found, as it is told
   * @param foundShare the same from 0 to 1
   * @param left its chance as left, as it is told
   * @param leftShare the same from 0 to 1
   */
  record Row(String title, String found, double foundShare, String left, double leftShare) {}

  private OddsDrawing() {}

  static String of(List<Row> rows) {
    String description =
        rows.stream()
            .map(row -> row.title() + ": " + row.found() + ", then " + row.left())
            .collect(Collectors.joining("; "));
    Svg svg =
        Svg.within(
            "odds",
            WIDTH,
            ROW * rows.size() + 4,
            "What may be wrong, before and after",
            description);
    for (int i = 0; i < rows.size(); i++) {
      row(svg, rows.get(i), i * ROW);
    }
    return svg.toString();
  }

  private static void row(Svg svg, Row row, double y) {
    svg.words(0, y + 12, row.title(), "class=\"t\"");
    bar(svg, y + 18, "as found", row.foundShare(), row.found(), "class=\"band\"");
    bar(svg, y + 33, "as left", row.leftShare(), row.left(), "class=\"full\"");
  }

  private static void bar(
      Svg svg, double y, String label, double share, String told, String style) {
    svg.words(0, y + 9, label, "class=\"s\"");
    if (told.length() > LONGEST_BESIDE) {
      svg.words(LEFT, y + 9, told, "class=\"s\"");
      return;
    }
    svg.rectangle(LEFT, y, LENGTH, BAR, "class=\"frame\"");
    svg.rectangle(LEFT, y, LENGTH * share, BAR, style);
    svg.words(LEFT + LENGTH + 8, y + 9, told, "class=\"s\"");
  }
}
