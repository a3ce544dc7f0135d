package kelter.costing.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kelter.testkit.ledger.OutsideCheck;
import kelter.testkit.ledger.Worth;
import org.apache.poi.ss.formula.functions.FinanceLib;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RatesTest {

  /** By hand: 8.15 % in money of the day at 5 % inflation is 3 % in today's money. */
  @Test
  void realRate() {
    assertEquals(0.03, RealRate.of(0.0815, 0.05), 1e-12);
    assertEquals(-0.02, RealRate.of(0.029, 0.05), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> RealRate.of(0.03, -1));
    assertThrows(IllegalArgumentException.class, () -> RealRate.of(-1, 0.03));
  }

  /**
   * Two ways to one worth, by the finance functions of Apache POI: a payment that rises with
   * prices, discounted at the nominal rate, and one in today's prices at the real rate.
   */
  @OutsideCheck(of = "real-rate", against = "Apache POI, two ways to one worth")
  @ParameterizedTest
  @CsvSource({"0.08, 0.02, 7", "0.031, 0.001, 25", "0.12, 0.15, 3", "-0.01, 0.02, 10"})
  void theRealRateDiscountsTodaysPrices(double nominal, double inflation, int years) {
    double risen = -FinanceLib.fv(inflation, years, 0, 1, false);
    double worth = -FinanceLib.pv(nominal, years, 0, risen, false);
    double real = RealRate.of(nominal, inflation);
    assertEquals(worth, -FinanceLib.pv(real, years, 0, 1, false), 1e-12);
  }

  /**
   * Rates of the Federal Energy Management Program as NISTIR 85-3273 prints them, to a tenth of a
   * per cent (from memory): 2015 nominal 3.1 % at 0.1 % inflation, real 3.0 %; 2012 nominal 3.5 %
   * at 0.5 %, real 3.0 %.
   */
  @OutsideCheck(
      of = "real-rate",
      against = "NISTIR 85-3273, rates of 2012 and 2015",
      worth = Worth.FROM_MEMORY)
  @ParameterizedTest
  @CsvSource({"0.031, 0.001, 0.030", "0.035, 0.005, 0.030"})
  void realRatesOfTheFederalEnergyManagementProgram(
      double nominal, double inflation, double printed) {
    assertEquals(printed, RealRate.of(nominal, inflation), 0.0005);
  }

  /** The number of periods of Apache POI's finance functions. */
  @OutsideCheck(of = "pay-back", against = "Apache POI")
  @Test
  void payBackAgreesWithPoi() {
    assertEquals(FinanceLib.nper(0.04, -110, 600, 0, false), PayBack.years(600, 110, 0.04), 1e-10);
    assertEquals(FinanceLib.nper(0.12, -110, 600, 0, false), PayBack.years(600, 110, 0.12), 1e-10);
    assertEquals(6, PayBack.years(600, 100, 0));
    assertEquals(0, PayBack.years(0, 100, 0.03));
  }

  @Test
  void whatNeverPaysBackIsRefused() {
    String message =
        assertThrows(IllegalArgumentException.class, () -> PayBack.years(600, 10, 0.04))
            .getMessage();
    assertTrue(message.contains("600.0") && message.contains("never"), message);
    assertThrows(IllegalArgumentException.class, () -> PayBack.years(600, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> PayBack.years(0, 0, 0.03));
    assertThrows(IllegalArgumentException.class, () -> PayBack.years(-1, 10, 0));
    assertThrows(IllegalArgumentException.class, () -> PayBack.years(-1, 10, 0.03));
  }

  /** A saving that only pays the interest, 4 % of 600, never ends. */
  @Test
  void theInterestAloneNeverPaysBack() {
    assertThrows(IllegalArgumentException.class, () -> PayBack.years(600, 600 * 0.04, 0.04));
  }

  @Test
  void whatIsNoFigureIsNamed() {
    assertEquals(
        List.of(
            "a discount rate of -2.0 a year; it must be above -1 (-100 %) and finite",
            "the outlay is NaN; it must be a finite amount",
            "the saving is Infinity; it must be a finite amount"),
        List.of(
            message(() -> PayBack.years(600, 100, -2)),
            message(() -> PayBack.years(Double.NaN, 100, 0.03)),
            message(() -> PayBack.years(600, Double.POSITIVE_INFINITY, 0.03))));
  }

  private static String message(Executable action) {
    return assertThrows(IllegalArgumentException.class, action).getMessage();
  }
}
