package kelter.core.file.log.cell;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;

/**
 * The heading of a column, split into a name and a unit. A unit in brackets is one; so is what
 * stands behind a slash (ISO 80000-1, quantity / unit) or a comma if it is known as a unit; a last
 * word only if it is hardly anything else, since A, C, V or min may be the name of a phase, a probe
 * or the least value.
 *
 * @param name the heading without the unit
 * @param unit the unit as it is written, may be empty
 */
public record Heading(String name, String unit) {

  /** Last words that are hardly anything but a unit, in small letters. */
  private static final Set<String> PLAIN =
      Set.of(
          "kw",
          "mw",
          "ma",
          "mv",
          "kv",
          "ka",
          "pa",
          "hpa",
          "kpa",
          "mpa",
          "mbar",
          "bar",
          "psi",
          "hz",
          "khz",
          "rpm",
          "kwh",
          "wh",
          "va",
          "kva",
          "ohm",
          "ohms",
          "kohm",
          "mohm",
          "lpm",
          "gpm",
          "volt",
          "volts",
          "amp",
          "amps",
          "watt",
          "watts",
          "degc",
          "degf",
          "celsius",
          "fahrenheit",
          "kelvin",
          "ms",
          "sec",
          "mm",
          "cm",
          "kg",
          "percent",
          "uf",
          "nf",
          "inh2o",
          "mmh2o",
          "nm");

  private static final List<QuantityKind> RATES =
      List.of(
          QuantityKind.FLOW,
          QuantityKind.VELOCITY,
          QuantityKind.HEATING_RATE,
          QuantityKind.ROTATIONAL_SPEED);

  private static final String OPENING = "[(";
  private static final String CLOSING = "])";

  /**
   * Splits a heading.
   *
   * @param heading the heading
   * @return its name and its unit
   */
  public static Heading of(String heading) {
    String text = heading.strip();
    return bracketed(text)
        .or(() -> whole(text))
        .or(() -> behind(text, ' '))
        .or(() -> behind(text, '_'))
        .or(() -> behindSlash(text))
        .or(() -> behindComma(text))
        .orElseGet(() -> new Heading(text, ""));
  }

  /**
   * Whether a text is a unit.
   *
   * @param text a text
   * @return whether it is a unit of something other than money
   */
  public static boolean isUnit(String text) {
    String unit = text.strip();
    boolean figure = !unit.isEmpty() && Character.isDigit(unit.charAt(0));
    return (!figure || unit.startsWith("1/"))
        && hasUsualPowers(unit)
        && !QuantityParser.units(unit).isEmpty();
  }

  /** 14h03 and P1 are not the third power of an hour and the first of a poise. */
  private static boolean hasUsualPowers(String unit) {
    for (int i = 1; i < unit.length(); i++) {
      if (Character.isDigit(unit.charAt(i)) && "23".indexOf(unit.charAt(i)) < 0) {
        return false;
      }
    }
    return true;
  }

  /** The last bracket that holds a unit, or an angular one that may hold one unknown here. */
  private static Optional<Heading> bracketed(String text) {
    for (boolean known : new boolean[] {true, false}) {
      for (int from = text.length() - 1; from >= 0; from--) {
        int kind = OPENING.indexOf(text.charAt(from));
        int to = kind < 0 ? -1 : text.indexOf(CLOSING.charAt(kind), from);
        if (to > from) {
          String unit = text.substring(from + 1, to).strip();
          boolean fits = known ? isUnit(unit) : kind == 0 && !unit.isEmpty();
          if (fits) {
            String rest = text.substring(0, from).strip() + " " + text.substring(to + 1).strip();
            String name = rest.strip();
            String without = name.endsWith("/") ? name.substring(0, name.length() - 1) : name;
            return Optional.of(new Heading(without.isBlank() ? text : without.strip(), unit));
          }
        }
      }
    }
    return Optional.empty();
  }

  private static boolean isPlainUnit(String word) {
    int slash = word.indexOf('/');
    if (slash >= 0) {
      // T/°C and U/V are a quantity and its unit; l/min, m/s and kW/h are units.
      return isUnit(word) && (slash > 1 || isRate(word));
    }
    boolean signs = false;
    for (int i = 0; i < word.length(); i++) {
      signs |= "°%Ωµμ℃℉".indexOf(word.charAt(i)) >= 0;
    }
    return (signs || PLAIN.contains(word.toLowerCase(Locale.ROOT))) && isUnit(word);
  }

  private static boolean isRate(String word) {
    return QuantityParser.units(word).stream()
        .anyMatch(unit -> RATES.stream().anyMatch(kind -> kind.accepts(unit)));
  }

  private static Optional<Heading> whole(String text) {
    return text.indexOf(' ') < 0 && isPlainUnit(text)
        ? Optional.of(new Heading(text, text))
        : Optional.empty();
  }

  private static Optional<Heading> behind(String text, char sign) {
    int at = text.lastIndexOf(sign);
    if (at <= 0 || !isPlainUnit(text.substring(at + 1))) {
      return Optional.empty();
    }
    String name = text.substring(0, at).strip();
    for (String word : new String[] {" in", " /", "/", ",", ":", " -"}) {
      if (name.length() > word.length() && name.endsWith(word)) {
        name = name.substring(0, name.length() - word.length()).strip();
        break;
      }
    }
    return Optional.of(new Heading(name, text.substring(at + 1)));
  }

  private static Optional<Heading> behindSlash(String text) {
    for (int at = text.indexOf('/'); at > 0; at = text.indexOf('/', at + 1)) {
      String unit = text.substring(at + 1).strip();
      if (isUnit(unit)) {
        return Optional.of(new Heading(text.substring(0, at).strip(), unit));
      }
    }
    return Optional.empty();
  }

  private static Optional<Heading> behindComma(String text) {
    int at = text.lastIndexOf(',');
    String unit = text.substring(at + 1).strip();
    return at > 0 && isUnit(unit)
        ? Optional.of(new Heading(text.substring(0, at).strip(), unit))
        : Optional.empty();
  }
}
