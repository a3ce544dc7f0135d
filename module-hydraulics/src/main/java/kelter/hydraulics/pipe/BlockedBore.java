package kelter.hydraulics.pipe;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * The loss coefficient of a short blockage that leaves open a share m of the bore, referred to the
 * velocity in the full bore: the jet contracts to a share C of the opening and then loses its
 * excess of velocity as in a sudden enlargement, K = (1 / (C m) − 1)² with C = 0.62 + 0.38 m³.
 *
 * <p>It holds for sharp-edged blockages at turbulent flow, m from 0.005 to 1; a smooth kink takes
 * less. Reckon with a quarter more or less.
 *
 * <p>Source: loss of Borda and Carnot; contraction by J. Weisbach as in V. L. Streeter, Fluid
 * Mechanics, from memory.
 */
public final class BlockedBore {

  private static final double CONTRACTION = 0.62; // Weisbach, opening small against the bore
  private static final double CONTRACTION_RISE = 0.38; // Weisbach, so that C = 1 for an open bore

  private static final Parameter OPEN =
      Parameter.required("open", "share of the bore that is open", QuantityKind.PERCENT, 0.005, 1);

  private BlockedBore() {}

  /**
   * The loss coefficient by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "blocked-bore",
        "Loss coefficient of a blockage in a hose",
        "c = 0.62 + 0.38 open^3; loss-coefficient = (1 / (c open) - 1)^2",
        "Sharp-edged blockage in turbulent flow, open 0.5 to 100 %; uncertain by a quarter",
        Source.fromMemory(
            "Borda-Carnot loss; contraction by Weisbach, as in Streeter, Fluid Mechanics"),
        List.of(OPEN),
        List.of(new Output("loss-coefficient", "by the velocity in the bore", QuantityKind.RATIO)),
        List.of(),
        parameters -> new double[] {lossCoefficient(parameters[0])});
  }

  /**
   * The loss coefficient.
   *
   * @param open the share of the bore that is open, as a ratio, 0.005 to 1
   * @return the loss coefficient, dimensionless
   * @throws IllegalArgumentException if the share is not finite or outside its range
   */
  public static double lossCoefficient(double open) {
    double share = Math.min(1, OPEN.check(open));
    double contraction = CONTRACTION + CONTRACTION_RISE * share * share * share;
    double excess = 1 / (contraction * share) - 1;
    return excess * excess;
  }
}
