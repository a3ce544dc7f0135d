package kelter.hydraulics.air;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * What more loss in its way leaves of the air. At a fixed pressure Q2/Q1 = √(k1/k2). A fan gives
 * more pressure where less flows; on a straight line p = p0 (1 − Q/Q0) the share q = Q/Q0 solves K
 * q² + q − 1 = 0, with K = k Q0²/p0. A real fan lies between the fixed pressure and no change.
 *
 * <p>It holds for turbulent flow, the loss growing one to twenty times.
 *
 * <p>Source: loss in proportion to the square of the flow; straight fan line as a rule of thumb;
 * from memory.
 */
public final class BlockedAir {

  private static final Parameter LOSSES =
      Parameter.required(
          "loss-ratio", "new loss coefficient by the old", QuantityKind.RATIO, 1, 20);
  private static final Parameter SHARE =
      Parameter.required(
          "open-share",
          "flow rate before by that of the fan without any duct",
          QuantityKind.PERCENT,
          0.05,
          0.95);

  private BlockedAir() {}

  /**
   * The flow by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "blocked-air",
        "What a blockage leaves of the air flow",
        "at-fixed-pressure = sqrt(1 / loss-ratio); K = loss-ratio (1 - open-share) / open-share^2;"
            + " on-fan-line = (sqrt(1 + 4 K) - 1) / (2 K open-share)",
        "Turbulent flow, loss-ratio 1 to 20; the fan line is taken as straight",
        Source.fromMemory("loss by the square of the flow; straight fan line, a rule of thumb"),
        List.of(LOSSES, SHARE.optional("60 %")),
        List.of(
            new Output("at-fixed-pressure", "flow kept at the same pressure", QuantityKind.PERCENT),
            new Output("on-fan-line", "flow kept on a straight fan line", QuantityKind.PERCENT)),
        List.of(),
        p -> {
          double ratio = Math.max(1, LOSSES.check(p[0]));
          double share = SHARE.check(p[1]);
          double before = (1 - share) / (share * share);
          return new double[] {Math.sqrt(1 / ratio), share(ratio * before) / share};
        });
  }

  /**
   * The flow of a fan on a straight line against a loss.
   *
   * @param loss K = k Q0²/p0: the loss at the open flow rate by the pressure at none, ratio, above
   *     0
   * @return the flow rate by that without any duct, ratio
   */
  public static double share(double loss) {
    return 2 / (1 + Math.sqrt(1 + 4 * loss));
  }
}
