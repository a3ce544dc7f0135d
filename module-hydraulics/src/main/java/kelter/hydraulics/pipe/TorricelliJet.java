package kelter.hydraulics.pipe;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.hydraulics.water.StandardGravity;
import kelter.hydraulics.water.Water;

/**
 * A free jet from an opening under a head: Q = C A √(2 g h).
 *
 * <p>It holds for openings that are small against the vessel or arm before them, into free air. The
 * discharge coefficient is 0.60 to 0.62 for a sharp edge and about 0.80 for a short tube.
 *
 * <p>Source: E. Torricelli 1643 with a discharge coefficient, as in any handbook of hydraulics.
 */
public final class TorricelliJet {

  /**
   * The discharge coefficient of a sharp-edged hole, dimensionless; handbooks give 0.60 to 0.62.
   */
  public static final double SHARP_EDGE = 0.62;

  private static final Parameter AREA =
      Parameter.required("area", "open area of all jets", QuantityKind.AREA, 1e-8, 1e-2);
  private static final Parameter GAUGE =
      Parameter.required(
          "pressure", "pressure before the jets", QuantityKind.GAUGE_PRESSURE, 0, 1e6);
  private static final Parameter COEFFICIENT =
      Parameter.required("coefficient", "discharge coefficient", QuantityKind.RATIO, 0.3, 1);

  private TorricelliJet() {}

  /**
   * The flow of jets by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "jet-flow",
        "Flow rate of jets under a pressure",
        "flow = coefficient area sqrt(2 pressure / density); velocity = flow / area",
        "Jets into free air, small against the arm before them; pressure 0 to 1000 kPa",
        Source.fromMemory("Torricelli 1643; discharge coefficient 0.60 to 0.62 for a sharp edge"),
        List.of(GAUGE, AREA, COEFFICIENT.optional("0.62"), Water.TEMPERATURE.optional("20 Cel")),
        List.of(
            new Output("flow", "flow rate", QuantityKind.FLOW),
            new Output("velocity", "velocity by the open area", QuantityKind.VELOCITY)),
        List.of(Caution.HOT_WATER),
        TorricelliJet::compute);
  }

  private static double[] compute(double[] p) {
    double head = Water.at(p[3]).head(Math.max(0, GAUGE.check(p[0])));
    double area = AREA.check(p[1]);
    double flow = flow(COEFFICIENT.check(p[2]) * area, head);
    return new double[] {flow, flow / area};
  }

  /**
   * Flow rate by head.
   *
   * @param effectiveArea the discharge coefficient times the open area, in m2
   * @param head the head before the opening in m, not negative
   * @return the flow rate in m3/s
   */
  public static double flow(double effectiveArea, double head) {
    return effectiveArea * Math.sqrt(2 * StandardGravity.G * head);
  }

  /**
   * Head by flow rate.
   *
   * @param effectiveArea the discharge coefficient times the open area, in m2, above 0; infinite
   *     for an open end
   * @param flow the flow rate in m3/s
   * @return the head before the opening in m
   */
  public static double head(double effectiveArea, double flow) {
    double velocity = flow / effectiveArea;
    return velocity * velocity / (2 * StandardGravity.G);
  }
}
