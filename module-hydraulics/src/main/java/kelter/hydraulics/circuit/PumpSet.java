package kelter.hydraulics.circuit;

import kelter.hydraulics.pipe.TorricelliJet;
import kelter.hydraulics.pump.PumpCurve;
import kelter.hydraulics.solve.SquareSecant;

/**
 * A pump with its motor, in a condition, whose operating point can be solved.
 *
 * <p>One unknown is enough: the flow q at which the good pump would be at the same place of its
 * curve. The curve is that of the pump with its own motor in order, whose speed already gives way
 * with the load; n is the speed of the impeller as a ratio of that. With the open share o the
 * affinity laws give the head H = n² k Hc(q) and the flow through the impeller n o q, of which C A
 * √(2 g H) runs back inside. The water's torque, at rated speed and for a firm impeller, is t = t0
 * + (1 − t0) o q / q_rated times the share of density: the power of a radial impeller rises in
 * proportion to its flow from what it takes at no flow, and flattens beyond the rated point. The
 * speed of the shaft follows from the {@link PumpMotor}. As the head falls and the flow rises with
 * q, pump and circuit agree at one point only.
 *
 * <p>Source: affinity laws; Torricelli's law for the leak; the straight power line is the usual
 * shape for radial impellers of low specific speed (from memory).
 *
 * @param curve the head over flow, with the motor in order
 * @param motor how the speed answers to the load
 * @param ratedFlow the flow rate at the rated point in m3/s, above 0
 * @param noFlowTorque the torque at no flow as a ratio of that at the rated point, above 0, below 1
 * @param condition the condition that it is in
 * @param supply what its motor is fed with; the curve is that at the rated supply
 */
public record PumpSet(
    PumpCurve curve,
    PumpMotor motor,
    double ratedFlow,
    double noFlowTorque,
    PumpCondition condition,
    Supply supply) {

  /** The last step of a solve as a ratio of run-out; its error is about the square of that. */
  private static final double TOLERANCE = 1e-5;

  /**
   * Where the torque flattens beyond the rated point, as a ratio of the rated torque; judgement.
   */
  private static final double MOST_TORQUE = 1.3;

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if the rated flow is not above 0 or the torque at no flow not
   *     between 0 and 1
   */
  public PumpSet {
    if (!(ratedFlow > 0 && Double.isFinite(ratedFlow))) {
      throw new IllegalArgumentException("a rated flow is above 0 m3/s, not " + ratedFlow);
    }
    if (!(noFlowTorque > 0 && noFlowTorque < 1)) {
      throw new IllegalArgumentException(
          "the torque at no flow lies between 0 and 1, not at " + noFlowTorque);
    }
  }

  /**
   * A pump at its rated supply.
   *
   * @param curve the head over flow, with the motor in order
   * @param motor how the speed answers to the load
   * @param ratedFlow the flow rate at the rated point in m3/s, above 0
   * @param noFlowTorque the torque at no flow as a ratio of that at the rated point, above 0, below
   *     1
   * @param condition the condition that it is in
   * @throws IllegalArgumentException if a figure is impossible
   */
  public PumpSet(
      PumpCurve curve,
      PumpMotor motor,
      double ratedFlow,
      double noFlowTorque,
      PumpCondition condition) {
    this(curve, motor, ratedFlow, noFlowTorque, condition, Supply.RATED);
  }

  /**
   * The same pump in another condition.
   *
   * @param other the condition
   * @return the pump in it
   */
  public PumpSet in(PumpCondition other) {
    return new PumpSet(curve, motor, ratedFlow, noFlowTorque, other, supply);
  }

  /**
   * The same pump on another supply: a 60 Hz pump on 50 Hz, or one on a low voltage.
   *
   * @param other the supply
   * @return the pump on it
   */
  public PumpSet on(Supply other) {
    if (other == supply) {
      return this;
    }
    return new PumpSet(curve, motor, ratedFlow, noFlowTorque, condition, other);
  }

  /**
   * A pump of the same kind that is stronger or weaker, as if its impeller turned faster or slower:
   * the curve moves by the affinity laws.
   *
   * @param head its head at no flow by that of this pump, ratio above 0
   * @return the pump
   */
  public PumpSet stronger(double head) {
    return new PumpSet(
        curve.atSpeed(Math.sqrt(head)), motor, ratedFlow, noFlowTorque, condition, supply);
  }

  /**
   * The operating point against a circuit.
   *
   * @param circuit what the pump works against
   * @param kinematicViscosity the kinematic viscosity in m2/s, above 0
   * @return the point; at no flow if the pump cannot lift the water; stalled if the motor pulls out
   *     on the way to it
   */
  public OperatingPoint against(Circuit circuit, double kinematicViscosity) {
    double end = curve.runOut();
    double start = excess(0, circuit, kinematicViscosity);
    if (start <= 0) {
      return atFlow(0);
    }
    double last = excess(end, circuit, kinematicViscosity);
    if (last >= 0) {
      return at(end);
    }
    double q =
        SquareSecant.root(
            x -> excess(x, circuit, kinematicViscosity), end, start, last, TOLERANCE * end);
    OperatingPoint point = settled(q);
    return point.flow() > 0 || !point.turns() ? point : atFlow(0);
  }

  /**
   * The point at which a given flow leaves the pump, whatever the circuit.
   *
   * @param flow the flow rate in m3/s, not negative
   * @return the point; at run-out if the pump cannot deliver so much; stalled if the motor pulls
   *     out on the way to it
   */
  public OperatingPoint atFlow(double flow) {
    double end = curve.runOut();
    double start = flow - outward(0);
    double last = flow - outward(end);
    if (start <= 0) {
      return at(0);
    }
    if (last >= 0) {
      return at(end);
    }
    double q = SquareSecant.root(x -> flow - outward(x), end, start, last, TOLERANCE * end);
    OperatingPoint point = settled(q);
    return point.turns()
        ? new OperatingPoint(
            flow, point.internalFlow(), point.head(), point.speed(), point.torque())
        : point;
  }

  /**
   * The point at a root; where the motor pulls out before circuit and curve meet, the flow that it
   * would rise to stalls it.
   */
  private OperatingPoint settled(double q) {
    double beyond = q + 2 * TOLERANCE * curve.runOut();
    return shaftSpeed(beyond) > 0 ? at(q) : at(beyond);
  }

  private double excess(double q, Circuit circuit, double kinematicViscosity) {
    double impeller = impellerRatio(q, shaftSpeed(q));
    double head = head(q, impeller);
    double flow = impeller * condition.openPassages() * q - leak(head);
    return head - circuit.head(flow, kinematicViscosity);
  }

  private double outward(double q) {
    double impeller = impellerRatio(q, shaftSpeed(q));
    return impeller * condition.openPassages() * q - leak(head(q, impeller));
  }

  private OperatingPoint at(double q) {
    double speed = shaftSpeed(q);
    double impeller = impellerRatio(q, speed);
    double head = Math.max(0, head(q, impeller));
    double internal = impeller * condition.openPassages() * q;
    return new OperatingPoint(
        Math.max(0, internal - leak(head)),
        internal,
        head,
        speed,
        speed > 0
            ? waterTorque(q) * speed * speed + condition.drag()
            : motor.standstillTorque(supply));
  }

  /** The speed of the shaft as a ratio of the rated one. */
  private double shaftSpeed(double q) {
    double own = condition.speed();
    // A motor that is slow by itself meets the torque of water that is turned more slowly.
    return own * motor.speed(waterTorque(q) * own * own, condition.drag(), supply);
  }

  /** The speed of the impeller as a ratio of that in order at the same place of the curve. */
  private double impellerRatio(double q, double shaftSpeed) {
    double inOrder = motor.speed(goodTorque(q), 0, Supply.RATED);
    return condition.grip() * shaftSpeed / (inOrder > 0 ? inOrder : 1);
  }

  /** The torque that the water would take at rated speed of the shaft. */
  private double waterTorque(double q) {
    return condition.grip()
        * condition.grip()
        * condition.densityShare()
        * goodTorque(condition.openPassages() * q);
  }

  private double goodTorque(double flow) {
    return Math.min(MOST_TORQUE, noFlowTorque + (1 - noFlowTorque) * flow / ratedFlow);
  }

  private double head(double q, double impellerRatio) {
    return impellerRatio * impellerRatio * condition.headShare() * curve.headUnchecked(q);
  }

  private double leak(double head) {
    return head <= 0 ? 0 : TorricelliJet.flow(condition.leakArea(), head);
  }
}
