package kelter.core.text;

import java.util.Locale;

/**
 * Text of others made harmless for whoever looks at it. A sign that does something instead of being
 * seen is shown by its number, as in {@code <U+001B>}: control characters with line ends and tabs,
 * marks of direction and other invisible format characters, separators of lines and paragraphs,
 * halves of surrogate pairs, and what Unicode keeps for no character. Letters of every script,
 * their combining marks, and the joiners that some scripts and emoji need stay as they are.
 *
 * <p>What it gives is one line. It says nothing about the syntax that the text is put into: JSON
 * and XML have their own escapes on top.
 *
 * <p>Source: The Unicode Standard, 4.5 (general categories), 23.7 (noncharacters); Unicode
 * Technical Report 36, section 2.2 on what changes the order of text.
 */
public final class HarmlessText {

  private static final int NON_JOINER = 0x200c;
  private static final int JOINER = 0x200d;

  private HarmlessText() {}

  /**
   * A text that can be shown.
   *
   * @param text any text
   * @return the same text, or one line in which signs that are not to be seen stand as numbers
   */
  public static String of(String text) {
    for (int i = 0; i < text.length(); i++) {
      char sign = text.charAt(i);
      if ((sign < ' ' || sign > '~') && isHarmful(text.codePointAt(i))) {
        return shown(text);
      }
      if (Character.isHighSurrogate(sign)) {
        i++;
      }
    }
    return text;
  }

  private static String shown(String text) {
    StringBuilder shown = new StringBuilder(text.length() + 16);
    for (int i = 0; i < text.length(); ) {
      int sign = text.codePointAt(i);
      if (isHarmful(sign)) {
        shown.append(number(sign));
      } else {
        shown.appendCodePoint(sign);
      }
      i += Character.charCount(sign);
    }
    return shown.toString();
  }

  /**
   * A JSON document that can be shown and still says the same.
   *
   * @param json a valid JSON document, which has such characters within strings only
   * @return the document with escapes for them, as in {@code \\u202E}
   */
  public static String inJson(String json) {
    StringBuilder escaped = null;
    for (int i = 0; i < json.length(); ) {
      int sign = json.codePointAt(i);
      int end = i + Character.charCount(sign);
      if (sign > '~' && isHarmful(sign)) {
        escaped = escaped == null ? new StringBuilder(json.substring(0, i)) : escaped;
        for (int unit = i; unit < end; unit++) {
          escaped.append("\\u").append(hexadecimal(json.charAt(unit)));
        }
      } else if (escaped != null) {
        escaped.appendCodePoint(sign);
      }
      i = end;
    }
    return escaped == null ? json : escaped.toString();
  }

  /**
   * A character by its number.
   *
   * @param codePoint the code point
   * @return as {@code <U+00FC>}, four digits or more
   */
  public static String number(int codePoint) {
    return "<U+" + hexadecimal(codePoint) + ">";
  }

  private static String hexadecimal(int number) {
    String digits = Integer.toHexString(number).toUpperCase(Locale.ROOT);
    return "0".repeat(Math.max(0, 4 - digits.length())) + digits;
  }

  /**
   * Whether a character does something instead of being seen.
   *
   * @param codePoint the code point; a half of a surrogate pair stands for itself
   * @return true if it must not be shown as it is
   */
  public static boolean isHarmful(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE ->
          true;
      case Character.FORMAT ->
          codePoint != NON_JOINER && codePoint != JOINER && !isSignOfScript(codePoint);
      case Character.UNASSIGNED ->
          (codePoint & 0xfffe) == 0xfffe || codePoint >= 0xfdd0 && codePoint <= 0xfdef;
      default -> false;
    };
  }

  /**
   * Whether a format character is a sign of a script that is seen: those with the property
   * Prepended_Concatenation_Mark, for instance the Arabic number sign.
   */
  private static boolean isSignOfScript(int codePoint) {
    return codePoint >= 0x600 && codePoint <= 0x605
        || codePoint == 0x6dd
        || codePoint == 0x70f
        || codePoint == 0x890
        || codePoint == 0x891
        || codePoint == 0x8e2
        || codePoint == 0x110bd
        || codePoint == 0x110cd;
  }
}
