package kelter.costing.use;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.costing.money.Amount;

/**
 * What a machine costs to run in a year: {@code cycles a year * (energy * price of energy + water *
 * price of water + detergent)}.
 *
 * <p>A year has 365.25 / 7 weeks. Energy and water of a cycle are best measured; a label states
 * them for one programme only. Source: by definition of the quantities.
 */
public final class RunningCost {

  /** Weeks in a year of 365.25 days (UCUM {@code a}). */
  public static final double WEEKS_PER_YEAR = 365.25 / 7;

  static final QuantityKind ENERGY_PER_YEAR = QuantityKind.of("energy a year", "kW.h/a");
  private static final QuantityKind VOLUME_PER_YEAR = QuantityKind.of("volume a year", "L/a");

  static final double JOULES_PER_KILOWATT_HOUR = 3.6e6;
  private static final double MOST_ENERGY = 1000 * JOULES_PER_KILOWATT_HOUR;
  private static final double MOST_WATER = 10;
  private static final double MOST_CYCLES = 1000;

  private RunningCost() {}

  /**
   * This law by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "running-cost",
        "What energy, water and detergent cost in a year",
        "cost = cycles * 365.25 / 7 * (energy * energy-price + water * water-price + detergent)",
        "Up to 1000 cycles a week, 1000 kW.h and 10 m3 a cycle.",
        Source.published(
            "By definition of energy, volume and price, with the year of UCUM 2.1 (2017)"),
        List.of(
            Parameter.required("cycles", "cycles a week", QuantityKind.RATIO, 0, MOST_CYCLES),
            Parameter.required("energy", "energy of a cycle", QuantityKind.ENERGY, 0, MOST_ENERGY),
            Amount.required("energy-price", "price of one kW.h"),
            Parameter.optional(
                "water", "water of a cycle", QuantityKind.VOLUME, 0, MOST_WATER, "0 L"),
            Amount.optional("water-price", "price of one m3 of water, waste water included"),
            Amount.optional("detergent", "detergent of a cycle")),
        List.of(
            Amount.yearlyOutput("cost", "running cost"),
            new Output("energy-year", "energy", ENERGY_PER_YEAR),
            new Output("water-year", "water", VOLUME_PER_YEAR)),
        List.of(),
        x -> {
          double cycles = x[0] * WEEKS_PER_YEAR / Amount.YEAR;
          return new double[] {
            cycles * ofCycle(x[1], x[2], x[3], x[4], x[5]), cycles * x[1], cycles * x[3]
          };
        });
  }

  /**
   * What one cycle costs.
   *
   * @param energy the energy of a cycle, in J
   * @param pricePerKilowattHour the price of one kW.h, in units of a currency
   * @param water the water of a cycle, in m3
   * @param pricePerCubicMetre the price of one m3, same currency
   * @param detergent the detergent of a cycle, same currency
   * @return the cost of a cycle, same currency
   * @throws IllegalArgumentException if the sum is negative or not finite
   */
  public static double ofCycle(
      double energy,
      double pricePerKilowattHour,
      double water,
      double pricePerCubicMetre,
      double detergent) {
    double cost =
        energy / JOULES_PER_KILOWATT_HOUR * pricePerKilowattHour
            + water * pricePerCubicMetre
            + detergent;
    if (!(cost >= 0) || Double.isInfinite(cost)) {
      throw new IllegalArgumentException(
          "a cycle would cost %s; it must be finite and not negative".formatted(cost));
    }
    return cost;
  }
}
