package kelter.cli.quote;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.job.Market;
import kelter.core.quantity.Money;
import kelter.core.quote.Bill;
import kelter.core.quote.Item;
import kelter.core.quote.Offer;

/** Bills and prices in words and rows. */
final class BillWords {

  private static final String WORK = "Work: ";
  private static final String NEW_PART = "New part: ";

  private static final int MOST_NAMED = 3;

  private BillWords() {}

  /**
   * A row of a bill as it is shown.
   *
   * @param title what it is for
   * @param count how many at which price; empty for a sum
   * @param amount what it comes to
   */
  record Row(String title, String count, String amount) {}

  /** The price of an offer in a sentence: with tax in Europe, before tax in North America. */
  static String price(Offer offer, Market market) {
    boolean open = !offer.bill().open().isEmpty();
    String amount = amount(offer.bill(), market);
    return (open ? "The price is " : offer.maximum() ? "At most " : "") + amount + ".";
  }

  /** What is to be paid, in words that may go on a sentence. */
  static String amount(Bill bill, Market market) {
    if (!bill.open().isEmpty()) {
      return "open: no price is known for " + first(bill.open());
    }
    if (bill.total().isEmpty()) {
      return bill.net().orElseThrow().format() + " before tax (no tax rate is stated)";
    }
    Money total = bill.total().get();
    if (bill.tax().isEmpty()) {
      return total.format() + ", tax included";
    }
    Money tax = bill.tax().get();
    return market == Market.NA
        ? "%s before tax; tax %s; %s in all"
            .formatted(bill.net().orElseThrow().format(), tax.format(), total.format())
        : "%s, tax of %s included".formatted(total.format(), tax.format());
  }

  /** The first few; line by line all of them stand in the bill. */
  private static String first(List<String> titles) {
    int more = titles.size() - MOST_NAMED;
    return String.join("; ", titles.subList(0, Math.min(MOST_NAMED, titles.size())))
        + (more > 0 ? "; and for " + more + " more" : "");
  }

  /** The lines of a bill; a part below the work that needs it is not told at length again. */
  static List<Row> lines(Bill bill) {
    List<Row> rows = new ArrayList<>();
    String work = "";
    for (Bill.Line line : bill.lines()) {
      String title = line.item().title();
      boolean same = !work.isEmpty() && title.equals(NEW_PART + work);
      rows.add(line(bill, line, same ? "New part for it" : title));
      work = title.startsWith(WORK) ? title.substring(WORK.length()) : "";
    }
    return rows;
  }

  private static Row line(Bill bill, Bill.Line line, String title) {
    return new Row(
        title + tax(line),
        count(line.item(), bill),
        line.amount().map(Money::format).orElse("not known"));
  }

  private static String tax(Bill.Line line) {
    return line.tax().map(tax -> " (tax " + tax.format() + ")").orElse("");
  }

  private static String count(Item item, Bill bill) {
    if (item.unit() == Item.Unit.PIECE && item.count().compareTo(BigDecimal.ONE) <= 0) {
      return "";
    }
    String price =
        item.price()
            .map(each -> new Money(each.stripTrailingZeros(), bill.currency()))
            .map(each -> shown(each).format())
            .orElse("not known");
    return item.unit() == Item.Unit.MINUTE
        ? "%s min at %s an hour".formatted(item.count().toPlainString(), price)
        : "%s at %s".formatted(item.count().toPlainString(), price);
  }

  /** A price with the digits of its currency, or with more where it has more. */
  private static Money shown(Money price) {
    int digits = Math.max(price.currency().getDefaultFractionDigits(), price.amount().scale());
    return new Money(price.amount().setScale(digits), price.currency());
  }

  /** The sums of a bill, below its lines. */
  static List<Row> sums(Bill bill) {
    List<Row> sums = new ArrayList<>();
    add(bill.net(), "before tax", sums);
    for (Bill.RateSum each : bill.rates()) {
      sums.add(
          new Row(
              "tax, %s of %s".formatted(each.rate().format(), each.taxable().format()),
              "",
              each.tax().format()));
    }
    add(bill.total(), bill.net().isPresent() ? "total" : "total, tax included", sums);
    return sums;
  }

  private static void add(Optional<Money> sum, String title, List<Row> sums) {
    sum.ifPresent(amount -> sums.add(new Row(title, "", amount.format())));
  }

  /** How the figures came about. */
  static String rounding(Bill bill) {
    return "Prices are %s tax. Rounded half up: each line, and tax once %s."
        .formatted(bill.included() ? "with" : "before", bill.rounding().id());
  }
}
