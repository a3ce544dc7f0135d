package kelter.core.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Writes figures and quantities, always with a decimal point. */
public final class QuantityFormat {

  /** The coverage factor of the uncertainty that people see (JCGM 100:2008, 6.3.3): 2. */
  public static final double COVERAGE_FACTOR = 2;

  private static final MathContext FOUR_DIGITS = new MathContext(4, RoundingMode.HALF_EVEN);

  private QuantityFormat() {}

  /**
   * A term with its article, for a person.
   *
   * @param noun for instance {@code insulation resistance}
   * @return for instance {@code an insulation resistance}
   */
  public static String withArticle(String noun) {
    return ("aeio".indexOf(noun.charAt(0)) >= 0 ? "an " : "a ") + noun;
  }

  /**
   * A figure for a person, to four significant digits.
   *
   * @param value the figure
   * @return the shortest plain spelling, or the word for a figure that is not finite
   */
  public static String plain(double value) {
    if (!Double.isFinite(value)) {
      return Double.isNaN(value) ? "not a number" : value > 0 ? "infinite" : "minus infinite";
    }
    if (value == 0) {
      return "0";
    }
    if (!isPlain(value)) {
      return String.format(Locale.ROOT, "%.3e", value);
    }
    BigDecimal rounded = new BigDecimal(value).round(FOUR_DIGITS).stripTrailingZeros();
    return rounded.toPlainString();
  }

  /** Whether a finite figure above or below zero is written without a power of ten. */
  static boolean isPlain(double value) {
    double size = Math.abs(value);
    return size < 1e7 && size >= 1e-4;
  }

  /**
   * A figure with so many decimal places, without the locale data that a format loads.
   *
   * @param value a finite figure
   * @param places how many
   * @return its text, rounded half to even
   */
  public static String fixed(double value, int places) {
    return new BigDecimal(value).setScale(places, RoundingMode.HALF_EVEN).toPlainString();
  }

  /**
   * A figure with its uncertainty for a person: the expanded uncertainty to two significant digits
   * and the figure to the same decimal place (JCGM 100:2008, 7.2.6).
   *
   * @param value the figure
   * @param standardUncertainty its standard uncertainty, same unit
   * @return for instance {@code 26.45 ± 0.12}; without an uncertainty just the figure
   */
  public static String withUncertainty(double value, double standardUncertainty) {
    return withExpanded(value, COVERAGE_FACTOR * standardUncertainty);
  }

  /**
   * A figure with its expanded uncertainty for a person, both to the place of the second digit of
   * the uncertainty (JCGM 100:2008, 7.2.6).
   *
   * @param value the figure
   * @param expanded its expanded uncertainty, same unit
   * @return for instance {@code 26.45 ± 0.12}; without an uncertainty just the figure
   */
  public static String withExpanded(double value, double expanded) {
    if (!(expanded > 0) || !Double.isFinite(expanded) || !Double.isFinite(value)) {
      return plain(value);
    }
    BigDecimal u = new BigDecimal(expanded).round(new MathContext(2, RoundingMode.HALF_UP));
    int scale = u.scale();
    if (scale > 9 || scale < -6) {
      return String.format(Locale.ROOT, "%.3e ± %.1e", value, expanded);
    }
    return fixed(value, scale) + " ± " + u.toPlainString();
  }

  /**
   * A figure as it is written into a file: three decimals that might be taken for thousands have a
   * fourth.
   *
   * @param value the figure
   * @return its text, which is read back as the same
   */
  public static String written(BigDecimal value) {
    String text = value.toPlainString();
    return DecimalText.isDoubtful(text) ? text + "0" : text;
  }

  static String display(Quantity quantity) {
    String symbol = quantity.unit().symbol();
    String gauge = quantity.kind().scale() == Scale.ABSOLUTE_PRESSURE ? " absolute" : "";
    double u = quantity.standardUncertainty();
    String figure = withUncertainty(quantity.value(), u);
    if (symbol.isEmpty()) {
      return figure;
    }
    int sign = figure.indexOf(" ± ");
    if (sign < 0) {
      return figure + " " + symbol + gauge;
    }
    return figure.substring(0, sign) + " " + symbol + gauge + figure.substring(sign);
  }

  static String exact(Quantity quantity) {
    String unit = quantity.unit().code();
    String text = number(quantity.value()) + (unit.equals("1") ? "" : " " + unit);
    double u = quantity.standardUncertainty();
    return u == 0 ? text : text + " ± " + number(u) + " (k=1)";
  }

  /** Three decimals that might be taken for thousands are told with a fourth. */
  private static String number(double value) {
    if (value == Math.rint(value) && Math.abs(value) < 1e15) {
      return Long.toString((long) value);
    }
    String text = Double.toString(value);
    return DecimalText.isDoubtful(text) ? text + "0" : text;
  }
}
