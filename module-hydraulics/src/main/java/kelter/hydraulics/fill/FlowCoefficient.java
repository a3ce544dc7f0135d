package kelter.hydraulics.fill;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.hydraulics.water.Water;

/**
 * The flow rate through a valve of a known flow coefficient: Q = Kv √(Δp / 1 bar · 1000 kg/m3 / ρ),
 * Kv being the flow rate of cold water at 1 bar.
 *
 * <p>It holds for turbulent flow without cavitation.
 *
 * <p>Source: IEC 60534-2-1:2011, equation (1), from memory.
 */
public final class FlowCoefficient {

  private static final double BAR = 1e5; // Pa
  private static final double COLD_WATER = 1000; // kg/m3, reference density of IEC 60534-2-1

  private static final Parameter COEFFICIENT =
      Parameter.required(
          "kv", "flow rate of cold water at 1 bar", QuantityKind.FLOW, 1e-6, 100.0 / 3600);
  private static final Parameter DROP =
      Parameter.required(
          "pressure-drop",
          "pressure before less pressure behind",
          QuantityKind.PRESSURE_DIFFERENCE,
          0,
          2e6);

  private FlowCoefficient() {}

  /**
   * The flow by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "valve-flow",
        "Flow rate through a valve of a known flow coefficient",
        "flow = kv sqrt(pressure-drop / 1 bar * 1000 kg/m3 / density)",
        "Turbulent flow without cavitation; kv in any unit of flow rate (1 Cv is 0.865 m3/h)",
        Source.fromMemory("IEC 60534-2-1:2011, equation (1)"),
        List.of(COEFFICIENT, DROP, Water.TEMPERATURE.optional("15 Cel")),
        List.of(new Output("flow", "flow rate", QuantityKind.FLOW)),
        List.of(),
        p ->
            new double[] {
              flow(COEFFICIENT.check(p[0]), Math.max(0, DROP.check(p[1])), Water.at(p[2]).density())
            });
  }

  /**
   * Flow rate by pressure drop.
   *
   * @param coefficient the flow rate of cold water at 1 bar, in m3/s
   * @param drop the pressure drop in Pa, not negative
   * @param density the density in kg/m3
   * @return the flow rate in m3/s
   */
  public static double flow(double coefficient, double drop, double density) {
    return coefficient * Math.sqrt(drop / BAR * COLD_WATER / density);
  }

  /**
   * Pressure drop by flow rate.
   *
   * @param coefficient the flow rate of cold water at 1 bar, in m3/s, above 0
   * @param flow the flow rate in m3/s
   * @param density the density in kg/m3
   * @return the pressure drop in Pa
   */
  public static double drop(double coefficient, double flow, double density) {
    double share = flow / coefficient;
    return BAR * share * share * density / COLD_WATER;
  }
}
