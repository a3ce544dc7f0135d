package kelter.core.quantity;

import static java.util.Map.entry;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** How the trade writes units, beside their UCUM codes. */
final class Spellings {

  /** Whole spellings, compared without case and spaces. A spelling may stand for several units. */
  private static final Map<String, List<String>> WHOLE =
      Map.ofEntries(
          entry("c", List.of("Cel")),
          entry("°c", List.of("Cel")),
          entry("degc", List.of("Cel")),
          entry("celsius", List.of("Cel")),
          entry("f", List.of("[degF]")),
          entry("°f", List.of("[degF]")),
          entry("degf", List.of("[degF]")),
          entry("fahrenheit", List.of("[degF]")),
          entry("kelvin", List.of("K")),
          entry("gpm", List.of("[gal_us]/min")),
          entry("gal/min", List.of("[gal_us]/min")),
          entry("gal", List.of("[gal_us]")),
          entry("gal(us)", List.of("[gal_us]")),
          entry("gal(us)/min", List.of("[gal_us]/min")),
          entry("lpm", List.of("L/min")),
          entry("lph", List.of("L/h")),
          entry("m³/h", List.of("m3/h")),
          entry("cfm", List.of("[cft_i]/min")),
          entry("psi", List.of("[psi]")),
          entry("kpa", List.of("kPa")),
          entry("mh2o", List.of("m[H2O]")),
          entry("cmh2o", List.of("cm[H2O]")),
          entry("mmh2o", List.of("mm[H2O]")),
          entry("mmwc", List.of("mm[H2O]")),
          entry("inh2o", List.of("[in_i'H2O]")),
          entry("inwc", List.of("[in_i'H2O]")),
          entry("inwg", List.of("[in_i'H2O]")),
          entry("mhg", List.of("m[Hg]")),
          entry("mmhg", List.of("mm[Hg]")),
          entry("inhg", List.of("[in_i'Hg]")),
          entry("in", List.of("[in_i]")),
          entry("inch", List.of("[in_i]")),
          entry("inches", List.of("[in_i]")),
          entry("ft", List.of("[ft_i]")),
          entry("ft3", List.of("[cft_i]")),
          entry("ft3/min", List.of("[cft_i]/min")),
          entry("feet", List.of("[ft_i]")),
          entry("lb", List.of("[lb_av]")),
          entry("lbs", List.of("[lb_av]")),
          entry("oz", List.of("[oz_av]")),
          entry("hp", List.of("[HP]")),
          entry("btu", List.of("[Btu_IT]")),
          entry("btu/h", List.of("[Btu_IT]/h")),
          entry("rpm", List.of("{rev}/min")),
          entry("rev/min", List.of("{rev}/min")),
          entry("1/min", List.of("{rev}/min")),
          entry("ohm", List.of("Ohm")),
          entry("ohms", List.of("Ohm")),
          entry("mfd", List.of("uF")),
          entry("uf", List.of("uF")),
          entry("k", List.of("kOhm")),
          entry("r", List.of("Ohm")),
          entry("kilohm", List.of("kOhm")),
          entry("kilohms", List.of("kOhm")),
          entry("meg", List.of("MOhm")),
          entry("megohm", List.of("MOhm")),
          entry("megohms", List.of("MOhm")),
          entry("€", List.of("EUR")),
          entry("€/a", List.of("EUR/a")),
          entry("\"", List.of("[in_i]")),
          entry("″", List.of("[in_i]")),
          entry("in2", List.of("[sin_i]")),
          entry("in²", List.of("[sin_i]")),
          entry("sqin", List.of("[sin_i]")),
          entry("ft2", List.of("[sft_i]")),
          entry("vac", List.of("V")),
          entry("v~", List.of("V")),
          entry("vdc", List.of("V")),
          entry("c/min", List.of("K/min")),
          entry("f/min", List.of("[degR]/min")),
          entry("yrs", List.of("a")),
          entry("a", List.of("A")),
          entry("v", List.of("V")),
          entry("w", List.of("W")),
          entry("kw", List.of("kW")),
          entry("hz", List.of("Hz")),
          entry("h", List.of("h")),
          entry("va", List.of("V.A")),
          entry("kwh", List.of("kW.h")),
          entry("wh", List.of("W.h")),
          entry("nm", List.of("N.m")),
          entry("mm²", List.of("mm2")),
          entry("sqmm", List.of("mm2")),
          entry("kg/m³", List.of("kg/m3")),
          entry("sec", List.of("s")),
          entry("second", List.of("s")),
          entry("seconds", List.of("s")),
          entry("minute", List.of("min")),
          entry("minutes", List.of("min")),
          entry("hr", List.of("h")),
          entry("hour", List.of("h")),
          entry("hours", List.of("h")),
          entry("day", List.of("d")),
          entry("days", List.of("d")),
          entry("y", List.of("a")),
          entry("yr", List.of("a")),
          entry("year", List.of("a")),
          entry("years", List.of("a")),
          entry("months", List.of("mo")),
          entry("month", List.of("mo")),
          entry("percent", List.of("%")),
          entry("amp", List.of("A")),
          entry("amps", List.of("A")),
          entry("volt", List.of("V")),
          entry("volts", List.of("V")),
          entry("watt", List.of("W")),
          entry("watts", List.of("W")),
          entry("litre", List.of("L")),
          entry("litres", List.of("L")),
          entry("liter", List.of("L")),
          entry("liters", List.of("L")));

  /** A capital M alone; a small one is the metre. */
  private static final List<String> MEGOHM = List.of("MOhm");

  /** What is suggested for a unit that is not known, where it fits. */
  private static final List<String> SUGGESTED =
      List.of(
          "Ohm", "kOhm", "MOhm", "L/min", "L/h", "kPa", "mbar", "bar", "Cel", "K", "uF", "mA", "A",
          "V", "W", "kW", "mm", "m", "min", "s", "h", "a", "mm2", "mm[H2O]", "[psi]", "psi",
          "K/min", "kW.h", "%", "Hz", "kg", "L", "rpm", "N.m");

  private Spellings() {}

  /** The units that a text may stand for, the UCUM reading first. */
  static List<Unit> candidates(String text) {
    Set<String> codes = new LinkedHashSet<>();
    codes.add(text);
    codes.addAll(whole(text));
    codes.add(rewrite(text));
    List<Unit> units = new ArrayList<>();
    for (String code : codes) {
      Optional<Unit> unit = UcumParser.parse(code);
      if (unit.isPresent()) {
        units.add(unit.get());
      }
    }
    return units;
  }

  /** The codes that a whole spelling stands for. */
  static List<String> whole(String text) {
    return text.equals("M") ? MEGOHM : WHOLE.getOrDefault(fold(text), List.of());
  }

  private static String fold(String text) {
    return withoutBlanks(text).toLowerCase(Locale.ROOT);
  }

  private static String withoutBlanks(String text) {
    StringBuilder rest = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      if (" \t\n\r\f\u000b\u00a0\u2009\u202f".indexOf(text.charAt(i)) < 0) {
        rest.append(text.charAt(i));
      }
    }
    return rest.toString();
  }

  /** Parts of a compound unit, each spelt as the trade does: kΩ, Ohms, l, µF, mΩ. */
  private static String rewrite(String text) {
    String code =
        withoutBlanks(text)
            .replace("µ", "u")
            .replace("μ", "u")
            .replace("Ω", "Ohm")
            .replace("\u2126", "Ohm")
            .replaceAll("(?i)ohms?", "Ohm")
            .replace("²", "2")
            .replace("³", "3")
            .replace("·", ".")
            .replace("*", ".")
            .replace("kWh", "kW.h")
            .replace("°C", "K")
            .replaceAll("^(?:°F|degF)(?=/)", "[degR]")
            .replaceAll("(?<=/|^)(?:litres?|liters?|l)(?=/|$)", "L")
            .replaceAll("(?<=/)(?:hr|hour)$", "h")
            .replaceAll("(?<=/)(?:sec|second)$", "s")
            .replaceAll("(?<=/)(?:minute|mins)$", "min")
            .replaceAll("(?<=/)(?:y|yr|year)$", "a");
    return code.replaceAll("^K(?=Ohm)", "k");
  }

  /** The trade's spelling of a UCUM code. */
  static String symbol(String code) {
    if (code.equals("1")) {
      return "";
    }
    if (code.equals("a")) {
      return "years";
    }
    String rate = code.endsWith("/a") ? code.substring(0, code.length() - 1) + "year" : code;
    return withoutBraces(
        rate.replace("MOhm", "Mohm")
            .replace("Ohm", "ohm")
            .replace("{rev}/min", "rpm")
            .replace("1/min", "rpm")
            .replace("[in_i'H2O]", "inH2O")
            .replace("[in_i'Hg]", "inHg")
            .replace("[degF]", "°F")
            .replace("Cel", "°C")
            .replace("[Btu_IT]", "BTU")
            .replace("[HP]", "hp")
            .replace("[gal_us]", "gal (US)")
            .replace("[psi]", "psi")
            .replace("[in_i]", "in")
            .replace("[ft_i]", "ft")
            .replace("[cft_i]", "ft3")
            .replace("[lb_av]", "lb")
            .replace("[oz_av]", "oz")
            .replace("[degR]", "°F")
            .replace("kW.h", "kWh")
            .replace("N.m", "N m")
            .replace("mPa.s", "mPa s")
            .replace("uF", "µF")
            .replace("m[H2O]", "mH2O")
            .replace("m[Hg]", "mHg"));
  }

  private static String withoutBraces(String code) {
    return code.indexOf('{') < 0 ? code : code.replaceAll("\\{([^}]*)}", "$1");
  }

  /** What might have been meant, as the end of a sentence. */
  static String suggestion(String text) {
    return suggestion(text, SUGGESTED);
  }

  /** What might have been meant among the units of a kind, as the end of a sentence. */
  static String suggestion(String text, QuantityKind kind) {
    List<String> fitting = new ArrayList<>();
    for (String code : SUGGESTED) {
      for (Unit unit : candidates(code)) {
        if (kind.accepts(unit) && !fitting.contains(code)) {
          fitting.add(code);
        }
      }
    }
    return suggestion(text, fitting);
  }

  private static String suggestion(String text, List<String> known) {
    String gauge = wireGauge(text);
    if (!gauge.isEmpty()) {
      return gauge;
    }
    Optional<String> near = Nearest.of(text, known);
    // Of a single letter every other one is a single change away.
    boolean told =
        near.isPresent() && (text.length() > 1 || near.get().equalsIgnoreCase(text.strip()));
    return told ? "; did you mean " + near.get() + "?" : "";
  }

  /** What to write instead of a gauge number of wire, as the end of a sentence; else empty. */
  static String wireGauge(String text) {
    return fold(text).matches("\\d*awg\\d*")
        ? "; AWG is a gauge number of wire, not a unit: give the section in mm2"
        : "";
  }
}
