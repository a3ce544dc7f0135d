package kelter.costing.shop;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.costing.money.Amount;

/**
 * What a job costs the shop, call-backs included, and below which price it loses money.
 *
 * <p>A call-back repeats work and travel, and may itself be followed by another one with the same
 * chance, so that the reserve is {@code (work * hour + travel) * p / (1 - p)} (geometric series).
 * The part is not paid twice: its maker's warranty is taken to cover it. The margin is a share of
 * the price: {@code price = (cost + reserve) / (1 - margin)}.
 *
 * <p>Source: common practice, no source.
 */
public final class PriceFloor {

  private static final double SECONDS_PER_HOUR = 3600;
  private static final double LONGEST = 1000 * SECONDS_PER_HOUR;
  private static final double MOST = 0.95;

  private PriceFloor() {}

  /**
   * This law by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "price-floor",
        "Below which price a job loses money, call-backs counted",
        "cost = work * hour + travel + part; reserve = (work * hour + travel) * callback / (1 -"
            + " callback); floor = cost + reserve; price = floor / (1 - margin)",
        "Chance of a call-back and margin up to 95 %; a part that fails is replaced by its"
            + " maker.",
        Source.commonPractice("a price from own cost, a reserve for call-backs and a margin"),
        List.of(
            Parameter.required("work", "time of work", QuantityKind.TIME, 0, LONGEST),
            Amount.required("hour", "what an hour of work costs the shop"),
            Amount.optional("travel", "what coming costs the shop"),
            Amount.optional("part", "what the parts cost the shop"),
            Parameter.optional(
                "callback", "chance of a call-back", QuantityKind.PERCENT, 0, MOST, "0 %"),
            Parameter.optional(
                "margin", "wanted margin, of the price", QuantityKind.PERCENT, 0, MOST, "0 %")),
        List.of(
            Amount.output("cost", "what the job costs the shop"),
            Amount.output("reserve", "reserve for call-backs"),
            Amount.output("floor", "price below which it loses money"),
            Amount.output("price", "price with the wanted margin")),
        List.of(),
        x -> {
          double visit = x[0] / SECONDS_PER_HOUR * x[1] + x[2];
          double reserve = reserve(visit, x[4]);
          double floor = visit + x[3] + reserve;
          return new double[] {visit + x[3], reserve, floor, price(floor, x[5])};
        });
  }

  /**
   * What to set aside for call-backs.
   *
   * @param visit what one visit costs the shop, in units of a currency
   * @param callBack the chance of a call-back after each visit, as a ratio, from 0 to below 1
   * @return the reserve for the job, same currency
   * @throws IllegalArgumentException if the chance is outside its range
   */
  public static double reserve(double visit, double callBack) {
    return visit * oddsOf("a chance of a call-back", callBack);
  }

  /**
   * The price with a margin.
   *
   * @param floor what the job costs the shop, reserve included, in units of a currency
   * @param margin the margin as a ratio of the price, from 0 to below 1
   * @return the price, same currency
   * @throws IllegalArgumentException if the margin is outside its range
   */
  public static double price(double floor, double margin) {
    return floor * (1 + oddsOf("a margin", margin));
  }

  private static double oddsOf(String what, double share) {
    if (!(share >= 0 && share < 1)) {
      throw new IllegalArgumentException(
          "%s of %s; it must lie from 0 to below 1 (100 %%)".formatted(what, share));
    }
    return share / (1 - share);
  }
}
