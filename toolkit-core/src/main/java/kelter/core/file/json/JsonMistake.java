package kelter.core.file.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is wrong with a text that is no JSON, in words of somebody who types it. */
final class JsonMistake {

  private static final Pattern SIGN = Pattern.compile("\\(code (\\d+)");
  private static final Pattern CLOSED =
      Pattern.compile("close marker '(.)': expected '(.)'.*line: (\\d+), column: (\\d+)");
  private static final Pattern TOKEN = Pattern.compile("Unrecognized token '([^']*)'");

  private static final String COMMENTS = "comments are not allowed in JSON; take it out";
  private static final String QUOTATION_MARKS = "'`\u2018\u2019\u201c\u201d\u201e\u00ab\u00bb";

  private JsonMistake() {}

  /**
   * A mistake.
   *
   * @param refused what the parser says
   * @param text the text
   * @return what is wrong at the place that the parser names, and how to mend it
   */
  static String words(JsonProcessingException refused, String text) {
    String bracket = bracketBehindComma(refused.getLocation(), text);
    if (!bracket.isEmpty()) {
      return "a comma stands before " + bracket + "; take it out";
    }
    String message = refused.getOriginalMessage().replaceAll("\\s+", " ");
    Matcher sign = SIGN.matcher(message);
    return words(message, sign.find() ? Integer.parseInt(sign.group(1)) : -1);
  }

  private static String words(String message, int sign) {
    if (message.startsWith("Non-standard token")) {
      return "NaN and Infinity are not numbers";
    }
    if (message.contains("was expecting comma to separate")) {
      return "a comma is missing before this";
    }
    if (message.startsWith("Unexpected end-of-input")) {
      return "the text ends too early; a bracket or a quotation mark is missing";
    }
    if (message.contains("close marker")) {
      return closed(message);
    }
    if (sign == '/' || sign == '#') {
      return COMMENTS;
    }
    if (message.contains("was expecting a colon")) {
      return "a colon is missing between a name and its value";
    }
    if (message.contains("in a String value") || message.contains("has to be escaped")) {
      return "a line break or another control character stands in a text; close the text with a"
          + " quotation mark, or write \\n or \\t";
    }
    if (message.contains("only regular white space") || message.contains("CTRL-CHAR")) {
      return "a control character stands here; take it out";
    }
    if (message.contains("escape")) {
      return "a backslash in a text stands before \", \\, /, b, f, n, r, t or u and four digits"
          + " (0 to 9, a to f); write \\\\ for a backslash itself";
    }
    if (QUOTATION_MARKS.indexOf(sign) >= 0) {
      return "the quotation mark %s is not one of JSON; write \"".formatted(shown(sign));
    }
    return message.toLowerCase(Locale.ROOT).contains("numeric value")
        ? number(message)
        : value(message, sign);
  }

  private static String closed(String message) {
    Matcher closed = CLOSED.matcher(message);
    return closed.find()
        ? "'%s' stands where '%s' is expected, for the bracket of line %s, column %s"
            .formatted(closed.group(1), closed.group(2), closed.group(3), closed.group(4))
        : "a closing bracket too many";
  }

  private static String number(String message) {
    if (message.contains("plus sign")) {
      return "a number has no + before it; take it out";
    }
    return message.contains("Leading zeroes")
        ? "a number does not begin with 0 and another digit; leave out the 0"
        : "the number is not complete";
  }

  private static String value(String message, int sign) {
    Matcher token = TOKEN.matcher(message);
    if (token.find()) {
      return "'%s' is no value; a text stands in \"quotation marks\"".formatted(token.group(1));
    }
    String found = sign < 0 ? "" : ", not " + shown(sign);
    return message.contains("field name")
        ? "a name in \"quotation marks\" is expected" + found
        : "a value is expected here" + found;
  }

  private static String shown(int sign) {
    return sign == '\'' ? "'" : "'" + Character.toString(sign) + "'";
  }

  /** The closing bracket at a place if a comma stands before it, else nothing. */
  private static String bracketBehindComma(JsonLocation location, String text) {
    int at = location == null ? -1 : (int) Math.min(location.getCharOffset(), text.length() - 1);
    while (at > 0 && at >= location.getCharOffset() - 1 && "]}".indexOf(text.charAt(at)) < 0) {
      at--;
    }
    int before = at - 1;
    while (before > 0 && Character.isWhitespace(text.charAt(before))) {
      before--;
    }
    boolean comma = before > 0 && text.charAt(before) == ',' && "]}".indexOf(text.charAt(at)) >= 0;
    return comma ? text.substring(at, at + 1) : "";
  }
}
