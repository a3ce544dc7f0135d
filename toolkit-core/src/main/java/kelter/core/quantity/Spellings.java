package kelter.core.quantity;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** How the trade writes units, beside their UCUM codes. */
final class Spellings {

  /** Whole spellings, compared without case and spaces: a code, and what stands for it. */
  private static final Map<String, String> WHOLE =
      codes(
          "Cel c °c degc degreesc celsius",
          "[degF] f °f degf degreesf fahrenheit",
          "K kelvin",
          "[gal_us]/min gpm gal/min gal(us)/min",
          "[gal_us]/h gph gal/h gal/hr",
          "[gal_us] gal gal(us)",
          "L/min lpm l/m l/mn ltr/min lt/min",
          "L/s lps",
          "mL/min ccm/min cc/min",
          "cm3 cc ccm",
          "L/h lph",
          "m3/h m³/h cbm/h",
          "[cft_i]/min cfm ft3/min",
          "[psi] psi",
          "kPa kpa",
          "Pa pa",
          "hPa hpa",
          "bar bar bars",
          "mbar mbar",
          "kgf/cm2 kgf/cm2 kgf/cm² kg/cm2 kg/cm² kp/cm2 kp/cm²",
          "m[H2O] mh2o mwc mws",
          "cm[H2O] cmh2o cmwc",
          "mm[H2O] mmh2o mmwc",
          "[in_i'H2O] inh2o inwc inwg \"h2o \"wc \"wg iwc",
          "12.[in_i'H2O] fth2o ftwc",
          "m[Hg] mhg",
          "mm[Hg] mmhg",
          "[in_i'Hg] inhg",
          "[in_i] in inch inches \" ″",
          "mm mm",
          "cm cm",
          "[ft_i] ft feet foot '",
          "[cft_i] ft3",
          "[lb_av] lb lbs",
          "kg kg kgs kilo kilos",
          "[ft_i].[lbf_av] ftlb ftlbs ftlbf lbft lbfft",
          "[in_i].[lbf_av] inlb inlbs inlbf lbin lbfin",
          "[oz_av] oz",
          "[HP] hp",
          "[Btu_IT] btu",
          "[Btu_IT]/h btu/h",
          "{rev}/min rpm rev/min r/min u/min 1/min",
          "{pulse}/L pulse/l pulses/l",
          "{rev}/s rps rev/s r/s 1/s",
          "Ohm ohm ohms r",
          "uF mfd uf",
          "mF mf",
          "nF nf",
          "kOhm k kilohm kilohms",
          "MOhm meg megohm megohms",
          "EUR €",
          "EUR/a €/a",
          "[sin_i] in2 in² sqin",
          "[sft_i] ft2",
          "V vac v~ vdc vrms v volt volts",
          "kV kv",
          "mV mv",
          "mA ma",
          "uA ua",
          "K/min c/min",
          "[degR]/min f/min",
          "a yrs y yr year years",
          "A a amp amps ampere amperes arms aac adc",
          "W w watt watts",
          "cal cal",
          "kcal kcal",
          "kW kw kilowatt kilowatts",
          "Hz hz",
          "kHz khz",
          "h h hr hrs hour hours",
          "V.A va",
          "kV.A kva",
          "kW.h kwh",
          "W.h wh",
          "N.m nm",
          "mm2 mm² sqmm",
          "kg/m3 kg/m³",
          "s s sec secs second seconds",
          "min min mins minute minutes",
          "d day days",
          "mo months month",
          "% percent",
          "L litre litres liter liters");

  /** What is suggested for a unit that is not known, where it fits. */
  private static final List<String> SUGGESTED =
      List.of(
          "Ohm", "kOhm", "MOhm", "L/min", "L/h", "mL/min", "kPa", "Pa", "mbar", "bar", "Cel",
          "[degF]", "K", "uF", "mA", "uA", "A", "V", "W", "kW", "mm", "cm", "m", "min", "s", "h",
          "a", "mm2", "mm[H2O]", "[psi]", "psi", "K/min", "kW.h", "%", "Hz", "kg", "L", "rpm",
          "N.m");

  private static final String PREFIXES = "TGMkmunp";

  /** A unit of fewer letters is not corrected; own choice. */
  private static final int LEAST_LETTERS = 4;

  private Spellings() {}

  private static Map<String, String> codes(String... rows) {
    Map<String, String> codes = new HashMap<>();
    for (String row : rows) {
      String[] words = row.split(" ");
      for (int i = 1; i < words.length; i++) {
        codes.put(words[i], words[0]);
      }
    }
    return codes;
  }

  /** The units that a text may stand for, the UCUM reading first. */
  static List<Unit> candidates(String text) {
    Set<String> codes = new LinkedHashSet<>();
    codes.add(text);
    whole(text).ifPresent(codes::add);
    codes.add(rewrite(text));
    whole(withoutMarks(text)).ifPresent(codes::add);
    return codes.stream().map(UcumParser::parse).flatMap(Optional::stream).toList();
  }

  /** The code that a whole spelling stands for; a capital M alone, as a small one is the metre. */
  static Optional<String> whole(String text) {
    return Optional.ofNullable(text.equals("M") ? "MOhm" : WHOLE.get(fold(text)));
  }

  /** Without the points of abbreviations and the hyphens of products: in. w.c., ft-lb. */
  private static String withoutMarks(String text) {
    StringBuilder rest = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char before = i == 0 ? ' ' : text.charAt(i - 1);
      boolean mark = ".-·".indexOf(text.charAt(i)) >= 0;
      if (!mark || !Character.isLetter(before) && before != '"') {
        rest.append(text.charAt(i));
      }
    }
    return rest.toString();
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
            .replace("^", "")
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
        rate.replace("[ft_i].[lbf_av]", "ft lbf")
            .replace("[in_i].[lbf_av]", "in lbf")
            .replace("12.[in_i'H2O]", "ftH2O")
            .replace("MOhm", "Mohm")
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
    return suggestion(
        text,
        SUGGESTED.stream()
            .filter(code -> candidates(code).stream().anyMatch(kind::accepts))
            .toList());
  }

  private static String suggestion(String text, List<String> known) {
    String gauge = wireGauge(text);
    if (!gauge.isEmpty()) {
      return gauge;
    }
    Optional<String> near = Nearest.of(text, known);
    // In a short unit a single letter is all the difference: rps and rpm, kV and V.
    boolean told =
        near.isPresent()
            && (text.length() >= LEAST_LETTERS || near.get().equalsIgnoreCase(text.strip()));
    return told ? "; did you mean " + near.get() + "?" : "";
  }

  /** The unit that is likely meant where a value in another one cannot be. */
  static Optional<Unit> likely(Quantity quantity, Expected expected) {
    String code = quantity.unit().code();
    boolean time = expected.kind().accepts(QuantityKind.TIME.unit());
    List<String> others = new ArrayList<>(time ? List.of() : prefixed(code));
    others.addAll(SUGGESTED);
    for (String other : others) {
      Optional<Unit> unit = UcumParser.parse(other);
      if (unit.isPresent()
          && expected.kind().accepts(unit.get())
          && !other.equals(code)
          && !isKelvin(other, expected)
          && expected.takes(expected.kind().toSi(quantity.value(), unit.get()))) {
        return unit;
      }
    }
    return Optional.empty();
  }

  /** Nobody reads a thermometer in kelvin. */
  private static boolean isKelvin(String code, Expected expected) {
    return expected.kind().scale() == Scale.TEMPERATURE && code.endsWith("K");
  }

  /** A unit with other prefixes: m for a shifted M first, then none, then the others. */
  private static List<String> prefixed(String code) {
    boolean has =
        code.length() > 1
            && PREFIXES.indexOf(code.charAt(0)) >= 0
            && UcumParser.symbols().contains(code.substring(1));
    String base = has ? code.substring(1) : code;
    List<String> units = List.of(base, "m" + base, "k" + base, "u" + base, "n" + base, "M" + base);
    List<String> shifted = new ArrayList<>(units);
    if (has && code.charAt(0) == 'M') {
      Collections.swap(shifted, 0, 1);
    }
    return shifted;
  }

  /** What to write instead of a gauge number of wire, as the end of a sentence; else empty. */
  static String wireGauge(String text) {
    return fold(text).matches("\\d*awg\\d*")
        ? "; AWG is a gauge number of wire, not a unit: give the section in mm2"
        : "";
  }
}
