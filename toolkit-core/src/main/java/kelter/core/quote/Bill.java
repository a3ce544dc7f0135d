package kelter.core.quote;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.job.Prices;
import kelter.core.owner.TaxRate;
import kelter.core.owner.TaxRounding;
import kelter.core.problem.Required;
import kelter.core.quantity.Money;

/**
 * What is to be paid, in decimals and never in binary fractions.
 *
 * <p>The amount of a line is count times price, rounded once, half up (away from zero), to the
 * minor unit of the currency (ISO 4217). Tax is rounded once, half up, for each line or for each
 * rate. All sums are sums of amounts that are told, so that whoever adds them up finds the same.
 * Where a price is missing all sums are open; where a rate is missing those are that need it.
 * Common practice, no source; local law comes first.
 *
 * @param currency the currency of all amounts
 * @param rounding where tax is rounded
 * @param included whether the amounts of the lines have the tax in them
 * @param lines what is charged
 * @param rates for each rate the taxable amount and the tax; empty where a sum is open
 * @param net the sum before tax; empty if it is open
 * @param tax the tax; empty if it is open
 * @param total the sum with tax; empty if it is open
 */
public record Bill(
    Currency currency,
    TaxRounding rounding,
    boolean included,
    List<Line> lines,
    List<RateSum> rates,
    Optional<Money> net,
    Optional<Money> tax,
    Optional<Money> total) {

  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  /**
   * A line.
   *
   * @param item what is charged
   * @param amount count times price, with the tax in it if the bill says so; empty if the price is
   *     not known
   * @param tax the tax on it, where tax is rounded per line and both are known
   */
  public record Line(Item item, Optional<Money> amount, Optional<Money> tax) {}

  /**
   * What is taxed at one rate.
   *
   * @param rate the rate
   * @param taxable the sum before tax
   * @param tax the tax on it
   */
  public record RateSum(TaxRate rate, Money taxable, Money tax) {}

  /** Copies the lists. */
  public Bill {
    Required.value(currency, "currency of a bill");
    Required.value(rounding, "rounding of a bill");
    lines = Required.list(lines, "lines of a bill");
    rates = Required.list(rates, "rates of a bill");
    Required.optional(net, "net sum of a bill");
    Required.optional(tax, "tax of a bill");
    Required.optional(total, "total of a bill");
  }

  /**
   * Adds up.
   *
   * @param currency the currency, one that somebody pays in
   * @param items what is charged
   * @param rounding where tax is rounded
   * @param included whether prices have the tax in them
   * @return the bill
   * @throws IllegalArgumentException if nobody pays in the currency
   */
  public static Bill of(
      Currency currency, List<Item> items, TaxRounding rounding, boolean included) {
    return new Sums(Prices.requireCurrency(currency), rounding, included).bill(items);
  }

  /**
   * What is charged at a price that is not known.
   *
   * @return the titles of those lines
   */
  public List<String> open() {
    return lines.stream()
        .filter(line -> line.amount().isEmpty())
        .map(line -> line.item().title())
        .toList();
  }

  /** The arithmetic of a bill. */
  private record Sums(Currency currency, TaxRounding rounding, boolean included) {

    Bill bill(List<Item> items) {
      List<Line> lines = items.stream().map(this::line).toList();
      boolean open = lines.stream().anyMatch(line -> line.amount().isEmpty());
      boolean rated = items.stream().allMatch(item -> item.rate().isPresent());
      if (open) {
        return bill(lines, List.of(), Optional.empty(), Optional.empty(), Optional.empty());
      }
      BigDecimal sum = sum(lines.stream().map(line -> line.amount().orElseThrow()).toList());
      if (!rated) {
        Optional<Money> told = Optional.of(money(sum));
        return included
            ? bill(lines, List.of(), Optional.empty(), Optional.empty(), told)
            : bill(lines, List.of(), told, Optional.empty(), Optional.empty());
      }
      List<RateSum> rates = rates(lines);
      BigDecimal net = sum(rates.stream().map(RateSum::taxable).toList());
      BigDecimal tax = sum(rates.stream().map(RateSum::tax).toList());
      return bill(
          lines,
          rates,
          Optional.of(money(net)),
          Optional.of(money(tax)),
          Optional.of(money(net.add(tax))));
    }

    private Bill bill(
        List<Line> lines,
        List<RateSum> rates,
        Optional<Money> net,
        Optional<Money> tax,
        Optional<Money> total) {
      return new Bill(currency, rounding, included, lines, rates, net, tax, total);
    }

    private Line line(Item item) {
      Optional<Money> amount =
          item.price().map(price -> quotient(item.count().multiply(price), item.unit().priced()));
      Optional<Money> tax =
          rounding == TaxRounding.PER_LINE && amount.isPresent()
              ? item.rate().map(rate -> tax(amount.get().amount(), rate))
              : Optional.empty();
      return new Line(item, amount, tax);
    }

    private List<RateSum> rates(List<Line> lines) {
      Map<TaxRate, List<Line>> byRate = new LinkedHashMap<>();
      for (Line line : lines) {
        TaxRate rate = line.item().rate().orElseThrow();
        byRate.computeIfAbsent(rate, first -> new ArrayList<>()).add(line);
      }
      List<RateSum> rates = new ArrayList<>();
      byRate.forEach((rate, ofRate) -> rates.add(rate(rate, ofRate)));
      return rates;
    }

    private RateSum rate(TaxRate rate, List<Line> lines) {
      BigDecimal sum = sum(lines.stream().map(line -> line.amount().orElseThrow()).toList());
      Money tax =
          rounding == TaxRounding.PER_LINE
              ? money(sum(lines.stream().map(line -> line.tax().orElseThrow()).toList()))
              : tax(sum, rate);
      return new RateSum(rate, included ? money(sum.subtract(tax.amount())) : money(sum), tax);
    }

    /** The tax on an amount, or in it. */
    private Money tax(BigDecimal amount, TaxRate rate) {
      return quotient(
          amount.multiply(rate.percent()), included ? HUNDRED.add(rate.percent()) : HUNDRED);
    }

    private Money quotient(BigDecimal dividend, BigDecimal divisor) {
      return new Money(
          dividend.divide(divisor, currency.getDefaultFractionDigits(), RoundingMode.HALF_UP),
          currency);
    }

    private Money money(BigDecimal amount) {
      return new Money(amount, currency);
    }

    private BigDecimal sum(List<Money> amounts) {
      BigDecimal sum = BigDecimal.ZERO.setScale(currency.getDefaultFractionDigits());
      for (Money amount : amounts) {
        sum = sum.add(amount.amount());
      }
      return sum;
    }
  }
}
