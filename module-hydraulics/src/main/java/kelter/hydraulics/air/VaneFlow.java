package kelter.hydraulics.air;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * The flow rate in a round duct by a vane in its middle: Q = c v π/4 D². In the middle the air is
 * faster than in the mean: c is 0.8 to 0.9, and 1 for a velocity that is a mean already.
 *
 * <p>It holds for 1 to 20 m/s and five diameters behind a bend; uncertain by a tenth.
 *
 * <p>Source: velocity by area; the factor is common practice, from memory.
 */
public final class VaneFlow {

  private static final Parameter VELOCITY =
      Parameter.required("velocity", "velocity in the middle", QuantityKind.VELOCITY, 1, 20);
  private static final Parameter BORE =
      Parameter.required("bore", "inner diameter of the duct", QuantityKind.LENGTH, 0.02, 0.5);
  private static final Parameter FACTOR =
      Parameter.required(
          "factor", "mean velocity by that in the middle", QuantityKind.RATIO, 0.7, 1);

  private VaneFlow() {}

  /**
   * The flow by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "vane-flow",
        "Flow rate in a duct by a vane in its middle",
        "flow = factor velocity pi/4 bore^2",
        "1 to 20 m/s, round duct; factor 0.8 to 0.9 in the middle; uncertain by a tenth",
        Source.fromMemory("velocity by area; the factor is common practice"),
        List.of(VELOCITY, BORE, FACTOR.optional("0.85")),
        List.of(new Output("flow", "flow rate", QuantityKind.FLOW)),
        List.of(),
        p -> new double[] {flow(VELOCITY.check(p[0]), BORE.check(p[1]), FACTOR.check(p[2]))});
  }

  /**
   * The flow rate.
   *
   * @param velocity the velocity in the middle, m/s
   * @param bore the inner diameter, m
   * @param factor the mean velocity by that in the middle, ratio
   * @return the flow rate in m3/s
   */
  public static double flow(double velocity, double bore, double factor) {
    return factor * velocity * Math.PI / 4 * bore * bore;
  }
}
