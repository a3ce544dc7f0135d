package kelter.costing.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.testkit.ledger.OutsideCheck;
import org.apache.poi.ss.formula.functions.FinanceLib;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PresentValueTest {

  /** Half a unit of the fourth and fifth decimal place of the printed tables. */
  private static final double FOURTH = 0.5e-4;

  private static final double FIFTH = 0.5e-5;

  /** NIST Handbook 135 single present value factors at 3 %, four decimals. */
  @OutsideCheck(of = "present-value", against = "NIST Handbook 135, factors at 3 %")
  @ParameterizedTest
  @CsvSource({
    "1, 0.9709",
    "5, 0.8626",
    "10, 0.7441",
    "15, 0.6419",
    "20, 0.5537",
    "25, 0.4776",
    "30, 0.4120"
  })
  void singleFactorsOfHandbook135(double years, double printed) {
    assertEquals(printed, SinglePresentValue.factor(0.03, years), FOURTH);
  }

  /** Factor table of info.5y1.org, three decimals at 3 %: 10, 15 and 20 years. */
  @ParameterizedTest
  @CsvSource({"10, 0.744", "15, 0.642", "20, 0.554"})
  void singleFactorsOfAThreeDigitTable(double years, double printed) {
    assertEquals(printed, SinglePresentValue.factor(0.03, years), 0.5e-3);
  }

  /** Layout of NISTIR 85-3273 Table A (factors of ASTM E917); values recomputed for this check. */
  @ParameterizedTest
  @CsvSource({
    "5, 4.5797",
    "10, 8.5302",
    "15, 11.9379",
    "20, 14.8775",
    "25, 17.4131",
    "30, 19.6004"
  })
  void uniformFactorsAtThreePerCent(double years, double printed) {
    assertEquals(printed, UniformPresentValue.factor(0.03, years), FOURTH);
  }

  /** Orange County, North Carolina, present value table 10: annuities at 5 % and 7 %. */
  @OutsideCheck(of = "annuity", against = "Orange County, North Carolina, present value table 10")
  @ParameterizedTest
  @CsvSource({
    "0.05, 5, 4.32948",
    "0.05, 10, 7.72173",
    "0.05, 15, 10.37966",
    "0.07, 5, 4.10020",
    "0.07, 10, 7.02358"
  })
  void uniformFactorsOfTable10(double rate, double years, double printed) {
    assertEquals(printed, UniformPresentValue.factor(rate, years), FIFTH);
  }

  /** Capital recovery factors of compound-interest tables and of worked answers. */
  @ParameterizedTest
  @CsvSource({
    "0.03, 10, 0.11723, 5e-6",
    "0.03, 15, 0.08377, 5e-6",
    "0.08, 5, 0.25046, 5e-6",
    "0.08, 10, 0.14903, 5e-6",
    "0.10, 2, 0.5762, 5e-5",
    "0.10, 10, 0.16275, 5e-6"
  })
  void capitalRecovery(double rate, double years, double printed, double tolerance) {
    assertEquals(printed, UniformPresentValue.capitalRecovery(rate, years), tolerance);
  }

  /** The finance functions of Apache POI, an independent library. */
  @ParameterizedTest
  @CsvSource({"0.03, 12", "0.08, 5", "0.15, 2", "0.5, 40", "0, 7", "-0.02, 9"})
  void agreesWithTheFinanceFunctionsOfPoi(double rate, int years) {
    assertEquals(
        -FinanceLib.pv(rate, years, 1, 0, false), UniformPresentValue.factor(rate, years), 1e-11);
    assertEquals(
        -FinanceLib.pmt(rate, years, 1, 0, false),
        UniformPresentValue.capitalRecovery(rate, years),
        1e-12);
    assertEquals(
        -FinanceLib.pv(rate, years, 0, 1, false), SinglePresentValue.factor(rate, years), 1e-12);
  }

  @Test
  void noRateAndNoTimeAreLimitsAndNotHoles() {
    assertEquals(7, UniformPresentValue.factor(0, 7));
    assertEquals(7, UniformPresentValue.factor(1e-13, 7), 1e-10);
    assertEquals(0, UniformPresentValue.factor(0.03, 0));
    assertEquals(1, SinglePresentValue.factor(0.03, 0));
  }

  @Test
  void whatCannotBeComputedIsRefusedAndNamed() {
    for (double rate : new double[] {-1, -2, Double.NaN, Double.POSITIVE_INFINITY}) {
      String message =
          assertThrows(IllegalArgumentException.class, () -> UniformPresentValue.factor(rate, 5))
              .getMessage();
      assertTrue(message.contains(String.valueOf(rate)), message);
      assertEquals(
          message,
          assertThrows(IllegalArgumentException.class, () -> SinglePresentValue.factor(rate, 5))
              .getMessage());
    }
    assertThrows(IllegalArgumentException.class, () -> SinglePresentValue.factor(0.03, -1));
    assertThrows(IllegalArgumentException.class, () -> UniformPresentValue.factor(0.03, -1));
    assertThrows(IllegalArgumentException.class, () -> SinglePresentValue.factor(0.03, Double.NaN));
    assertThrows(
        IllegalArgumentException.class, () -> UniformPresentValue.capitalRecovery(0.03, 0));
  }
}
