package kelter.hydraulics.hotwater;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.hydraulics.water.Water;

/**
 * The flow rate that a heater warms as the water runs through: Q = P / (ρ c ΔT), which is 14.3
 * L/min for each kW and K.
 *
 * <p>All power goes into the water, which enters at the temperature given; the flow rate is that of
 * the cold water. Source: heat balance, from memory.
 */
public final class FlowHeater {

  private static final Parameter POWER =
      Parameter.required("power", "power of the heater", QuantityKind.POWER, 10, 1e5);
  private static final Parameter RISE =
      Parameter.required("rise", "rise of the water", QuantityKind.TEMPERATURE_DIFFERENCE, 1, 90);

  private FlowHeater() {}

  /**
   * The heater by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "flow-heater",
        "Flow rate that an instantaneous heater warms by so much",
        "flow = power / (density heat-capacity rise); about 14.3 L/min kW/K",
        "All power into the water; temperature is that of the water that comes in",
        Source.fromMemory("heat balance of a stream"),
        List.of(POWER, RISE.optional("28 K"), Water.TEMPERATURE.optional("10 Cel")),
        List.of(new Output("flow", "flow rate", QuantityKind.FLOW)),
        List.of(Caution.HOT_WATER),
        p -> new double[] {flow(POWER.check(p[0]), RISE.check(p[1]), Water.at(p[2]))});
  }

  /**
   * The flow rate.
   *
   * @param power the power, W
   * @param rise the rise, K, above 0
   * @param cold the water that comes in
   * @return the flow rate, m3/s
   */
  public static double flow(double power, double rise, Water cold) {
    return power / (cold.density() * cold.heatCapacity() * rise);
  }
}
