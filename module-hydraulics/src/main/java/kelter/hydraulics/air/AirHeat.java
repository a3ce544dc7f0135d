package kelter.hydraulics.air;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * How much air warms or cools over a heater or a coil: ΔT = P / (ρ cp Q).
 *
 * <p>It holds for dry air (what condenses takes heat that the thermometer does not see) and rises
 * of 5 to 120 K. Half the flow doubles the rise.
 *
 * <p>Source: heat balance, as in any textbook of thermodynamics, from memory.
 */
public final class AirHeat {

  private static final Parameter POWER =
      Parameter.required("power", "heat given to the air", QuantityKind.POWER, 1, 10_000);
  private static final Parameter FLOW =
      Parameter.required("flow", "flow rate of the air", QuantityKind.FLOW, 1e-3, 1);
  private static final Parameter DENSITY =
      Parameter.required("density", "density of the air", QuantityKind.DENSITY, 0.7, 1.5);

  private AirHeat() {}

  /**
   * The rise by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "air-heat",
        "How much air warms over a heater, or cools over a coil",
        "rise = power / (density 1006 J/(kg K) flow)",
        "Dry air, rise 5 to 120 K; what condenses is not in it",
        Source.fromMemory("heat balance, as in any textbook of thermodynamics"),
        List.of(POWER, FLOW, DENSITY.optional("1.2 kg/m3")),
        List.of(new Output("rise", "rise of temperature", QuantityKind.TEMPERATURE_DIFFERENCE)),
        List.of(),
        p -> new double[] {rise(POWER.check(p[0]), FLOW.check(p[1]), DENSITY.check(p[2]))});
  }

  /**
   * The rise.
   *
   * @param power the heat given to the air, W
   * @param flow the flow rate of the air, m3/s, above 0
   * @param density its density, kg/m3, above 0
   * @return the rise in K
   */
  public static double rise(double power, double flow, double density) {
    return power / (density * Air.HEAT * flow);
  }

  /**
   * The heat by the rise.
   *
   * @param rise the rise, K
   * @param flow the flow rate of the air, m3/s
   * @param density its density, kg/m3
   * @return the heat in W
   */
  public static double power(double rise, double flow, double density) {
    return density * Air.HEAT * flow * rise;
  }
}
