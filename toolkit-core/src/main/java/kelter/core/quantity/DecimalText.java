package kelter.core.quantity;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.function.DoublePredicate;
import java.util.regex.Pattern;

/** A number as a person writes it, with the size of its last digit. */
record DecimalText(BigDecimal exact) {

  private static final int LONGEST_EXPONENT = 6;

  /** A number; one that may mean thousands or decimals is refused. */
  static DecimalText of(String written) {
    String text = withPlainMinus(written);
    return isDoubtful(text) ? thousandsOrDecimals(text, any -> true) : certain(text);
  }

  /**
   * A number. A mark before three digits stands for thousands or for decimals; it is refused only
   * where both can be.
   */
  static DecimalText of(String written, DoublePredicate can) {
    String text = withPlainMinus(written);
    return isDoubtful(text) ? thousandsOrDecimals(text, can) : certain(text);
  }

  private static String withPlainMinus(String written) {
    return written.strip().replace('−', '-');
  }

  private static DecimalText certain(String text) {
    return !text.isEmpty() && plainEnd(text) == text.length() ? plain(text) : any(text);
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
    return finite(digits, digits);
  }

  private static DecimalText finite(String digits, String written) {
    int exponent = digits.toLowerCase(Locale.ROOT).indexOf('e');
    // What is longer than any exponent of a double need not be worked out.
    boolean huge = exponent >= 0 && digits.length() - exponent > LONGEST_EXPONENT;
    BigDecimal exact = huge ? null : new BigDecimal(digits);
    if (huge || !Double.isFinite(exact.doubleValue())) {
      throw new QuantityFormatException("'" + written + "' is too large or too small");
    }
    return new DecimalText(exact);
  }

  private static DecimalText any(String written) {
    String text = written;
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
    } else {
      text = text.replace(',', '.');
    }
    if (!Patterns.NUMBER.matcher(text).matches()) {
      throw new QuantityFormatException("'" + written + "' is not a number");
    }
    return finite(text, written);
  }

  /**
   * Whether a number has one mark, with three digits behind it and one to three before it that do
   * not start with 0.
   */
  static boolean isDoubtful(String text) {
    int start = text.startsWith("-") || text.startsWith("+") ? 1 : 0;
    int mark = Math.max(text.indexOf('.'), text.indexOf(','));
    int before = mark - start;
    if (before < 1 || before > 3 || text.length() != mark + 4 || text.charAt(start) == '0') {
      return false;
    }
    for (int i = start; i < text.length(); i++) {
      if (i != mark && (text.charAt(i) < '0' || text.charAt(i) > '9')) {
        return false;
      }
    }
    return true;
  }

  private static DecimalText thousandsOrDecimals(String text, DoublePredicate can) {
    int mark = text.length() - 4;
    String behind = text.substring(mark + 1);
    String thousands = text.substring(0, mark) + behind;
    boolean mayBeThousands = can.test(Double.parseDouble(thousands));
    if (!mayBeThousands || !can.test(Double.parseDouble(thousands) / 1000)) {
      return plain(mayBeThousands ? thousands : text.replace(',', '.'));
    }
    String decimals = behind.endsWith("0") ? behind.substring(0, 2) : behind + "0";
    throw new QuantityFormatException(
        "'"
            + text
            + "' may mean thousands or decimals; write "
            + thousands
            + " or "
            + text.substring(0, mark)
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
    static final Pattern GROUPS =
        Pattern.compile("[-+]?\\d{1,3}(?:[ '\\u2019\\u00a0\\u2009\\u202f]\\d{3})+(?:[.,]\\d*)?");
    static final Pattern NUMBER =
        Pattern.compile("[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?");

    private Patterns() {}
  }
}
