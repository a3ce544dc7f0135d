package kelter.core.book.figures;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kelter.core.owner.Tax;
import kelter.core.problem.Required;
import kelter.core.quantity.Money;
import kelter.core.shop.PriceList;
import kelter.core.shop.StockPart;

/**
 * What a shop tells with its questions.
 *
 * @param asOf the day for which it asks; later jobs are left out
 * @param restockDays how many days pass until a part that was used is in the van again, above 0
 * @param service the chance with which the parts carried are to do until then, above 0 and below 1
 * @param hour what an hour of work costs the shop; without it, its price of an hour stands in
 * @param prices its prices
 * @param stock what it carries
 */
public record Question(
    LocalDate asOf,
    double restockDays,
    double service,
    Optional<Money> hour,
    Optional<PriceList> prices,
    List<StockPart> stock) {

  /** Parts are fetched once a week; common practice, no source. */
  public static final double USUAL_RESTOCK_DAYS = 7;

  /** A part is there in 19 of 20 times; common practice, no source. */
  public static final double USUAL_SERVICE = 0.95;

  private static final double MOST_DAYS = 3660;

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if one is outside its range, or the hour is in another
   *     currency than the prices
   */
  public Question {
    Required.value(asOf, "day of the question");
    if (!(restockDays > 0 && restockDays <= MOST_DAYS)) {
      throw new IllegalArgumentException(
          restockDays + " days until parts come; above 0 and up to 3660 are allowed");
    }
    if (!(service > 0 && service <= 0.9999)) {
      throw new IllegalArgumentException(
          "a service of " + service + "; above 0 and up to 0.9999 is allowed");
    }
    Required.optional(hour, "cost of an hour");
    Required.optional(prices, "prices");
    stock = List.copyOf(stock);
    if (hour.isPresent()
        && prices.filter(each -> !each.currency().equals(hour.get().currency())).isPresent()) {
      throw new IllegalArgumentException(
          "an hour costs %s, and the prices of the shop are in %s; tell it in their currency"
              .formatted(hour.get().format(), prices.get().currency()));
    }
    if (hour.isPresent() && hour.get().amount().signum() <= 0) {
      throw new IllegalArgumentException(
          "an hour costs " + hour.get().format() + "; more than 0 is allowed");
    }
  }

  /**
   * The tax by the prices of the shop.
   *
   * @return the tax, of which nothing is stated where there are no prices
   */
  public Tax tax() {
    return prices.map(PriceList::tax).orElse(Tax.UNKNOWN);
  }

  /**
   * What an hour is reckoned at.
   *
   * @return what it costs, else its price; empty if neither is told
   */
  public Optional<Money> reckonedHour() {
    return hour.or(() -> prices.flatMap(PriceList::labourPerHour));
  }
}
