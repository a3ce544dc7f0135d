package kelter.cli.drawing;

import kelter.core.quantity.QuantityFormat;
import kelter.core.text.HarmlessText;

/** A drawing under construction (SVG 1.1): the few shapes that a chart needs. */
public final class Svg {

  private final StringBuilder text = new StringBuilder();

  private Svg() {}

  /**
   * An empty drawing that is a file of its own, on white.
   *
   * @param width its width, in pixels
   * @param height its height, in pixels
   * @param title what it is, for those who do not see it
   * @param description what it shows, for those who do not see it
   */
  public Svg(double width, double height, String title, String description) {
    text.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    begin("", width, height, title, description);
    rectangle(0, 0, width, height, "fill=\"#ffffff\"");
  }

  /**
   * An empty drawing within a page, which says by its classes what the page draws it with.
   *
   * @param id its id, unique in the page
   * @param width its width, in pixels
   * @param height its height, in pixels
   * @param title what it is, for those who do not see it
   * @param description what it shows, for those who do not see it
   * @return the drawing
   */
  public static Svg within(
      String id, double width, double height, String title, String description) {
    Svg svg = new Svg();
    svg.begin(id + "-", width, height, title, description);
    return svg;
  }

  private void begin(String prefix, double width, double height, String title, String description) {
    text.append("<svg xmlns=\"http://www.w3.org/2000/svg\"")
        .append(number(" width", width))
        .append(number(" height", height))
        .append(" viewBox=\"0 0 " + fixed(width) + " " + fixed(height) + "\"")
        .append(" role=\"img\" aria-labelledby=\"%stitle %sdescription\"".formatted(prefix, prefix))
        .append(" font-family=\"Helvetica, Arial, sans-serif\" font-size=\"12\">\n")
        .append("<title id=\"" + prefix + "title\">" + escaped(title) + "</title>\n")
        .append("<desc id=\"" + prefix + "description\">" + escaped(description) + "</desc>\n");
  }

  /**
   * A rectangle.
   *
   * @param x its left side
   * @param y its upper side
   * @param width its width
   * @param height its height
   * @param style its attributes
   */
  public void rectangle(double x, double y, double width, double height, String style) {
    text.append("<rect")
        .append(number(" x", x) + number(" y", y))
        .append(number(" width", width) + number(" height", height))
        .append(" " + style + "/>\n");
  }

  /**
   * A straight line.
   *
   * @param x1 where it begins
   * @param y1 where it begins
   * @param x2 where it ends
   * @param y2 where it ends
   * @param style its attributes
   */
  public void line(double x1, double y1, double x2, double y2, String style) {
    text.append("<line")
        .append(number(" x1", x1) + number(" y1", y1) + number(" x2", x2) + number(" y2", y2))
        .append(" " + style + "/>\n");
  }

  /**
   * A circle.
   *
   * @param x its middle
   * @param y its middle
   * @param radius its radius
   * @param style its attributes
   */
  public void circle(double x, double y, double radius, String style) {
    text.append("<circle")
        .append(number(" cx", x) + number(" cy", y) + number(" r", radius))
        .append(" " + style + "/>\n");
  }

  /**
   * A line through points, or the area that they enclose.
   *
   * @param element {@code polyline} or {@code polygon}
   * @param x of each point
   * @param y of each point
   * @param style its attributes
   */
  public void points(String element, double[] x, double[] y, String style) {
    text.append("<" + element + " points=\"");
    for (int i = 0; i < x.length; i++) {
      text.append(i == 0 ? "" : " ").append(fixed(x[i]) + "," + fixed(y[i]));
    }
    text.append("\" " + style + "/>\n");
  }

  /**
   * A line of words.
   *
   * @param x where it stands
   * @param y its base line
   * @param words the words
   * @param style its attributes, may be empty
   */
  public void words(double x, double y, String words, String style) {
    text.append("<text")
        .append(number(" x", x) + number(" y", y))
        .append((style.isEmpty() ? "" : " " + style) + ">" + escaped(words) + "</text>\n");
  }

  /**
   * Shapes that belong together, with the words that a pointer over them shows.
   *
   * @param title the words
   * @param shapes draws them
   */
  public void group(String title, Runnable shapes) {
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
