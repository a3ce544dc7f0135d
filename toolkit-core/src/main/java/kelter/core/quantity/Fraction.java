package kelter.core.quantity;

import java.util.Optional;

/**
 * A number with a vulgar fraction, as on inch rules and motors: {@code 3/4}, {@code 1 1/2}, {@code
 * 1-1/2}. Others, such as {@code 50/60}, are two numbers.
 *
 * @param value the number
 * @param step the size of one part
 * @param rest what stands behind it
 */
record Fraction(double value, double step, String rest) {

  private static final String BETWEEN = " -\u00a0\u2009\u202f";

  /** The fraction with which a text starts; empty if it starts in another way. */
  static Optional<Fraction> of(String text) {
    int slash = text.indexOf('/');
    int over = digitsBefore(text, slash);
    int end = digitsBehind(text, slash);
    if (slash < 0 || over == slash || end == slash + 1 || end - slash > 3 || slash - over > 2) {
      return Optional.empty();
    }
    int parts = Integer.parseInt(text, over, slash, 10);
    int of = Integer.parseInt(text, slash + 1, end, 10);
    String before = text.substring(0, over);
    String whole = before.isEmpty() ? "0" : before.substring(0, before.length() - 1).strip();
    boolean apart = before.isEmpty() || BETWEEN.indexOf(before.charAt(before.length() - 1)) >= 0;
    if (!apart || !isDenominator(of, parts) || parts < 1 || parts >= of || !isWhole(whole)) {
      return Optional.empty();
    }
    double value = Integer.parseInt(whole) + (double) parts / of;
    return Optional.of(new Fraction(value, 1.0 / of, text.substring(end).strip()));
  }

  /** Halves to 64ths of an inch rule, thirds, fifths, tenths, and one part of up to 64. */
  private static boolean isDenominator(int of, int parts) {
    boolean halves = parts == 1 || Integer.bitCount(of) == 1;
    return of == 3 || of == 5 || of == 10 || of >= 2 && of <= 64 && halves;
  }

  private static boolean isWhole(String text) {
    return !text.isEmpty() && text.length() <= 4 && digitsBefore(text, text.length()) == 0;
  }

  private static int digitsBefore(String text, int at) {
    int start = at;
    while (start > 0 && Typed.isDigit(text.charAt(start - 1))) {
      start--;
    }
    return start;
  }

  private static int digitsBehind(String text, int at) {
    int end = at + 1;
    while (end < text.length() && Typed.isDigit(text.charAt(end))) {
      end++;
    }
    return end;
  }
}
