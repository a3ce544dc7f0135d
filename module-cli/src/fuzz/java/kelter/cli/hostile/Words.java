package kelter.cli.hostile;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What stands in for a word, a number or a unit of an input.
 *
 * @param words words of the seeds, so that names of parts meet where they do not belong
 */
record Words(List<String> words) {

  private static final Pattern WORD = Pattern.compile("[A-Za-z][A-Za-z0-9./-]{1,30}");

  private static final List<String> NUMBERS =
      List.of(
          "0",
          "-0",
          "-0.0",
          "1",
          "-1",
          "2",
          "1e308",
          "-1e308",
          "1e309",
          "1e-320",
          "4.9e-324",
          "NaN",
          "Infinity",
          "-Infinity",
          "0x1F",
          "1e",
          "1e+",
          ".5",
          "5.",
          "1,5",
          "1.234,5",
          "1,234.5",
          "1'000",
          "1 000",
          "9007199254740993",
          "2147483648",
          "-2147483649",
          "9223372036854775808",
          "0.1",
          "1e15",
          "1e16",
          "1e-15",
          "99999999999999999999999999999999999999",
          "1".repeat(99),
          "0." + "0".repeat(80) + "1",
          "1e99999999999",
          "½",
          "1½",
          "1/0",
          "0/0",
          "1/3",
          "٣",
          "１２",
          "²");

  private static final List<String> UNITS =
      List.of(
          "",
          "ohm",
          "Ω",
          "kohm",
          "Mohm",
          "V",
          "mV",
          "kV",
          "A",
          "mA",
          "W",
          "kW",
          "kWh",
          "Hz",
          "L",
          "L/min",
          "m3/h",
          "gal/min",
          "m",
          "mm",
          "in",
          "ft",
          "\"",
          "bar",
          "kPa",
          "psi",
          "mmH2O",
          "mbar",
          "°C",
          "C",
          "K",
          "°F",
          "degF",
          "%",
          "ppm",
          "s",
          "min",
          "h",
          "d",
          "a",
          "years",
          "months",
          "EUR",
          "USD",
          "XXX",
          "EUR/kWh",
          "hp",
          "rpm",
          "1/min",
          "uF",
          "µF",
          "nF",
          "mH",
          "kg",
          "g",
          "lb",
          "dB",
          "1",
          "mm2",
          "AWG",
          "m/s2",
          "10^",
          "m^-9",
          "m.m.m.m.m.m",
          "kkW",
          "W/W",
          "{x}",
          "[",
          "(",
          "parsec");

  private static final List<String> TOKENS =
      List.of(
          "",
          " ",
          "null",
          "true",
          "false",
          "yes",
          "no",
          "OL",
          "<",
          ">",
          "~",
          "±",
          "± 0",
          "± -1",
          "± 1e308",
          "± 5 %",
          "(k=0)",
          "(k=2)",
          "(k=2, dof=0)",
          "(triangular)",
          "(U-shaped)",
          "+",
          "-",
          "\u2212",
          "..",
          ";",
          ",",
          ".",
          "=",
          ":",
          "#3",
          "/",
          "\\",
          "\"",
          "'",
          "`",
          "$(x)",
          "%s",
          "%n",
          "{0}",
          "{",
          "}",
          "[",
          "]",
          "\u0000",
          "\u0007",
          "\u001b[2J",
          "\u009b2J",
          "\u202e",
          "\u2028",
          "\ufeff",
          "\ufffe",
          "\ufdd0",
          "\ud800",
          "\u00a0",
          "\u200b",
          "\t",
          "\n",
          "\r",
          "\r\n",
          "é",
          "e\u0301",
          "𝟙",
          "😀",
          "مرحبا",
          "-".repeat(3),
          "a".repeat(300),
          "a".repeat(20001),
          "2026-02-30",
          "0000-01-01",
          "9999-12-31",
          "-1-01-01",
          "2026-02-29T24:00",
          "24:00:00",
          "23:59:60",
          "--help",
          "--format",
          "json",
          "text",
          "--",
          "-");

  Words {
    words = List.copyOf(words);
  }

  /** The words of some texts. */
  static Words of(List<String> texts) {
    TreeSet<String> words = new TreeSet<>();
    for (String text : texts) {
      Matcher matcher = WORD.matcher(text);
      while (matcher.find()) {
        words.add(matcher.group());
      }
    }
    return new Words(new ArrayList<>(words));
  }

  String number(Chance chance) {
    return switch (chance.below(3)) {
      case 0 -> chance.of(NUMBERS);
      case 1 -> String.valueOf(chance.below(2000) - 200);
      default ->
          String.valueOf(
              (chance.oneIn(4) ? -1 : 1) * Math.pow(10, chance.random().nextDouble(-12, 12)));
    };
  }

  String unit(Chance chance) {
    return chance.of(UNITS);
  }

  String quantity(Chance chance) {
    return number(chance) + (chance.oneIn(3) ? "" : " ") + unit(chance);
  }

  String any(Chance chance) {
    return switch (chance.below(5)) {
      case 0 -> chance.of(TOKENS);
      case 1 -> number(chance);
      case 2 -> quantity(chance);
      case 3 -> unit(chance);
      default -> chance.of(words);
    };
  }
}
