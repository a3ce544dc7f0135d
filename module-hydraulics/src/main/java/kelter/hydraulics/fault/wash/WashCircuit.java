package kelter.hydraulics.fault.wash;

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
import kelter.hydraulics.part.Given;
import kelter.hydraulics.part.RatedSupply;
import kelter.hydraulics.part.WashPumpKind;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.pipe.TorricelliJet;
import kelter.hydraulics.pump.HydraulicPower;
import kelter.hydraulics.pump.PumpCurve;
import kelter.hydraulics.water.Water;

/**
 * A wash pump in order with its passage and jets, as the figures of the job give it.
 *
 * @param pump the pump with its motor
 * @param lift the height of the jets above the water, in m
 * @param passage the passage from the sump to the jets with its bends
 * @param jetArea the discharge coefficient times the open area of the jets, in m2
 * @param level the height of the water above the pump inlet, in m
 * @param point the operating point in order at 20 °C
 * @param ratedPower the rated electric power in W, or empty if it is not known
 * @param current its current by the nameplate, or empty if it is not known
 * @param winding the main winding of its motor, by its figure or a typical one
 * @param ratedSpeed the speed at that point in revolutions per second, or empty if it is not known
 * @param ratedArmSpeed the speed of the spray arm in revolutions per second, or empty
 * @param known whether curve and area of the jets are those of the job and not typical ones
 * @param rated what the pump was made for
 */
public record WashCircuit(
    PumpSet pump,
    double lift,
    Hose passage,
    double jetArea,
    double level,
    OperatingPoint point,
    Optional<Double> ratedPower,
    Optional<MotorCurrent> current,
    PumpWinding winding,
    Optional<Double> ratedSpeed,
    Optional<Double> ratedArmSpeed,
    boolean known,
    RatedSupply rated) {

  /** The open area of the jets where a job has none, as {@link Typical}. */
  private static final double TYPICAL_JETS = 110e-6; // m2

  /** What is taken where a job does not say: common practice, no source. */
  private static final double USUAL_LIFT = 0.25; // m

  private static final double USUAL_LENGTH = 0.6; // m
  private static final double USUAL_BORE = 0.026; // m
  private static final double USUAL_LEVEL = 0.06; // m

  /**
   * Loss coefficients of the passage: entrance 0.5, three bends 0.3, branch to the arm 1.0. Munson
   * et al., Fundamentals of Fluid Mechanics, Table 8.2.
   */
  private static final double FITTINGS = 2.4;

  /** The slip of a small two-pole induction motor at its rated point, ratio; from memory. */
  private static final double RATED_SLIP = 0.08;

  /** The pull-out torque of such a motor by its rated torque; from memory. */
  private static final double PULL_OUT = 2.3;

  /** The efficiency of such a motor at its rated point, ratio; from memory. */
  private static final double MOTOR_EFFICIENCY = 0.6;

  private static final double USUAL_NO_FLOW_TORQUE = 0.5; // judgement
  private static final double LEAST_NO_FLOW_TORQUE = 0.25;
  private static final double GREATEST_NO_FLOW_TORQUE = 0.85;
  private static final double ROOM = Water.FREEZING + 20; // K

  /**
   * The curve that is taken where a job has none, the middle of what dishwashers do: common
   * practice, no source. One machine may differ from it by a quarter and more.
   */
  private static final class Typical {
    static final PumpCurve CURVE =
        PumpCurve.through(
            new double[] {0, 30.0 / 60_000, 60.0 / 60_000}, new double[] {4.0, 3.4, 2.0});

    private Typical() {}
  }

  /**
   * The circuit of a wash pump.
   *
   * @param component a wash pump
   * @param machine the nameplate of the machine that it sits in
   * @return the circuit, with a typical curve and typical jets where the component has none, or
   *     empty if the pump could not lift the water even in order
   * @throws IllegalArgumentException if its curve rises or a figure is impossible
   */
  public static Optional<WashCircuit> of(Component component, Nameplate machine) {
    WashCircuit solved = solved(component, RatedSupply.of(component, machine));
    return solved.point.flow() > 0 ? Optional.of(solved) : Optional.empty();
  }

  private static PumpCurve curve(Curve points) {
    return PumpCurve.through(points.xSi(), points.ySi());
  }

  private static WashCircuit solved(Component component, RatedSupply supply) {
    Optional<Curve> own = component.curve(WashPumpKind.HEAD_CURVE.id());
    PumpCurve curve = own.isPresent() ? curve(own.get()) : Typical.CURVE;
    Optional<Quantity> area = component.figure(WashPumpKind.JET_AREA.id());
    double openArea = Given.si(area, TYPICAL_JETS);
    double lift = Given.si(component.figure(WashPumpKind.JET_LIFT.id()), USUAL_LIFT);
    double level = Given.si(component.figure(WashPumpKind.WORKING_LEVEL.id()), USUAL_LEVEL);
    Hose passage =
        new Hose(
            Given.si(component.figure(WashPumpKind.PASSAGE_LENGTH.id()), USUAL_LENGTH),
            Given.si(component.figure(WashPumpKind.PASSAGE_BORE.id()), USUAL_BORE),
            0,
            FITTINGS);
    double jets = TorricelliJet.SHARP_EDGE * openArea;
    Water water = Water.at(ROOM);
    OperatingPoint point =
        PumpAgainstCircuit.solve(
            curve, new Circuit(lift, List.of(passage), jets), water.kinematicViscosity());
    Optional<Double> power = Given.mean(component.nameplate().power());
    double rated = point.flow() > 0 ? point.flow() : curve.runOut();
    PumpSet pump =
        new PumpSet(
            curve,
            supply.motor(new Motor.Induction(RATED_SLIP, PULL_OUT)),
            rated,
            noFlowTorque(curve, rated, power, water),
            PumpCondition.GOOD);
    return new WashCircuit(
        pump,
        lift,
        passage,
        jets,
        level,
        point,
        power,
        MotorCurrent.of(component, supply),
        PumpWinding.of(component, supply),
        Given.si(component.figure(WashPumpKind.RATED_SPEED.id())),
        Given.si(component.figure(WashPumpKind.RATED_ARM_SPEED.id())),
        own.isPresent() && area.isPresent(),
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

  /**
   * The operating point in order.
   *
   * @param conditions the conditions of a reading: temperature of the water, supply
   * @return the point under them
   * @throws IllegalArgumentException if a condition is impossible
   */
  public OperatingPoint point(Conditions conditions) {
    return pump.on(rated.supply(conditions))
        .against(
            new Circuit(lift, List.of(passage), jetArea), water(conditions).kinematicViscosity());
  }

  /**
   * The water of a reading.
   *
   * @param conditions its conditions
   * @return water of the stated temperature, or of 20 °C
   * @throws IllegalArgumentException if the temperature is impossible
   */
  public static Water water(Conditions conditions) {
    return Water.at(conditions.si("temperature", ROOM));
  }

  /**
   * The gauge pressure before the jets in order.
   *
   * @param conditions the conditions of a reading
   * @return the pressure in Pa
   * @throws IllegalArgumentException if a condition is impossible
   */
  public double jetPressure(Conditions conditions) {
    return water(conditions).pressure(TorricelliJet.head(jetArea, point(conditions).flow()));
  }
}
