package kelter.core.quote;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Prices;
import kelter.core.owner.Tax;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;

/**
 * Makes items of work by the prices of a job.
 *
 * @param prices the prices
 */
record Tariff(Prices prices) {

  static final String WORK = "Work: ";
  private static final String NEW_PART = "New part: ";

  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
  private static final double SECONDS_PER_MINUTE = 60;

  /** A maximum leaves room for so many standard deviations of the prices; own choice. */
  private static final int DEVIATIONS = 2;

  Bill bill(List<Item> items) {
    return Bill.of(prices.currency(), items, tax().rounded(), tax().isIncluded());
  }

  private Tax tax() {
    return prices.tax();
  }

  /** A piece of work with its part, new, at their prices. */
  List<Item> work(Remedy remedy) {
    List<Item> items = new ArrayList<>();
    items.add(labour(WORK + WorkWords.of(remedy), minutes(remedy.minutes())));
    Optional<Money> part = prices.part(remedy.component(), remedy.id());
    if (remedy.needsPart() || part.isPresent()) {
      items.add(part(NEW_PART + WorkWords.of(remedy), 1, part.map(Money::amount)));
    }
    return items;
  }

  Item labour(String title, BigDecimal minutes) {
    return new Item(
        title,
        Item.Kind.LABOUR,
        minutes,
        Item.Unit.MINUTE,
        prices.labourPerHour().map(Money::amount),
        tax().rate());
  }

  Item part(String title, int count, Optional<BigDecimal> price) {
    return new Item(
        title, Item.Kind.PART, BigDecimal.valueOf(count), Item.Unit.PIECE, price, tax().onParts());
  }

  /** A price before tax as the prices of this job are told; empty where that takes a rate. */
  Optional<BigDecimal> told(Money beforeTax) {
    return tax().isIncluded()
        ? tax().onParts().map(rate -> rate.onTopOf(beforeTax.amount()))
        : Optional.of(beforeTax.amount());
  }

  Item callOut() {
    return Item.one(
        "Call-out and diagnosis",
        Item.Kind.TRAVEL,
        prices.callOut().map(Money::amount),
        tax().rate());
  }

  /** Whether the call-out is taken off where the machine is mended. */
  boolean credits() {
    return prices.terms().callOutCredited().orElse(false) && prices.callOut().isPresent();
  }

  /** The call-out taken off again, where it is credited. */
  List<Item> credit() {
    return credit("Call-out credited, since it is mended", BigDecimal.ONE);
  }

  /** A line that tells of the credit and takes nothing off. */
  List<Item> creditIfMended() {
    return credit("Call-out, to be credited if it is mended; not taken off here", BigDecimal.ZERO);
  }

  private List<Item> credit(String title, BigDecimal count) {
    return credits()
        ? List.of(
            new Item(
                title,
                Item.Kind.TRAVEL,
                count,
                Item.Unit.PIECE,
                prices.callOut().map(price -> price.amount().negate()),
                tax().rate()))
        : List.of();
  }

  /** What is charged beyond the work where there is little of it. */
  List<Item> least(List<Item> items) {
    Optional<Quantity> least = prices.terms().leastWork();
    if (least.isEmpty()) {
      return List.of();
    }
    BigDecimal missing = minutes(least.get()).subtract(minutes(items));
    return missing.signum() > 0
        ? List.of(labour("Work up to the least charge of " + least.get().display(), missing))
        : List.of();
  }

  private static BigDecimal minutes(List<Item> items) {
    BigDecimal minutes = BigDecimal.ZERO;
    for (Item item : items) {
      minutes = item.unit() == Item.Unit.MINUTE ? minutes.add(item.count()) : minutes;
    }
    return minutes;
  }

  /** A time in minutes, to a hundredth. */
  static BigDecimal minutes(Quantity time) {
    return minutes(time.si() / SECONDS_PER_MINUTE);
  }

  private static BigDecimal minutes(double minutes) {
    return BigDecimal.valueOf(minutes).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
  }

  /** Whether prices may turn out otherwise. */
  boolean spreads() {
    return room().signum() > 0;
  }

  /** The room in a maximum, in per cent of work and parts. */
  private BigDecimal room() {
    double spread = prices.spread().repair().map(Quantity::si).orElse(0.0);
    return BigDecimal.valueOf(DEVIATIONS * HUNDRED.doubleValue() * spread)
        .setScale(2, RoundingMode.HALF_UP)
        .stripTrailingZeros();
  }

  /** Room for work and parts that turn out dearer. */
  List<Item> room(List<Item> items) {
    List<Item> room = new ArrayList<>();
    if (spreads()) {
      room(items, Item.Kind.LABOUR, "Room for work that takes more").ifPresent(room::add);
      room(items, Item.Kind.PART, "Room for parts that cost more").ifPresent(room::add);
    }
    return room;
  }

  private Optional<Item> room(List<Item> items, Item.Kind kind, String title) {
    List<Item> ofKind = items.stream().filter(item -> item.kind() == kind).toList();
    if (ofKind.isEmpty() || ofKind.stream().anyMatch(item -> item.price().isEmpty())) {
      return Optional.empty();
    }
    BigDecimal sum = BigDecimal.ZERO;
    for (Bill.Line line : bill(ofKind).lines()) {
      sum = sum.add(line.amount().orElseThrow().amount());
    }
    String named = "%s: up to %s %%".formatted(title, room().toPlainString());
    return Optional.of(
        Item.one(
            named, kind, Optional.of(sum.multiply(room()).divide(HUNDRED)), ofKind.get(0).rate()));
  }
}
