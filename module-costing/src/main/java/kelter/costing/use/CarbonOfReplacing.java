package kelter.costing.use;

import java.util.List;
import java.util.OptionalDouble;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * What running a machine and replacing it emit in a year: {@code old = energy * c} and {@code new =
 * energy of the new one * c + making / life}, with c the emission of one kW.h of electricity.
 *
 * <p>Making is spread evenly over the life of the new machine: the old one would be followed by
 * another in any case, only later. Water, detergent and the repair itself are left out, and so is
 * that electricity changes over the years. The pay-back time {@code making / ((energy old - energy
 * new) * c)} holds where the new machine takes less energy; else there is none. Source: by
 * definition of the quantities; the boundaries of a life cycle are those of ISO 14040:2006 as far
 * as they are told here (from memory).
 */
public final class CarbonOfReplacing {

  /** Where the method comes from. */
  public static final Source SOURCE =
      Source.fromMemory("ISO 14040:2006, life cycle assessment: use and making of a product");

  private static final QuantityKind MASS_PER_YEAR = QuantityKind.of("mass a year", "kg/a");
  private static final double YEAR = QuantityKind.AGE.unit().factor();
  private static final double MOST_ENERGY = 1e6 * RunningCost.JOULES_PER_KILOWATT_HOUR;
  private static final double MOST_MAKING = 1e6;
  private static final double MOST_PER_KILOWATT_HOUR = 3;
  private static final double LONGEST = 200 * YEAR;
  private static final double SHORTEST = 0.01 * YEAR;

  private CarbonOfReplacing() {}

  /**
   * This law by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "carbon-of-replacing",
        "What running a machine and replacing it emit in a year",
        "annual-old = energy * per-kwh; annual-new = energy-new * per-kwh + making / life",
        "Energy of the use and making of the machine only; water, detergent and repairs are left"
            + " out.",
        SOURCE,
        List.of(
            Parameter.required(
                "energy",
                "energy of the old machine",
                RunningCost.ENERGY_PER_YEAR,
                0,
                MOST_ENERGY / YEAR),
            Parameter.required(
                "energy-new",
                "energy of the new machine",
                RunningCost.ENERGY_PER_YEAR,
                0,
                MOST_ENERGY / YEAR),
            Parameter.required(
                "per-kwh",
                "emission of one kW.h of electricity",
                QuantityKind.MASS,
                0,
                MOST_PER_KILOWATT_HOUR),
            Parameter.required(
                "making", "emission of making a new machine", QuantityKind.MASS, 0, MOST_MAKING),
            Parameter.required(
                "life", "life of the new machine", QuantityKind.AGE, SHORTEST, LONGEST)),
        List.of(
            new Output("annual-old", "emission of the old machine", MASS_PER_YEAR),
            new Output("annual-new", "emission of the new machine", MASS_PER_YEAR)),
        List.of(),
        x -> new double[] {running(x[0], x[2]), running(x[1], x[2]) + x[3] / x[4]});
  }

  /**
   * What running a machine emits, in the time in which it takes the energy.
   *
   * @param energy the energy, in J, or a power in W, not negative
   * @param perKilowattHour the emission of one kW.h, in kg, not negative
   * @return the emission, in kg, or in kg/s for a power
   * @throws IllegalArgumentException if a figure is negative or not finite
   */
  public static double running(double energy, double perKilowattHour) {
    double emission = energy / RunningCost.JOULES_PER_KILOWATT_HOUR * perKilowattHour;
    if (!(energy >= 0 && perKilowattHour >= 0) || !Double.isFinite(emission)) {
      throw new IllegalArgumentException(
          "an energy of %s J and an emission of %s kg a kW.h; they must not be negative"
              .formatted(energy, perKilowattHour));
    }
    return emission;
  }

  /**
   * After which time a new machine has emitted less than the old one.
   *
   * @param making the emission of making a new machine, in kg, not negative
   * @param old the emission of running the old machine for a year, in kg
   * @param young the emission of running the new machine for a year, in kg
   * @return the time, in years; empty if that never happens
   */
  public static OptionalDouble payBack(double making, double old, double young) {
    return old > young ? OptionalDouble.of(making / (old - young)) : OptionalDouble.empty();
  }
}
