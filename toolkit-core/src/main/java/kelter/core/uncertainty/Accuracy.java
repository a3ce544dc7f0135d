package kelter.core.uncertainty;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import kelter.core.quantity.Expected;
import kelter.core.quantity.QuantityFormatException;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import kelter.core.quantity.Scale;
import kelter.core.quantity.Unit;

/**
 * The limits of error of an instrument as makers print them: so many per cent of the reading plus
 * so many counts of the last digit, or a fixed amount.
 *
 * <p>Inside the limits every error is taken as equally likely (rectangular, JCGM 100:2008, 4.3.7),
 * so that the standard uncertainty is the limit divided by the square root of 3.
 *
 * @param ofReading the part that grows with the reading, as a ratio of it: 0.8 % is 0.008
 * @param fixed the part that does not, in the coherent SI unit of the reading
 * @param zero where the display of the instrument shows zero, in the coherent SI unit: 273.15 for a
 *     thermometer in Cel, otherwise 0
 */
public record Accuracy(double ofReading, double fixed, double zero) implements ErrorModel {

  /** Per cent of a reading and counts of the last digit. */
  private static final Expected FIGURES = new Expected(QuantityKind.RATIO, 0, 999);

  private static final Set<String> READING = Set.of("", "reading", "rdg", "value");
  private static final Set<String> COUNTS =
      Set.of("d", "dgt", "dgts", "digit", "digits", "count", "counts", "lsd");

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if a part is negative or not finite
   */
  public Accuracy {
    if (!(ofReading >= 0 && fixed >= 0) || Double.isInfinite(ofReading + fixed)) {
      throw new IllegalArgumentException("an accuracy is finite and not negative");
    }
    if (!Double.isFinite(zero)) {
      throw new IllegalArgumentException("the zero of a display is finite");
    }
  }

  /**
   * The accuracy of an instrument whose display shows zero where the quantity is zero.
   *
   * @param ofReading the part that grows with the reading, as a ratio of it
   * @param fixed the part that does not, in the coherent SI unit of the reading
   */
  public Accuracy(double ofReading, double fixed) {
    this(ofReading, fixed, 0);
  }

  /**
   * The limit of error at a reading.
   *
   * @param readingSi the reading in the coherent SI unit
   * @return the half-width of the band, in the coherent SI unit
   */
  public double limitOfError(double readingSi) {
    return ofReading * Math.abs(readingSi - zero) + fixed;
  }

  /**
   * The standard uncertainty of a reading.
   *
   * @param readingSi the reading in the coherent SI unit
   * @return the standard uncertainty, in the coherent SI unit
   */
  @Override
  public double standardUncertainty(double readingSi) {
    return limitOfError(readingSi) / Math.sqrt(3);
  }

  @Override
  public List<ErrorTerm> terms(double readingSi) {
    return List.of(ErrorTerm.within(Shape.RECTANGULAR, limitOfError(readingSi)));
  }

  /**
   * Reads an accuracy, for instance {@code 0.8 % + 3 counts} or {@code 5 mm}.
   *
   * @param text terms joined by {@code +}: per cent of the reading, counts (also written {@code
   *     digits} or {@code d}), or a quantity; per cent of a range are not taken
   * @param kind what the instrument measures
   * @param resolutionSi the size of one count in the coherent SI unit, or NaN if it is not stated
   * @return the accuracy
   * @throws QuantityFormatException if a term cannot be read, or counts are given without a
   *     resolution above zero
   */
  public static Accuracy parse(String text, QuantityKind kind, double resolutionSi) {
    double ofReading = 0;
    double fixed = 0;
    for (String part : terms(text).split("\\+", -1)) {
      String term = part.strip();
      int end = numberEnd(term);
      if (end == 0) {
        throw new QuantityFormatException(
            "'" + text + "' is not an accuracy; write for instance '0.8 % + 3 counts' or '5 mm'");
      }
      String word = term.substring(end).strip().toLowerCase(Locale.ROOT);
      if (word.startsWith("%")) {
        requireOfReading(word.substring(1), text);
        ofReading += number(term.substring(0, end)) / 100;
      } else if (COUNTS.contains(word) || isBareCount(word, term, text)) {
        fixed += number(term.substring(0, end)) * requireResolution(text, resolutionSi);
      } else {
        fixed += differenceSi(term, kind);
      }
    }
    return new Accuracy(ofReading, fixed, zeroOfDisplay(text, kind));
  }

  /** A whole number without a word beside per cent, as makers print it: (0.8 % + 3). */
  private static boolean isBareCount(String word, String term, String text) {
    if (!word.isEmpty()) {
      return false;
    }
    if (text.indexOf('%') < 0 || term.indexOf('.') >= 0 || term.indexOf(',') >= 0) {
      throw new QuantityFormatException(
          "'"
              + term
              + "' has no unit; write '"
              + term
              + " %' of the reading, '"
              + term
              + " counts' or an amount such as '5 mm'");
    }
    return true;
  }

  /** The terms of an accuracy, without a sign before them or brackets around them. */
  private static String terms(String text) {
    String terms = without(without(text.strip(), "±"), "+/-");
    return terms.startsWith("(") && terms.endsWith(")")
        ? terms.substring(1, terms.length() - 1)
        : terms;
  }

  private static String without(String text, String start) {
    return text.startsWith(start) ? text.substring(start.length()).strip() : text;
  }

  /** The end of the number with which a term starts; 0 if it does not start with one. */
  private static int numberEnd(String term) {
    int end = 0;
    while (end < term.length() && "0123456789.,".indexOf(term.charAt(end)) >= 0) {
      end++;
    }
    return end;
  }

  private static void requireOfReading(String words, String text) {
    String stripped = words.strip();
    String ended = stripped.endsWith(".") ? stripped.substring(0, stripped.length() - 1) : stripped;
    if (!READING.contains(without(without(ended, "of "), "the "))) {
      throw new QuantityFormatException(
          "'%s': only per cent of the reading can be taken; write per cent of a range as a quantity, for instance '5 mm'"
              .formatted(text.strip()));
    }
  }

  /** Per cent of a temperature are counted from the zero of the scale that is displayed. */
  private static double zeroOfDisplay(String text, QuantityKind kind) {
    if (kind.scale() != Scale.TEMPERATURE) {
      return 0;
    }
    boolean fahrenheit = text.contains("°F") || text.contains("[degF]");
    return Unit.of(fahrenheit ? "[degF]" : "Cel").shift();
  }

  private static double number(String digits) {
    return QuantityParser.parse(digits, FIGURES).value();
  }

  private static double differenceSi(String text, QuantityKind kind) {
    boolean temperature = kind.accepts(QuantityKind.TEMPERATURE.unit());
    return QuantityParser.parse(text, temperature ? QuantityKind.TEMPERATURE_DIFFERENCE : kind)
        .si();
  }

  private static double requireResolution(String text, double resolutionSi) {
    if (!(resolutionSi > 0)) {
      throw new QuantityFormatException(
          "'" + text + "' counts the last digit, so a resolution is needed beside it");
    }
    return resolutionSi;
  }
}
