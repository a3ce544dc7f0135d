package kelter.core.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Component;
import kelter.core.job.Prices;
import kelter.core.quantity.Money;
import kelter.core.shop.Shop;
import kelter.core.shop.StockPart;
import kelter.core.workshop.Case;

/**
 * The parts worth taking along. A part that is not in the van is worth getting where the chance
 * that it is needed, times what a second trip costs, is more than what it costs to get and bring
 * back in vain, a share of its price. Where prices are missing, a chance decides.
 *
 * @param items the parts that may be needed, the likeliest first
 * @param secondTrip what a second trip costs, in the currency of the job; empty if it is not told
 */
public record Bag(List<Item> items, OptionalDouble secondTrip) {

  /** What a part costs that is brought back, as a ratio of its price; from memory. */
  private static final double IN_VAIN = 0.1;

  /** The chance from which a part is worth taking where prices are missing; from memory. */
  private static final double WORTH = 0.1;

  /**
   * A part that may be needed.
   *
   * @param remedy the work that needs it
   * @param chance the chance that it is needed, from 0 to 1
   * @param inVan how many are in the van, if the stock tells
   * @param worth whether it is worth taking along
   */
  public record Item(Remedy remedy, double chance, OptionalInt inVan, boolean worth) {}

  public Bag {
    items = List.copyOf(items);
  }

  /**
   * The bag for a case.
   *
   * @param machine the case
   * @param shop the shop, whose stock counts
   * @return what to take
   */
  public static Bag of(Case machine, Shop shop) {
    Optional<Prices> prices = machine.job().prices();
    OptionalDouble trip = secondTrip(prices);
    List<Item> items = new ArrayList<>();
    for (Diagnosis.Needed each : machine.diagnosis().takeAlong()) {
      OptionalInt inVan = inVan(each.remedy(), machine, shop);
      boolean has = inVan.isPresent() && inVan.getAsInt() > 0;
      items.add(
          new Item(
              each.remedy(),
              each.chance(),
              inVan,
              has || isWorth(each, trip, price(each.remedy(), prices))));
    }
    return new Bag(items, trip);
  }

  /** The call-out, or an hour of work where that is all that is told. */
  private static OptionalDouble secondTrip(Optional<Prices> prices) {
    Optional<Money> cost =
        prices.isPresent()
            ? prices.get().callOut().or(() -> prices.get().labourPerHour())
            : Optional.empty();
    return cost.isPresent() ? OptionalDouble.of(cost.get().toDouble()) : OptionalDouble.empty();
  }

  private static OptionalDouble price(Remedy remedy, Optional<Prices> prices) {
    Optional<Money> price =
        prices.isPresent() ? prices.get().part(remedy.component(), remedy.id()) : Optional.empty();
    return price.isPresent() ? OptionalDouble.of(price.get().toDouble()) : OptionalDouble.empty();
  }

  private static boolean isWorth(
      Diagnosis.Needed needed, OptionalDouble trip, OptionalDouble price) {
    return trip.isPresent() && price.isPresent()
        ? needed.chance() * trip.getAsDouble() >= IN_VAIN * price.getAsDouble()
        : needed.chance() >= WORTH;
  }

  private static OptionalInt inVan(Remedy remedy, Case machine, Shop shop) {
    Optional<Component> component = machine.job().appliance().component(remedy.component());
    if (component.isPresent()) {
      for (StockPart part : shop.stock()) {
        if (part.remedy().equals(component.get().kind() + "." + remedy.id())) {
          return OptionalInt.of(part.number());
        }
      }
    }
    return OptionalInt.empty();
  }
}
