package kelter.core.quantity;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a quantity as a person writes it: UCUM codes or the trade's spellings, a decimal point or
 * comma, thin spaces between thousands, and {@code ±} for the limits of error.
 *
 * <p>Limits of error without a stated distribution are taken as rectangular (JCGM 100:2008, 4.3.7):
 * the standard uncertainty is the half-width divided by the square root of 3. A coverage factor may
 * be stated behind it: {@code 26.4 ohm ± 0.3 (k=2)}.
 *
 * <p>A single mark, comma or point, with three digits behind it may stand for thousands or for
 * decimals ({@code 1.400 rpm}). Where only one of them can be ({@link Expected}), that is taken,
 * else the text is refused. So is a time {@code 1:30}, which may be minutes or hours.
 *
 * <p>Fractions ({@code 3/4 in}, {@code 1½ in}), sums ({@code 1 min 30 s}, {@code 5 ft 11 in}, told
 * in the last unit) and {@code ~} for about are read. A head may be told as the pressure of cold
 * water: {@code 2.5 psi}.
 *
 * <p>Where a resistance is expected, the letter code printed on parts is read too, {@code 2k2},
 * {@code 26R4} (IEC 60062, letter and digit code; from memory), and R, k and M behind a number mean
 * ohm, kOhm and MOhm.
 */
public final class QuantityParser {

  private static final int MAX_LENGTH = 100;

  /** Nothing that is measured is greater in its coherent SI unit; own choice. */
  private static final double GREATEST = 1e18;

  /** So many of the last digit is a number uncertain that is only about right; own choice. */
  private static final double ABOUT_DIGITS = 2;

  /** Coverage factors are smaller; own choice. */
  private static final double MOST_COVERAGE = 1000;

  private QuantityParser() {}

  /**
   * Reads a quantity.
   *
   * @param text what a person wrote
   * @param kind what is expected
   * @return the quantity, in the unit that was written
   * @throws QuantityFormatException if the text has no number, the number is ambiguous or far
   *     beyond what can be, the unit is missing or unknown, or does not fit what is expected
   */
  public static Quantity parse(String text, QuantityKind kind) {
    return parsePart(text, kind).quantity();
  }

  /**
   * Reads a quantity of which it is known what it can be.
   *
   * @param text what a person wrote
   * @param expected what is expected; it settles what might be read in two ways, and no more
   * @return the quantity, in the unit that was written
   * @throws QuantityFormatException as {@link #parse(String, QuantityKind)}
   */
  public static Quantity parse(String text, Expected expected) {
    return parsePart(text, expected).quantity();
  }

  /**
   * Reads a quantity together with the size of its last digit.
   *
   * @param text what a person wrote
   * @param kind what is expected
   * @return the quantity and its resolution
   * @throws QuantityFormatException as {@link #parse(String, QuantityKind)}
   */
  public static Parsed parsePart(String text, QuantityKind kind) {
    return parsePart(text, Expected.of(kind));
  }

  /**
   * Reads a quantity of which it is known what it can be, together with the size of its last digit.
   *
   * @param text what a person wrote
   * @param expected what is expected; it settles what might be read in two ways, and no more
   * @return the quantity and its resolution
   * @throws QuantityFormatException as {@link #parse(String, QuantityKind)}
   */
  public static Parsed parsePart(String text, Expected expected) {
    if (text.length() > MAX_LENGTH) {
      throw new QuantityFormatException("a quantity has at most " + MAX_LENGTH + " characters");
    }
    Optional<Parsed> plain = plain(text, expected.kind());
    Parsed parsed = plain.isPresent() ? plain.get() : any(text, expected);
    if (!(Math.abs(parsed.quantity().si()) <= GREATEST)) {
      throw new QuantityFormatException("'" + text.strip() + "' is too large");
    }
    if (!(parsed.quantity().standardUncertaintySi() <= GREATEST)) {
      throw new QuantityFormatException("'" + text.strip() + "' is too uncertain");
    }
    return parsed;
  }

  /**
   * Whether a text has a number with a fraction, such as {@code 3/4 hp}, and not two numbers.
   *
   * @param text what a person wrote
   * @return true if it has
   */
  public static boolean isFraction(String text) {
    return Fraction.of(Typed.of(text)).isPresent();
  }

  /**
   * The plainest form, digits and a unit that fits, read without patterns: to make those ready
   * takes a tenth of the time of a short run.
   */
  private static Optional<Parsed> plain(String written, QuantityKind kind) {
    String text = written.strip();
    int end = DecimalText.plainEnd(text);
    if (end == 0
        || kind.unit().dimension().hasCurrency()
        || DecimalText.isDoubtful(text.substring(0, end))) {
      return Optional.empty();
    }
    int unitAt = end < text.length() && text.charAt(end) == ' ' ? end + 1 : end;
    Optional<Unit> unit = plainUnit(text.substring(unitAt), kind);
    return unit.isPresent()
        ? Optional.of(parsed(DecimalText.plain(text.substring(0, end)), 0, unit.get(), kind, false))
        : Optional.empty();
  }

  /**
   * A unit that fits: a UCUM code, a whole spelling of the trade, or none where a number will do.
   */
  private static Optional<Unit> plainUnit(String text, QuantityKind kind) {
    if (text.isEmpty()) {
      return isNumber(kind) ? Optional.of(Unit.ONE) : Optional.empty();
    }
    return UcumParser.parse(text)
        .filter(kind::accepts)
        .or(() -> Spellings.whole(text).flatMap(UcumParser::parse).filter(kind::accepts));
  }

  private static boolean isNumber(QuantityKind kind) {
    return kind.unit().dimension().equals(Dimension.ONE);
  }

  private static Parsed parsed(
      DecimalText number,
      double standardUncertainty,
      Unit unit,
      QuantityKind kind,
      boolean covered) {
    return new Parsed(
        new Quantity(number.value(), standardUncertainty, unit, kind), number.lastDigit(), covered);
  }

  private static Parsed any(String written, Expected expected) {
    String typed = Typed.of(written);
    Matcher about = Patterns.ABOUT.matcher(typed);
    if (about.lookingAt()) {
      Parsed parsed = exactly(typed.substring(about.end()), expected);
      return new Parsed(parsed.quantity(), ABOUT_DIGITS * parsed.resolution(), parsed.covered());
    }
    return exactly(typed, expected);
  }

  private static Parsed exactly(String text, Expected expected) {
    QuantityKind kind = expected.kind();
    String ordered = reordered(text, kind);
    Optional<Parsed> composed = Composed.read(ordered, expected);
    if (composed.isPresent()) {
      return composed.get();
    }
    String told = ordered.replaceFirst(Patterns.PLUS_MINUS, "±");
    Matcher matcher = Patterns.QUANTITY.matcher(told);
    if (!matcher.matches()) {
      throw notANumber(text, kind);
    }
    refuseBlanks(matcher.group("value"), matcher.group("unit"), text);
    refuseTwo(matcher.group("unit"), text);
    Unit unit = unit(unitText(matcher), kind, text);
    DecimalText number =
        DecimalText.of(matcher.group("value"), value -> expected.takes(kind.toSi(value, unit)));
    boolean covered = matcher.group("k") != null;
    return parsed(number, uncertainty(matcher, number, unit, kind), unit, kind, covered);
  }

  /** Refuses two values for one: 120/240 V. */
  private static void refuseTwo(String unit, String text) {
    if (unit.length() > 1 && unit.charAt(0) == '/' && Typed.isDigit(unit.charAt(1))) {
      throw new QuantityFormatException(
          "'"
              + text
              + "' has two values; write the one that is meant, as '"
              + unit.substring(1)
              + "'");
    }
  }

  /** Refuses a number that goes on behind a blank: 23 0 V. */
  private static void refuseBlanks(String number, String unit, String text) {
    if (unit.isEmpty() || !Typed.isDigit(unit.charAt(0)) || unit.startsWith("1/")) {
      return;
    }
    throw new QuantityFormatException(
        "'"
            + text
            + "' has more than one number; write '"
            + number.strip()
            + unit
            + "' if the blank does not belong there");
  }

  /**
   * The refusal of what is no quantity at all.
   *
   * @param text what was found
   * @param kind what is expected
   * @return the refusal, which says that
   */
  public static QuantityFormatException notANumber(String text, QuantityKind kind) {
    return new QuantityFormatException(
        "'%s' is not a number with a unit; %s is expected, for instance '1.5%s'"
            .formatted(text, withArticle(kind), example(kind)));
  }

  /** A number with its unit within or before it, written with the unit behind: 2k2, EUR 38. */
  private static String reordered(String text, QuantityKind kind) {
    if (kind.accepts(QuantityKind.RESISTANCE.unit())) {
      Matcher code = Patterns.LETTER_CODE.matcher(text);
      if (code.matches()) {
        String whole = code.group("whole").isEmpty() ? "0" : code.group("whole");
        return whole + "." + code.group("part") + " " + code.group("letter") + code.group("rest");
      }
    }
    if (kind.unit().dimension().hasCurrency()) {
      Matcher money = Patterns.CURRENCY_FIRST.matcher(text);
      if (money.matches()) {
        return money.group("amount") + " " + money.group("code");
      }
    }
    return text;
  }

  /** The unit behind the value, or, as in {@code 26.4 ± 0.3 ohm}, the one that serves for both. */
  private static String unitText(Matcher matcher) {
    String own = matcher.group("unit").strip();
    String shared = matcher.group("errorunit") == null ? "" : matcher.group("errorunit").strip();
    return own.isEmpty() && !shared.equals("%") ? shared : own;
  }

  private static double uncertainty(
      Matcher matcher, DecimalText number, Unit unit, QuantityKind kind) {
    if (matcher.group("error") == null) {
      return 0;
    }
    double size = Math.abs(number.value());
    double error = DecimalText.of(matcher.group("error"), each -> each < size).value();
    String errorUnit = matcher.group("errorunit").strip();
    if (errorUnit.equals("%")) {
      if (unit.dimension().equals(Dimension.ONE)) {
        throw new QuantityFormatException(
            "'± %s %%' may mean points or a part of the value; write '± %s' in the unit of the value"
                .formatted(matcher.group("error"), matcher.group("error")));
      }
      error *= size / 100;
    } else if (!errorUnit.isEmpty()) {
      error *= unit(errorUnit, kind, errorUnit).factor() / unit.factor();
    }
    String k = matcher.group("k");
    double divisor =
        k == null ? Math.sqrt(3) : DecimalText.of(k, each -> each < MOST_COVERAGE).value();
    if (!(divisor > 0)) {
      throw new QuantityFormatException("a coverage factor k must be above zero");
    }
    return error / divisor;
  }

  /**
   * Reads the unit of a value.
   *
   * @param text a UCUM code or a spelling of the trade
   * @param kind what is expected
   * @return the unit
   * @throws QuantityFormatException if the unit is unknown or does not fit
   */
  public static Unit unit(String text, QuantityKind kind) {
    return unit(text.strip(), kind, text);
  }

  /**
   * The units that a text may stand for, whatever is expected but money.
   *
   * @param text a UCUM code or a spelling of the trade, perhaps with the mark of gauge or absolute
   *     pressure
   * @return the units, that of the UCUM code first; empty if the text is none
   */
  public static List<Unit> units(String text) {
    String unit = text.strip();
    if (unit.isEmpty() || unit.length() > MAX_LENGTH) {
      return List.of();
    }
    Matcher suffixed = Patterns.SUFFIXED.matcher(unit);
    Matcher scaled = Patterns.GAUGE.matcher(unit);
    String bare =
        suffixed.matches()
            ? suffixed.group("unit")
            : scaled.matches() ? scaled.group("unit") : unit;
    return Spellings.candidates(bare).stream()
        .filter(each -> !each.dimension().hasCurrency())
        .toList();
  }

  static Unit unit(String written, QuantityKind kind, String whole) {
    String text = withoutPressureScale(written, kind);
    if (text.isEmpty()) {
      if (isNumber(kind)) {
        return Unit.ONE;
      }
      throw new QuantityFormatException(
          "'%s' has no unit; %s is expected, for instance in %s"
              .formatted(whole, withArticle(kind), kind.unit().code()));
    }
    Optional<Unit> fitting = fitting(text, kind);
    if (fitting.isPresent()) {
      return fitting.get();
    }
    if (Spellings.candidates(text).isEmpty()) {
      throw new QuantityFormatException(
          "unit '%s' is not known%s; %s is expected, for instance in %s"
              .formatted(
                  text, Spellings.suggestion(text, kind), withArticle(kind), kind.unit().code()));
    }
    throw new QuantityFormatException(
        "%s is expected, for instance in %s, not a value in %s%s"
            .formatted(
                withArticle(kind),
                kind.unit().code(),
                text,
                text.equals("m") && kind.accepts(QuantityKind.TIME.unit())
                    ? "; minutes are min"
                    : Spellings.wireGauge(text)));
  }

  /** The first unit that a text may stand for and that fits; a head may be told as a pressure. */
  static Optional<Unit> fitting(String text, QuantityKind kind) {
    for (Unit candidate : Spellings.candidates(text)) {
      if (kind.accepts(candidate)) {
        return Optional.of(candidate);
      }
      if (isHead(kind) && QuantityKind.GAUGE_PRESSURE.accepts(candidate)) {
        return Optional.of(candidate.asHead());
      }
    }
    return Optional.empty();
  }

  private static boolean isHead(QuantityKind kind) {
    return kind.name().equals(QuantityKind.HEAD.name());
  }

  /** Takes the mark of gauge or absolute pressure off a unit, after holding it against the kind. */
  private static String withoutPressureScale(String text, QuantityKind kind) {
    Matcher suffixed = Patterns.SUFFIXED.matcher(text);
    if (suffixed.matches()) {
      requireScale(suffixed.group("scale").equalsIgnoreCase("g"), kind);
      return suffixed.group("unit");
    }
    Matcher matcher = Patterns.GAUGE.matcher(text);
    if (!matcher.matches()) {
      return text;
    }
    requireScale(
        matcher.group("scale").replace("(", "").toLowerCase(Locale.ROOT).startsWith("g"), kind);
    return matcher.group("unit");
  }

  private static void requireScale(boolean gauge, QuantityKind kind) {
    boolean wrong =
        gauge
            ? kind.scale() != Scale.GAUGE_PRESSURE && !isHead(kind)
            : kind.scale() != Scale.ABSOLUTE_PRESSURE;
    if (wrong) {
      throw new QuantityFormatException(
          "%s is expected, not %s pressure"
              .formatted(withArticle(kind), gauge ? "a gauge" : "an absolute"));
    }
  }

  private static String withArticle(QuantityKind kind) {
    return QuantityFormat.withArticle(kind.name());
  }

  private static String example(QuantityKind kind) {
    String code = kind.unit().code();
    return code.equals("1") ? "" : " " + code;
  }

  /** Made ready when the first text needs them. */
  private static final class Patterns {
    static final String NUMBER =
        "[-+−]?[0-9]+(?:['\\u2019 \\u00a0\\u2009\\u202f][0-9]{3}(?![0-9]))*[0-9.,]*(?:[eE][-+]?\\d+)?";
    static final String PLUS_MINUS = "(?:±|\\+/-|\\+-)";
    static final Pattern QUANTITY =
        Pattern.compile(
            "\\s*(?<value>"
                + NUMBER
                + "|[-+−]?[.,]\\d+)\\s*(?<unit>[^±]*?)\\s*"
                + "(?:"
                + PLUS_MINUS
                + "\\s*(?<error>[0-9.,]+(?:[eE][-+]?\\d+)?)\\s*(?<errorunit>[^±]*?)\\s*"
                + "(?:\\(\\s*k\\s*=\\s*(?<k>[0-9.,]+)\\s*\\))?\\s*)?");
    static final Pattern ABOUT =
        Pattern.compile("(?i)(?:[~≈]|(?:ca\\.?|circa|approx\\.?|about)(?=[\\s\\d]))\\s*");
    static final Pattern LETTER_CODE =
        Pattern.compile(
            "\\s*(?<whole>\\d{0,4})(?<letter>[RrKkM])(?<part>\\d{1,3})(?:\\s*(?i:ohms?|Ω|\u2126))?(?<rest>\\s*(?:[±+].*)?)");
    static final Pattern CURRENCY_FIRST =
        Pattern.compile("\\s*(?<code>[A-Z]{3}|€)\\s*(?<amount>[-+−]?[0-9].*)");
    static final Pattern GAUGE =
        Pattern.compile(
            "(?i)^(?<unit>.*?)\\s*(?<scale>\\(?\\b(?:gauge|abs|absolute)\\)?|\\((?:g|a)\\))$");

    static final Pattern SUFFIXED = Pattern.compile("(?i)(?<unit>psi|m?bar)(?<scale>[ga])");

    private Patterns() {}
  }

  /**
   * A quantity and how finely it was written.
   *
   * @param quantity the quantity
   * @param resolution the size of the last digit written, in the unit of the quantity
   * @param covered whether a coverage factor was stated, so that the uncertainty is that of a
   *     normal distribution and not of limits of error
   */
  public record Parsed(Quantity quantity, double resolution, boolean covered) {}
}
