package kelter.electrical.rating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.core.check.Limits;
import kelter.core.job.RatedRange;
import kelter.core.law.PowerInputBand;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Ranges of voltages by IEC 60335-1, 10.1 (the text of a national translation, second-hand: limits
 * that differ by more than 10 % of the mean count each) and 7.5 (from memory); the deviations from
 * Table 1 in the text of IEC 335-1:1991: above 200 W +5 % and -10 %.
 */
class RatedInputTest {

  private static RatedInput input(String voltage, String power) {
    return RatedInput.of(
        RatedRange.parse(voltage, QuantityKind.VOLTAGE),
        RatedRange.parse(power, QuantityKind.POWER));
  }

  /** Arithmetic: 20 of 230 V are 8.7 %, 40 of 400 V are 10 %, 40 of 220 V are 18 %. */
  @ParameterizedTest
  @CsvSource({
    "220-240 V, false",
    "380-415 V, false",
    "380-420 V, false",
    "379-420 V, true",
    "200-240 V, true",
    "110-127 V, true",
    "115-230 V, true",
    "230 V, false"
  })
  void isWideAboveTenPercentOfTheMean(String voltage, boolean wide) {
    assertEquals(wide, RatedInput.isWide(RatedRange.parse(voltage, QuantityKind.VOLTAGE)));
  }

  /** Arithmetic on Ohm's law and Table 1: 2000 W at 230 V have 25.19 to 29.39 Ohm. */
  @Test
  void aPowerBelongsToTheMeanOfACloseRange() {
    RatedInput input = input("220-240 V", "2 kW");
    assertEquals(230, input.assumed().voltage(), 1e-9);
    assertEquals(25.19, input.resistance().low(), 0.005);
    assertEquals(29.39, input.resistance().high(), 0.005);
    assertEquals(1800, input.power(230, 230).low(), 0.5);
    assertEquals(2100, input.power(230, 230).high(), 0.5);
    assertEquals("power taken as that at 230 V, the mean of 220 V to 240 V", input.remark());
  }

  /**
   * Arithmetic on the same: 2100 W at 200 V are 19.05 Ohm, 1800 W at 240 V are 32.00 Ohm; at 230 V
   * 2100 (230/200)² = 2777 W and 1800 (230/240)² = 1653 W.
   */
  @Test
  void aPowerIsHeldAtBothLimitsOfAWideRange() {
    RatedInput input = input("200-240 V", "2 kW");
    assertEquals(240, input.assumed().voltage(), 1e-9);
    assertEquals(19.05, input.resistance().low(), 0.005);
    assertEquals(32.00, input.resistance().high(), 0.005);
    Limits power = input.power(230, 230);
    assertEquals(1653, power.low(), 0.5);
    assertEquals(2777, power.high(), 0.5);
    assertTrue(input.remark().contains("for 200 V and for 240 V"), input.remark());
  }

  /**
   * Arithmetic on the same: 1850 W at 220 V are 26.16 Ohm and 2200 W at 240 V 26.18 Ohm; with the
   * deviations 220²/1942.5 = 24.92 to 240²/1980 = 29.09 Ohm.
   */
  @Test
  void twoPowersBelongEachToItsLimit() {
    RatedInput input = input("220-240 V", "1850-2200 W");
    assertEquals(24.92, input.resistance().low(), 0.005);
    assertEquals(29.09, input.resistance().high(), 0.005);
    assertEquals(0, input.uncertainty(), 0.001);
    assertEquals("1850 W taken at 220 V, 2200 W at 240 V", input.remark());
  }

  /**
   * Arithmetic on JCGM 100:2008, 4.3.9 (a triangular distribution has a standard deviation of its
   * half-width over the root of 6): from 26.45 Ohm to 28.80 Ohm are 8.88 %, so 3.63 %; from 28.80
   * Ohm to 20.00 Ohm are 30.56 %, so 12.5 %.
   */
  @Test
  void whatIsTakenIsUncertain() {
    assertEquals(0, input("230 V", "2 kW").uncertainty(), 0);
    assertEquals(0.0363, input("220-240 V", "2 kW").uncertainty(), 0.00005);
    assertEquals(0.125, input("200-240 V", "2 kW").uncertainty(), 0.0005);
  }

  @Test
  void oneVoltageNeedsNoRemarkAndKeepsItsSource() {
    Source table = PowerInputBand.SOURCE;
    assertEquals("as it was", input("230 V", "2 kW").remark("as it was"));
    assertEquals(table, input("230 V", "2 kW").source(table));
    Source ranges = input("220-240 V", "2 kW").source(table);
    assertEquals(Standing.FROM_MEMORY, ranges.standing());
    assertTrue(ranges.document().contains("10.1"), ranges.document());
    assertTrue(input("220-240 V", "2 kW").remark("more").endsWith("; more"));
  }

  /** Table 1 has no lower deviation up to 25 W. */
  @Test
  void aSmallPowerHasNoBand() {
    assertFalse(input("220-240 V", "25 W").hasBand());
    assertFalse(input("220-240 V", "20-30 W").hasBand());
    assertTrue(input("220-240 V", "26 W").hasBand());
  }
}
