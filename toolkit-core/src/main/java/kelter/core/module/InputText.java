package kelter.core.module;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kelter.core.quantity.Expected;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormatException;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import kelter.core.quantity.Unit;
import kelter.core.uncertainty.ErrorTerm;
import kelter.core.uncertainty.InputQuantity;
import kelter.core.uncertainty.Shape;

/**
 * Reads an input quantity as a person writes it: {@code 26.4 ohm}, {@code 26.4 ohm ± 0.3}, {@code
 * 26.4 ohm ± 0.3 (k=2)}, {@code 26.4 ohm ± 0.3 (k=2.26, dof=9)}, {@code 26.4 ohm ± 0.3
 * (triangular)}, {@code 26.4 ohm ± 1 % ± 0.3}, or several readings, {@code 26.4 ohm; 26.3 ohm; 26.4
 * ohm ± 0.3}.
 *
 * <p>What stands behind {@code ±} without a word is taken as limits of error with a rectangular
 * distribution (JCGM 100:2008, 4.3.7), with a coverage factor as normal, with a coverage factor and
 * degrees of freedom as Student's t. Several readings give their mean and a component of their own
 * for its scatter.
 */
final class InputText {

  private static final int MAX_LENGTH = 1000;

  /** Coverage factors and degrees of freedom are less than a thousand, or told without decimals. */
  private static final Expected FACTORS = new Expected(QuantityKind.RATIO, 0, 999);

  private InputText() {}

  /**
   * An input as it was written.
   *
   * @param quantity the input
   * @param unit the unit in which it was written, of several readings that of the last
   */
  public record Written(InputQuantity quantity, Unit unit) {}

  /**
   * Reads an input quantity.
   *
   * @param text what a person wrote
   * @param kind what is expected
   * @return the input
   * @throws QuantityFormatException if it cannot be read; the message says what can
   */
  public static InputQuantity parse(String text, QuantityKind kind) {
    return read(text, Expected.of(kind)).quantity();
  }

  /**
   * Reads an input quantity of which it is known what it can be.
   *
   * @param text what a person wrote
   * @param expected what is expected; it settles what might be read in two ways, and no more
   * @return the input with its unit
   * @throws QuantityFormatException if it cannot be read; the message says what can
   */
  public static Written read(String text, Expected expected) {
    QuantityKind kind = expected.kind();
    if (text.length() > MAX_LENGTH) {
      throw new QuantityFormatException("an input has at most " + MAX_LENGTH + " characters");
    }
    String[] parts = Patterns.PLUS_MINUS.split(text, -1);
    if (parts.length == 1 && text.indexOf(';') < 0) {
      Quantity exact = QuantityParser.parse(text, expected);
      return new Written(InputQuantity.exact(exact.si()), exact.unit());
    }
    String[] readings = parts[0].split(";", -1);
    if (parts.length > 1) {
      // The unit may stand behind the uncertainty only, so the last value is read together with it.
      readings[readings.length - 1] += "±" + Patterns.OPTIONS.matcher(parts[1]).replaceFirst("");
    }
    double[] values = new double[readings.length];
    Quantity read = null;
    for (int i = 0; i < values.length; i++) {
      if (readings[i].isBlank()) {
        throw new QuantityFormatException("'" + text.strip() + "' has an empty reading");
      }
      read = QuantityParser.parse(readings[i], expected);
      values[i] = read.si();
    }
    InputQuantity input =
        values.length == 1 ? InputQuantity.exact(values[0]) : InputQuantity.mean(values);
    Quantity told = new Quantity(kind.fromSi(input.value(), read.unit()), 0, read.unit(), kind);
    List<ErrorTerm> terms = new ArrayList<>(input.terms());
    for (int i = 1; i < parts.length; i++) {
      terms.add(term(told, parts[i]));
    }
    return new Written(new InputQuantity(input.value(), terms), read.unit());
  }

  private static ErrorTerm term(Quantity value, String part) {
    Matcher matcher = Patterns.OPTIONS.matcher(part);
    boolean stated = matcher.find();
    String width = stated ? part.substring(0, matcher.start()) : part;
    double halfWidth = halfWidth(value, width.strip());
    return stated
        ? stated(matcher.group("options"), halfWidth)
        : ErrorTerm.within(Shape.RECTANGULAR, halfWidth);
  }

  /** The figure behind ±, in the coherent SI unit; per cent are of the value. */
  private static double halfWidth(Quantity value, String width) {
    return QuantityParser.parse(value.format() + " ± " + width + " (k=1)", value.kind())
        .standardUncertaintySi();
  }

  private static ErrorTerm stated(String options, double halfWidth) {
    double k = Double.NaN;
    double dof = Double.POSITIVE_INFINITY;
    Shape shape = null;
    for (String option : Patterns.COMMA.split(options)) {
      String word = option.strip().toLowerCase(Locale.ROOT);
      if (word.startsWith("k")) {
        k = figure(word, "a coverage factor k");
      } else if (word.startsWith("dof")) {
        dof = figure(word, "the degrees of freedom dof");
      } else {
        shape = shape(word);
      }
    }
    return term(shape, halfWidth, k, dof);
  }

  private static ErrorTerm term(Shape shape, double halfWidth, double k, double dof) {
    boolean limited = shape != null && !Double.isNaN(shape.divisor());
    if (limited != Double.isNaN(k)) {
      throw new QuantityFormatException(
          limited
              ? "a " + shape.words() + " distribution has limits and no coverage factor k"
              : "without limits a coverage factor is needed, for instance (k=2)");
    }
    boolean known = Double.isInfinite(dof);
    if (shape == Shape.STUDENT_T && known) {
      throw new QuantityFormatException(
          "a t distribution needs its degrees of freedom, for instance (t, k=2.26, dof=9)");
    }
    double u = halfWidth / (limited ? shape.divisor() : k);
    if (!Double.isFinite(u)) {
      throw new QuantityFormatException("a coverage factor of " + k + " is too small");
    }
    if (limited) {
      return new ErrorTerm(ErrorTerm.STATED, shape, u, dof, false);
    }
    return known ? ErrorTerm.normal(u) : ErrorTerm.studentT(u, dof);
  }

  private static double figure(String word, String what) {
    int sign = word.indexOf('=');
    if (sign < 0) {
      throw new QuantityFormatException(what + " is written with =, for instance (k=2, dof=9)");
    }
    double figure = QuantityParser.parse(word.substring(sign + 1), FACTORS).value();
    if (!(figure > 0)) {
      throw new QuantityFormatException(what + " must be above zero");
    }
    return figure;
  }

  private static Shape shape(String word) {
    return switch (word) {
      case "rectangular" -> Shape.RECTANGULAR;
      case "triangular" -> Shape.TRIANGULAR;
      case "u-shaped", "arcsine" -> Shape.U_SHAPED;
      case "normal" -> Shape.NORMAL;
      case "t" -> Shape.STUDENT_T;
      default ->
          throw new QuantityFormatException(
              "'"
                  + word
                  + "' is not a distribution; write rectangular, triangular, U-shaped, or a"
                  + " coverage factor such as k=2, or k=2.26, dof=9");
    };
  }

  /** Made ready when the first text needs them. */
  private static final class Patterns {
    static final Pattern PLUS_MINUS = Pattern.compile("±|\\+/-|\\+-");
    static final Pattern OPTIONS = Pattern.compile("\\(\\s*(?<options>\\p{L}[^()]*)\\)\\s*$");
    static final Pattern COMMA = Pattern.compile(",\\s*(?=\\p{L})");

    private Patterns() {}
  }
}
