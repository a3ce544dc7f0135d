package kelter.electrical.drive;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.electrical.caution.ElectricalCautions;

/**
 * How a free swing dies away: δ = ln(x₀ / xₙ) / n, ζ = δ / √(4π² + δ²), with the swings x₀ and xₙ
 * that lie n whole swings apart.
 *
 * <p>A spring with a damper whose force goes with the speed. A friction damper lets the swings
 * shrink by steps of one size instead and stops them at once; it is judged by the count alone.
 */
public final class DampedSwing {

  /** Where the formulas come from. */
  public static final Source SOURCE =
      Source.fromMemory("logarithmic decrement of a damped oscillation, laws of mechanics");

  private static final double FULL_TURN = 2 * Math.PI;

  private DampedSwing() {}

  /**
   * The damping by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "damped-swing",
        "how well a tub or frame is damped, from how its swing dies away",
        "decrement = -ln(remaining) / swings; damping = decrement / sqrt(4 pi^2 + decrement^2)",
        "damping that goes with the speed; from 0.17 on each swing is a third of the last",
        SOURCE,
        List.of(
            Parameter.required(
                "remaining", "last swing over the first", QuantityKind.RATIO, 1e-6, 0.999),
            Parameter.optional(
                "swings", "whole swings between both", QuantityKind.COUNT, 1, 1000, "1")),
        List.of(
            new Output("decrement", "logarithmic decrement", QuantityKind.RATIO),
            new Output("damping", "damping ratio", QuantityKind.RATIO)),
        List.of(ElectricalCautions.TURNING),
        x -> {
          double decrement = decrement(x[0], x[1]);
          return new double[] {decrement, damping(decrement)};
        });
  }

  /**
   * The logarithmic decrement.
   *
   * @param remaining the last swing over the first, above 0 and at most 1
   * @param swings the whole swings between both, above 0
   * @return the decrement of one swing, 0 or more
   * @throws IllegalArgumentException if a figure is out of its range
   */
  public static double decrement(double remaining, double swings) {
    Require.within("remaining swing", Require.positive("remaining swing", remaining, ""), 0, 1, "");
    return -Math.log(remaining) / Require.positive("number of swings", swings, "");
  }

  /**
   * The damping ratio.
   *
   * @param decrement the logarithmic decrement, 0 or more
   * @return the damping as a ratio of the critical one, 0 to 1
   * @throws IllegalArgumentException if the decrement is negative or not finite
   */
  public static double damping(double decrement) {
    return Require.notNegative("decrement", decrement, "") / Math.hypot(FULL_TURN, decrement);
  }

  /**
   * How many swings one sees.
   *
   * @param damping the damping ratio, above 0 and below 1
   * @param visible the least swing that one sees over the first, above 0 and at most 1
   * @return the swings until they are as small as that
   * @throws IllegalArgumentException if a figure is out of its range
   */
  public static double swings(double damping, double visible) {
    Require.within("damping", Require.positive("damping", damping, ""), 0, 1, "");
    double decrement = FULL_TURN * damping / Math.sqrt(1 - damping * damping);
    return decrement(visible, 1) / decrement;
  }
}
