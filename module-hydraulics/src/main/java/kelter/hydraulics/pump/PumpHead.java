package kelter.hydraulics.pump;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.water.StandardGravity;
import kelter.hydraulics.water.Water;

/**
 * The total head of a pump from two gauges: H = (p2 − p1) / (ρ g) + (z2 − z1) + (V2² − V1²) / (2
 * g).
 *
 * <p>It holds for any liquid pump with both gauges read at steady flow; p1 is below 0 on a suction
 * line under vacuum. Losses between the gauges and the pump are left out.
 *
 * <p>Source: ISO 9906:2012, 3.2.16 (pump total head) with 3.2.15 (total head); clause numbers from
 * memory.
 */
public final class PumpHead {

  private static final Parameter OUTLET_PRESSURE =
      Parameter.required(
          "outlet-pressure", "gauge at the outlet", QuantityKind.GAUGE_PRESSURE, -101_325, 1e6);
  private static final Parameter INLET_PRESSURE =
      Parameter.required(
          "inlet-pressure", "gauge at the inlet", QuantityKind.GAUGE_PRESSURE, -101_325, 1e6);
  private static final Parameter ELEVATION =
      Parameter.required("elevation", "outlet gauge above inlet gauge", QuantityKind.HEAD, -20, 20);
  private static final Parameter OUTLET_BORE =
      Parameter.required(
          "outlet-bore", "bore at the outlet gauge", QuantityKind.LENGTH, 0.002, 0.3);
  private static final Parameter INLET_BORE =
      Parameter.required("inlet-bore", "bore at the inlet gauge", QuantityKind.LENGTH, 0.002, 0.3);

  private PumpHead() {}

  /**
   * The head by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "pump-head",
        "Total head of a pump from the gauges before and behind it",
        "head = (outlet-pressure - inlet-pressure) / (density g) + elevation + (v2^2 - v1^2) / (2 g);"
            + " v = flow / (pi/4 bore^2)",
        "Steady flow, water of 0 to 100 Cel, gauges from -101.325 to 1000 kPa; losses between the"
            + " gauges and the pump are left out",
        Source.fromMemory("ISO 9906:2012, 3.2.16, pump total head"),
        List.of(
            OUTLET_PRESSURE,
            INLET_PRESSURE.optional("0 kPa"),
            ELEVATION.optional("0 m"),
            Hose.FLOW.optional("0 L/min"),
            OUTLET_BORE.optional("19 mm"),
            INLET_BORE.optional("30 mm"),
            Water.TEMPERATURE.optional("20 Cel")),
        List.of(
            new Output("head", "total head", QuantityKind.HEAD),
            new Output("pressure-head", "part of the gauges", QuantityKind.HEAD),
            new Output("velocity-head", "part of the velocities", QuantityKind.HEAD)),
        List.of(Caution.HOT_WATER),
        PumpHead::compute);
  }

  private static double[] compute(double[] p) {
    double rise = OUTLET_PRESSURE.check(p[0]) - INLET_PRESSURE.check(p[1]);
    double pressureHead = Water.at(p[6]).head(rise);
    double flow = Hose.FLOW.check(p[3]);
    double velocityHead =
        velocityHead(flow, OUTLET_BORE.check(p[4])) - velocityHead(flow, INLET_BORE.check(p[5]));
    double head = pressureHead + ELEVATION.check(p[2]) + velocityHead;
    return new double[] {head, pressureHead, velocityHead};
  }

  /**
   * Total head.
   *
   * @param pressureRise outlet gauge less inlet gauge, in Pa
   * @param elevation the height of the outlet gauge above the inlet gauge, in m
   * @param flow the flow rate in m3/s
   * @param outletBore the bore at the outlet gauge in m, above 0
   * @param inletBore the bore at the inlet gauge in m, above 0
   * @param density the density in kg/m3
   * @return the head in m
   */
  public static double head(
      double pressureRise,
      double elevation,
      double flow,
      double outletBore,
      double inletBore,
      double density) {
    return pressureRise / (density * StandardGravity.G)
        + elevation
        + velocityHead(flow, outletBore)
        - velocityHead(flow, inletBore);
  }

  /**
   * Velocity head.
   *
   * @param flow the flow rate in m3/s
   * @param bore the bore in m, above 0
   * @return V² / (2 g) in m
   */
  public static double velocityHead(double flow, double bore) {
    double velocity = flow / (Math.PI / 4 * bore * bore);
    return velocity * velocity / (2 * StandardGravity.G);
  }
}
