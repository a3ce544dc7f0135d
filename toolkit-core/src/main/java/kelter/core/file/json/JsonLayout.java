package kelter.core.file.json;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.util.Map;

/**
 * How a JSON text is laid out, and new values in the same manner.
 *
 * @param newline what ends a line; empty if the text has one line only
 * @param unit what a level is set in by
 * @param colon what stands between name and value, for instance {@code ": "}
 * @param padded whether a blank stands behind the bracket of an object on one line
 * @param nested whether objects in others stand on one line
 */
record JsonLayout(String newline, String unit, String colon, boolean padded, boolean nested) {

  /** What is longer is set in more than one line. */
  private static final int LONGEST_LINE = 100;

  /** The layout of a text; that of {@link JsonText#write} where the text does not tell. */
  static JsonLayout of(String text, JsonOutline outline) {
    int name = outline.first().name();
    String lead = lead(text, name);
    boolean lines = !newline(lead).isEmpty();
    String between = text.substring(endOfText(text, name), outline.first().value().from());
    boolean oneLine = outline.hasOneLineObjects();
    return new JsonLayout(
        newline(lead),
        lines ? indent(lead) : "",
        between.isBlank() || newline(between).isEmpty() ? between : ": ",
        oneLine && outline.isPadded(),
        oneLine || !lines);
  }

  static boolean isOneLine(String text, int from, int to) {
    for (int i = from; i < to; i++) {
      if (isLineEnd(text.charAt(i))) {
        return false;
      }
    }
    return true;
  }

  private static boolean isLineEnd(char c) {
    return c == '\n' || c == '\r';
  }

  /** The white space before a place. */
  static String lead(String text, int at) {
    int from = at;
    while (from > 0 && isWhite(text.charAt(from - 1))) {
      from--;
    }
    return text.substring(from, at);
  }

  /** White space as RFC 8259, section 2, knows it. */
  private static boolean isWhite(char c) {
    return c == ' ' || c == '\t' || isLineEnd(c);
  }

  /** The last line end of a lead; empty if there is none. */
  static String newline(String lead) {
    int end = lead.length();
    while (end > 0 && !isLineEnd(lead.charAt(end - 1))) {
      end--;
    }
    if (end == 0) {
      return "";
    }
    return end > 1 && lead.startsWith("\r\n", end - 2) ? "\r\n" : lead.substring(end - 1, end);
  }

  /** What follows the last line end of a lead. */
  static String indent(String lead) {
    int end = lead.length();
    while (end > 0 && !isLineEnd(lead.charAt(end - 1))) {
      end--;
    }
    return lead.substring(end);
  }

  /** Behind the closing quotation mark of a text that starts at a place. */
  private static int endOfText(String text, int at) {
    int i = at + 1;
    while (text.charAt(i) != '"') {
      i += text.charAt(i) == '\\' ? 2 : 1;
    }
    return i + 1;
  }

  boolean hasLines() {
    return !newline.isEmpty();
  }

  /**
   * A value as an item of an array.
   *
   * @param indent what its line is set in by
   * @param oneLine whether it stands on one line if there is room
   */
  String item(Json value, String indent, boolean oneLine) {
    String line = line(value);
    return !hasLines() || oneLine && indent.length() + line.length() < LONGEST_LINE
        ? line
        : lines(value, indent);
  }

  /** A value in lines. */
  String lines(Json value, String indent) {
    String inner = indent + unit;
    StringBuilder text = new StringBuilder();
    if (value instanceof Json.Obj object && !object.members().isEmpty()) {
      for (Map.Entry<String, Json> member : object.members().entrySet()) {
        text.append(text.isEmpty() ? "{" : ",").append(newline).append(inner);
        text.append(quoted(member.getKey())).append(colon);
        text.append(nested ? line(member.getValue()) : lines(member.getValue(), inner));
      }
      return text.append(newline).append(indent).append('}').toString();
    }
    if (value instanceof Json.Arr array && !array.items().isEmpty()) {
      for (Json item : array.items()) {
        text.append(text.isEmpty() ? "[" : ",").append(newline).append(inner);
        text.append(item(item, inner, nested));
      }
      return text.append(newline).append(indent).append(']').toString();
    }
    return line(value);
  }

  /** A value on one line. */
  String line(Json value) {
    StringBuilder text = new StringBuilder();
    if (value instanceof Json.Obj object) {
      String pad = padded && !object.members().isEmpty() ? " " : "";
      for (Map.Entry<String, Json> member : object.members().entrySet()) {
        text.append(text.isEmpty() ? "" : comma());
        text.append(quoted(member.getKey())).append(colon).append(line(member.getValue()));
      }
      return "{" + pad + text + pad + "}";
    }
    if (value instanceof Json.Arr array) {
      for (Json item : array.items()) {
        text.append(text.isEmpty() ? "" : comma()).append(line(item));
      }
      return "[" + text + "]";
    }
    return scalar(value);
  }

  String comma() {
    return colon.endsWith(" ") ? ", " : ",";
  }

  private static String scalar(Json value) {
    if (value instanceof Json.Str string) {
      return quoted(string.text());
    }
    return value instanceof Json.Num number ? number.spelling() : value.kind();
  }

  private static String quoted(String text) {
    return '"' + String.valueOf(JsonStringEncoder.getInstance().quoteAsString(text)) + '"';
  }
}
