package kelter.core.quote;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Job;
import kelter.core.job.Market;
import kelter.core.job.Prices;
import kelter.core.job.work.PartUsed;
import kelter.core.job.work.WorkDone;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.problem.Required;
import kelter.core.quantity.Money;
import kelter.core.shop.Offering;
import kelter.core.workshop.Case;

/**
 * The data of the invoice for the work that a job records. What the job does not tell stays open.
 *
 * @param job the id of the job
 * @param number the number that somebody gives it; no number is ever made up
 * @param day the day of issue
 * @param done the last day on which work was done, if the job tells
 * @param market where the machine stands
 * @param bill what is to be paid
 * @param offered the offer that it is held against; empty if nothing was offered
 * @param difference the total less that of the offer; empty where either is open
 * @param offering who sends it
 * @param guarantee what the repairer promises, in a sentence; empty if nothing is told
 */
public record Invoice(
    String job,
    Optional<String> number,
    LocalDate day,
    Optional<LocalDate> done,
    Market market,
    Bill bill,
    Optional<Offer> offered,
    Optional<Money> difference,
    Offering offering,
    String guarantee) {

  /** Checks that nothing is null. */
  public Invoice {
    Required.value(job, "job of an invoice");
    Required.optional(number, "number of an invoice");
    Required.value(day, "day of an invoice");
    Required.optional(done, "day of the work");
    Required.value(market, "market of an invoice");
    Required.value(bill, "bill of an invoice");
    Required.optional(offered, "offer of an invoice");
    Required.optional(difference, "difference of an invoice");
    Required.value(offering, "offering of an invoice");
    Required.value(guarantee, "guarantee of an invoice");
  }

  /**
   * The data for a case.
   *
   * @param machine the case, with work recorded
   * @param quote the quotation for it
   * @param option the number of the offer that was accepted, from 1
   * @param number the number of the invoice, if somebody gives one
   * @return the data
   * @throws InputException if no work is recorded, the job has no prices, a part is in another
   *     currency, or no offer has that number
   */
  public static Invoice of(Case machine, Quote quote, int option, Optional<String> number) {
    Job job = machine.job();
    if (!job.progress().isWorked()) {
      throw new InputException(
          "/work", "is missing", "record what was done before an invoice is made out");
    }
    Prices prices = Quote.prices(machine);
    requireCurrency(job.progress().work(), prices);
    Bill bill = bill(machine, new Tariff(prices));
    Optional<Offer> offered =
        quote.offers().isEmpty() ? Optional.empty() : Optional.of(quote.offer(option));
    return new Invoice(
        job.id(),
        number,
        quote.day(),
        done(job),
        quote.market(),
        bill,
        offered,
        offered.flatMap(offer -> difference(bill, offer.bill())),
        quote.offering(),
        quote.guarantee().map(Quote::standsFor).orElse(""));
  }

  private static void requireCurrency(List<WorkDone> work, Prices prices) {
    List<Problem> problems = new ArrayList<>();
    for (int piece = 0; piece < work.size(); piece++) {
      List<PartUsed> parts = work.get(piece).parts();
      for (int part = 0; part < parts.size(); part++) {
        Optional<Money> price = parts.get(part).price();
        if (price.isPresent() && !price.get().currency().equals(prices.currency())) {
          problems.add(
              new Problem(
                  "/work/" + piece + "/parts/" + part + "/price",
                  "'%s' is in another currency than the prices of the job"
                      .formatted(price.get().format()),
                  "write it in " + prices.currency()));
        }
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  private static Bill bill(Case machine, Tariff tariff) {
    List<Item> items = new ArrayList<>();
    for (WorkDone piece : machine.job().progress().work()) {
      String title = title(piece, machine);
      items.add(labour(title, piece, tariff));
      for (PartUsed part : piece.parts()) {
        items.add(part(part, piece, tariff));
      }
    }
    items.addAll(tariff.least(items));
    items.add(0, tariff.callOut());
    items.addAll(tariff.credit());
    return tariff.bill(items);
  }

  private static String title(WorkDone piece, Case machine) {
    if (!piece.title().isBlank()) {
      return piece.title();
    }
    String key = piece.remedy().orElseThrow();
    return machine.remedies().stream()
        .filter(remedy -> remedy.key().equals(key))
        .findFirst()
        .map((Remedy remedy) -> WorkWords.of(remedy))
        .orElse(key.replace(".", ": ").replace('-', ' '));
  }

  /** Work without its time has no price. */
  private static Item labour(String title, WorkDone piece, Tariff tariff) {
    Item item =
        tariff.labour(
            Tariff.WORK + title, piece.time().map(Tariff::minutes).orElse(BigDecimal.ZERO));
    return piece.time().isPresent()
        ? item
        : new Item(
            item.title() + " (time not told)",
            item.kind(),
            item.count(),
            item.unit(),
            Optional.empty(),
            item.rate());
  }

  /** A part at the price that is recorded, else that of the list where it is the only one. */
  private static Item part(PartUsed part, WorkDone piece, Tariff tariff) {
    Optional<BigDecimal> price = part.price().flatMap(tariff::told);
    if (part.price().isEmpty() && piece.parts().size() == 1 && part.count() == 1) {
      price = piece.remedy().flatMap(key -> listed(key, tariff.prices())).map(Money::amount);
    }
    return tariff.part(
        "Part: %s (%s)".formatted(part.title(), part.condition().id()), part.count(), price);
  }

  private static Optional<Money> listed(String key, Prices prices) {
    int dot = key.indexOf('.');
    return prices.part(key.substring(0, dot), key.substring(dot + 1));
  }

  private static Optional<LocalDate> done(Job job) {
    return job.progress().work().stream()
        .map(WorkDone::date)
        .filter(date -> !date.isEmpty())
        .map(LocalDate::parse)
        .max(LocalDate::compareTo);
  }

  private static Optional<Money> difference(Bill bill, Bill offered) {
    return compared(bill)
        .flatMap(
            mine ->
                compared(offered)
                    .map(
                        theirs ->
                            new Money(mine.amount().subtract(theirs.amount()), bill.currency())));
  }

  /** The total, or the sum before tax where no rate is told of either. */
  private static Optional<Money> compared(Bill bill) {
    return bill.total().or(bill::net);
  }

  /**
   * Whether more is charged than was offered.
   *
   * @return true if the total is above that of the offer
   */
  public boolean isAbove() {
    return difference.filter(amount -> amount.amount().signum() > 0).isPresent();
  }
}
