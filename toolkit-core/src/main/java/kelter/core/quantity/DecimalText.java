package kelter.core.quantity;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/** A number as a person writes it, with the size of its last digit. */
record DecimalText(BigDecimal exact) {

  private static final Pattern GROUPED_POINT = Pattern.compile("[-+]?\\d{1,3}(,\\d{3})+\\.\\d+");
  private static final Pattern GROUPED_COMMA = Pattern.compile("[-+]?\\d{1,3}(\\.\\d{3})+,\\d+");
  private static final Pattern MILLIONS_COMMA = Pattern.compile("[-+]?\\d{1,3}(,\\d{3}){2,}");
  private static final Pattern MILLIONS_POINT = Pattern.compile("[-+]?\\d{1,3}(\\.\\d{3}){2,}");
  private static final Pattern THOUSANDS_OR_DECIMALS = Pattern.compile("[-+]?[1-9]\\d{0,2},\\d{3}");
  private static final Pattern GROUPS =
      Pattern.compile("[-+]?\\d{1,3}(?:[ '\\u2019\\u00a0\\u2009\\u202f]\\d{3})+(?:[.,]\\d*)?");
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?");

  static DecimalText of(String written) {
    String text = written.strip().replace('−', '-');
    if (GROUPS.matcher(text).matches()) {
      text = text.replaceAll("[ '\\u2019\\u00a0\\u2009\\u202f]", "");
    }
    if (GROUPED_POINT.matcher(text).matches() || MILLIONS_COMMA.matcher(text).matches()) {
      text = text.replace(",", "");
    } else if (MILLIONS_POINT.matcher(text).matches()) {
      text = text.replace(".", "");
    } else if (GROUPED_COMMA.matcher(text).matches()) {
      text = text.replace(".", "").replace(',', '.');
    } else if (THOUSANDS_OR_DECIMALS.matcher(text).matches()) {
      throw new QuantityFormatException(
          "'%s' may mean %s or %s; write one of them"
              .formatted(text, text.replace(",", ""), text.replace(',', '.')));
    } else {
      text = text.replace(',', '.');
    }
    if (!NUMBER.matcher(text).matches()) {
      throw new QuantityFormatException("'" + written.strip() + "' is not a number");
    }
    BigDecimal exact = new BigDecimal(text);
    if (!Double.isFinite(exact.doubleValue())) {
      throw new QuantityFormatException("'" + written.strip() + "' is too large");
    }
    return new DecimalText(exact);
  }

  double value() {
    return exact.doubleValue();
  }

  double lastDigit() {
    return exact.ulp().doubleValue();
  }
}
