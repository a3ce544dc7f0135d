package kelter.core.quantity;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/** A number as a person writes it, with the size of its last digit. */
record DecimalText(BigDecimal exact) {

  static DecimalText of(String written) {
    String text = written.strip().replace('−', '-');
    return !text.isEmpty() && plainEnd(text) == text.length() ? plain(text) : any(written, text);
  }

  /**
   * The end of the digits, with at most one point among them, with which a text starts; 0 if there
   * are none or the number may go on in another way.
   */
  static int plainEnd(String text) {
    int end = 0;
    int points = 0;
    while (end < text.length()) {
      char c = text.charAt(end);
      points += c == '.' ? 1 : 0;
      if ((c < '0' || c > '9') && (c != '.' || points > 1 || end == 0)) {
        break;
      }
      end++;
    }
    boolean goesOn = end < text.length() && "eE,'.".indexOf(text.charAt(end)) >= 0;
    boolean grouped = end + 1 < text.length() && Character.isDigit(text.charAt(end + 1));
    return goesOn || grouped ? 0 : end;
  }

  /** A number of digits and at most one point. */
  static DecimalText plain(String digits) {
    return finite(new BigDecimal(digits), digits);
  }

  private static DecimalText finite(BigDecimal exact, String written) {
    if (!Double.isFinite(exact.doubleValue())) {
      throw new QuantityFormatException("'" + written.strip() + "' is too large");
    }
    return new DecimalText(exact);
  }

  private static DecimalText any(String written, String withPlainMinus) {
    String text = withPlainMinus;
    if (Patterns.GROUPS.matcher(text).matches()) {
      text = text.replaceAll("[ '\\u2019\\u00a0\\u2009\\u202f]", "");
    }
    if (Patterns.GROUPED_POINT.matcher(text).matches()
        || Patterns.MILLIONS_COMMA.matcher(text).matches()) {
      text = text.replace(",", "");
    } else if (Patterns.MILLIONS_POINT.matcher(text).matches()) {
      text = text.replace(".", "");
    } else if (Patterns.GROUPED_COMMA.matcher(text).matches()) {
      text = text.replace(".", "").replace(',', '.');
    } else if (Patterns.THOUSANDS_OR_DECIMALS.matcher(text).matches()) {
      throw new QuantityFormatException(
          "'%s' may mean %s or %s; write one of them"
              .formatted(text, text.replace(",", ""), text.replace(',', '.')));
    } else {
      text = text.replace(',', '.');
    }
    if (!Patterns.NUMBER.matcher(text).matches()) {
      throw new QuantityFormatException("'" + written.strip() + "' is not a number");
    }
    return finite(new BigDecimal(text), written);
  }

  /**
   * Refuses one group of three digits behind a point where it may stand for thousands: with one to
   * three digits before it that do not start with 0.
   */
  static void refuseThousands(String written) {
    String text = written.strip().replace('−', '-');
    int start = text.startsWith("-") || text.startsWith("+") ? 1 : 0;
    int point = text.indexOf('.');
    int before = point - start;
    if (before < 1 || before > 3 || text.length() != point + 4 || text.charAt(start) == '0') {
      return;
    }
    for (int i = start; i < text.length(); i++) {
      if (i != point && (text.charAt(i) < '0' || text.charAt(i) > '9')) {
        return;
      }
    }
    String digits = text.substring(0, point);
    String behind = text.substring(point + 1);
    String decimals = behind.endsWith("0") ? behind.substring(0, 2) : behind + "0";
    throw new QuantityFormatException(
        "'"
            + text
            + "' may mean thousands or decimals; write "
            + digits
            + behind
            + " or "
            + digits
            + "."
            + decimals);
  }

  double value() {
    return exact.doubleValue();
  }

  double lastDigit() {
    return exact.ulp().doubleValue();
  }

  /** Made ready when the first text needs them. */
  private static final class Patterns {
    static final Pattern GROUPED_POINT = Pattern.compile("[-+]?\\d{1,3}(,\\d{3})+\\.\\d+");
    static final Pattern GROUPED_COMMA = Pattern.compile("[-+]?\\d{1,3}(\\.\\d{3})+,\\d+");
    static final Pattern MILLIONS_COMMA = Pattern.compile("[-+]?\\d{1,3}(,\\d{3}){2,}");
    static final Pattern MILLIONS_POINT = Pattern.compile("[-+]?\\d{1,3}(\\.\\d{3}){2,}");
    static final Pattern THOUSANDS_OR_DECIMALS = Pattern.compile("[-+]?[1-9]\\d{0,2},\\d{3}");
    static final Pattern GROUPS =
        Pattern.compile("[-+]?\\d{1,3}(?:[ '\\u2019\\u00a0\\u2009\\u202f]\\d{3})+(?:[.,]\\d*)?");
    static final Pattern NUMBER =
        Pattern.compile("[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?");

    private Patterns() {}
  }
}
