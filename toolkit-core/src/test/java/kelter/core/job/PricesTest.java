package kelter.core.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Map;
import java.util.Optional;
import kelter.core.owner.PriceSpread;
import kelter.core.owner.Supplies;
import kelter.core.owner.Tax;
import kelter.core.owner.TaxRate;
import kelter.core.owner.Terms;
import kelter.core.quantity.Money;
import org.junit.jupiter.api.Test;

class PricesTest {

  private static Optional<Money> money(String text) {
    return Optional.of(Money.parse(text));
  }

  private static Prices prices(Tax tax) {
    return new Prices(
        Currency.getInstance("EUR"),
        money("58 EUR"),
        money("39 EUR"),
        money("720 EUR"),
        money("60 EUR"),
        money("55 EUR"),
        Optional.empty(),
        Optional.empty(),
        Map.of("heater.renew-heater", Money.parse("310 EUR")),
        Terms.NONE,
        Supplies.UNKNOWN,
        PriceSpread.NONE,
        tax);
  }

  private static Tax tax(String rate, String ofParts) {
    return new Tax(
        Optional.of(rate).filter(text -> !text.isEmpty()).map(TaxRate::parse),
        Optional.of(ofParts).filter(text -> !text.isEmpty()).map(TaxRate::parse),
        Optional.empty(),
        Optional.empty());
  }

  private static void assertAmount(String expected, Optional<Money> amount) {
    assertEquals(
        0, new BigDecimal(expected).compareTo(amount.orElseThrow().amount()), amount.toString());
  }

  /** By hand: 58 and 21 % of it, 12.18, are 70.18; 39 + 8.19 = 47.19; 310 + 65.10 = 375.10. */
  @Test
  void theOwnerPaysTheTaxOnWorkPartsAndCallOutAndTheNewMachineAsTold() {
    Prices paid = prices(tax("21 %", "")).asPaid();
    assertAmount("70.18", paid.labourPerHour());
    assertAmount("47.19", paid.callOut());
    assertAmount("375.10", paid.part("heater", "renew-heater"));
    assertAmount("720", paid.replacement());
    assertAmount("60", paid.installation());
    assertAmount("55", paid.runningPerYear());
    assertTrue(paid.tax().isIncluded());
    assertSame(paid, paid.asPaid());
  }

  /** By hand: 310 and 9 % of it, 27.90, are 337.90. */
  @Test
  void partsHaveTheirOwnRateWhereOneIsStated() {
    Prices paid = prices(tax("21 %", "9 %")).asPaid();
    assertAmount("70.18", paid.labourPerHour());
    assertAmount("337.90", paid.part("heater", "renew-heater"));
  }

  @Test
  void nothingIsAddedWhereTaxIsInThePricesOrNoRateIsKnown() {
    Prices unknown = prices(Tax.UNKNOWN);
    assertSame(unknown, unknown.asPaid());
    assertTrue(!unknown.tax().isKnown() && !tax("", "9 %").isKnown());
    Tax in =
        new Tax(
            Optional.of(TaxRate.parse("21 %")),
            Optional.empty(),
            Optional.empty(),
            Optional.of(true));
    Prices included = prices(in);
    assertSame(included, included.asPaid());
    assertTrue(in.isKnown());
  }
}
