package kelter.cli.json;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import kelter.core.file.json.Json;
import kelter.core.quantity.QuantityFormatException;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import kelter.core.quantity.Unit;

/**
 * Patterns for quantities as a person writes them. Which units go with a kind of quantity is asked
 * of the parser that reads them.
 */
final class UnitPatterns {

  private static final List<String> PREFIXES =
      List.of("", "G", "M", "k", "h", "d", "c", "m", "u", "n", "p");

  /** Quotients and products that readings have, and spellings of the trade beside UCUM. */
  private static final List<String> MORE =
      List.of(
          "ohm",
          "Ω",
          "mohm",
          "mΩ",
          "kohm",
          "kΩ",
          "Mohm",
          "MΩ",
          "GΩ",
          "µF",
          "µA",
          "rpm",
          "1/min",
          "{rev}/min",
          "°C",
          "°F",
          "C",
          "L/min",
          "l/min",
          "L/h",
          "L/s",
          "mL/s",
          "mL/min",
          "g/s",
          "m3/h",
          "[gal_us]/min",
          "gpm",
          "psi",
          "m/s",
          "km/h",
          "kg/m3",
          "mPa.s",
          "K/min",
          "K/s",
          "K/h",
          "Cel/min",
          "°C/min",
          "N.m",
          "kW.h",
          "W.h",
          "kWh",
          "Wh",
          "m2",
          "cm2",
          "mm2",
          "m3",
          "years",
          "year",
          "yrs",
          "yr",
          "y",
          "months",
          "month",
          "weeks",
          "days",
          "hours",
          "gal",
          "in",
          "ft",
          "lb",
          "1");

  private static final String NUMBER = "[0-9]+([.,][0-9]+)*([eE][-+]?[0-9]+)?";
  private static final String OVER_RANGE = "[Oo]\\.?[Ll]\\.?|open|infinite|over range|∞";

  private final Map<QuantityKind, String> patterns = new HashMap<>();
  private final Map<String, String> names = new LinkedHashMap<>();

  /** A quantity. */
  Json.Obj quantity(QuantityKind kind, boolean mayBeNegative) {
    return text("^\\s*" + figure(kind, mayBeNegative) + "\\s*$");
  }

  /** A quantity, a limit or what an instrument shows over its range. */
  Json.Obj reading(QuantityKind kind, boolean mayBeNegative) {
    return text(
        "^\\s*((<|>|<=|>=|≤|≥)?\\s*" + figure(kind, mayBeNegative) + "|" + OVER_RANGE + ")\\s*$");
  }

  private Json.Obj text(String pattern) {
    String name = names.computeIfAbsent(pattern, any -> "quantity-" + (names.size() + 1));
    return new Json.Obj(Map.of("$ref", new Json.Str("#/$defs/" + name)));
  }

  /** The definitions that were referred to so far, each once: patterns are long. */
  Map<String, Json> definitions() {
    Map<String, Json> all = new LinkedHashMap<>();
    names.forEach(
        (pattern, name) ->
            all.put(name, StrictJobSchema.typed("string").with("pattern", new Json.Str(pattern))));
    return all;
  }

  private String figure(QuantityKind kind, boolean mayBeNegative) {
    String unit = patterns.computeIfAbsent(kind, UnitPatterns::units);
    String spread = "\\s*(±|\\+/-)\\s*" + NUMBER + "\\s*(" + unit + "|%)?";
    String sign = mayBeNegative ? "[-+−]?\\s*" : "\\+?\\s*";
    return sign + NUMBER + "(" + spread + ")?\\s*" + unit + "(" + spread + ")?";
  }

  /** The longest first, so that no unit hides one that it begins. */
  private static String units(QuantityKind kind) {
    return candidates().stream()
        .filter(unit -> isOf(unit, kind))
        .sorted(Comparator.comparing(String::length).reversed().thenComparing(unit -> unit))
        .map(UnitPatterns::escaped)
        .collect(Collectors.joining("|", "(", isOf("", kind) ? ")?" : ")"));
  }

  private static Set<String> candidates() {
    Set<String> all = new TreeSet<>(MORE);
    List<String> symbols = new ArrayList<>(Unit.symbols());
    for (String symbol : symbols) {
      PREFIXES.forEach(prefix -> all.add(prefix + symbol));
    }
    return all;
  }

  private static boolean isOf(String unit, QuantityKind kind) {
    try {
      QuantityParser.parse("1 " + unit, kind);
      return true;
    } catch (QuantityFormatException other) {
      return false;
    }
  }

  private static String escaped(String unit) {
    return unit.replaceAll("([\\\\^$.*+?()\\[\\]{}|/])", "\\\\$1");
  }
}
