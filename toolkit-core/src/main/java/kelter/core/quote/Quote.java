package kelter.core.quote;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.diagnosis.Conclusion;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Job;
import kelter.core.job.Market;
import kelter.core.job.Prices;
import kelter.core.problem.InputException;
import kelter.core.problem.Required;
import kelter.core.quantity.Quantity;
import kelter.core.safety.LockState;
import kelter.core.safety.lockout.ActiveRow;
import kelter.core.safety.lockout.LockOut;
import kelter.core.shop.Offering;
import kelter.core.vocabulary.Statement;
import kelter.core.workshop.Case;

/**
 * The data of a quotation: what an owner may choose, and for which fixed or maximum price. A
 * maximum is the sum of all work that may be needed, with two standard deviations of the prices; it
 * is no expected cost. Nothing is guessed: where a price is missing the sum is open.
 *
 * @param job the id of the job
 * @param day the day of the quotation
 * @param validUntil the last day on which it stands
 * @param market where the machine stands
 * @param stop what the lock-out table asks
 * @param cause what is held to be wrong
 * @param offers what the owner may choose, the whole repair first; none where the table bars all
 * @param ifDeclined what is to be paid if nothing is chosen; empty where nothing is offered
 * @param credited whether the call-out is taken off where the machine is mended; empty if nobody
 *     tells
 * @param terms what holds besides, a sentence or two each
 * @param offering who offers it
 * @param guarantee for how long the shop stands for the work, if that is told
 */
public record Quote(
    String job,
    LocalDate day,
    LocalDate validUntil,
    Market market,
    Stop stop,
    Cause cause,
    List<Offer> offers,
    Optional<Bill> ifDeclined,
    Optional<Boolean> credited,
    List<Statement> terms,
    Offering offering,
    Optional<Quantity> guarantee) {

  private static final Statement MORE =
      new Statement(
          "nothing-without-your-word",
          "If more is found, nothing beyond this offer is done without your word. You get a new price"
              + " first.");
  private static final String THEN = "; you get a price for mending it then";
  private static final Statement EXCLUDED =
      new Statement(
          "other-trades-excluded",
          "Not in the price: a new machine, and what is another trade's work, such as gas, refrigerant"
              + " or fixed wiring.");
  private static final String GUARANTEE = "guarantee";
  private static final String STANDS_FOR =
      "On this repair we give %s from the day it is done, parts and labour, for the same"
          + " defect; your rights by law stay as they are.";
  private static final Statement NEW_PARTS = new Statement("new-parts", "All parts are new.");
  private static final Statement NO_ROOM =
      new Statement(
          "no-room-for-longer-work",
          "The prices state no spread, so that the maximum has no room for work that takes longer.");

  /**
   * What the lock-out table asks before and beside any price.
   *
   * @param text its strictest text; empty if no row holds
   * @param all whether no work on the machine is for this tool, and so none is offered
   * @param only whether no other work is offered than what ends a lock-out
   * @param first what has to be done first, or who is to be called, each with the id of the row
   *     that asks for it
   */
  public record Stop(String text, boolean all, boolean only, List<Statement> first) {

    /** Copies the list. */
    public Stop {
      Required.value(text, "text of a lock-out");
      first = Required.list(first, "first steps of a lock-out");
    }
  }

  /**
   * What is held to be wrong.
   *
   * @param decided whether the readings decide it
   * @param faults what is likeliest to be wrong together, in the words of the owner; empty if
   *     nothing is
   * @param probability how likely it is that all of that is there, whatever else is, from 0 to 1
   * @param advice what kind of thing would decide it, or is to be done next
   * @param action the same in words: what would decide it, or what to do next; a sentence without
   *     its full stop
   */
  public record Cause(
      boolean decided,
      List<String> faults,
      double probability,
      Conclusion.Advice advice,
      String action) {

    /** Copies the list. */
    public Cause {
      faults = Required.list(faults, "faults of a cause");
      Required.value(action, "action of a cause");
    }
  }

  /** Checks that nothing is null. */
  public Quote {
    Required.value(job, "job of a quotation");
    Required.value(day, "day of a quotation");
    Required.value(validUntil, "validity of a quotation");
    Required.value(market, "market of a quotation");
    Required.value(stop, "lock-out of a quotation");
    Required.value(cause, "cause of a quotation");
    offers = Required.list(offers, "offers of a quotation");
    Required.optional(ifDeclined, "price of declining");
    Required.optional(credited, "credit of a call-out");
    terms = Required.list(terms, "terms of a quotation");
    Required.value(offering, "offering of a quotation");
    Required.optional(guarantee, "guarantee of a quotation");
  }

  /**
   * The quotation for a case.
   *
   * @param machine the case
   * @param offering who offers the work, and on which terms
   * @param day the day of the quotation
   * @return the quotation
   * @throws InputException if work is offered and the job has no prices
   */
  public static Quote of(Case machine, Offering offering, LocalDate day) {
    LockOut lockOut = machine.lockOut();
    List<ActiveRow> open = NeededWork.open(lockOut);
    Optional<Prices> prices = lockOut.barsAll() ? Optional.empty() : Optional.of(prices(machine));
    List<Offer> offers =
        prices.map(known -> offers(machine, new Tariff(known), open)).orElse(List.of());
    Optional<Quantity> guarantee = guarantee(machine.job(), offering);
    return new Quote(
        machine.job().id(),
        day,
        day.plusDays(offering.validDays()),
        machine.market(),
        stop(lockOut, open),
        cause(machine.diagnosis()),
        offers,
        prices.map(Tariff::new).map(tariff -> tariff.bill(List.of(tariff.callOut()))),
        prices.flatMap(known -> known.terms().callOutCredited()),
        offers.isEmpty() ? List.of() : terms(offers, prices.orElseThrow(), guarantee),
        offering,
        guarantee);
  }

  /**
   * For how long work on a job is stood for.
   *
   * @param job the job
   * @param offering who does the work
   * @return what the prices of the job tell, else what the shop tells
   */
  public static Optional<Quantity> guarantee(Job job, Offering offering) {
    return job.prices().flatMap(known -> known.terms().repairWarranty()).or(offering::guarantee);
  }

  static Prices prices(Case machine) {
    return machine
        .job()
        .prices()
        .orElseThrow(
            () ->
                new InputException(
                    "/prices",
                    "is missing",
                    "give at least currency, labour-per-hour and call-out"));
  }

  private static Stop stop(LockOut lockOut, List<ActiveRow> open) {
    Map<String, Statement> first = new LinkedHashMap<>();
    for (ActiveRow each : lockOut.rows()) {
      boolean calls = each.row().state() == LockState.D && !each.quiet();
      if ((lockOut.barsAll() ? calls : open.contains(each)) && !each.row().first().isEmpty()) {
        String words = each.row().first();
        first.putIfAbsent(words, new Statement(each.row().id(), words));
      }
    }
    return new Stop(
        lockOut.text(), lockOut.barsAll(), !open.isEmpty(), List.copyOf(first.values()));
  }

  private static Cause cause(Diagnosis diagnosis) {
    Optional<Diagnosis.RankedState> best = diagnosis.ranking().stream().findFirst();
    return new Cause(
        diagnosis.basis().conclusion().isDecided(),
        best.map(Quote::wrong).orElse(List.of()),
        best.map(state -> chance(state, diagnosis)).orElse(0.0),
        diagnosis.basis().conclusion().advice(),
        diagnosis.basis().conclusion().action());
  }

  /**
   * The chance that all the faults of a state are there, whatever else is: what the report tells of
   * the same readings. Nothing and what no fault explains have the chance of their state.
   */
  private static double chance(Diagnosis.RankedState state, Diagnosis diagnosis) {
    if (state.faults().isEmpty() || state.unexplained()) {
      return state.probability();
    }
    List<String> faults = keys(state);
    if (faults.size() == 1) {
      return diagnosis
          .fault(faults.get(0))
          .map(Diagnosis.FaultProbability::probability)
          .orElse(state.probability());
    }
    return diagnosis.ranking().stream()
        .filter(each -> keys(each).containsAll(faults))
        .mapToDouble(Diagnosis.RankedState::probability)
        .sum();
  }

  private static List<String> keys(Diagnosis.RankedState state) {
    return state.faults().stream().map(present -> present.fault().key()).toList();
  }

  private static List<String> wrong(Diagnosis.RankedState state) {
    List<String> wrong = new ArrayList<>();
    state.faults().forEach(present -> wrong.add(WorkWords.of(present.fault())));
    if (state.unexplained()) {
      wrong.add("something that no known fault explains");
    }
    return wrong;
  }

  private static List<Offer> offers(Case machine, Tariff tariff, List<ActiveRow> open) {
    List<Remedy> needed = NeededWork.of(machine.diagnosis());
    List<Offer> offers = new ArrayList<>();
    List<Remedy> work = open.isEmpty() ? needed : NeededWork.ending(needed, open, machine);
    mend(work, machine, tariff, offers);
    if (!open.isEmpty() && work.isEmpty()) {
      offers.add(callOut(Offer.FIND, "Find what keeps it unplugged" + THEN, tariff));
    } else if (!work.isEmpty() && machine.diagnosis().basis().conclusion().readFirst()) {
      offers.add(callOut(Offer.FIND, "Find the cause first" + THEN, tariff));
    }
    if (mayStay(machine)) {
      offers.add(callOut(Offer.LEAVE, Offer.AS_IT_IS, tariff));
    }
    return offers;
  }

  private static boolean mayStay(Case machine) {
    return !machine.lockOut().staysUnplugged() && machine.lockOut().suspicions().isEmpty();
  }

  private static void mend(List<Remedy> needed, Case machine, Tariff tariff, List<Offer> offers) {
    if (needed.isEmpty()) {
      return;
    }
    boolean several = needed.size() > 1;
    String all = WorkWords.of(needed);
    boolean decided = machine.diagnosis().basis().conclusion().isDecided();
    offers.add(
        mend(
            Offer.MEND,
            several ? "Mend it, with as much of this as is needed: " + all : capital(all),
            needed,
            several || !decided,
            true,
            tariff));
    List<Remedy> first = NeededWork.first(needed, machine.diagnosis());
    if (!first.isEmpty() && first.size() < needed.size()) {
      offers.add(
          mend(
              Offer.FIRST,
              "Only this first: " + WorkWords.of(first),
              first,
              tariff.credits(),
              false,
              tariff));
    }
  }

  private static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private static Offer mend(
      String id, String title, List<Remedy> work, boolean open, boolean mended, Tariff tariff) {
    List<Item> items = new ArrayList<>();
    work.forEach(remedy -> items.addAll(tariff.work(remedy)));
    items.addAll(tariff.least(items));
    items.addAll(tariff.room(items));
    items.add(0, tariff.callOut());
    items.addAll(mended ? tariff.credit() : tariff.creditIfMended());
    return new Offer(id, title, work, open || tariff.spreads(), tariff.bill(items));
  }

  /** An offer without work: only coming and looking is charged. */
  private static Offer callOut(String id, String title, Tariff tariff) {
    return new Offer(id, title, List.of(), false, tariff.bill(List.of(tariff.callOut())));
  }

  /**
   * The same quotation for a machine that came back under the guarantee of another job.
   *
   * @param callBack what the first job grants
   * @return the quotation, which says so before its other terms
   */
  public Quote with(CallBack callBack) {
    List<Statement> told = new ArrayList<>(List.of(callBack.told()));
    told.addAll(terms);
    return new Quote(
        job,
        day,
        validUntil,
        market,
        stop,
        cause,
        offers,
        ifDeclined,
        credited,
        told,
        offering,
        guarantee);
  }

  private static List<Statement> terms(
      List<Offer> offers, Prices prices, Optional<Quantity> guarantee) {
    List<Statement> terms = new ArrayList<>();
    terms.add(MORE);
    boolean maximum = offers.stream().anyMatch(Offer::maximum);
    if (maximum && !new Tariff(prices).spreads()) {
      terms.add(NO_ROOM);
    }
    terms.add(EXCLUDED);
    if (offers.stream().anyMatch(offer -> !offer.work().isEmpty())) {
      terms.add(NEW_PARTS);
      guarantee.map(time -> new Statement(GUARANTEE, standsFor(time))).ifPresent(terms::add);
    }
    return terms;
  }

  /**
   * All that may hold besides, so that programs know the ids beforehand.
   *
   * @return each with {@code %s} for what depends on the job
   */
  public static List<Statement> vocabulary() {
    return List.of(
        MORE,
        NO_ROOM,
        EXCLUDED,
        NEW_PARTS,
        new Statement(GUARANTEE, STANDS_FOR),
        CallBack.vocabulary());
  }

  /** What the repairer promises beside the law. */
  static String standsFor(Quantity time) {
    return STANDS_FOR.formatted(WorkWords.of(time));
  }

  /**
   * An offer by its number.
   *
   * @param number from 1
   * @return the offer
   * @throws InputException if there is none of that number
   */
  public Offer offer(int number) {
    if (number < 1 || number > offers.size()) {
      throw new InputException(
          "option " + number,
          "is none of this quotation",
          offers.isEmpty()
              ? "nothing is offered here"
              : "they are numbered from 1 to " + offers.size());
    }
    return offers.get(number - 1);
  }
}
