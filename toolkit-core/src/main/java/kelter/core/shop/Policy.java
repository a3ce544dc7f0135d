package kelter.core.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.job.Prices;
import kelter.core.owner.PriceSpread;
import kelter.core.owner.Terms;
import kelter.core.problem.Required;
import kelter.core.quantity.Money;

/**
 * The terms of a shop beside its prices, and what new machines cost where it works. Each stands in
 * where a job does not state it.
 *
 * @param terms the terms of repair and replacement
 * @param spread how far prices may turn out otherwise
 * @param newMachines the price of a new machine by its kind, tax included
 * @param installation what it costs to deliver and connect one and take the old one away
 */
public record Policy(
    Terms terms, PriceSpread spread, Map<String, Money> newMachines, Optional<Money> installation) {

  /** Nothing is told. */
  public static final Policy NONE =
      new Policy(Terms.NONE, PriceSpread.NONE, Map.of(), Optional.empty());

  /** Checks that nothing is null. */
  public Policy {
    Required.value(terms, "terms of a shop");
    Required.value(spread, "spread of prices of a shop");
    newMachines = Required.map(newMachines, "prices of new machines");
    Required.optional(installation, "price of an installation");
  }

  /** All amounts, to be held against the currency of the list. */
  List<Money> amounts() {
    List<Money> amounts = new ArrayList<>(newMachines.values());
    installation.ifPresent(amounts::add);
    return amounts;
  }

  /**
   * Prices with this where they are silent; the day of the prices stays theirs.
   *
   * @param own the prices of a job
   * @param kind the kind of its machine
   */
  Prices standIn(Prices own, String kind) {
    return new Prices(
        own.currency(),
        own.labourPerHour(),
        own.callOut(),
        own.replacement().or(() -> Optional.ofNullable(newMachines.get(kind))),
        own.installation().or(() -> installation),
        own.runningPerYear(),
        own.runningPerYearNew(),
        own.discountRate(),
        own.parts(),
        over(own.terms()),
        own.supplies(),
        over(own.spread()),
        own.tax());
  }

  private Terms over(Terms own) {
    return new Terms(
        own.priceDate(),
        own.callOutCredited().or(terms::callOutCredited),
        own.leastWork().or(terms::leastWork),
        own.replacementAvailable(),
        own.partsDelivery().or(terms::partsDelivery),
        own.replacementDelivery().or(terms::replacementDelivery),
        own.repairWarranty().or(terms::repairWarranty),
        own.newWarranty().or(terms::newWarranty),
        own.dayWithout());
  }

  private PriceSpread over(PriceSpread own) {
    return new PriceSpread(
        own.repair().or(spread::repair),
        own.replacement().or(spread::replacement),
        own.running().or(spread::running));
  }

  /** What of it was taken, in words. */
  List<String> taken(Prices before, Prices after) {
    List<String> taken = new ArrayList<>();
    if (!before.replacement().equals(after.replacement())
        || !before.installation().equals(after.installation())) {
      taken.add("a new machine");
    }
    if (!before.terms().equals(after.terms()) || !before.spread().equals(after.spread())) {
      taken.add("terms");
    }
    return taken;
  }
}
