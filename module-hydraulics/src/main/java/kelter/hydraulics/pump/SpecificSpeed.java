package kelter.hydraulics.pump;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.source.Standing;

/**
 * The specific speed of a pump, n_s = n √Q / H^0.75 with n in revolutions per minute, Q in m3/s and
 * H in m at the best point: below about 40 a radial impeller, whose power rises with the flow; from
 * about 80 a mixed one, from about 150 an axial one, whose power falls with it (limits from
 * memory).
 *
 * <p>It holds for a single stage with single entry.
 *
 * <p>Source: Hydraulic Institute HI 1.3, with its example, as the Python package fluids cites it.
 */
public final class SpecificSpeed {

  private static final double SECONDS = 60; // s in a minute
  private static final double HEAD_EXPONENT = 0.75; // HI 1.3
  private static final Parameter SPEED =
      Parameter.required("speed", "speed of the pump", QuantityKind.ROTATIONAL_SPEED, 1, 1000);
  private static final Parameter FLOW =
      Parameter.required("flow", "flow rate at the best point", QuantityKind.FLOW, 1e-7, 10);
  private static final Parameter HEAD =
      Parameter.required("head", "head at the best point", QuantityKind.HEAD, 0.01, 1000);

  private SpecificSpeed() {}

  /**
   * The specific speed by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "specific-speed",
        "Specific speed of a pump",
        "specific-speed = speed sqrt(flow) / head^0.75, in 1/min, m3/s and m",
        "Single stage, single entry, best point",
        new Source(
            "Hydraulic Institute HI 1.3, specific speed, as the Python package fluids cites it",
            Standing.SECOND_HAND),
        List.of(SPEED, FLOW, HEAD),
        List.of(new Output("specific-speed", "rpm, m3/s, m", QuantityKind.RATIO)),
        List.of(),
        p -> new double[] {of(SPEED.check(p[0]), FLOW.check(p[1]), HEAD.check(p[2]))});
  }

  /**
   * The specific speed.
   *
   * @param speed the speed in revolutions per second
   * @param flow the flow rate in m3/s, above 0
   * @param head the head in m, above 0
   * @return the specific speed in the customary rpm m^0.75 / s^0.5
   */
  public static double of(double speed, double flow, double head) {
    return speed * SECONDS * Math.sqrt(flow) / Math.pow(head, HEAD_EXPONENT);
  }
}
