package kelter.core.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Nameplate;
import kelter.core.job.Prices;
import kelter.core.owner.PriceSpread;
import kelter.core.owner.Tax;
import kelter.core.owner.TaxRate;
import kelter.core.owner.Terms;
import kelter.core.quantity.Money;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import kelter.core.source.Source;
import org.junit.jupiter.api.Test;

/** Prices of the shop stand in for what a job leaves open. */
class PriceListTest {

  private static final PriceList LIST =
      new PriceList(
          Currency.getInstance("EUR"),
          Optional.of(LocalDate.of(2026, 3, 1)),
          Optional.of(Money.parse("60 EUR")),
          Optional.of(Money.parse("35 EUR")),
          Map.of(
              "bilge-pump.renew", Money.parse("90 EUR"),
              "bilge-pump.seal", Money.parse("8 EUR"),
              "horn.renew", Money.parse("4 EUR")));

  private static Job job(Optional<Prices> prices) {
    Component pump =
        new Component(
            "aft",
            "bilge-pump",
            Nameplate.UNREADABLE,
            Map.of(),
            Map.of(),
            Source.fromMemory("none"));
    return new Job(
        "b-17",
        "",
        new Appliance(
            "bilge-unit", "", "", "", Optional.empty(), Nameplate.UNREADABLE, List.of(pump)),
        Complaint.UNSAID,
        List.of(),
        List.of(),
        prices);
  }

  private static Prices own(String labour, Map<String, Money> parts) {
    Money hour = Money.parse(labour);
    return new Prices(
        hour.currency(),
        Optional.of(hour),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        parts);
  }

  @Test
  void aJobWithoutPricesHasThoseOfTheShopWithTheirDay() {
    PriceList.Priced priced = LIST.standIn(job(Optional.empty()));
    Prices prices = priced.job().prices().orElseThrow();

    assertEquals(LIST.labourPerHour(), prices.labourPerHour());
    assertEquals(LIST.date(), prices.terms().priceDate());
    assertEquals(
        Map.of("aft.renew", Money.parse("90 EUR"), "aft.seal", Money.parse("8 EUR")),
        prices.parts());
    assertTrue(priced.note().orElseThrow().contains("an hour of work, call-out, 2 parts"));
  }

  @Test
  void whatTheJobStatesWinsFigureByFigure() {
    Prices stated = own("70 EUR", Map.of("renew", Money.parse("99 EUR")));
    Prices prices = LIST.standIn(job(Optional.of(stated))).job().prices().orElseThrow();

    assertEquals(stated.labourPerHour(), prices.labourPerHour());
    assertEquals(LIST.callOut(), prices.callOut());
    assertEquals(Money.parse("99 EUR"), prices.part("aft", "renew").orElseThrow());
    assertEquals(Money.parse("8 EUR"), prices.part("aft", "seal").orElseThrow());
    assertEquals(Optional.empty(), prices.terms().priceDate());
  }

  /** What the job says of terms wins, and the rest is the shop's. */
  @Test
  void termsOfTheShopStandInOneByOne() {
    Terms terms =
        new Terms(
            Optional.empty(),
            Optional.of(true),
            Optional.of(QuantityParser.parse("30 min", QuantityKind.TIME)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(QuantityParser.parse("12 mo", QuantityKind.AGE)),
            Optional.empty(),
            Optional.empty());
    Job job = job(Optional.empty());
    PriceList list =
        new PriceList(
            Currency.getInstance("EUR"),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Map.of(),
            Tax.UNKNOWN,
            new Policy(
                terms,
                PriceSpread.NONE,
                Map.of(job.appliance().kind(), Money.parse("720 EUR")),
                Optional.empty()));
    PriceList.Priced priced = list.standIn(job);
    Prices prices = priced.job().prices().orElseThrow();

    assertEquals(Optional.of(true), prices.terms().callOutCredited());
    assertEquals(terms.leastWork(), prices.terms().leastWork());
    assertEquals(Money.parse("720 EUR"), prices.replacement().orElseThrow());
    assertTrue(priced.note().orElseThrow().contains("a new machine, terms"));
    Prices own = list.standIn(job(Optional.of(own("70 EUR", Map.of())))).job().prices().get();
    assertEquals(Optional.of(true), own.terms().callOutCredited());
    Prices stated = new Policy(Terms.NONE, PriceSpread.NONE, Map.of(), money()).standIn(own, "x");
    assertEquals(Money.parse("720 EUR"), stated.replacement().orElseThrow());
    assertEquals(money(), stated.installation());
  }

  private static Optional<Money> money() {
    return Optional.of(Money.parse("60 EUR"));
  }

  @Test
  void anotherCurrencyIsToldAndNothingIsTaken() {
    Job stated = job(Optional.of(own("70 GBP", Map.of())));
    PriceList.Priced priced = LIST.standIn(stated);

    assertEquals(stated, priced.job());
    assertTrue(priced.note().orElseThrow().contains("EUR"));
  }

  @Test
  void aListThatTellsNothingChangesNothing() {
    PriceList blank =
        new PriceList(
            Currency.getInstance("EUR"),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Map.of());
    Job stated = job(Optional.empty());
    assertEquals(new PriceList.Priced(stated, Optional.empty()), blank.standIn(stated));
  }

  @Test
  void aBlankListInAnotherCurrencyIsNotToldEither() {
    PriceList blank =
        new PriceList(
            Currency.getInstance("EUR"),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Map.of());
    Job stated = job(Optional.of(own("70 GBP", Map.of())));
    assertEquals(Optional.empty(), blank.standIn(stated).note());
  }

  @Test
  void taxIsTakenAsAWholeWhereTheJobTellsNone() {
    Tax tax =
        new Tax(
            Optional.of(TaxRate.parse("21 %")),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    PriceList taxed =
        new PriceList(
            LIST.currency(), LIST.date(), LIST.labourPerHour(), LIST.callOut(), LIST.parts(), tax);
    PriceList.Priced priced = taxed.standIn(job(Optional.of(own("70 EUR", Map.of()))));
    assertEquals(tax, priced.job().prices().orElseThrow().tax());
    assertTrue(priced.note().orElseThrow().contains("tax"), priced.toString());
    assertEquals(tax, taxed.standIn(priced.job()).job().prices().orElseThrow().tax());
  }

  /** Prices with tax and prices without do not add up. */
  @Test
  void pricesWithAndWithoutTaxAreNotMixed() {
    Tax with = new Tax(Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(true));
    PriceList list =
        new PriceList(
            LIST.currency(), LIST.date(), LIST.labourPerHour(), LIST.callOut(), LIST.parts(), with);
    Job taxed = list.standIn(job(Optional.empty())).job();
    PriceList.Priced priced = LIST.standIn(taxed);
    assertEquals(taxed, priced.job());
    assertTrue(priced.note().orElseThrow().contains("none is taken"), priced.toString());
  }
}
