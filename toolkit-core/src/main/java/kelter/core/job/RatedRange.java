package kelter.core.job;

import kelter.core.problem.Required;
import kelter.core.quantity.Expected;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;

/**
 * The rated voltage, frequency or power of a nameplate: one figure, or the range within which the
 * machine works without being set to a figure.
 *
 * <p>A hyphen stands between the limits of a range, a solidus between figures of which the machine
 * is set to one (IEC 60335-1:2004, 7.3, second-hand). Only {@code 50/60 Hz} is told by either:
 * nothing is set there.
 *
 * @param low the lower limit, above zero
 * @param high the upper limit; equal to the lower one where the nameplate has one figure
 */
public record RatedRange(Quantity low, Quantity high) {

  /**
   * The greatest ratio of the limits, own choice: 100 V to 240 V is the widest that is made, and
   * what is wider is a slip of the pen.
   */
  public static final double WIDEST = 2.5;

  /** The greatest error of a ratio of two figures that are what they were written as. */
  private static final double ROUNDING = 1e-12;

  /** More characters than a quantity may have; the parser of quantities refuses them. */
  private static final int LONGEST = 100;

  /** The sign of alternating current, as it is typed. */
  private static final String ALTERNATING = "~";

  /** Hyphen, hyphen that does not break, en dash, em dash and minus sign. */
  private static final String DASHES = "-\u2011\u2013\u2014\u2212";

  /**
   * Checks the limits.
   *
   * @throws IllegalArgumentException if the kinds differ, a limit is not above zero, the lower one
   *     is above the upper one, or the upper one more than {@value #WIDEST} times the lower one
   */
  public RatedRange {
    Required.value(low, "lower limit of a rated range");
    Required.value(high, "upper limit of a rated range");
    String name = low.kind().name();
    if (!name.equals(high.kind().name())) {
      throw new IllegalArgumentException(
          "a range from a "
              + name
              + " to a "
              + high.kind().name()
              + "; both limits are of one kind");
    }
    if (!(low.si() > 0 && high.si() > 0)) {
      throw new IllegalArgumentException("a rated " + name + " is above zero");
    }
    Expected rated = rated(low.kind());
    rated.require(low);
    rated.require(high);
    if (low.si() > high.si()) {
      throw new IllegalArgumentException(
          "from " + low.format() + " to " + high.format() + "; the lower limit stands first");
    }
    if (high.si() > low.si() * WIDEST * (1 + ROUNDING)) {
      throw new IllegalArgumentException(
          "from "
              + low.format()
              + " to "
              + high.format()
              + " is too wide: the upper limit is at most "
              + QuantityFormat.plain(WIDEST)
              + " times the lower one");
    }
  }

  /** What appliances and their parts, ignition and magnetrons too, are rated at; no source. */
  private static Expected rated(QuantityKind kind) {
    return switch (kind.name()) {
      case "voltage" -> new Expected(kind, 1, 20_000);
      case "frequency" -> new Expected(kind, 1, 1000);
      case "power" -> new Expected(kind, 0.01, 1e6);
      default -> Expected.of(kind);
    };
  }

  /**
   * One figure.
   *
   * @param figure the figure, above zero
   * @return the range that has it as both limits
   * @throws IllegalArgumentException if it is not above zero
   */
  public static RatedRange of(Quantity figure) {
    return new RatedRange(figure, figure);
  }

  /**
   * Reads what stands on a nameplate, for instance {@code 230 V}, {@code 220-240 V}, {@code 220 V –
   * 240 V}, {@code 230 V~} or {@code 50/60 Hz}. {@code 120/240 V} is the supply with three wires,
   * of which the voltage between the line conductors counts.
   *
   * @param text what stands there
   * @param kind voltage, frequency or power
   * @return the range
   * @throws IllegalArgumentException if it cannot be read, is no range that this record takes, has
   *     two limits that are the same, or names voltages between which the machine is set
   */
  public static RatedRange parse(String text, QuantityKind kind) {
    return kind.name().equals(QuantityKind.VOLTAGE.name())
        ? read(withoutNature(text), kind)
        : read(text, kind);
  }

  /** A voltage without the sign of alternating current beside it (IEC 60417-5032). */
  private static String withoutNature(String text) {
    String rest = text.strip();
    if (rest.endsWith(ALTERNATING)) {
      return rest.substring(0, rest.length() - 1);
    }
    return rest.startsWith(ALTERNATING) ? rest.substring(1) : rest;
  }

  private static RatedRange read(String text, QuantityKind kind) {
    Expected rated = rated(kind);
    int at = text.length() > LONGEST ? -1 : separator(text);
    if (at < 0 || QuantityParser.isFraction(text)) {
      return of(QuantityParser.parse(text, rated));
    }
    String upper = text.substring(at + 1).strip();
    String unit = unit(upper);
    if (unit.isEmpty()) {
      return withoutUnit(text, at, kind);
    }
    if (separator(upper) >= 0) {
      throw new IllegalArgumentException(
          "'"
              + text.strip()
              + "' has more than two figures; write the one, or the range of two, that"
              + " the machine is set to");
    }
    String lower = text.substring(0, at).strip();
    if (text.charAt(at) == '/' && isThreeWire(lower, upper, kind)) {
      return of(QuantityParser.parse(upper, rated));
    }
    if (text.charAt(at) == '/' && !kind.name().equals(QuantityKind.FREQUENCY.name())) {
      throw new IllegalArgumentException(
          "'"
              + text.strip()
              + "' names figures between which the machine is set; write the one that"
              + " it is set to, for instance '"
              + upper
              + "', or '"
              + text.strip().replace('/', '-')
              + "' if it works at all between them");
    }
    String whole = unit(lower).isEmpty() ? lower + " " + unit : lower;
    return range(QuantityParser.parse(whole, rated), QuantityParser.parse(upper, rated));
  }

  /**
   * 120 V to the neutral conductor and 240 V or 208 V between the others are both there at once;
   * nothing is set (nominal voltages of ANSI C84.1, from memory).
   */
  private static boolean isThreeWire(String lower, String upper, QuantityKind kind) {
    if (!kind.name().equals(QuantityKind.VOLTAGE.name()) || !lower.equals("120")) {
      return false;
    }
    double between = QuantityParser.parse(upper, kind).si();
    return between == 240 || between == 208;
  }

  private static RatedRange range(Quantity low, Quantity high) {
    RatedRange range = new RatedRange(low, high);
    if (!range.isRange()) {
      throw new IllegalArgumentException(
          "both limits are " + high.format() + "; write one figure, or two that differ");
    }
    return range;
  }

  /** A power of a unit, as in {@code 50 s-1}, or a range whose unit is missing. */
  private static RatedRange withoutUnit(String text, int at, QuantityKind kind) {
    if (!unit(text.substring(0, at).strip()).isEmpty()) {
      return of(QuantityParser.parse(text, kind));
    }
    throw new IllegalArgumentException(
        "'"
            + text.strip()
            + "' has no unit; write '"
            + text.strip()
            + " "
            + kind.unit().code()
            + "'");
  }

  /**
   * Where one figure ends and the next begins: a dash or a solidus with a digit behind it and a
   * digit or a unit before it; -1 if there is none. The sign of an exponent is none.
   */
  private static int separator(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if ((c == '/' || DASHES.indexOf(c) >= 0)
          && isDigit(beside(text, i, 1))
          && Character.isLetterOrDigit(beside(text, i, -1))
          && !isExponent(text, i)) {
        return i;
      }
    }
    return -1;
  }

  private static boolean isExponent(String text, int at) {
    return at >= 2 && (text.charAt(at - 1) | 0x20) == 'e' && isDigit(text.charAt(at - 2));
  }

  /** The next character to one side that is no blank; 0 at the end of the text. */
  private static char beside(String text, int at, int step) {
    int i = at + step;
    while (i >= 0 && i < text.length() && Character.isSpaceChar(text.charAt(i))) {
      i += step;
    }
    return i >= 0 && i < text.length() ? text.charAt(i) : 0;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** What stands behind the number. */
  private static String unit(String figure) {
    int i = 0;
    while (i < figure.length() && !Character.isLetter(figure.charAt(i))) {
      i++;
    }
    return figure.substring(i);
  }

  /**
   * Whether this is more than one figure.
   *
   * @return whether the limits differ
   */
  public boolean isRange() {
    return low.si() < high.si();
  }

  /**
   * The middle.
   *
   * @return the arithmetic mean of the limits, in the coherent SI unit
   */
  public double meanSi() {
    return (low.si() + high.si()) / 2;
  }

  /**
   * The figure of the range that lies nearest to another one.
   *
   * @param si a figure in the coherent SI unit
   * @return the same if it lies within, else the nearer limit, in the coherent SI unit
   */
  public double nearestSi(double si) {
    return Math.min(Math.max(si, low.si()), high.si());
  }

  /**
   * The range for a person.
   *
   * @return for instance {@code 230 V} or {@code 220 V to 240 V}
   */
  public String display() {
    return isRange() ? low.display() + " to " + high.display() : low.display();
  }
}
