package kelter.hydraulics.air;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * The suction power of a vacuum cleaner, P = Q p, and the best of a fan on a straight line: p0
 * Q0/4, at half the suction and half the flow.
 *
 * <p>It holds up to 400 W.
 *
 * <p>Source: work of a flow against a pressure; straight fan line as a rule of thumb; from memory.
 */
public final class SuctionPower {

  /** What a cleaner draws with its opening closed. */
  static final Parameter SEALED =
      Parameter.required(
          "sealed-suction",
          "suction without any flow",
          QuantityKind.PRESSURE_DIFFERENCE,
          1000,
          40_000);

  /** What it moves with its opening free. */
  static final Parameter OPEN =
      Parameter.required("open-flow", "flow rate without a nozzle", QuantityKind.FLOW, 5e-3, 0.1);

  private SuctionPower() {}

  /**
   * The power by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "suction-power",
        "Best suction power of a vacuum cleaner",
        "power = sealed-suction open-flow / 4",
        "Straight fan line; up to 400 W",
        Source.fromMemory("work of a flow against a pressure; straight fan line, a rule of thumb"),
        List.of(SEALED, OPEN),
        List.of(new Output("power", "best suction power", QuantityKind.POWER)),
        List.of(),
        p -> new double[] {best(SEALED.check(p[0]), OPEN.check(p[1]))});
  }

  /**
   * The best suction power.
   *
   * @param sealed the suction without any flow, Pa
   * @param open the flow rate without a nozzle, m3/s
   * @return the power in W
   */
  public static double best(double sealed, double open) {
    return sealed * open / 4;
  }
}
