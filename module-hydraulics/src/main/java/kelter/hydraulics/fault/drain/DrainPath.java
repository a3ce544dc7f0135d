package kelter.hydraulics.fault.drain;

import java.util.List;
import java.util.Optional;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Curve;
import kelter.core.job.Nameplate;
import kelter.core.quantity.Quantity;
import kelter.hydraulics.circuit.Circuit;
import kelter.hydraulics.circuit.Motor;
import kelter.hydraulics.circuit.OperatingPoint;
import kelter.hydraulics.circuit.PumpAgainstCircuit;
import kelter.hydraulics.circuit.PumpCondition;
import kelter.hydraulics.circuit.PumpSet;
import kelter.hydraulics.fault.MotorCurrent;
import kelter.hydraulics.fault.PumpWinding;
import kelter.hydraulics.part.DrainPumpKind;
import kelter.hydraulics.part.Given;
import kelter.hydraulics.part.RatedSupply;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.pump.HydraulicPower;
import kelter.hydraulics.pump.PumpCurve;
import kelter.hydraulics.water.Water;

/**
 * A drain pump in order with its hose, as the figures of the job give it.
 *
 * @param pump the pump with its motor
 * @param lift the height of the outlet above the water, in m
 * @param hose the hose with its bends, the check valve and the outlet
 * @param point the operating point in order at 20 °C
 * @param ratedPower the rated electric power in W, or empty if it is not known
 * @param current its current by the nameplate, or empty if it is not known
 * @param winding the winding of its motor, by its figure or a typical one
 * @param drainVolume the water that a full drain phase moves, in m3, or empty if it is not known
 * @param hoseKnown whether lift, length and bore are those of the job
 * @param curveKnown whether the curve is that of the job and not that of a typical pump
 * @param rated what the pump was made for
 */
public record DrainPath(
    PumpSet pump,
    double lift,
    Hose hose,
    OperatingPoint point,
    Optional<Double> ratedPower,
    Optional<MotorCurrent> current,
    PumpWinding winding,
    Optional<Double> drainVolume,
    boolean hoseKnown,
    boolean curveKnown,
    RatedSupply rated) {

  /** What is taken where a job does not say: common practice, no source. */
  private static final double USUAL_LIFT = 0.8; // m

  private static final double USUAL_LENGTH = 1.8; // m
  private static final double USUAL_BORE = 0.019; // m

  /**
   * Loss coefficients of the way out: entrance 0.5, a swing check valve 2.0, two long bends 0.4,
   * outlet 1.0. Munson et al., Fundamentals of Fluid Mechanics, Table 8.2.
   */
  private static final double FITTINGS = 3.9;

  /** The share of the check valve in that; same table. */
  static final double CHECK_VALVE = 2;

  /** The pull-out torque of a small permanent-magnet motor by its rated torque; from memory. */
  private static final double PULL_OUT = 1.7;

  /** The efficiency of such a motor at its rated point, ratio; from memory. */
  private static final double MOTOR_EFFICIENCY = 0.4;

  /** The torque at no flow by that at the rated point where the power is not known; judgement. */
  private static final double USUAL_NO_FLOW_TORQUE = 0.5;

  private static final double LEAST_NO_FLOW_TORQUE = 0.3;
  private static final double GREATEST_NO_FLOW_TORQUE = 0.85;
  private static final double ROOM = Water.FREEZING + 20; // K

  /**
   * The curve that is taken where a job has none, the middle of what drain pumps of household size
   * do: common practice, no source. One pump may differ from it by a quarter.
   */
  private static final class Typical {
    static final PumpCurve CURVE =
        PumpCurve.through(
            new double[] {0, 10.0 / 60_000, 20.0 / 60_000}, new double[] {1.9, 1.5, 0.7});

    private Typical() {}
  }

  /**
   * The path of a drain pump.
   *
   * @param component a drain pump
   * @param machine the nameplate of the machine that it sits in
   * @return the path, with a typical curve where the component has none, or empty if the pump could
   *     not lift the water even in order
   * @throws IllegalArgumentException if its curve rises or a figure is impossible
   */
  public static Optional<DrainPath> of(Component component, Nameplate machine) {
    DrainPath path =
        of(
            component,
            RatedSupply.of(component, machine),
            component.curve(DrainPumpKind.HEAD_CURVE.id()));
    return path.point.flow() > 0 ? Optional.of(path) : Optional.empty();
  }

  private static PumpCurve curve(Curve points) {
    return PumpCurve.through(points.xSi(), points.ySi());
  }

  private static DrainPath of(Component component, RatedSupply supply, Optional<Curve> own) {
    PumpCurve curve = own.isPresent() ? curve(own.get()) : Typical.CURVE;
    Optional<Quantity> lift = component.figure(DrainPumpKind.STATIC_LIFT.id());
    Optional<Quantity> length = component.figure(DrainPumpKind.HOSE_LENGTH.id());
    Optional<Quantity> bore = component.figure(DrainPumpKind.HOSE_BORE.id());
    double height = Given.si(lift, USUAL_LIFT);
    Hose hose = new Hose(Given.si(length, USUAL_LENGTH), Given.si(bore, USUAL_BORE), 0, FITTINGS);
    Water water = Water.at(ROOM);
    OperatingPoint point =
        PumpAgainstCircuit.solve(curve, circuit(height, hose), water.kinematicViscosity());
    Optional<Double> power = Given.mean(component.nameplate().power());
    double rated = point.flow() > 0 ? point.flow() : curve.runOut();
    PumpSet pump =
        new PumpSet(
            curve,
            supply.motor(new Motor.Synchronous(PULL_OUT)),
            rated,
            noFlowTorque(curve, rated, power, water),
            PumpCondition.GOOD);
    boolean known = lift.isPresent() && length.isPresent() && bore.isPresent();
    Optional<Double> volume = Given.si(component.figure(DrainPumpKind.DRAIN_VOLUME.id()));
    return new DrainPath(
        pump,
        height,
        hose,
        point,
        power,
        MotorCurrent.of(component, supply),
        PumpWinding.of(component, supply),
        volume,
        known,
        own.isPresent(),
        supply);
  }

  private static double noFlowTorque(
      PumpCurve curve, double flow, Optional<Double> power, Water water) {
    if (power.isEmpty()) {
      return USUAL_NO_FLOW_TORQUE;
    }
    double toWater = HydraulicPower.of(flow, curve.shutOffHead(), water.density());
    double rest = 1 - toWater / (MOTOR_EFFICIENCY * power.get());
    return Math.min(GREATEST_NO_FLOW_TORQUE, Math.max(LEAST_NO_FLOW_TORQUE, rest));
  }

  private static Circuit circuit(double lift, Hose hose) {
    return new Circuit(lift, List.of(hose), Double.POSITIVE_INFINITY);
  }

  /**
   * The operating point in order.
   *
   * @param conditions the conditions of a reading: temperature of the water, supply
   * @return the point under them
   * @throws IllegalArgumentException if a condition is impossible
   */
  public OperatingPoint point(Conditions conditions) {
    return pump.on(rated.supply(conditions))
        .against(circuit(lift, hose), water(conditions).kinematicViscosity());
  }

  /**
   * The water of a reading.
   *
   * @param conditions its conditions
   * @return water of the stated temperature, or of 20 °C
   * @throws IllegalArgumentException if the temperature is impossible
   */
  static Water water(Conditions conditions) {
    return Water.at(conditions.si("temperature", ROOM));
  }

  /**
   * The circuit with something in the way.
   *
   * @param extraLift how much higher the outlet is, in m, not negative
   * @param extraLoss the loss coefficient of what is in the way, dimensionless, not negative
   * @return the circuit
   */
  Circuit circuit(double extraLift, double extraLoss) {
    return circuit(lift + extraLift, hose.plus(extraLoss));
  }
}
