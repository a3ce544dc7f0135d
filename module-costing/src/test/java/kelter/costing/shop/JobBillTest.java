package kelter.costing.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import kelter.core.quantity.Money;
import org.junit.jupiter.api.Test;

/** Amounts worked out by hand. */
class JobBillTest {

  private static Tariff tariff(String hour, String callOut, boolean credited, String tax) {
    return new Tariff(
        Money.parse(hour),
        30,
        Money.parse(callOut),
        credited,
        new BigDecimal("0.25"),
        new BigDecimal(tax));
  }

  private static JobBill.Part part(int count, String cost) {
    return new JobBill.Part("seal", count, Money.parse(cost));
  }

  @Test
  void workPartsAndTax() {
    JobBill bill =
        JobBill.of(tariff("64.00 EUR", "45 EUR", false, "0.19"), 50, List.of(part(2, "7.35 EUR")));
    assertEquals(
        List.of("Call-out", "Work, 50 min", "2 x seal"),
        bill.lines().stream().map(JobBill.Line::text).toList());
    assertEquals("53.33 EUR", bill.lines().get(1).amount().format());
    assertEquals("18.38 EUR", bill.lines().get(2).amount().format());
    assertEquals("116.71 EUR", bill.net().format());
    assertEquals("22.17 EUR", bill.tax().format());
    assertEquals("138.88 EUR", bill.total().format());
  }

  /** A tenth is not a binary fraction; ten times three tenths are three all the same. */
  @Test
  void nothingIsLostInTheMinorUnits() {
    JobBill bill =
        JobBill.of(tariff("0 EUR", "0.10 EUR", false, "0"), 0, List.of(part(1, "0.16 EUR")));
    assertEquals("seal", bill.lines().get(1).text());
    assertEquals("0.30 EUR", bill.total().format());
  }

  @Test
  void theLeastTimeIsCharged() {
    JobBill bill = JobBill.of(tariff("60 EUR", "45 EUR", false, "0"), 5, List.of());
    assertEquals("Work, 30 min", bill.lines().get(1).text());
    assertEquals("75.00 EUR", bill.total().format());
  }

  @Test
  void theCallOutIsCreditedOnlyIfTheMachineIsMended() {
    Tariff credited = tariff("60 EUR", "45 EUR", true, "0");
    assertEquals("60.00 EUR", JobBill.of(credited, 60, List.of()).total().format());
    assertEquals("45.00 EUR", JobBill.of(credited, 0, List.of()).total().format());
  }

  /** ISO 4217: no minor unit for the yen, three digits for the Kuwaiti dinar. */
  @Test
  void eachCurrencyHasItsOwnMinorUnit() {
    JobBill yen = JobBill.of(tariff("5000 JPY", "3333 JPY", false, "0.1"), 50, List.of());
    assertEquals("7500 JPY", yen.net().format());
    assertEquals("8250 JPY", yen.total().format());
    JobBill dinar = JobBill.of(tariff("10 KWD", "5 KWD", false, "0"), 50, List.of());
    assertEquals("13.333 KWD", dinar.total().format());
  }

  @Test
  void theLinesAddUp() {
    for (int minutes = 0; minutes < 200; minutes += 7) {
      JobBill bill =
          JobBill.of(
              tariff("71.37 EUR", "39.90 EUR", true, "0.077"),
              minutes,
              List.of(part(3, "4.17 EUR")));
      BigDecimal sum =
          bill.lines().stream()
              .map(l -> l.amount().amount())
              .reduce(BigDecimal.ZERO, BigDecimal::add);
      assertEquals(0, sum.compareTo(bill.net().amount()));
      assertEquals(0, sum.add(bill.tax().amount()).compareTo(bill.total().amount()));
    }
  }

  @Test
  void twoCurrenciesAreNeverMixed() {
    Tariff euro = tariff("60 EUR", "45 EUR", false, "0");
    List<JobBill.Part> dollars = List.of(part(1, "9 USD"));
    String message =
        assertThrows(IllegalArgumentException.class, () -> JobBill.of(euro, 60, dollars))
            .getMessage();
    assertTrue(message.contains("9 USD") && message.contains("EUR"), message);
    assertThrows(IllegalArgumentException.class, () -> tariff("60 EUR", "45 USD", false, "0"));
  }

  @Test
  void negativeFiguresAreRefused() {
    Tariff euro = tariff("60 EUR", "45 EUR", false, "0");
    assertThrows(IllegalArgumentException.class, () -> JobBill.of(euro, -1, List.of()));
    assertThrows(IllegalArgumentException.class, () -> part(0, "9 EUR"));
    assertThrows(IllegalArgumentException.class, () -> part(1, "-9 EUR"));
    refused("the price of an hour is -60;", "-60 EUR", 30, "45 EUR", "0.25", "0.19");
    refused("the call-out is -45;", "60 EUR", 30, "-45 EUR", "0.25", "0.19");
    refused("the mark-up is -0.25;", "60 EUR", 30, "45 EUR", "-0.25", "0.19");
    refused("the tax is -0.19;", "60 EUR", 30, "45 EUR", "0.25", "-0.19");
    refused("the least time is -30;", "60 EUR", -30, "45 EUR", "0.25", "0.19");
  }

  private static void refused(
      String what, String hour, int minutes, String callOut, String markUp, String tax) {
    String message =
        assertThrows(
                IllegalArgumentException.class,
                () ->
                    new Tariff(
                        Money.parse(hour),
                        minutes,
                        Money.parse(callOut),
                        false,
                        new BigDecimal(markUp),
                        new BigDecimal(tax)))
            .getMessage();
    assertEquals(what + " it must not be negative", message);
  }

  @Test
  void aPartMayCostNothing() {
    JobBill bill = JobBill.of(tariff("60 EUR", "0 EUR", false, "0"), 60, List.of(part(1, "0 EUR")));
    assertEquals("60.00 EUR", bill.total().format());
  }
}
