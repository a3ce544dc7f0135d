package kelter.hydraulics.fill;

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
 * Water from a tap through a hose and a valve into a machine: p_static = p_static (Q / Q_tap)² + ρ
 * g h_hose(Q) + Δp_valve(Q), and never more than the washer of the flow regulator lets through.
 *
 * <p>The supply is described by what can be had with a gauge and a bucket: the pressure while
 * nothing flows, and the flow rate of the open tap. It holds for turbulent flow in the supply and a
 * machine whose inlet lies at the height of the tap; each metre higher costs 9.8 kPa. The washer
 * holds its flow rate within about 15 % from about 100 kPa upward (from memory).
 *
 * <p>Source: energy equation with {@link FlowCoefficient} and {@link Hose}.
 *
 * @param staticPressure the gauge pressure of the supply without flow, in Pa, not negative
 * @param tapFlow the flow rate of the open tap in m3/s, above 0
 * @param hose the hose with its screen and fittings
 * @param coefficient the flow coefficient of the open valve, in m3/s at 1 bar, above 0
 * @param regulatedFlow the flow rate that the regulator washer holds, in m3/s, above 0; infinite if
 *     there is none
 */
public record FillPath(
    double staticPressure, double tapFlow, Hose hose, double coefficient, double regulatedFlow) {

  private static final Parameter STATIC =
      Parameter.required(
          "static-pressure",
          "pressure of the supply without flow",
          QuantityKind.GAUGE_PRESSURE,
          1e3,
          2e6);
  private static final Parameter TAP =
      Parameter.required("tap-flow", "flow rate of the open tap", QuantityKind.FLOW, 1e-6, 0.01);
  private static final Parameter COEFFICIENT =
      Parameter.required("kv", "flow coefficient of the valve", QuantityKind.FLOW, 1e-6, 0.01);
  private static final Parameter REGULATED =
      Parameter.required(
          "regulated-flow",
          "flow rate of the regulator washer; 0 for none",
          QuantityKind.FLOW,
          0,
          0.01);
  private static final Parameter VOLUME =
      Parameter.required("volume", "water to fill in", QuantityKind.VOLUME, 1e-4, 1);
  private static final double TOLERANCE = 1e-8; // last step by the flow rate of the tap

  /**
   * The time by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "fill-time",
        "Flow rate of the filling machine, and time to fill",
        "static-pressure = static-pressure (flow/tap-flow)^2 + density g hose-loss + 1 bar (flow/kv)^2;"
            + " at most regulated-flow; time = volume / flow",
        "Inlet at the height of the tap; the regulator washer is good to about 15 % from 100 kPa upward",
        Source.fromMemory("energy equation; IEC 60534-2-1:2011, equation (1) for the valve"),
        List.of(
            VOLUME,
            STATIC,
            TAP,
            COEFFICIENT.optional("12 L/min"),
            REGULATED.optional("0 L/min"),
            Hose.LENGTH.optional("1.5 m"),
            Hose.BORE.optional("10 mm"),
            Hose.LOSS.optional("4"),
            Water.TEMPERATURE.optional("15 Cel")),
        List.of(
            new Output("flow", "flow rate", QuantityKind.FLOW),
            new Output("time", "time to fill", QuantityKind.TIME),
            new Output("valve-pressure", "pressure before the valve", QuantityKind.GAUGE_PRESSURE)),
        List.of(),
        FillPath::compute);
  }

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if the pressure is negative or a flow rate not above 0
   */
  public FillPath {
    if (!(staticPressure >= 0 && Double.isFinite(staticPressure))) {
      throw new IllegalArgumentException(
          "static-pressure: a supply has 0 Pa or more, not " + staticPressure);
    }
    if (!(tapFlow > 0 && coefficient > 0 && regulatedFlow > 0)) {
      throw new IllegalArgumentException(
          "tap, valve and regulator let through more than 0 m3/s, not %s, %s and %s"
              .formatted(tapFlow, coefficient, regulatedFlow));
    }
  }

  private static double[] compute(double[] p) {
    double regulated = REGULATED.check(p[4]);
    FillPath path =
        new FillPath(
            STATIC.check(p[1]),
            TAP.check(p[2]),
            new Hose(p[5], p[6], 0, p[7]),
            COEFFICIENT.check(p[3]),
            regulated <= 0 ? Double.POSITIVE_INFINITY : regulated);
    Water water = Water.at(p[8]);
    double flow = path.flow(water);
    double time = VOLUME.check(p[0]) / flow;
    if (Double.isInfinite(time)) {
      throw new IllegalArgumentException(
          "regulated-flow: %s m3/s never fills it; 0 stands for no regulator".formatted(flow));
    }
    return new double[] {flow, time, path.valvePressure(flow, water)};
  }

  /**
   * The flow rate.
   *
   * @param water the water
   * @return the flow rate in m3/s; 0 without pressure
   */
  public double flow(Water water) {
    if (staticPressure == 0) {
      return 0;
    }
    double free =
        SquareSecant.root(
            q -> valvePressure(q, water) - FlowCoefficient.drop(coefficient, q, water.density()),
            tapFlow,
            staticPressure,
            valvePressure(tapFlow, water)
                - FlowCoefficient.drop(coefficient, tapFlow, water.density()),
            TOLERANCE * tapFlow);
    return Math.min(free, regulatedFlow);
  }

  /**
   * The pressure before the valve while water flows.
   *
   * @param flow the flow rate in m3/s, not negative
   * @param water the water
   * @return the gauge pressure in Pa
   */
  public double valvePressure(double flow, Water water) {
    return tapPressure(flow) - water.pressure(hose.headLoss(flow, water.kinematicViscosity()));
  }

  /**
   * The pressure behind the tap while water flows: the dynamic pressure of the supply.
   *
   * @param flow the flow rate in m3/s, not negative
   * @return the gauge pressure in Pa
   */
  public double tapPressure(double flow) {
    double share = flow / tapFlow;
    return staticPressure * (1 - share * share);
  }
}
