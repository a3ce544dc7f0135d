package kelter.core.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads quantities that are written with more than one number: fractions, sums, times of a clock.
 */
final class Composed {

  private static final double MINUTE = 60;
  private static final double HOUR = 3600;

  private Composed() {}

  /** The quantity, in the last of its units; empty if it is not written with several numbers. */
  static Optional<QuantityParser.Parsed> read(String text, Expected expected) {
    Optional<Fraction> fraction = Fraction.of(text);
    if (fraction.isPresent()) {
      return Optional.of(fraction(fraction.get(), expected.kind(), text));
    }
    Matcher clock = Patterns.CLOCK.matcher(text);
    if (isTime(expected.kind()) && clock.matches()) {
      return Optional.of(clock(clock, expected));
    }
    return expected.kind().scale() == Scale.TEMPERATURE
        ? Optional.empty()
        : sum(text, expected.kind());
  }

  private static boolean isTime(QuantityKind kind) {
    return kind.name().equals(QuantityKind.TIME.name());
  }

  private static QuantityParser.Parsed fraction(Fraction fraction, QuantityKind kind, String text) {
    Unit unit = QuantityParser.unit(fraction.rest(), kind, text);
    return new QuantityParser.Parsed(
        new Quantity(fraction.value(), 0, unit, kind), fraction.step(), false);
  }

  /** {@code h:mm:ss}, or {@code m:ss} or {@code h:mm}, whichever can be. */
  private static QuantityParser.Parsed clock(Matcher clock, Expected expected) {
    double first = Double.parseDouble(clock.group("first"));
    double second = Double.parseDouble(clock.group("second"));
    String third = clock.group("third");
    if (third != null) {
      return seconds(first * HOUR + second * MINUTE + Double.parseDouble(third), 1);
    }
    boolean hours = "h".equals(clock.group("unit"));
    boolean minutes = clock.group("unit") != null && !hours;
    double asMinutes = first * MINUTE + second;
    double asHours = first * HOUR + second * MINUTE;
    if (!hours && !minutes) {
      hours = expected.takes(asHours);
      minutes = expected.takes(asMinutes);
    }
    if (hours && minutes) {
      throw new QuantityFormatException(
          "'"
              + clock.group().strip()
              + "' may be minutes and seconds or hours and minutes; write '"
              + clock.group("first")
              + " min "
              + clock.group("second")
              + " s' or '"
              + clock.group("first")
              + " h "
              + clock.group("second")
              + " min'");
    }
    return hours ? seconds(asHours, MINUTE) : seconds(asMinutes, 1);
  }

  private static QuantityParser.Parsed seconds(double seconds, double resolution) {
    return new QuantityParser.Parsed(
        Quantity.of(seconds, "s", QuantityKind.TIME), resolution, false);
  }

  /** {@code 1 min 30 s}, {@code 5 ft 11 in}: units that fall, each less than one of that before. */
  private static Optional<QuantityParser.Parsed> sum(String text, QuantityKind kind) {
    List<String> numbers = new ArrayList<>();
    List<String> units = new ArrayList<>();
    Matcher part = Patterns.PART.matcher(text);
    int end = 0;
    while (end < text.length() && part.find() && part.start() == end) {
      numbers.add(part.group("number"));
      units.add(part.group("unit"));
      end = part.end();
    }
    return end < text.length() || units.size() < 2
        ? Optional.empty()
        : sum(numbers, units(units, kind), kind);
  }

  /** The units of a sum; none if one of them does not fit. */
  private static List<Unit> units(List<String> spelt, QuantityKind kind) {
    List<Unit> units = new ArrayList<>();
    for (String each : spelt) {
      Optional<Unit> unit = QuantityParser.fitting(inSum(each, spelt, kind), kind);
      if (unit.isEmpty()) {
        return List.of();
      }
      units.add(unit.get());
    }
    return units;
  }

  /** Marks mean feet and inches, or minutes and seconds; beside seconds an m means minutes. */
  private static String inSum(String unit, List<String> spelt, QuantityKind kind) {
    String last = spelt.get(spelt.size() - 1);
    if (isTime(kind)) {
      return switch (unit) {
        case "m", "'" -> "min";
        case "\"" -> "s";
        default -> unit;
      };
    }
    return unit.equals("'") && (last.equals("\"") || last.startsWith("in")) ? "ft" : unit;
  }

  private static Optional<QuantityParser.Parsed> sum(
      List<String> numbers, List<Unit> units, QuantityKind kind) {
    if (units.isEmpty()) {
      return Optional.empty();
    }
    int last = units.size() - 1;
    Unit told = units.get(last);
    double sum = 0;
    for (int i = 0; i <= last; i++) {
      double number = DecimalText.of(numbers.get(i)).value();
      boolean whole = i == last || number == Math.rint(number);
      boolean less = i == 0 || number * units.get(i).factor() < units.get(i - 1).factor();
      if (!whole || !less) {
        return Optional.empty();
      }
      sum += number * ratio(units.get(i).factor() / told.factor());
    }
    double resolution = DecimalText.of(numbers.get(last)).lastDigit();
    return Optional.of(
        new QuantityParser.Parsed(new Quantity(sum, 0, told, kind), resolution, false));
  }

  /** What lies within rounding of a whole number is one: 12 inches a foot. */
  private static double ratio(double factors) {
    double whole = Math.rint(factors);
    return Math.abs(factors - whole) < 1e-9 * whole ? whole : factors;
  }

  /** Made ready when the first text needs them. */
  private static final class Patterns {
    static final Pattern CLOCK =
        Pattern.compile(
            "(?<first>\\d{1,3}):(?<second>[0-5]\\d)(?::(?<third>[0-5]\\d))?\\s*(?<unit>h|min)?");
    static final Pattern PART =
        Pattern.compile(
            "\\s*(?<number>\\d+(?:[.,]\\d+)?)\\s*(?<unit>[\\p{L}°\"']+)\\.?(?:\\s*,|\\s+and(?=\\s))?\\s*");

    private Patterns() {}
  }
}
