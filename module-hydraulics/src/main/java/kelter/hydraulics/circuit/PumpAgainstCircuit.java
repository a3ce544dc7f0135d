package kelter.hydraulics.circuit;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.pump.PumpCurve;
import kelter.hydraulics.water.Water;

/**
 * The operating point of a pump, by three points of its curve, against a lift, a hose and jets, as
 * a calculation by name; and the head of such a curve alone.
 *
 * <p>Source: continuity and energy, as in Y. A. Çengel and J. M. Cimbala, Fluid Mechanics, chapter
 * 14; form of the curve as in {@link PumpCurve}.
 */
public final class PumpAgainstCircuit {

  /** What the head at no flow may be. */
  public static final Parameter SHUT_OFF =
      Parameter.required("shut-off-head", "head at no flow", QuantityKind.HEAD, 0.01, 200);

  /** What the flow rate of a point of a curve may be. */
  public static final Parameter FLOW_1 =
      Parameter.required(
          "flow-1", "flow rate of a point of the curve", QuantityKind.FLOW, 1e-7, 0.09);

  /** What the head there may be. */
  public static final Parameter HEAD_1 =
      Parameter.required("head-1", "head there", QuantityKind.HEAD, 0.001, 190);

  /** What the flow rate of a farther point may be. */
  public static final Parameter FLOW_2 =
      Parameter.required("flow-2", "flow rate of a farther point", QuantityKind.FLOW, 2e-7, 0.1);

  /** What the head there may be. */
  public static final Parameter HEAD_2 =
      Parameter.required("head-2", "head there", QuantityKind.HEAD, 0, 180);

  private static final Parameter SPEED =
      Parameter.required("speed-ratio", "speed by that of the curve", QuantityKind.RATIO, 0.3, 3);

  /** What the open area of the jets may be, 0 for an open end. */
  public static final Parameter JETS =
      Parameter.required(
          "jet-area",
          "open area of all jets times their discharge coefficient; 0 for an open end",
          QuantityKind.AREA,
          0,
          1e-2);

  private static final Source CURVE_SOURCE =
      Source.published(
          "Power function pump curves, EPANET 2 Users Manual, EPA/600/R-00/057 (2000), 3.1; affinity"
              + " laws");

  private PumpAgainstCircuit() {}

  /**
   * The head of a curve by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation curveHeadCalculation() {
    return new Calculation(
        "pump-curve-head",
        "Head of a pump at a flow rate and speed, from three points of its curve",
        "head = r^2 a - b r^(2-c) flow^c through the three points; c from 0.5 to 20; r = speed-ratio",
        "From no flow to run-out, where the head is zero; refused beyond, where the curve rises, and where"
            + " no c runs through the three points",
        CURVE_SOURCE,
        List.of(SHUT_OFF, FLOW_1, HEAD_1, FLOW_2, HEAD_2, Hose.FLOW, SPEED.optional("1")),
        List.of(
            new Output("head", "head", QuantityKind.HEAD),
            new Output("shut-off", "head at no flow at that speed", QuantityKind.HEAD),
            new Output("run-out", "flow rate at no head", QuantityKind.FLOW)),
        List.of(),
        PumpAgainstCircuit::curveHead);
  }

  /**
   * The operating point by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "operating-point",
        "Flow rate and head of a pump against a lift, a hose and jets",
        "head of the curve = lift + (f length/bore + loss-coefficient) v^2/(2 g) + (flow/jet-area)^2"
            + "/(2 g)",
        "Outlet above the water (lift 0 m or more); flow 0 where the pump cannot lift the water;"
            + " uncertain where the Reynolds number lies between 2000 and 4000",
        CURVE_SOURCE,
        operatingParameters(),
        List.of(
            new Output("flow", "flow rate", QuantityKind.FLOW),
            new Output("head", "head of the pump", QuantityKind.HEAD),
            new Output("hose-loss", "head lost in the hose", QuantityKind.HEAD),
            new Output("jet-head", "head before the jets", QuantityKind.HEAD),
            new Output("reynolds", "Reynolds number in the hose", QuantityKind.RATIO)),
        List.of(Caution.HOT_WATER),
        PumpAgainstCircuit::operatingPoint);
  }

  private static List<Parameter> operatingParameters() {
    return List.of(
        SHUT_OFF,
        FLOW_1,
        HEAD_1,
        FLOW_2,
        HEAD_2,
        SPEED.optional("1"),
        Circuit.LIFT,
        Hose.LENGTH,
        Hose.BORE,
        Hose.LOSS.optional("2"),
        JETS.optional("0 mm2"),
        Water.TEMPERATURE.optional("20 Cel"));
  }

  private static double[] curveHead(double[] p) {
    PumpCurve curve = curve(p).atSpeed(SPEED.check(p[6]));
    double flow = Math.max(0, Hose.FLOW.check(p[5]));
    return new double[] {curve.head(flow), curve.shutOffHead(), curve.runOut()};
  }

  /**
   * The curve through the first five parameters: head at no flow, flow and head of a point, flow
   * and head of a farther point.
   *
   * @param p the parameters in the coherent SI unit
   * @return the curve
   * @throws IllegalArgumentException if one is out of its range or the curve does not fall
   */
  public static PumpCurve curve(double[] p) {
    return PumpCurve.through(
        new double[] {0, FLOW_1.check(p[1]), FLOW_2.check(p[3])},
        new double[] {SHUT_OFF.check(p[0]), HEAD_1.check(p[2]), HEAD_2.check(p[4])});
  }

  private static double[] operatingPoint(double[] p) {
    PumpCurve curve = curve(p).atSpeed(SPEED.check(p[5]));
    Hose hose = new Hose(p[7], p[8], 0, p[9]);
    double jets = JETS.check(p[10]);
    double lift = Math.max(0, Circuit.LIFT.check(p[6]));
    Circuit circuit = new Circuit(lift, List.of(hose), jets <= 0 ? Double.POSITIVE_INFINITY : jets);
    double viscosity = Water.at(p[11]).kinematicViscosity();
    OperatingPoint point = solve(curve, circuit, viscosity);
    double loss = hose.headLoss(point.flow(), viscosity);
    double jetHead = point.flow() == 0 ? 0 : point.head() - lift - loss;
    return new double[] {
      point.flow(), point.head(), loss, jetHead, hose.reynolds(point.flow(), viscosity)
    };
  }

  /**
   * The operating point of a pump in order that keeps its speed.
   *
   * @param curve the curve at that speed
   * @param circuit what the pump works against
   * @param kinematicViscosity the kinematic viscosity in m2/s, above 0
   * @return the point
   */
  public static OperatingPoint solve(PumpCurve curve, Circuit circuit, double kinematicViscosity) {
    PumpMotor stiff = new PumpMotor.Inverter(Double.POSITIVE_INFINITY);
    return new PumpSet(curve, stiff, curve.runOut(), 0.5, PumpCondition.GOOD)
        .against(circuit, kinematicViscosity);
  }
}
