package kelter.costing.shop;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.costing.money.Amount;
import org.apache.commons.numbers.gamma.RegularizedGamma;

/**
 * How many of a spare part to keep so that it is at hand when a job needs it.
 *
 * <p>For each part used one is ordered, which comes after the delivery time. If jobs come at random
 * (Poisson), a part is at hand if fewer than the stock were asked for within the last delivery
 * time: {@code P(ready) = sum for n from 0 to stock - 1 of m^n e^-m / n!}, with m the mean demand
 * in a delivery time. The stock is the least whose chance reaches the service level.
 *
 * <p>Holds for parts that are asked for one at a time and rarely, up to a mean of {@value
 * #GREATEST_MEAN} in a delivery time. Source: Feeney and Sherbrooke, Management Science 12 (1966)
 * 391, from memory.
 */
public final class SparesStock {

  /** The greatest mean demand in a delivery time that is taken. */
  public static final double GREATEST_MEAN = 10_000;

  private static final double YEAR = QuantityKind.AGE.unit().factor();

  private SparesStock() {}

  /**
   * This law by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "spares-stock",
        "How many of a spare part to keep, and what that costs",
        "least stock with sum for n = 0 .. stock - 1 of m^n exp(-m) / n! >= service; m = demand *"
            + " delivery; cost = stock * price * holding",
        "Parts asked for one at a time and at random, ordered one for one. Demand up to 1000 a"
            + " year, delivery up to 5 a, service from 1 % to 99.99 %.",
        Source.fromMemory("Feeney and Sherbrooke, Management Science 12 (1966) 391"),
        List.of(
            Parameter.required("demand", "how many are used a year", QuantityKind.RATIO, 0, 1000),
            Parameter.required(
                "delivery", "time from order to delivery", QuantityKind.AGE, 0, 5 * YEAR),
            Parameter.optional(
                "service",
                "wanted chance that one is at hand",
                QuantityKind.PERCENT,
                0.01,
                0.9999,
                "95 %"),
            Amount.optional("price", "price of one"),
            Parameter.optional(
                "holding",
                "what keeping stock costs a year, of its worth",
                QuantityKind.PERCENT,
                0,
                1,
                "20 %")),
        List.of(
            new Output("stock", "how many to keep", QuantityKind.RATIO),
            new Output("ready", "chance that one is at hand", QuantityKind.PERCENT),
            Amount.yearlyOutput("cost", "what keeping them costs")),
        List.of(),
        x -> {
          double mean = Math.max(0, x[0]) * Math.max(0, x[1]) / YEAR;
          int stock = least(mean, x[2]);
          return new double[] {stock, ready(stock, mean), stock * x[3] * x[4] / Amount.YEAR};
        });
  }

  /**
   * The least stock that reaches a service level.
   *
   * @param mean the mean demand within a delivery time, from 0 to 10 000
   * @param service the wanted chance that a part is at hand, as a ratio, above 0 and below 1
   * @return how many to keep, 1 or more
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static int least(double mean, double service) {
    if (!(service > 0 && service < 1)) {
      throw new IllegalArgumentException(
          "a service level of %s; it must lie above 0 and below 1".formatted(service));
    }
    int low = 0;
    int high = 1;
    while (ready(high, mean) < service) {
      low = high;
      high *= 2;
    }
    while (high - low > 1) {
      int middle = (low + high) / 2;
      if (ready(middle, mean) < service) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /**
   * The chance that a part is at hand when it is asked for.
   *
   * @param stock how many are kept, on the shelf and on order together, not negative
   * @param mean the mean demand within a delivery time, from 0 to 10 000
   * @return a probability from 0 to 1
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static double ready(int stock, double mean) {
    if (!(mean >= 0 && mean <= GREATEST_MEAN) || stock < 0) {
      throw new IllegalArgumentException(
          ("a stock of %s and a mean demand of %s in a delivery time; they must not be"
                  + " negative, and the demand at most 10 000")
              .formatted(stock, mean));
    }
    if (stock == 0) {
      return 0;
    }
    return mean == 0 ? 1 : RegularizedGamma.Q.value(stock, mean);
  }
}
