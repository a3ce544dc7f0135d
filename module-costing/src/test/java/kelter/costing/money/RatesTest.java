package kelter.costing.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.poi.ss.formula.functions.FinanceLib;
import org.junit.jupiter.api.Test;

class RatesTest {

  /**
   * At the internal rate the net present value of Apache POI, an independent library, is nothing.
   */
  @Test
  void atTheInternalRateNothingIsLeft() {
    double[][] rows = {
      {-900, 120, 240, 300, 310, 320},
      {-70_000, 12_000, 15_000, 18_000, 21_000, 26_000},
      {-100, 40, 30, 20}
    };
    for (double[] flows : rows) {
      double rate = InternalRate.of(flows).orElseThrow();
      assertEquals(0, FinanceLib.npv(rate, flows), 1e-7);
    }
  }

  /**
   * Documentation of the spreadsheet function of that name: -70 000, 12 000, 15 000, 18 000, 21
   * 000, 26 000 give 8.7 % (from memory).
   */
  @Test
  void aKnownInternalRate() {
    double rate = InternalRate.of(-70_000, 12_000, 15_000, 18_000, 21_000, 26_000).orElseThrow();
    assertEquals(0.087, rate, 0.5e-3);
  }

  @Test
  void whereThereIsNoSingleRateNoneIsTold() {
    assertTrue(InternalRate.of(100, 20, 30).isEmpty());
    assertTrue(InternalRate.of(-100, 230, -132).isEmpty());
    assertTrue(InternalRate.of().isEmpty());
    assertThrows(IllegalArgumentException.class, () -> InternalRate.of(-1, Double.NaN));
  }

  /** By hand: 8.15 % in money of the day at 5 % inflation is 3 % in today's money. */
  @Test
  void realRate() {
    assertEquals(0.03, RealRate.of(0.0815, 0.05), 1e-12);
    assertEquals(-0.02, RealRate.of(0.029, 0.05), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> RealRate.of(0.03, -1));
  }

  /** The number of periods of Apache POI's finance functions. */
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
    assertThrows(IllegalArgumentException.class, () -> PayBack.years(-1, 10, 0.03));
  }
}
