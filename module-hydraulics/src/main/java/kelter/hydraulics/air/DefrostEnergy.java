package kelter.hydraulics.air;

import java.util.List;
import kelter.core.law.Celsius;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * What it takes to defrost a coil: E = m (2.09 kJ/(kg K) ΔT + 334 kJ/kg)/η and t = E/P. Only η, 0.2
 * to 0.5, of the heat reaches the ice.
 *
 * <p>It holds for ice of one temperature that melts at 0 °C.
 *
 * <p>Source: specific heat and heat of fusion of ice from handbooks, from memory.
 */
public final class DefrostEnergy {

  private static final double HEAT_OF_ICE = 2090; // J/(kg K)
  private static final double FUSION = 334_000; // J/kg

  private static final Parameter ICE =
      Parameter.required("ice", "mass of the ice", QuantityKind.MASS, 0.01, 10);
  private static final Parameter TEMPERATURE =
      Parameter.required(
          "temperature",
          "temperature of the ice",
          QuantityKind.TEMPERATURE,
          Celsius.ZERO - 40,
          Celsius.ZERO);
  private static final Parameter POWER =
      Parameter.required("power", "power of the defrost heater", QuantityKind.POWER, 20, 2000);
  private static final Parameter EFFICIENCY =
      Parameter.required("efficiency", "share that reaches the ice", QuantityKind.PERCENT, 0.1, 1);

  private DefrostEnergy() {}

  /**
   * The energy by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "defrost-energy",
        "Energy and time to defrost a coil",
        "energy = ice (2.09 kJ/(kg K) (0 Cel - temperature) + 334 kJ/kg) / efficiency; time ="
            + " energy / power",
        "Ice that melts at 0 Cel; efficiency 20 to 50 %",
        Source.fromMemory("specific heat and heat of fusion of ice, handbooks"),
        List.of(ICE, TEMPERATURE.optional("-20 Cel"), POWER, EFFICIENCY.optional("30 %")),
        List.of(
            new Output("energy", "energy", QuantityKind.ENERGY),
            new Output("time", "time", QuantityKind.TIME)),
        List.of(),
        p -> {
          double colder = Math.max(0, Celsius.ZERO - TEMPERATURE.check(p[1]));
          double energy = energy(ICE.check(p[0]), colder, EFFICIENCY.check(p[3]));
          return new double[] {energy, energy / POWER.check(p[2])};
        });
  }

  /**
   * The energy.
   *
   * @param ice the mass of the ice, kg
   * @param colder how far below 0 °C it is, K
   * @param efficiency the share that reaches it, ratio, above 0
   * @return the energy in J
   */
  public static double energy(double ice, double colder, double efficiency) {
    return ice * (HEAT_OF_ICE * colder + FUSION) / efficiency;
  }
}
