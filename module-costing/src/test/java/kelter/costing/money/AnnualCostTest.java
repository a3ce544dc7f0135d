package kelter.costing.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.testkit.ledger.OutsideCheck;
import org.apache.poi.ss.formula.functions.FinanceLib;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class AnnualCostTest {

  /**
   * A worked exercise on two machines at 15 % (wizedu.com, question 1097152): A 20 000 for 3 years,
   * 8 500 a year, 5 000 back, printed 15 820; B 15 000 for 2 years, 7 000 a year, 3 000 back,
   * printed 14 831; B is chosen.
   */
  @OutsideCheck(of = "annual-cost", against = "worked exercise, wizedu.com, question 1097152")
  @Test
  void twoMachinesOfDifferentLife() {
    double a = AnnualCost.of(20_000, 8_500, 5_000, 0.15, 3);
    double b = AnnualCost.of(15_000, 7_000, 3_000, 0.15, 2);
    assertEquals(15_820, a, 0.5);
    assertEquals(14_831, b, 0.5);
    assertTrue(b < a);
  }

  /**
   * An exercise of a text on engineering economy at 8 %: 25 000 for 10 years, 500 a year, 2 000
   * back. Printed 4 087.69 from factors of five digits, whose rounding moves the result by up to
   * 0.13.
   */
  @Test
  void oneMachineWithSalvage() {
    assertEquals(4_087.69, AnnualCost.of(25_000, 500, 2_000, 0.08, 10), 0.13);
  }

  /**
   * A worked choice at 8 % (justaaa.com, question 240549): A 7 000 for 5 years, 2 000 a year, 3 000
   * back; B 9 000 for 10 years, 2 400 a year, 1 600 back. Printed: A. The two annual costs were
   * recomputed for this check outside the project.
   */
  @Test
  void theWorkedChoice() {
    double a = AnnualCost.of(7_000, 2_000, 3_000, 0.08, 5);
    double b = AnnualCost.of(9_000, 2_400, 1_600, 0.08, 10);
    assertEquals(3_241.83, a, 0.005);
    assertEquals(3_630.82, b, 0.005);
    assertTrue(a < b);
  }

  @Test
  void agreesWithThePaymentFunctionOfPoi() {
    double expected = -FinanceLib.pmt(0.045, 11, 830, -60, false) + 95;
    assertEquals(expected, AnnualCost.of(830, 95, 60, 0.045, 11), 1e-10);
  }

  /**
   * Arithmetic on capital recovery factors computed outside the project: at 5 % replacing for 600
   * over 10 years (factor 0.129504574965) is 77.7027 a year, and a repair with 3 years left (factor
   * 0.367208564631) breaks even at 211.604.
   */
  @Test
  void breakEvenOfARepair() {
    double annualNew = AnnualCost.of(600, 0, 0, 0.05, 10);
    assertEquals(77.7027, annualNew, 0.5e-4);
    assertEquals(211.604, RepairOrReplace.breakEven(annualNew, 0, 0.05, 3), 0.5e-3);
  }

  /** Payment and present value by the finance functions of Apache POI. */
  @OutsideCheck(of = "repair-or-replace", against = "Apache POI, the break-even")
  @Test
  void theBreakEvenAgreesWithPoi() {
    double annualNew = 60 - FinanceLib.pmt(0.03, 12, 900, 0, false);
    double bill = -FinanceLib.pv(0.03, 4, annualNew - 85, 0, false);
    double ours = AnnualCost.of(900, 60, 0, 0.03, 12);
    assertEquals(bill, RepairOrReplace.breakEven(ours, 85, 0.03, 4), 1e-9);
  }

  @Test
  void atTheBreakEvenBothCostTheSame() {
    double annualNew = AnnualCost.of(900, 60, 0, 0.03, 12);
    double bill = RepairOrReplace.breakEven(annualNew, 85, 0.03, 4.5);
    assertEquals(annualNew, AnnualCost.of(bill, 85, 0, 0.03, 4.5), 1e-9);
  }

  @Test
  void whatIsNotAnAmountIsRefused() {
    double none = Double.NaN;
    refused("the outlay is NaN", () -> AnnualCost.of(none, 0, 0, 0.03, 10));
    refused("the running cost is NaN", () -> AnnualCost.of(1, none, 0, 0.03, 10));
    refused("the salvage is NaN", () -> AnnualCost.of(1, 0, none, 0.03, 10));
    refused("a time of 0.0 a", () -> AnnualCost.of(1, 0, 0, 0.03, 0));
    refused(
        "the annual cost of a new machine is Infinity",
        () -> RepairOrReplace.breakEven(Double.POSITIVE_INFINITY, 0, 0.03, 4));
    refused("the running cost is NaN", () -> RepairOrReplace.breakEven(1, none, 0.03, 4));
  }

  private static void refused(String words, Executable action) {
    String message = assertThrows(IllegalArgumentException.class, action).getMessage();
    assertTrue(message.startsWith(words), message);
  }
}
