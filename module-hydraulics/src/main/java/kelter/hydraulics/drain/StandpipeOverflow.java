package kelter.hydraulics.drain;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.water.Water;

/**
 * Whether a standpipe takes what a drain pump gives: the flow rate at which the water in it stands
 * at the brim, driven by the height of the brim above the weir of the trap.
 *
 * <p>It holds for a pipe that runs full up to the trap, with the trap's bends in the loss
 * coefficient; a drain that is slow farther down takes less.
 *
 * <p>Source: energy equation, as in {@link SiphonFlow}.
 */
public final class StandpipeOverflow {

  private static final Parameter BRIM =
      Parameter.required(
          "brim-height", "brim above the weir of the trap", QuantityKind.HEAD, 0.01, 3);

  private StandpipeOverflow() {}

  /**
   * The capacity by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "standpipe-overflow",
        "Flow rate that a standpipe takes before it overflows",
        "brim-height = (f length/bore + loss-coefficient) v^2 / (2 g); capacity = v pi/4 bore^2; spare ="
            + " capacity - flow",
        "Full pipe up to the trap, free drain behind it; spare below 0: it overflows",
        Source.fromMemory("Energy equation, White, Fluid Mechanics, chapter 6"),
        List.of(
            Hose.FLOW,
            BRIM,
            Hose.LENGTH.optional("1 m"),
            Hose.BORE.optional("40 mm"),
            Hose.LOSS.optional("5"),
            Water.TEMPERATURE.optional("20 Cel")),
        List.of(
            new Output("capacity", "flow rate at the brim", QuantityKind.FLOW),
            new Output("spare", "capacity less the pump's flow rate", QuantityKind.FLOW)),
        List.of(HydraulicCautions.STANDPIPE_OVERFLOW),
        StandpipeOverflow::compute);
  }

  private static double[] compute(double[] p) {
    Hose pipe = new Hose(p[2], p[3], 0, p[4]);
    double capacity = capacity(p[1], pipe, Water.at(p[5]));
    return new double[] {capacity, capacity - Hose.FLOW.check(p[0])};
  }

  /**
   * The flow rate at which the water stands at the brim.
   *
   * @param brimHeight the height of the brim above the weir of the trap in m, 0.01 to 3
   * @param pipe the standpipe with the bends of its trap, with a length or a loss coefficient above
   *     0
   * @param water the water
   * @return the flow rate in m3/s
   * @throws IllegalArgumentException if the height is out of its range
   */
  public static double capacity(double brimHeight, Hose pipe, Water water) {
    return SiphonFlow.flow(BRIM.check(brimHeight), pipe, water.kinematicViscosity());
  }
}
