package kelter.hydraulics.drain;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.solve.SquareSecant;
import kelter.hydraulics.water.Water;

/**
 * The flow rate at which a machine empties itself through a hose whose outlet lies below the water:
 * the drop is what friction, fittings and the outlet's velocity take.
 *
 * <p>It holds for a full hose, once the flow has begun, whose highest point lies less than about 8
 * m above the water. The loss coefficient must hold 1 for the velocity at the outlet.
 *
 * <p>Source: energy equation, as in F. M. White, Fluid Mechanics, chapter 6.
 */
public final class SiphonFlow {

  private static final Parameter DROP =
      Parameter.required("drop", "outlet below the water", QuantityKind.HEAD, 1e-3, 20);
  private static final double PROBE = 1e-6; // m3/s, where the search for an upper end begins
  private static final double MOST = 1; // m3/s, beyond anything in an appliance
  private static final double TOLERANCE = 1e-8; // last step by the upper end

  private SiphonFlow() {}

  /**
   * The flow by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "siphon-flow",
        "Flow rate at which a machine empties itself through a hose that hangs too low",
        "drop = (f length/bore + loss-coefficient) v^2 / (2 g); flow = v pi/4 bore^2",
        "Full hose, outlet 1 mm to 20 m below the water; loss-coefficient holds 1 for the outlet",
        Source.fromMemory("Energy equation, White, Fluid Mechanics, chapter 6"),
        List.of(
            DROP,
            Hose.LENGTH,
            Hose.BORE,
            Hose.LOSS.optional("4"),
            Water.TEMPERATURE.optional("20 Cel")),
        List.of(
            new Output("flow", "flow rate", QuantityKind.FLOW),
            new Output("velocity", "mean velocity", QuantityKind.VELOCITY)),
        List.of(),
        p -> {
          Hose hose = new Hose(p[1], p[2], 0, p[3]);
          double flow = flow(DROP.check(p[0]), hose, Water.at(p[4]).kinematicViscosity());
          return new double[] {flow, hose.velocity(flow)};
        });
  }

  /**
   * The flow rate.
   *
   * @param drop the height of the water above the outlet in m, above 0
   * @param hose the hose with its fittings, of a length or a loss coefficient above 0
   * @param kinematicViscosity the kinematic viscosity in m2/s
   * @return the flow rate in m3/s
   */
  public static double flow(double drop, Hose hose, double kinematicViscosity) {
    double most = PROBE;
    while (hose.headLoss(most, kinematicViscosity) < drop) {
      most *= 2;
      if (most > MOST) {
        throw new IllegalArgumentException(
            "a hose without length and fittings lets any flow through; give its loss-coefficient");
      }
    }
    return SquareSecant.root(
        flow -> drop - hose.headLoss(flow, kinematicViscosity),
        most,
        drop,
        drop - hose.headLoss(most, kinematicViscosity),
        TOLERANCE * most);
  }
}
