package kelter.core.job;

import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import kelter.core.owner.PriceSpread;
import kelter.core.owner.Supplies;
import kelter.core.owner.Tax;
import kelter.core.owner.TaxRate;
import kelter.core.owner.Terms;
import kelter.core.problem.Required;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;

/**
 * What work, parts and a new machine cost in this job, all in one currency.
 *
 * @param currency the currency of all amounts
 * @param labourPerHour the price of an hour of work
 * @param callOut what coming costs, whatever is done
 * @param replacement the price of a new machine
 * @param installation what it costs to deliver and connect the new machine and take the old one
 *     away
 * @param runningPerYear what energy, water and detergent of the old machine cost a year
 * @param runningPerYearNew the same for the new machine
 * @param discountRate what money costs a year, as a ratio
 * @param parts the price of parts by the remedy that needs them, {@code component.remedy}
 * @param terms the terms of repair and replacement
 * @param supplies what energy, water and detergent cost
 * @param spread how far prices may turn out otherwise
 * @param tax the tax on work and parts
 */
public record Prices(
    Currency currency,
    Optional<Money> labourPerHour,
    Optional<Money> callOut,
    Optional<Money> replacement,
    Optional<Money> installation,
    Optional<Money> runningPerYear,
    Optional<Money> runningPerYearNew,
    Optional<Quantity> discountRate,
    Map<String, Money> parts,
    Terms terms,
    Supplies supplies,
    PriceSpread spread,
    Tax tax) {

  /**
   * Prices without anything stated of tax.
   *
   * @param currency the currency of all amounts
   * @param labourPerHour the price of an hour of work
   * @param callOut what coming costs, whatever is done
   * @param replacement the price of a new machine
   * @param installation what it costs to deliver and connect the new machine and take the old one
   *     away
   * @param runningPerYear what energy, water and detergent of the old machine cost a year
   * @param runningPerYearNew the same for the new machine
   * @param discountRate what money costs a year, as a ratio
   * @param parts the price of parts by the remedy that needs them, {@code component.remedy}
   * @param terms the terms of repair and replacement
   * @param supplies what energy, water and detergent cost
   * @param spread how far prices may turn out otherwise
   * @throws IllegalArgumentException if an amount is in another currency or negative, or the rate
   *     is not between 0 and 1
   */
  public Prices(
      Currency currency,
      Optional<Money> labourPerHour,
      Optional<Money> callOut,
      Optional<Money> replacement,
      Optional<Money> installation,
      Optional<Money> runningPerYear,
      Optional<Money> runningPerYearNew,
      Optional<Quantity> discountRate,
      Map<String, Money> parts,
      Terms terms,
      Supplies supplies,
      PriceSpread spread) {
    this(
        currency,
        labourPerHour,
        callOut,
        replacement,
        installation,
        runningPerYear,
        runningPerYearNew,
        discountRate,
        parts,
        terms,
        supplies,
        spread,
        Tax.UNKNOWN);
  }

  /**
   * Prices without anything stated of terms, supplies, spread and tax.
   *
   * @param currency the currency of all amounts
   * @param labourPerHour the price of an hour of work
   * @param callOut what coming costs, whatever is done
   * @param replacement the price of a new machine
   * @param installation what it costs to deliver and connect the new machine and take the old one
   *     away
   * @param runningPerYear what energy, water and detergent of the old machine cost a year
   * @param runningPerYearNew the same for the new machine
   * @param discountRate what money costs a year, as a ratio
   * @param parts the price of parts by the remedy that needs them, {@code component.remedy}
   * @throws IllegalArgumentException if an amount is in another currency or negative, or the rate
   *     is not between 0 and 1
   */
  public Prices(
      Currency currency,
      Optional<Money> labourPerHour,
      Optional<Money> callOut,
      Optional<Money> replacement,
      Optional<Money> installation,
      Optional<Money> runningPerYear,
      Optional<Money> runningPerYearNew,
      Optional<Quantity> discountRate,
      Map<String, Money> parts) {
    this(
        currency,
        labourPerHour,
        callOut,
        replacement,
        installation,
        runningPerYear,
        runningPerYearNew,
        discountRate,
        parts,
        Terms.NONE,
        Supplies.UNKNOWN,
        PriceSpread.NONE);
  }

  /**
   * Checks that there is one currency and that no amount is negative.
   *
   * @throws IllegalArgumentException if the currency is none to pay with, an amount is in another
   *     one or negative, or the rate is not between 0 and 1
   */
  public Prices {
    requireCurrency(Required.value(currency, "currency of prices"));
    Required.value(terms, "terms of prices");
    Required.value(supplies, "supplies of prices");
    Required.value(spread, "spread of prices");
    Required.value(tax, "tax of prices");
    requirePrice(labourPerHour, currency, "price of an hour of work");
    requirePrice(callOut, currency, "price of a call-out");
    requirePrice(replacement, currency, "price of a new machine");
    requirePrice(installation, currency, "price of an installation");
    requirePrice(runningPerYear, currency, "running costs");
    requirePrice(runningPerYearNew, currency, "running costs of a new machine");
    requirePrice(terms.dayWithout(), currency, "price of a day without the machine");
    requirePrice(supplies.energyPerKilowattHour(), currency, "price of energy");
    requirePrice(supplies.waterPerCubicMetre(), currency, "price of water");
    requirePrice(supplies.detergentPerCycle(), currency, "price of detergent");
    parts = Required.map(parts, "prices of parts");
    for (Money amount : parts.values()) {
      requirePrice(amount, currency, amount.format());
    }
    Required.optional(discountRate, "discount rate");
    if (discountRate.isPresent()
        && !(discountRate.get().si() >= 0 && discountRate.get().si() < 1)) {
      throw new IllegalArgumentException("a discount rate lies between 0 and 100 % a year");
    }
  }

  /**
   * The price of the part that a remedy needs. It stands under component and remedy, or under the
   * remedy alone where one price serves for all components.
   *
   * @param component the id of the component
   * @param remedy the id of the remedy
   * @return the price, if it is stated
   */
  public Optional<Money> part(String component, String remedy) {
    Money own = parts.get(component + "." + remedy);
    return Optional.ofNullable(own == null ? parts.get(remedy) : own);
  }

  /**
   * The same with other prices of parts.
   *
   * @param others the price of parts by the remedy that needs them, {@code component.remedy}
   * @return the prices
   */
  public Prices withParts(Map<String, Money> others) {
    return new Prices(
        currency,
        labourPerHour,
        callOut,
        replacement,
        installation,
        runningPerYear,
        runningPerYearNew,
        discountRate,
        others,
        terms,
        supplies,
        spread,
        tax);
  }

  /**
   * What the owner pays for work, parts and call-out. All other prices are told as somebody pays
   * them who buys in a shop, with the tax in them.
   *
   * @return the same prices with the tax on work, parts and call-out in them, exact and not
   *     rounded; as they are where they have it in them, or its rate is not stated
   */
  public Prices asPaid() {
    if (tax.isIncluded() || !tax.isKnown()) {
      return this;
    }
    Map<String, Money> paidParts = new LinkedHashMap<>();
    parts.forEach((remedy, price) -> paidParts.put(remedy, paid(price, tax.onParts())));
    return new Prices(
        currency,
        labourPerHour.map(price -> paid(price, tax.rate())),
        callOut.map(price -> paid(price, tax.rate())),
        replacement,
        installation,
        runningPerYear,
        runningPerYearNew,
        discountRate,
        paidParts,
        terms,
        supplies,
        spread,
        new Tax(tax.rate(), tax.rateOfParts(), tax.rounding(), Optional.of(true)));
  }

  private static Money paid(Money price, Optional<TaxRate> rate) {
    return new Money(rate.orElseThrow().onTopOf(price.amount()), price.currency());
  }

  private static void requirePrice(Optional<Money> amount, Currency currency, String name) {
    if (Required.optional(amount, name).isPresent()) {
      requirePrice(amount.get(), currency, amount.get().format());
    }
  }

  /**
   * Checks that prices can be in a currency. ISO 4217 also has codes for none (XXX), for tests
   * (XTS), for precious metals and for units of account, which have no minor unit.
   *
   * @param currency the currency
   * @return the same
   * @throws IllegalArgumentException if nobody pays in it
   */
  public static Currency requireCurrency(Currency currency) {
    if (currency.getDefaultFractionDigits() < 0) {
      throw new IllegalArgumentException(
          "'"
              + currency
              + "' is no money to pay with; write the code of a currency, such as EUR or USD");
    }
    return currency;
  }

  /**
   * The currency of a code.
   *
   * @param code the code of ISO 4217
   * @return the currency
   * @throws IllegalArgumentException if it is none to pay with
   */
  public static Currency currencyOf(String code) {
    Currency currency;
    try {
      currency = Currency.getInstance(code);
    } catch (IllegalArgumentException unknown) {
      throw new IllegalArgumentException(
          "'" + code + "' is not a currency of ISO 4217, such as EUR or USD", unknown);
    }
    return requireCurrency(currency);
  }

  /**
   * Checks a price.
   *
   * @param amount the price
   * @param currency the currency of all prices of a job
   * @param written how it was written, for the message
   * @return the price
   * @throws IllegalArgumentException if it is in another currency or negative
   */
  public static Money requirePrice(Money amount, Currency currency, String written) {
    if (!amount.currency().equals(currency)) {
      throw new IllegalArgumentException(
          "'%s' is in another currency; all prices of a job are in one, here %s"
              .formatted(written, currency));
    }
    if (amount.amount().signum() < 0) {
      throw new IllegalArgumentException("'" + written + "' is negative; a price is not");
    }
    return amount;
  }
}
