package kelter.hydraulics.suction;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.water.StandardGravity;

/**
 * The least height of water above an open inlet at which no swirl draws air into it: S = D (1 + 2.3
 * F) with the Froude number F = V / √(g D).
 *
 * <p>It was made for the intakes of waterworks. A strainer, a cover or a cross over the inlet of an
 * appliance breaks the swirl, so that it does with a fraction; an inlet that is bare needs it all.
 * Below the figure air is possible, not certain.
 *
 * <p>Source: ANSI/HI 9.8-1998, Pump Intake Design, minimum submergence; not seen.
 */
public final class CriticalSubmergence {

  private static final double FROUDE_FACTOR = 2.3; // dimensionless, ANSI/HI 9.8-1998

  private static final Parameter INLET =
      Parameter.required("bore", "inner diameter of the inlet", QuantityKind.LENGTH, 0.002, 0.3);

  private CriticalSubmergence() {}

  /**
   * The height by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "critical-submergence",
        "Height of water above an open inlet at which it draws no air",
        "froude = v / sqrt(g bore); v = flow / (pi/4 bore^2); submergence = bore (1 + 2.3 froude)",
        "Open inlets without strainer or cover; those need a fraction of it; below it air is possible,"
            + " not certain",
        Source.fromMemory("ANSI/HI 9.8-1998, Pump Intake Design, minimum submergence; not seen"),
        List.of(Hose.FLOW, INLET),
        List.of(
            new Output("submergence", "height of water above the inlet", QuantityKind.LENGTH),
            new Output("froude", "Froude number of the inlet", QuantityKind.RATIO)),
        List.of(Caution.HOT_WATER),
        p -> {
          double flow = Math.max(0, Hose.FLOW.check(p[0]));
          double bore = INLET.check(p[1]);
          return new double[] {of(flow, bore), froude(flow, bore)};
        });
  }

  /**
   * The least height of water.
   *
   * @param flow the flow rate in m3/s, not negative
   * @param bore the inner diameter of the inlet in m, above 0
   * @return the height above the inlet in m
   */
  public static double of(double flow, double bore) {
    return bore * (1 + FROUDE_FACTOR * froude(flow, bore));
  }

  private static double froude(double flow, double bore) {
    return flow / (Math.PI / 4 * bore * bore) / Math.sqrt(StandardGravity.G * bore);
  }
}
