package kelter.core.book.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import kelter.core.book.BookEntry;
import kelter.core.book.BookedMachine;
import kelter.core.book.ConfirmedCause;
import kelter.core.book.Outcome;
import kelter.core.book.ReadingTaken;
import kelter.core.book.WorkDone;
import kelter.core.owner.Tax;
import kelter.core.owner.TaxRate;
import kelter.core.quantity.Money;
import kelter.core.shop.PriceList;
import kelter.core.shop.StockPart;
import org.junit.jupiter.api.Test;

/** What a shop asks its book, counted by hand on small books. */
class BookFiguresTest {

  private static final LocalDate FIRST = LocalDate.of(2024, 1, 1);
  private static final LocalDate AS_OF = FIRST.plusDays(731);
  private static final Currency EUR = Currency.getInstance("EUR");

  private static final Question PLAIN =
      new Question(AS_OF, 7, 0.95, Optional.empty(), Optional.empty(), List.of());

  private static BookEntry job(int number, LocalDate closed, double minutes) {
    return job(number, closed, minutes, Outcome.CURED, "", Optional.empty(), "EUR");
  }

  private static BookEntry job(
      int number,
      LocalDate closed,
      double minutes,
      Outcome outcome,
      String serial,
      Optional<String> callBackOf,
      String currency) {
    return new BookEntry(
        "job-" + number,
        Optional.empty(),
        closed,
        new BookedMachine(
            "washing-machine",
            "Ostvik",
            "W-1",
            serial,
            OptionalDouble.of(7),
            OptionalDouble.empty(),
            OptionalDouble.empty()),
        Optional.empty(),
        "",
        "",
        Map.of(),
        List.of(),
        outcome,
        List.of(new ConfirmedCause("heater", "heater", "open")),
        List.of(
            new WorkDone(
                "heater",
                "renew",
                OptionalDouble.of(minutes - 5),
                Optional.of(Money.parse("30 " + currency)),
                Optional.empty())),
        List.of(new ReadingTaken("heater", "resistance", "", OptionalDouble.of(5), false)),
        Map.of(),
        Optional.of(Money.parse("90 " + currency)),
        callBackOf);
  }

  private static List<BookEntry> jobs(int number) {
    List<BookEntry> jobs = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      jobs.add(job(i, FIRST.plusDays(i), 30 + i));
    }
    return jobs;
  }

  /** Forty uses in 731 days; in a week 0.39 are expected, so that two do in 19 of 20 weeks. */
  @Test
  void sparesAreThoseThatWereUsed() {
    PriceList prices =
        new PriceList(
            EUR,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Map.of("heater.renew", Money.parse("34.50 EUR")));
    Question asked =
        new Question(
            AS_OF,
            7,
            0.95,
            Optional.empty(),
            Optional.of(prices),
            List.of(new StockPart("Heater", "heater.renew", 1)));

    Spare own = BookFigures.of(jobs(40), asked).spares().get(0);
    Spare told = BookFigures.of(jobs(40), PLAIN).spares().get(0);

    assertEquals("heater.renew", own.key());
    assertEquals(40, own.demand().uses());
    assertEquals(731 / 365.25, own.demand().years(), 1e-9);
    assertEquals(OptionalInt.of(2), own.carry());
    assertTrue(own.met() >= 0.95 && own.met() < 1);
    assertEquals(1, own.carried());
    assertEquals("69.00 EUR", own.capital().orElseThrow().format());
    assertEquals("30.00 EUR", told.price().orElseThrow().format());
    assertEquals(40, told.priced());
    Spare seldom = BookFigures.of(jobs(2), PLAIN).spares().get(0);
    assertEquals(OptionalInt.empty(), seldom.carry());
    assertEquals(Optional.empty(), seldom.capital());
  }

  @Test
  void usesOfLongAgoDoNotCount() {
    List<BookEntry> jobs = new ArrayList<>(List.of(job(77, FIRST.minusYears(5), 30)));
    jobs.addAll(jobs(5));

    Spare spare = BookFigures.of(jobs, PLAIN).spares().get(0);

    assertEquals(5, spare.demand().uses());
    assertEquals(3, spare.demand().years(), 0.01);
  }

  /**
   * Jobs of 30 to 69 minutes: the twentieth takes 49, the thirty-eighth 67. An hour brings 60 EUR
   * in so many minutes: the twentieth from below is that of 50 minutes, 72 EUR.
   */
  @Test
  void timesAndWhatAnHourBroughtAreThoseOfTheJobs() {
    JobTimes all = BookFigures.of(jobs(40), PLAIN).times().get(0);

    assertEquals("", all.kind());
    assertEquals(40, all.jobs());
    assertEquals(49, all.median().orElseThrow().value());
    assertEquals(67, all.high().orElseThrow().value());
    assertEquals(67 / 49.0, all.factor().orElseThrow(), 1e-12);
    assertEquals(72, all.brought().orElseThrow().value(), 1e-9);
    assertEquals(Optional.empty(), BookFigures.of(jobs(19), PLAIN).times().get(0).median());
  }

  private static PriceList taxed(String currency) {
    Tax tax =
        new Tax(
            Optional.of(TaxRate.parse("21 %")),
            Optional.of(TaxRate.parse("9 %")),
            Optional.empty(),
            Optional.empty());
    return new PriceList(
        Currency.getInstance(currency),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Map.of(),
        tax);
  }

  /**
   * By hand: 90 EUR with tax less parts of 30 EUR and their 9 %, 32.70 EUR, are 57.30 EUR, and
   * without 21 % 47.355 EUR; in 50 minutes that is 56.83 EUR an hour.
   */
  @Test
  void theTaxIsNotWhatAnHourBrought() {
    Question asked =
        new Question(AS_OF, 7, 0.95, Optional.empty(), Optional.of(taxed("EUR")), List.of());

    JobTimes all = BookFigures.of(jobs(40), asked).times().get(0);

    assertEquals(56.83, all.brought().orElseThrow().value(), 0.005);
  }

  @Test
  void anHourIsToldInTheCurrencyOfThePrices() {
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                new Question(
                    AS_OF,
                    7,
                    0.95,
                    Optional.of(Money.parse("38 USD")),
                    Optional.of(taxed("EUR")),
                    List.of()));
    assertTrue(refused.getMessage().contains("the prices of the shop are in EUR"));
  }

  /** Two of 20 came back, of 60 and 40 minutes: at 36 EUR an hour and 30 EUR of parts, 60 EUR. */
  @Test
  void callBacksCostTheirMinutesAndParts() {
    List<BookEntry> jobs = jobs(20);
    jobs.add(job(20, AS_OF, 60, Outcome.CURED, "", Optional.of("job-3"), "EUR"));
    jobs.add(job(21, AS_OF, 40, Outcome.CURED, "", Optional.of("job-4"), "EUR"));
    Question asked =
        new Question(
            AS_OF, 7, 0.95, Optional.of(Money.parse("36 EUR")), Optional.empty(), List.of());

    ShopFigures figures = BookFigures.of(jobs, asked);
    CallBacks all = figures.callBacks().get(0);

    assertEquals(new Share(2, 20), all.share());
    assertEquals(50, all.minutes().orElseThrow().mean(), 1e-12);
    assertEquals(60, all.cost().orElseThrow().mean(), 1e-12);
    assertEquals(6, all.reserve().orElseThrow(), 1e-12);
    assertEquals(new Share(18, 20), figures.firstCures().get(0).share());
    assertEquals(Optional.empty(), BookFigures.of(jobs, PLAIN).callBacks().get(0).cost());
  }

  @Test
  void aJobThatDidNotCureCountsAgainstTheFirstAndOneOfLatelyNotYet() {
    List<BookEntry> jobs = jobs(10);
    jobs.add(job(10, FIRST, 30, Outcome.NOT_CURED, "", Optional.empty(), "EUR"));
    jobs.add(job(11, FIRST, 30, Outcome.STOPPED, "", Optional.empty(), "EUR"));
    jobs.add(job(12, AS_OF.minusDays(89), 30));

    assertEquals(new Share(10, 11), BookFigures.of(jobs, PLAIN).firstCures().get(0).share());
  }

  /**
   * Jobs of 10, 20 and 30 minutes and so on by tens, five of each of measuring. With x = 5 and y
   * the job, R = 50/550, sum (x - R y)^2 = 250 - 2 R 2750 + R^2 38500 = 68.18, n/(n - 1) = 10/9, so
   * that the standard deviation is sqrt(75.76)/550 = 0.015825.
   */
  @Test
  void timeGoesWhereItsMinutesGo() {
    List<BookEntry> jobs = new ArrayList<>();
    for (int i = 1; i <= 10; i++) {
      jobs.add(job(i, FIRST, 10 * i));
    }

    List<TimeShare> time = BookFigures.of(jobs, PLAIN).time();
    TimeShare measuring =
        time.stream().filter(each -> each.what().equals("measuring")).findFirst().orElseThrow();

    assertEquals(50 / 550.0, measuring.share(), 1e-12);
    assertEquals(50 / 550.0 + 1.95996 * 0.015825, measuring.interval().orElseThrow().high(), 1e-6);
    assertEquals(10, measuring.times());
    assertEquals(
        List.of("renewing", "measuring", "heater.renew", "heater.resistance"),
        time.stream().map(TimeShare::what).toList());
  }

  @Test
  void aModelTellsHowLongItRunsAfterAJob() {
    List<BookEntry> jobs = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      jobs.add(job(i, FIRST, 30, Outcome.CURED, "S" + i, Optional.empty(), "EUR"));
    }
    for (int i = 0; i < 6; i++) {
      LocalDate again = FIRST.plusDays(100 * (i + 1));
      jobs.add(job(10 + i, again, 30, Outcome.CURED, "S" + i, Optional.empty(), "EUR"));
    }
    jobs.add(job(20, AS_OF, 30, Outcome.CURED, "S9", Optional.of("job-9"), "EUR"));

    ShopFigures figures = BookFigures.of(jobs, PLAIN);
    ModelRecord model = figures.models().get(0);

    assertEquals("Ostvik W-1", model.model());
    assertEquals(17, model.jobs());
    assertEquals(10, model.machines());
    assertEquals(Optional.of("heater.open"), model.cause());
    assertEquals(new Share(17, 17), model.ofCause());
    assertEquals(6, model.failures());
    assertEquals(10, model.lasted());
    assertTrue(model.life().isPresent());
    // Of 16 stretches one ends by failure after 100, 200 and 300 days each; one is seen for 131
    // days
    // only and one for 231, so that 16, 14 and 12 are at risk.
    assertEquals(15 / 16.0 * 13 / 14 * 11 / 12, model.afterAYear().orElseThrow().share(), 1e-12);
    assertEquals(0, figures.fewer());
    assertEquals(1, BookFigures.of(jobs.subList(0, 9), PLAIN).fewer());
  }

  @Test
  void amountsOfAnotherCurrencyAreLeftOutAndCounted() {
    List<BookEntry> jobs = jobs(20);
    jobs.add(job(20, FIRST, 30, Outcome.CURED, "", Optional.empty(), "USD"));

    ShopFigures figures = BookFigures.of(jobs, PLAIN);

    assertEquals(Optional.of(EUR), figures.currency());
    assertEquals(2, figures.otherAmounts());
    assertEquals(20, figures.times().get(0).brought().orElseThrow().number());
  }

  @Test
  void anEmptyBookTellsNothing() {
    ShopFigures none = BookFigures.of(List.of(), PLAIN);

    assertEquals(0, none.jobs());
    assertTrue(none.spares().isEmpty() && none.times().isEmpty() && none.models().isEmpty());
    assertThrows(
        IllegalArgumentException.class,
        () -> new Question(AS_OF, 0, 0.95, Optional.empty(), Optional.empty(), List.of()));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Question(AS_OF, 7, 1, Optional.empty(), Optional.empty(), List.of()));
  }
}
