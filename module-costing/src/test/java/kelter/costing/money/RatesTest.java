package kelter.costing.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.poi.ss.formula.functions.FinanceLib;
import org.junit.jupiter.api.Test;

class RatesTest {

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
