package kelter.costing.weigh;

import java.util.Currency;
import java.util.List;
import java.util.Optional;
import kelter.core.option.Reasons.RuleOfThumb;
import kelter.core.quantity.Money;
import kelter.core.source.Source;
import kelter.core.vocabulary.Statement;

/** What rules of thumb say to a comparison, and where they mislead. */
final class RulesOfThumb {

  /** The rule of half the price. */
  static final Statement HALF_PRICE =
      new Statement(
          "half-price", "Repair only if it costs less than half the price of a new machine.");

  private static final double HALF = 0.5;

  private RulesOfThumb() {}

  /** The rules; empty if there is no repair or no replacement to hold them against. */
  static List<RuleOfThumb> of(OptionComparison comparison) {
    Optional<OptionComparison.Weighed> repair = comparison.bestRepair();
    return repair.isPresent() && comparison.replacing().isPresent()
        ? List.of(halfPrice(comparison, repair.get()))
        : List.of();
  }

  private static RuleOfThumb halfPrice(
      OptionComparison comparison, OptionComparison.Weighed repair) {
    double bill = repair.outcomes().meanBill(comparison.states());
    double price = comparison.basis().costs().newMachine();
    boolean ruleRepairs = bill < HALF * price;
    boolean comparisonRepairs = comparison.saving() > 0;
    String agreement =
        ruleRepairs == comparisonRepairs
            ? "The comparison comes to the same."
            : "The comparison comes to the opposite: the rule knows neither the age of the machine,"
                + " nor the chance of cure, nor the running costs.";
    Currency currency = comparison.prices().currency();
    String here =
        ("The best repair costs %s, %s of a new machine at %s: the rule says %s. %s By the rule a"
                + " repair pays up to %s, by the comparison %s.")
            .formatted(
                Money.rounded(bill, currency),
                share(bill, price),
                Money.rounded(price, currency),
                ruleRepairs ? "repair" : "replace",
                agreement,
                Money.rounded(HALF * price, currency),
                upTo(comparison.breakEvenBill(), currency));
    return new RuleOfThumb(
        HALF_PRICE.id(),
        HALF_PRICE.text(),
        here,
        Source.commonPractice("the rule of half the price, as told in the trade"));
  }

  private static String upTo(double bill, Currency currency) {
    return bill > 0 ? "up to " + Money.rounded(bill, currency) : "not even for nothing";
  }

  private static String share(double bill, double price) {
    return price > 0 ? Influences.percent(bill / price) : "more than the whole";
  }
}
