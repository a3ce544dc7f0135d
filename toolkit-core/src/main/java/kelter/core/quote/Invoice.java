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
import kelter.core.job.work.Accepted;
import kelter.core.job.work.Closing;
import kelter.core.job.work.Outcome;
import kelter.core.job.work.PartUsed;
import kelter.core.job.work.WorkDone;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.problem.Required;
import kelter.core.proof.Cure;
import kelter.core.proof.Proof;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;
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
 * @param accepted the offer that it is held against; empty if the job records none
 * @param difference the total less the most that the accepted offer allowed for, both with tax;
 *     empty where either is not known
 * @param offering who sends it
 * @param guarantee what the repairer promises, in a sentence; empty if nothing is told
 * @param charged what the closed job says was charged, where the bill comes to something else
 * @param creditOpen whether the outcome of the job, which nobody has told or shown yet, decides if
 *     the call-out is credited
 * @param callBack of what it is a call-back, and until when that is stood for, in a sentence; empty
 *     if no guarantee holds
 */
public record Invoice(
    String job,
    Optional<String> number,
    LocalDate day,
    Optional<LocalDate> done,
    Market market,
    Bill bill,
    Optional<Accepted> accepted,
    Optional<Money> difference,
    Offering offering,
    String guarantee,
    Optional<Money> charged,
    boolean creditOpen,
    String callBack) {

  /** Checks that nothing is null. */
  public Invoice {
    Required.value(job, "job of an invoice");
    Required.optional(number, "number of an invoice");
    Required.value(day, "day of an invoice");
    Required.optional(done, "day of the work");
    Required.value(market, "market of an invoice");
    Required.value(bill, "bill of an invoice");
    Required.optional(accepted, "accepted offer of an invoice");
    Required.optional(difference, "difference of an invoice");
    Required.value(offering, "offering of an invoice");
    Required.value(guarantee, "guarantee of an invoice");
    Required.optional(charged, "charged amount of an invoice");
    Required.value(callBack, "call-back of an invoice");
  }

  /**
   * The data for a case as its job tells it.
   *
   * @param machine the case, with work recorded, or closed or declined without any
   * @param offering who sends it
   * @param day the day of issue
   * @param number the number of the invoice, if somebody gives one
   * @return the data
   * @throws InputException if there is nothing to be paid for, the job has no prices, or a part is
   *     in another currency
   */
  public static Invoice of(
      Case machine, Offering offering, LocalDate day, Optional<String> number) {
    Job job = machine.job();
    Optional<Closing> closing = job.progress().closing();
    Optional<Quantity> guarantee =
        closing.isPresent() ? closing.flatMap(Closing::guarantee) : Quote.guarantee(job, offering);
    Optional<Outcome> outcome = closing.map(Closing::outcome).or(() -> shown(machine));
    Optional<Money> charged = closing.flatMap(Closing::charged);
    boolean free = charged.filter(amount -> amount.amount().signum() == 0).isPresent();
    Bill priced = bill(machine, outcome);
    Bill bill = free ? forNothing(priced) : priced;
    return new Invoice(
        job.id(),
        number,
        day,
        done(job),
        machine.market(),
        bill,
        job.progress().accepted(),
        difference(bill, job.progress().accepted()),
        offering,
        guarantee.map(Quote::standsFor).orElse(""),
        charged.filter(amount -> !isTotal(amount, bill)),
        outcome.isEmpty() && new Tariff(Quote.prices(machine)).credits(),
        "");
  }

  /**
   * The same data for a machine that came back under the guarantee of another job.
   *
   * @param first what the first job grants
   * @return the data, which say so
   */
  public Invoice with(CallBack first) {
    return new Invoice(
        job,
        number,
        day,
        done,
        market,
        bill,
        accepted,
        difference,
        offering,
        guarantee,
        charged,
        creditOpen,
        first.told().text());
  }

  /** A cure that the work is shown to have brought, as whoever closes the job would call it. */
  private static Optional<Outcome> shown(Case machine) {
    Proof proof = Proof.of(machine);
    boolean mended = proof.cure().filter(cure -> cure.outcome() == Cure.Outcome.MENDED).isPresent();
    boolean cured =
        mended
            && !proof.isRefuted()
            && proof.beforePower().isEmpty()
            && machine.lockOut().keeping().isEmpty();
    return cured ? Optional.of(Outcome.CURED) : Optional.empty();
  }

  private static boolean isTotal(Money amount, Bill bill) {
    return bill.total()
        .filter(
            total ->
                total.currency().equals(amount.currency())
                    && total.amount().compareTo(amount.amount()) == 0)
        .isPresent();
  }

  /** The same lines, each at nothing. */
  private static Bill forNothing(Bill bill) {
    List<Item> items =
        bill.lines().stream()
            .map(Bill.Line::item)
            .map(
                item ->
                    new Item(
                        item.title(),
                        item.kind(),
                        item.count(),
                        item.unit(),
                        Optional.of(BigDecimal.ZERO),
                        item.rate()))
            .toList();
    return Bill.of(bill.currency(), items, bill.rounding(), bill.included());
  }

  /**
   * What is to be paid for the work of a case. A call-out that is credited where the machine is
   * mended is taken off only where the outcome is a cure. Where nothing was done, call-out and
   * diagnosis are left, if somebody was there: something was read, an offer taken, or nothing wrong
   * found.
   *
   * @param machine the case
   * @param outcome how the job ends; empty while that is open
   * @return the bill
   * @throws InputException if there is nothing to be paid for, the job has no prices, or a part is
   *     in another currency
   */
  public static Bill bill(Case machine, Optional<Outcome> outcome) {
    Job job = machine.job();
    if (!job.progress().isWorked() && !isComing(job, outcome)) {
      throw new InputException(
          "/work",
          "is missing",
          "record what was done before an invoice is made out; where nothing was, close the job,"
              + " and call-out and diagnosis are billed if an offer was accepted or something read");
    }
    Prices prices = Quote.prices(machine);
    if (!job.progress().isWorked()) {
      Tariff tariff = new Tariff(prices);
      return tariff.bill(List.of(tariff.callOut()));
    }
    requireCurrency(job.progress().work(), prices);
    return bill(machine, new Tariff(prices), outcome);
  }

  /** Whether only coming and looking is to be paid. */
  private static boolean isComing(Job job, Optional<Outcome> outcome) {
    Optional<Accepted> accepted = job.progress().accepted();
    boolean visited = accepted.isPresent() || !job.measurements().isEmpty();
    return outcome.isPresent()
        ? outcome.get() == Outcome.NOTHING_WRONG || outcome.get() != Outcome.CURED && visited
        : accepted.filter(each -> each.title().equals(Offer.AS_IT_IS)).isPresent();
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

  private static Bill bill(Case machine, Tariff tariff, Optional<Outcome> outcome) {
    List<Item> items = new ArrayList<>();
    for (WorkDone piece : machine.job().progress().work()) {
      Optional<Remedy> known = piece.remedy().flatMap(key -> remedy(key, machine));
      String title = title(piece, known);
      items.add(labour(title, piece, tariff));
      for (PartUsed part : piece.parts()) {
        items.add(part(part, piece, tariff));
      }
      if (piece.parts().isEmpty() && known.filter(Remedy::needsPart).isPresent()) {
        items.add(
            tariff.part("Part for: %s (part not told)".formatted(title), 1, Optional.empty()));
      }
    }
    if (!items.isEmpty()) {
      items.addAll(tariff.least(items));
    }
    items.add(0, tariff.callOut());
    items.addAll(credit(tariff, outcome));
    return tariff.bill(items);
  }

  private static List<Item> credit(Tariff tariff, Optional<Outcome> outcome) {
    if (outcome.isEmpty()) {
      return tariff.creditIfMended();
    }
    return outcome.get() == Outcome.CURED ? tariff.credit() : List.of();
  }

  /** What the work is known as, whether the lock-out table bars it by now or not. */
  private static Optional<Remedy> remedy(String key, Case machine) {
    return machine.faults().stream()
        .flatMap(fault -> fault.remedies().stream())
        .filter(remedy -> remedy.key().equals(key))
        .findFirst();
  }

  private static String title(WorkDone piece, Optional<Remedy> known) {
    if (!piece.title().isBlank()) {
      return piece.title();
    }
    return known
        .map((Remedy remedy) -> WorkWords.of(remedy))
        .orElseGet(() -> piece.remedy().orElseThrow().replace(".", ": ").replace('-', ' '));
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

  /** Only sums with tax are held against each other, and only in one currency. */
  private static Optional<Money> difference(Bill bill, Optional<Accepted> accepted) {
    Optional<Money> most = accepted.flatMap(Accepted::most);
    return bill.total().isPresent()
            && most.filter(each -> each.currency().equals(bill.currency())).isPresent()
        ? Optional.of(
            new Money(bill.total().get().amount().subtract(most.get().amount()), bill.currency()))
        : Optional.empty();
  }
}
