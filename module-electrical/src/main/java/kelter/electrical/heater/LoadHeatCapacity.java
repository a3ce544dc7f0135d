package kelter.electrical.heater;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * The heat capacity of what is heated along with the water of a machine: the sum of mass times
 * specific heat capacity of dry cotton, crockery, steel and wetted plastic.
 *
 * <p>Between 0 °C and 100 °C, where everything has the temperature of the water. Crockery lags
 * behind: in the first minutes it takes little, and the water warms faster.
 */
public final class LoadHeatCapacity {

  /** Where the specific heat capacities are believed to stand. */
  public static final Source SOURCE =
      Source.fromMemory(
          "handbook tables of specific heat capacity: cotton 1.34, porcelain and glass 0.84, stainless"
              + " steel 0.50, wetted plastics 1.6 kJ/(kg K)");

  /** Dry cotton, J/(kg K). */
  public static final double COTTON = 1340;

  /** Porcelain and glass, J/(kg K). */
  public static final double CROCKERY = 840;

  /** Stainless steel, J/(kg K). */
  public static final double STEEL = 500;

  /** Polypropylene and the like, J/(kg K). */
  public static final double PLASTIC = 1600;

  private LoadHeatCapacity() {}

  /**
   * The capacity by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "load-heat-capacity",
        "what heat a load and the machine take up for each kelvin",
        "capacity = 1.34 cotton + 0.84 crockery + 0.50 steel + 1.6 plastic, kJ/K and kg;"
            + " it is the 'machine' of heat-up-time and power-from-heating",
        "everything as warm as the water; crockery lags behind in the first minutes",
        SOURCE,
        List.of(
            mass("cotton", "dry textiles"),
            mass("crockery", "porcelain and glass"),
            mass("steel", "steel of tub, drum and racks"),
            mass("plastic", "plastic that the water wets")),
        List.of(new Output("capacity", "heat capacity", QuantityKind.of("heat capacity", "kJ/K"))),
        List.of(),
        x -> new double[] {capacity(x[0], x[1], x[2], x[3])});
  }

  private static Parameter mass(String id, String title) {
    return Parameter.optional(id, title, QuantityKind.MASS, 0, 1e4, "0 kg");
  }

  /**
   * The heat capacity.
   *
   * @param cotton the mass of dry textiles, kg, 0 or above
   * @param crockery the mass of porcelain and glass, kg, 0 or above
   * @param steel the mass of steel, kg, 0 or above
   * @param plastic the mass of wetted plastic, kg, 0 or above
   * @return the heat capacity, J/K
   * @throws IllegalArgumentException if a mass is not finite or below zero
   */
  public static double capacity(double cotton, double crockery, double steel, double plastic) {
    return COTTON * Require.notNegative("mass of textiles", cotton, "kg")
        + CROCKERY * Require.notNegative("mass of crockery", crockery, "kg")
        + STEEL * Require.notNegative("mass of steel", steel, "kg")
        + PLASTIC * Require.notNegative("mass of plastic", plastic, "kg");
  }
}
