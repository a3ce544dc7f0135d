package kelter.core.shop;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Prices;
import kelter.core.owner.PriceSpread;
import kelter.core.owner.Supplies;
import kelter.core.owner.Tax;
import kelter.core.owner.Terms;
import kelter.core.problem.Required;
import kelter.core.quantity.Money;

/**
 * What work and parts cost at a shop. It stands in, figure by figure, for what the prices of a job
 * leave open; what the job states always wins. The day of the list is taken only where the job has
 * no prices of its own, since it would be told of the job's figures, too.
 *
 * @param currency the currency of all amounts
 * @param date the day of the prices, if stated
 * @param labourPerHour the price of an hour of work, if stated
 * @param callOut what coming costs, if stated
 * @param parts the price of parts by {@code component-kind.remedy}
 * @param tax the tax on work and parts
 * @param policy the terms of the shop, and what new machines cost
 */
public record PriceList(
    Currency currency,
    Optional<LocalDate> date,
    Optional<Money> labourPerHour,
    Optional<Money> callOut,
    Map<String, Money> parts,
    Tax tax,
    Policy policy) {

  /**
   * A list that tells nothing of terms.
   *
   * @param currency the currency of all amounts
   * @param date the day of the prices, if stated
   * @param labourPerHour the price of an hour of work, if stated
   * @param callOut what coming costs, if stated
   * @param parts the price of parts by {@code component-kind.remedy}
   * @param tax the tax on work and parts
   * @throws IllegalArgumentException if an amount is in another currency or negative
   */
  public PriceList(
      Currency currency,
      Optional<LocalDate> date,
      Optional<Money> labourPerHour,
      Optional<Money> callOut,
      Map<String, Money> parts,
      Tax tax) {
    this(currency, date, labourPerHour, callOut, parts, tax, Policy.NONE);
  }

  /**
   * A list that tells nothing of tax.
   *
   * @param currency the currency of all amounts
   * @param date the day of the prices, if stated
   * @param labourPerHour the price of an hour of work, if stated
   * @param callOut what coming costs, if stated
   * @param parts the price of parts by {@code component-kind.remedy}
   * @throws IllegalArgumentException if an amount is in another currency or negative
   */
  public PriceList(
      Currency currency,
      Optional<LocalDate> date,
      Optional<Money> labourPerHour,
      Optional<Money> callOut,
      Map<String, Money> parts) {
    this(currency, date, labourPerHour, callOut, parts, Tax.UNKNOWN);
  }

  /**
   * Checks that there is one currency and that no amount is negative.
   *
   * @throws IllegalArgumentException if an amount is in another currency or negative
   */
  public PriceList {
    Prices.requireCurrency(Required.value(currency, "currency of a price list"));
    Required.optional(date, "day of a price list");
    Required.optional(labourPerHour, "price of an hour of work");
    Required.optional(callOut, "price of a call-out");
    parts = Required.map(parts, "prices of parts");
    Required.value(tax, "tax of a price list");
    Required.value(policy, "terms of a price list");
    List<Money> amounts = new ArrayList<>(parts.values());
    amounts.addAll(policy.amounts());
    labourPerHour.ifPresent(amounts::add);
    callOut.ifPresent(amounts::add);
    for (Money amount : amounts) {
      Prices.requirePrice(amount, currency, amount.format());
    }
  }

  /**
   * A job with the prices of the shop.
   *
   * @param job the job
   * @param note what was taken from the list, in a sentence; empty if nothing was
   */
  public record Priced(Job job, Optional<String> note) {

    /** Checks that nothing is null. */
    public Priced {
      Required.value(job, "priced job");
      Required.optional(note, "note on prices");
    }
  }

  /**
   * A job whose open prices are filled from this list.
   *
   * @param job the job, with all of its components
   * @return the job; as it is where it states everything, or prices in another currency
   */
  public Priced standIn(Job job) {
    Prices own = job.prices().orElseGet(this::empty);
    if (labourPerHour.isEmpty()
        && callOut.isEmpty()
        && parts.isEmpty()
        && tax.equals(Tax.UNKNOWN)
        && policy.equals(Policy.NONE)) {
      return new Priced(job, Optional.empty());
    }
    if (!own.currency().equals(currency)) {
      return new Priced(
          job,
          Optional.of(
              "The prices of the shop are in %s and those of the job in %s: none is taken."
                  .formatted(currency, own.currency())));
    }
    if (!takesTax(own) && own.tax().isIncluded() != tax.isIncluded()) {
      return new Priced(
          job,
          Optional.of(
              "The prices of the shop are %s tax and those of the job %s: none is taken."
                  .formatted(withOrWithout(tax), withOrWithout(own.tax()))));
    }
    Map<String, Money> filled = parts(job, own);
    int more = filled.size() - own.parts().size();
    List<String> taken = new ArrayList<>();
    if (own.labourPerHour().isEmpty() && labourPerHour.isPresent()) {
      taken.add("an hour of work");
    }
    if (own.callOut().isEmpty() && callOut.isPresent()) {
      taken.add("call-out");
    }
    if (more > 0) {
      taken.add(more == 1 ? "1 part" : more + " parts");
    }
    if (takesTax(own) && !tax.equals(Tax.UNKNOWN)) {
      taken.add("tax");
    }
    Prices stated = filled(own, filled);
    Prices all = policy.standIn(stated, job.appliance().kind());
    taken.addAll(policy.taken(stated, all));
    if (taken.isEmpty()) {
      return new Priced(job, Optional.empty());
    }
    String day = date.map(each -> " of " + each).orElse("");
    String note =
        "Where the job is silent, prices of the shop%s stand in: %s."
            .formatted(day, String.join(", ", taken));
    return new Priced(job.at(all), Optional.of(note));
  }

  private static String withOrWithout(Tax tax) {
    return tax.isIncluded() ? "with" : "without";
  }

  /** Prices of which nothing is stated but this day. */
  private Prices empty() {
    Terms none = Terms.NONE;
    return new Prices(
        currency,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Map.of(),
        new Terms(
            date,
            none.callOutCredited(),
            none.leastWork(),
            none.replacementAvailable(),
            none.partsDelivery(),
            none.replacementDelivery(),
            none.repairWarranty(),
            none.newWarranty(),
            none.dayWithout()),
        Supplies.UNKNOWN,
        PriceSpread.NONE);
  }

  private Prices filled(Prices own, Map<String, Money> allParts) {
    return new Prices(
        currency,
        own.labourPerHour().or(() -> labourPerHour),
        own.callOut().or(() -> callOut),
        own.replacement(),
        own.installation(),
        own.runningPerYear(),
        own.runningPerYearNew(),
        own.discountRate(),
        allParts,
        own.terms(),
        own.supplies(),
        own.spread(),
        takesTax(own) ? tax : own.tax());
  }

  /** Tax is taken as a whole, where the job tells nothing of it. */
  private boolean takesTax(Prices own) {
    return own.tax().equals(Tax.UNKNOWN);
  }

  /** The job's prices of parts, and those of the list under the ids of the job's components. */
  private Map<String, Money> parts(Job job, Prices own) {
    Map<String, Money> all = new LinkedHashMap<>(own.parts());
    for (Component component : job.appliance().components()) {
      parts.forEach(
          (word, price) -> {
            int dot = word.indexOf('.');
            String remedy = word.substring(dot + 1);
            if (word.substring(0, Math.max(dot, 0)).equals(component.kind())
                && own.part(component.id(), remedy).isEmpty()) {
              all.put(component.id() + "." + remedy, price);
            }
          });
    }
    return all;
  }
}
