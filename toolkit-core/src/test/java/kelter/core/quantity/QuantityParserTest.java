package kelter.core.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people write. Every expected value is an exact definition of the unit that was meant. */
class QuantityParserTest {

  private static final Map<String, QuantityKind> KINDS =
      Map.ofEntries(
          Map.entry("resistance", QuantityKind.RESISTANCE),
          Map.entry("insulation", QuantityKind.INSULATION_RESISTANCE),
          Map.entry("flow", QuantityKind.FLOW),
          Map.entry("gauge", QuantityKind.GAUGE_PRESSURE),
          Map.entry("absolute", QuantityKind.ABSOLUTE_PRESSURE),
          Map.entry("temperature", QuantityKind.TEMPERATURE),
          Map.entry("difference", QuantityKind.TEMPERATURE_DIFFERENCE),
          Map.entry("rate", QuantityKind.HEATING_RATE),
          Map.entry("capacitance", QuantityKind.CAPACITANCE),
          Map.entry("current", QuantityKind.CURRENT),
          Map.entry("voltage", QuantityKind.VOLTAGE),
          Map.entry("power", QuantityKind.POWER),
          Map.entry("energy", QuantityKind.ENERGY),
          Map.entry("torque", QuantityKind.TORQUE),
          Map.entry("length", QuantityKind.LENGTH),
          Map.entry("head", QuantityKind.HEAD),
          Map.entry("area", QuantityKind.AREA),
          Map.entry("volume", QuantityKind.VOLUME),
          Map.entry("mass", QuantityKind.MASS),
          Map.entry("time", QuantityKind.TIME),
          Map.entry("age", QuantityKind.AGE),
          Map.entry("frequency", QuantityKind.FREQUENCY),
          Map.entry("speed", QuantityKind.ROTATIONAL_SPEED),
          Map.entry("ratio", QuantityKind.RATIO));

  private static Quantity read(String kind, String text) {
    return QuantityParser.parse(text, KINDS.get(kind));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "resistance | 26.4 ohm | 26.4",
        "resistance | 26.4ohms | 26.4",
        "resistance | 26,4 Ω | 26.4",
        "resistance | 4.7 kΩ | 4700",
        "resistance | 4.7k | 4700",
        "resistance | 12 Kohm | 12000",
        "resistance | 12 KΩ | 12000",
        "resistance | 2 MΩ | 2e6",
        "resistance | 2 Mohm | 2e6",
        "resistance | 2 mΩ | 2e-3",
        "resistance | 2 mohm | 2e-3",
        "resistance | 1.5e3 Ohm | 1500",
        "resistance | 26.4 R | 26.4",
        "resistance | 200 M | 2e8",
        "resistance | 2 megohms | 2e6",
        "resistance | 2k2 | 2200",
        "resistance | 2K2 | 2200",
        "resistance | 2k2 ohm | 2200",
        "resistance | 26R4 | 26.4",
        "resistance | R47 | 0.47",
        "resistance | 1M0 ± 5 % | 1e6",
        "voltage | 230 VAC | 230",
        "voltage | 230 V~ | 230",
        "rate | 3 C/min | 0.05",
        "length | 6\" | 0.1524",
        "area | 1 in2 | 6.4516e-4",
        "age | 2 yrs | 63115200",
        "flow | 6 l/min | 1e-4",
        "flow | 6 litres/min | 1e-4",
        "flow | 6 lpm | 1e-4",
        "flow | 1 gpm | 6.30901964e-5",
        "flow | 3.6 m³/h | 1e-3",
        "gauge | 1 psi | 6894.757293168362",
        "gauge | 1 psig | 6894.757293168362",
        "gauge | 1 bar(g) | 100000",
        "gauge | 1 bar (g) | 100000",
        "gauge | 1 barg | 100000",
        "gauge | 30 kPa gauge | 30000",
        "gauge | 100 mmH2O | 980.665",
        "gauge | 4 inH2O | 996.35564",
        "gauge | 4 in H2O | 996.35564",
        "gauge | 4 inWC | 996.35564",
        "gauge | 200 mbar | 20000",
        "gauge | 3 kpa | 3000",
        "absolute | 101.325 kPa abs | 101325",
        "absolute | 1 bar (abs) | 100000",
        "absolute | 1 bara | 100000",
        "absolute | 14.7 psia | 101352.93220957",
        "temperature | 60 °C | 333.15",
        "temperature | 60 C | 333.15",
        "temperature | 60 Cel | 333.15",
        "temperature | 140 F | 333.15",
        "temperature | 140 °F | 333.15",
        "temperature | −18 °C | 255.15",
        "temperature | 300 K | 300",
        "difference | 9 °F | 5",
        "difference | 5 °C | 5",
        "difference | 5 K | 5",
        "rate | 3 °C/min | 0.05",
        "rate | 9 °F/min | 0.083333333333333333",
        "rate | 3 K/min | 0.05",
        "capacitance | 14 µF | 14e-6",
        "capacitance | 14 μF | 14e-6",
        "capacitance | 14 mfd | 14e-6",
        "capacitance | 14 MFD | 14e-6",
        "capacitance | 14 uf | 14e-6",
        "current | 9,58 A | 9.58",
        "current | 9.58 a | 9.58",
        "current | 3 amps | 3",
        "current | 250 mA | 0.25",
        "voltage | 230 v | 230",
        "power | 2 kW | 2000",
        "power | 2 KW | 2000",
        "power | 1 hp | 745.69987158227022",
        "power | 100 VA | 100",
        "energy | 1 kWh | 3.6e6",
        "torque | 2 Nm | 2",
        "length | 2 in | 0.0508",
        "length | 2 inches | 0.0508",
        "length | 20 mm | 0.02",
        "length | 3 ft | 0.9144",
        "area | 1.5 mm² | 1.5e-6",
        "area | 1.5 sq mm | 1.5e-6",
        "volume | 1 gal | 3.785411784e-3",
        "volume | 12 litres | 0.012",
        "mass | 10 lb | 4.5359237",
        "mass | 10 lbs | 4.5359237",
        "time | 2 min | 120",
        "time | 2 minutes | 120",
        "time | 2 h | 7200",
        "time | 2 H | 7200",
        "time | 30 sec | 30",
        "age | 9 years | 284018400",
        "age | 9 y | 284018400",
        "frequency | 50 Hz | 50",
        "frequency | 50 HZ | 50",
        "speed | 1400 rpm | 23.333333333333333",
        "speed | 1400 1/min | 23.333333333333333",
        "time | 1 min 30 s | 90",
        "time | 1m30s | 90",
        "time | 1' 30\" | 90",
        "time | 1 h 20 min | 4800",
        "time | 1 h, 20 min and 5 s | 4805",
        "time | 1:30 min | 90",
        "time | 1:30 h | 5400",
        "time | 0:01:30 | 90",
        "time | 90 secs | 90",
        "time | 2 mins | 120",
        "length | 3/4 in | 0.01905",
        "length | ½ in | 0.0127",
        "length | 1½\" | 0.0381",
        "length | 1 1/2 in | 0.0381",
        "length | 1-1/2 in | 0.0381",
        "length | 5 ft 11 in | 1.8034",
        "length | 5' 11\" | 1.8034",
        "length | 5′ 11″ | 1.8034",
        "length | 20 MM. | 0.02",
        "power | 1/3 hp | 248.56662386075674",
        "power | 3 kVA | 3000",
        "flow | 6 l/m | 1e-4",
        "flow | 1 gph | 1.0515032733333333e-6",
        "flow | 60 cc/min | 1e-6",
        "volume | 50 cc | 5e-5",
        "energy | 1 kcal | 4184",
        "energy | 1 cal | 4.184",
        "gauge | 4 in. w.c. | 996.35564",
        "gauge | 4 \"WC | 996.35564",
        "gauge | 4\" w.c. | 996.35564",
        "gauge | 3 Bar | 300000",
        "gauge | 1 mH2O | 9806.65",
        "gauge | 1 kgf/cm2 | 98066.5",
        "gauge | 1 kg/cm² | 98066.5",
        "torque | 1 ft-lb | 1.3558179483314004",
        "torque | 1 lb·ft | 1.3558179483314004",
        "torque | 1 in-lb | 0.1129848290276167",
        "voltage | 5 KV | 5000",
        "voltage | 230 V a.c. | 230",
        "voltage | 230 Vrms | 230",
        "current | 250 ma | 0.25",
        "resistance | ~26 ohm | 26",
        "resistance | ca. 26 ohm | 26",
        "resistance | approx 26 ohm | 26",
        "temperature | 60 ºC | 333.15",
        "temperature | 60 ℃ | 333.15",
        "temperature | 140 ℉ | 333.15",
        "speed | 10 rps | 10",
        "head | 9.80665 kPa | 1",
        "head | 1 psi | 0.7030695796391593",
        "head | 1 psig | 0.7030695796391593",
        "head | 1 ftH2O | 0.3048",
        "head | 1 mH2O | 1",
        "ratio | 50 % | 0.5",
        "ratio | 0.5 | 0.5"
      })
  void spellingsOfTheTrade(String kind, String text, double si) {
    assertEquals(si, read(kind, text).si(), 1e-12 * Math.abs(si), text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1500.5 V | 1500.5",
        "1500,5 V | 1500.5",
        "1,500.5 V | 1500.5",
        "1.500,5 V | 1500.5",
        "1 500 V | 1500",
        "1 500,5 V | 1500.5",
        "1'500 V | 1500",
        "1,234,567 V | 1234567",
        "1.234.567 V | 1234567",
        "0,500 V | 0.5",
        ".5 V | 0.5",
        "-,5 V | -0.5",
        "+5 V | 5",
        "5. V | 5",
        "1,5e3 V | 1500"
      })
  void numbersAsPeopleWriteThem(String text, double value) {
    assertEquals(value, read("voltage", text).value(), 0);
  }

  /** A meter for voltages to 500 V shows neither 230500 V nor 1 500 V, a speed may be either. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1,500 V | 500 | 1.5",
        "1.500 V | 500 | 1.5",
        "230.500 V | 500 | 230.5",
        "230,500 V | 500 | 230.5",
        "-1.500 V | 500 | -1.5",
        "1.500 ± 1.200 V | 500 | 1.5"
      })
  void thousandsOrDecimalsAreSettledByWhatCanBe(String text, double most, double value) {
    var expected = new Expected(QuantityKind.VOLTAGE, -most, most);
    assertEquals(value, QuantityParser.parse(text, expected).value(), 0);
  }

  @Test
  void minutesOrHoursAreSettledByWhatCanBe() {
    assertEquals(90, QuantityParser.parse("1:30", new Expected(QuantityKind.TIME, 0, 900)).si(), 0);
    assertEquals(
        5400, QuantityParser.parse("1:30", new Expected(QuantityKind.TIME, 1800, 1e5)).si(), 0);
  }

  /** What was told as a pressure comes back as one, and is read back from what was written. */
  @Test
  void aHeadIsToldInTheUnitThatWasRead() {
    Quantity head = QuantityParser.parse("2.5 psi", QuantityKind.HEAD);
    assertEquals("2.5 psi", head.display());
    assertEquals(head, QuantityParser.parse(head.format(), QuantityKind.HEAD));
  }

  @Test
  void threeDecimalsAreWrittenWithAFourth() {
    Quantity power = Quantity.of(1.234, "kW", QuantityKind.POWER);
    assertEquals("1.2340 kW", power.format());
    assertEquals(power, QuantityParser.parse(power.format(), QuantityKind.POWER));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"~26 V | 2", "3/4 V | 0.25", "1½ V | 0.5"})
  void whatIsRoundedMoreIsKnownToBe(String text, double resolution) {
    var parsed = QuantityParser.parsePart(text, QuantityKind.VOLTAGE);
    assertEquals(resolution, parsed.resolution(), 1e-15);
  }

  @ParameterizedTest
  @ValueSource(strings = {"1,500 V", "-1,500 V", "12,345 V"})
  void thousandsOrDecimalsAreNotGuessed(String text) {
    var refused = assertThrows(QuantityFormatException.class, () -> read("voltage", text));
    assertTrue(refused.getMessage().contains("may mean"), refused.getMessage());
    assertTrue(refused.getMessage().contains("00") || refused.getMessage().contains("12345"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "voltage | '' | not a number with a unit",
        "voltage | five volts | not a number with a unit",
        "voltage | 5 | no unit",
        "voltage | 5 A | a voltage is expected",
        "insulation | 5 | an insulation resistance is expected",
        "area | 5 V | an area is expected",
        "age | five | an age is expected",
        "voltage | 5 foo | not known",
        "voltage | NaN V | not a number",
        "voltage | 1e999 V | too large",
        "voltage | 1 5 V | write '15 V'",
        "voltage | 23 0 V | write '230 V'",
        "voltage | 120/240 V | two values; write the one that is meant, as '240 V'",
        "flow | 1 0 L/min | write '10 L/min'",
        "resistance | 1e1000 ohm | too large",
        "resistance | 1e300 ohm | too large",
        "resistance | 1e99999999999 ohm | too large",
        "speed | 1.400 rpm | write 1400 or 1.40",
        "resistance | 10.000 ohm | write 10000 or 10.00",
        "resistance | 10,000 ohm | write 10000 or 10.00",
        "time | 1:30 | write '1 min 30 s' or '1 h 30 min'",
        "time | 1:75 | ':75' is not known",
        "length | 3/4/5 in | '/5 in' is not known",
        "time | 30 s 1 min | not known",
        "length | 5 ft 13 in | not known",
        "length | 1 psi | a length is expected",
        "resistance | 5 kOmh | did you mean kOhm",
        "length | 5 M | not a value in M",
        "flow | 5 L/mon | did you mean L/min",
        "area | 14 AWG | gauge number",
        "temperature | -300 °C | below absolute zero",
        "temperature | -460 °F | below absolute zero",
        "temperature | -1 K | below absolute zero",
        "absolute | -1 kPa | below absolute zero",
        "gauge | 30 kPa abs | not an absolute",
        "absolute | 30 psig | not a gauge",
        "resistance | 30 bar(g) | not a gauge",
        "voltage | 5 V ± x | number with a unit",
        "voltage | 5 V ± 1 (k=0) | above zero",
        "voltage | 5 V ± 1 A | voltage is expected",
        "ratio | 50 % ± 2 % | points"
      })
  void refusedWithWhatWouldBeRight(String kind, String text, String part) {
    var refused = assertThrows(QuantityFormatException.class, () -> read(kind, text));
    assertTrue(refused.getMessage().contains(part), refused.getMessage());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "resistance | 5 P",
        "resistance | 5 kPb",
        "temperature | 5 X",
        "length | 5 Q",
        "speed | 5 rpx"
      })
  void nothingIsSuggestedThatDoesNotFit(String kind, String text) {
    var refused = assertThrows(QuantityFormatException.class, () -> read(kind, text));
    assertTrue(!refused.getMessage().contains("did you mean"), refused.getMessage());
  }

  @Test
  void ofMoneyThousandsAndDecimalsAreNotGuessed() {
    QuantityKind euro = QuantityKind.money("EUR");
    for (String text : new String[] {"1.900 EUR", "EUR 1.900", "1.900 €"}) {
      var refused =
          assertThrows(QuantityFormatException.class, () -> QuantityParser.parse(text, euro));
      assertTrue(refused.getMessage().contains("write 1900 or 1.90"), refused.getMessage());
    }
    assertEquals(38.5, QuantityParser.parse("EUR 38,50", euro).value(), 0);
    assertEquals(38.5, QuantityParser.parse("38.50 €", euro).value(), 0);
    assertEquals(2200, read("power", "2200.000 W").si(), 0);
  }

  @Test
  void overlongTextIsRefused() {
    String text = "1".repeat(101);
    assertThrows(QuantityFormatException.class, () -> read("ratio", text));
  }

  /** JCGM 100:2008, 4.3.7: limits of error are rectangular, a/√3; 4.3.3: stated k, U/k. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "voltage | 100.0 V ± 1.2 V | 0.6928203230275509",
        "voltage | 100.0 V ± 1.2 | 0.6928203230275509",
        "voltage | 100.0 ± 1.2 V | 0.6928203230275509",
        "voltage | 100.0 V +/- 1.2 V | 0.6928203230275509",
        "voltage | 100.0 V +- 1,2 V | 0.6928203230275509",
        "voltage | 100.0 V ± 1.2 % | 0.6928203230275509",
        "voltage | -100.0 V ± 1.2 % | 0.6928203230275509",
        "voltage | 100.0 V ± 1200 mV | 0.6928203230275509",
        "voltage | 100.0 V ± 1.2 V (k=2) | 0.6",
        "voltage | 100.0 V ± 1.2 V ( k = 1 ) | 1.2",
        "temperature | 60 °C ± 1.2 °C | 0.6928203230275509",
        "temperature | 60 °C ± 1.2 K | 0.6928203230275509",
        "temperature | 140 °F ± 2.16 °F | 0.6928203230275509"
      })
  void limitsOfError(String kind, String text, double standardUncertaintySi) {
    assertEquals(standardUncertaintySi, read(kind, text).standardUncertaintySi(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"26.4 V | 0.1", "26.40 V | 0.01", "26 V | 1", "0,620 V | 0.001", "1e3 V | 1000"})
  void theLastDigitIsTheResolution(String text, double resolution) {
    var parsed = QuantityParser.parsePart(text, QuantityKind.VOLTAGE);
    assertEquals(resolution, parsed.resolution(), 1e-15);
  }
}
