package kelter.hydraulics.pump;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.water.StandardGravity;
import kelter.hydraulics.water.Water;

/**
 * The power that a pump gives to the water, P = ρ g Q H, and its overall efficiency, that power
 * divided by the electric power taken.
 *
 * <p>It holds for any flow and head of a liquid. An efficiency above 1 means that a reading is
 * wrong and is refused.
 *
 * <p>Source: definition; ISO 9906:2012, 3.2.20 (pump power output), clause number from memory.
 */
public final class HydraulicPower {

  private static final Parameter HEAD =
      Parameter.required("head", "total head", QuantityKind.HEAD, 0, 500);
  private static final Parameter ELECTRIC =
      Parameter.required("electric-power", "electric power taken", QuantityKind.POWER, 0.1, 1e6);

  private HydraulicPower() {}

  /**
   * The power by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "hydraulic-power",
        "Power that a pump gives to the water, and overall efficiency",
        "hydraulic-power = density g flow head; efficiency = hydraulic-power / electric-power",
        "Water of 0 to 100 Cel; an efficiency above 100 % is refused",
        Source.fromMemory("ISO 9906:2012, 3.2.20, pump power output, P = rho g Q H"),
        List.of(Hose.FLOW, HEAD, ELECTRIC, Water.TEMPERATURE.optional("20 Cel")),
        List.of(
            new Output("hydraulic-power", "power given to the water", QuantityKind.POWER),
            new Output("efficiency", "overall efficiency", QuantityKind.PERCENT)),
        List.of(),
        HydraulicPower::compute);
  }

  private static double[] compute(double[] p) {
    double power = of(Hose.FLOW.check(p[0]), HEAD.check(p[1]), Water.at(p[3]).density());
    double efficiency = power / ELECTRIC.check(p[2]);
    if (efficiency > 1) {
      throw new IllegalArgumentException(
          "the water gets %s W, more than the %s W taken: read flow, head and power again"
              .formatted(QuantityFormat.plain(power), QuantityFormat.plain(p[2])));
    }
    return new double[] {power, efficiency};
  }

  /**
   * Hydraulic power.
   *
   * @param flow the flow rate in m3/s
   * @param head the total head in m
   * @param density the density in kg/m3
   * @return the power in W
   */
  public static double of(double flow, double head, double density) {
    return density * StandardGravity.G * flow * head;
  }
}
