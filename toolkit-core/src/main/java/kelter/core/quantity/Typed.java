package kelter.core.quantity;

/** Characters as people type them, made into those by which quantities are written. */
final class Typed {

  private static final String FRACTIONS = "½¼¾⅓⅔⅛⅜⅝⅞";
  private static final String[] WRITTEN = {
    "1/2", "1/4", "3/4", "1/3", "2/3", "1/8", "3/8", "5/8", "7/8"
  };

  private Typed() {}

  static String of(String text) {
    StringBuilder plain = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      append(text.charAt(i), plain);
    }
    return plain.toString().replace("''", "\"").strip();
  }

  private static void append(char c, StringBuilder plain) {
    int fraction = FRACTIONS.indexOf(c);
    if (fraction >= 0) {
      boolean behindDigit = plain.length() > 0 && isDigit(plain.charAt(plain.length() - 1));
      plain.append(behindDigit ? " " : "").append(WRITTEN[fraction]);
      return;
    }
    switch (c) {
      case 'º', '˚' -> plain.append('°');
      case '℃' -> plain.append("°C");
      case '℉' -> plain.append("°F");
      case '⁄' -> plain.append('/');
      case '″', '”', '“' -> plain.append('"');
      case '′' -> plain.append('\'');
      default -> plain.append(c);
    }
  }

  static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}
