package kelter.core.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * How nameplates are marked: IEC 60335-1:2004, 7.3 and its notes (second-hand): a hyphen between
 * the limits of a range, a solidus between figures to which the machine is set. That frequencies
 * are told with a solidus is common practice, no source.
 */
class RatedRangeTest {

  private static RatedRange volts(String text) {
    return RatedRange.parse(text, QuantityKind.VOLTAGE);
  }

  private static String refusal(String text) {
    return assertThrows(IllegalArgumentException.class, () -> volts(text)).getMessage();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "220-240 V",
        " 220 - 240 V ",
        "220\u2013240 V",
        "220 V - 240 V",
        "220 V \u2013 240 V",
        "220V-240V",
        "220\u2212240V",
        "0.22-0.24 kV",
        "0,22 kV - 240 V",
        "220-240 volts",
        "220-240 V~",
        "~ 220-240 V"
      })
  void readsARangeHoweverItIsSpelt(String text) {
    RatedRange range = volts(text);
    assertEquals(220, range.low().si(), 1e-9);
    assertEquals(240, range.high().si(), 1e-9);
    assertTrue(range.isRange());
    assertEquals(230, range.meanSi(), 1e-9);
  }

  /** The example of a range in note 1 of 7.3, twice as high as it is low. */
  @Test
  void readsTheExampleOfTheStandard() {
    assertEquals(115, volts("115-230 V").low().si(), 0);
    assertEquals(230, volts("115-230 V").high().si(), 0);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "230 V",
        "230V",
        "0.23 kV",
        "2.3e2 V",
        "23000e-2 V",
        "230 V ± 5 V",
        "230 V~",
        "230V ~"
      })
  void readsOneFigure(String text) {
    RatedRange one = volts(text);
    assertEquals(230, one.low().si(), 1e-9);
    assertEquals(one.low(), one.high());
    assertFalse(one.isRange());
  }

  @ParameterizedTest
  @CsvSource({
    "50/60 Hz, 50, 60",
    "50-60 Hz, 50, 60",
    "50 Hz / 60 Hz, 50, 60",
    "50 Hz, 50, 50",
    "50 s-1, 50, 50",
    "50 /s, 50, 50"
  })
  void readsFrequencies(String text, double low, double high) {
    RatedRange range = RatedRange.parse(text, QuantityKind.FREQUENCY);
    assertEquals(low, range.low().si(), 0);
    assertEquals(high, range.high().si(), 0);
  }

  /**
   * Nominal voltages of ANSI C84.1, from memory: 120 V to neutral, 240 V or 208 V between lines.
   */
  @Test
  void threeWiresAreToldByTheVoltageBetweenTheLines() {
    assertEquals(240, volts("120/240 V").meanSi(), 0);
    assertEquals(208, volts("120/208 V~").meanSi(), 0);
    assertFalse(volts("120/240 V").isRange());
  }

  @Test
  void aFractionIsOneFigure() {
    RatedRange power = RatedRange.parse("1/2 hp", QuantityKind.POWER);
    assertEquals(372.85, power.meanSi(), 5e-3); // 745.70 W / 2, NIST SP 811, appendix B.8
    assertFalse(power.isRange());
  }

  @Test
  void keepsTheErrorOfOneFigure() {
    assertTrue(volts("230 V +/- 5 V").low().standardUncertainty() > 0);
    assertTrue(volts("230 V +-5 V").low().standardUncertainty() > 0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "208/240 V; is set; '240 V'",
        "115/230 V; is set; '115-230 V'",
        "120/220/240 V; more than two; set to",
        "110-127/220-240 V; more than two; set to",
        "240-220 V; from 240 V to 220 V; lower limit stands first",
        "230-230 V; both limits; write one figure",
        "22-240 V; too wide; 2.5 times",
        "0-240 V; above zero; above zero",
        "220-240; no unit; '220-240 V'",
        "220-240 Hz; voltage is expected; Hz",
        "-230 V; above zero; above zero",
        "220- V; '-'; V",
        "-; number; V"
      })
  void refusesAndSaysWhatToWrite(String text, String what, String remedy) {
    String told = refusal(text);
    assertTrue(told.contains(what), told);
    assertTrue(told.contains(remedy), told);
  }

  @Test
  void refusesLimitsOfTwoKinds() {
    Quantity volt = Quantity.of(230, "V", QuantityKind.VOLTAGE);
    Quantity hertz = Quantity.of(250, "Hz", QuantityKind.FREQUENCY);
    assertThrows(IllegalArgumentException.class, () -> new RatedRange(volt, hertz));
  }

  @Test
  void refusesWhatIsTooLongWithoutTellingItAll() {
    assertTrue(refusal("220-".repeat(1000)).length() < 200);
  }

  /** The widest that is made, common practice, no source. */
  @Test
  void takesTheWidestThatIsMade() {
    assertEquals(170, volts("100-240 V").meanSi(), 1e-9);
    assertEquals(250, volts("100-250 V").high().si(), 0);
  }

  @Test
  void findsTheNearestFigure() {
    RatedRange range = volts("220-240 V");
    assertEquals(220, range.nearestSi(120), 0);
    assertEquals(231, range.nearestSi(231), 0);
    assertEquals(240, range.nearestSi(250), 0);
  }

  @Test
  void isToldInWords() {
    assertEquals("220 V to 240 V", volts("220-240 V").display());
    assertEquals("230 V", volts("230 V").display());
  }
}
