package kelter.cli.weighing;

import kelter.core.quantity.QuantityFormat;
import kelter.core.text.HarmlessText;

/** A drawing under construction (SVG 1.1): the few shapes that a chart needs. */
final class Svg {

  private final StringBuilder text = new StringBuilder();

  /**
   * An empty drawing.
   *
   * @param width its width, in pixels
   * @param height its height, in pixels
   * @param title what it is, for those who do not see it
   * @param description what it shows, for those who do not see it
   */
  Svg(double width, double height, String title, String description) {
    text.append(
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\"")
        .append(number(" width", width))
        .append(number(" height", height))
        .append(" viewBox=\"0 0 " + fixed(width) + " " + fixed(height) + "\"")
        .append(" role=\"img\" aria-labelledby=\"title description\"")
        .append(" font-family=\"Helvetica, Arial, sans-serif\" font-size=\"12\">\n")
        .append("<title id=\"title\">" + escaped(title) + "</title>\n")
        .append("<desc id=\"description\">" + escaped(description) + "</desc>\n");
    rectangle(0, 0, width, height, "fill=\"#ffffff\"");
  }

  void rectangle(double x, double y, double width, double height, String style) {
    text.append("<rect")
        .append(number(" x", x) + number(" y", y))
        .append(number(" width", width) + number(" height", height))
        .append(" " + style + "/>\n");
  }

  void line(double x1, double y1, double x2, double y2, String style) {
    text.append("<line")
        .append(number(" x1", x1) + number(" y1", y1) + number(" x2", x2) + number(" y2", y2))
        .append(" " + style + "/>\n");
  }

  void circle(double x, double y, double radius, String style) {
    text.append("<circle")
        .append(number(" cx", x) + number(" cy", y) + number(" r", radius))
        .append(" " + style + "/>\n");
  }

  /** A line through points, or the area that they enclose. */
  void points(String element, double[] x, double[] y, String style) {
    text.append("<" + element + " points=\"");
    for (int i = 0; i < x.length; i++) {
      text.append(i == 0 ? "" : " ").append(fixed(x[i]) + "," + fixed(y[i]));
    }
    text.append("\" " + style + "/>\n");
  }

  void words(double x, double y, String words, String style) {
    text.append("<text")
        .append(number(" x", x) + number(" y", y))
        .append((style.isEmpty() ? "" : " " + style) + ">" + escaped(words) + "</text>\n");
  }

  /** Shapes that belong together, with the words that a pointer over them shows. */
  void group(String title, Runnable shapes) {
    text.append("<g><title>" + escaped(title) + "</title>\n");
    shapes.run();
    text.append("</g>\n");
  }

  private static String number(String name, double value) {
    return name + "=\"" + fixed(value) + "\"";
  }

  private static String fixed(double value) {
    return QuantityFormat.fixed(value, 1);
  }

  /** Words made harmless, which leaves what XML 1.0 allows, with its signs spelt out. */
  private static String escaped(String words) {
    return HarmlessText.of(words)
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  @Override
  public String toString() {
    return text + "</svg>\n";
  }
}
