package kelter.hydraulics.drainpump;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.State;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Nameplate;
import kelter.hydraulics.circuit.Circuit;
import kelter.hydraulics.circuit.OperatingPoint;
import kelter.hydraulics.circuit.PumpMotor;
import kelter.hydraulics.drain.HoseBackflow;
import kelter.hydraulics.pipe.BlockedBore;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.pump.PumpHead;
import kelter.hydraulics.pumppart.PumpType;
import kelter.hydraulics.pumppart.RatedPump;
import kelter.hydraulics.pumppart.Running;

/**
 * A drain pump with its hose, as the figures of the job give it, and what it does in any state.
 *
 * @param pump the pump with its motor
 * @param lift the height of the outlet above the water, in m
 * @param hose the hose with its bends, the check valve and the outlet
 * @param drainVolume the water that a full drain phase moves, in m3; NaN if it is not known
 * @param hoseKnown whether lift, length and bore are those of the job
 */
record DrainPath(RatedPump pump, double lift, Hose hose, double drainVolume, boolean hoseKnown) {

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
  private static final double CHECK_VALVE = 2;

  private static final double GIVEN_UP = 600; // s, when nobody waits any longer

  /**
   * The middle of what drain pumps of household size do, of which one may differ by a quarter, and
   * their power: common practice, no source. Their motor is a small permanent-magnet one: pull-out
   * torque and efficiency from memory.
   */
  private static final PumpType TYPE =
      new PumpType(
          new double[] {0, 10.0 / 60_000, 20.0 / 60_000},
          new double[] {1.9, 1.5, 0.7},
          new PumpMotor.Synchronous(1.7),
          0.4,
          0.3,
          30,
          0.02,
          0.7);

  /**
   * The path of a drain pump.
   *
   * @param component a drain pump
   * @param machine the nameplate of the machine that it sits in
   * @return the path, with a typical curve where the component has none, or empty if the pump could
   *     not lift the water even in order
   * @throws IllegalArgumentException if its curve rises or a figure is impossible
   */
  static Optional<DrainPath> of(Component component, Nameplate machine) {
    double lift = component.si(DrainPump.STATIC_LIFT);
    double length = component.si(DrainPump.HOSE_LENGTH);
    double bore = component.si(DrainPump.HOSE_BORE);
    double height = or(lift, USUAL_LIFT);
    Hose hose = new Hose(or(length, USUAL_LENGTH), or(bore, USUAL_BORE), 0, FITTINGS);
    RatedPump pump = RatedPump.of(component, machine, TYPE, circuit(height, hose), true);
    boolean known = !Double.isNaN(lift + length + bore);
    double volume = component.si(DrainPump.DRAIN_VOLUME);
    return pump.point().flow() > 0
        ? Optional.of(new DrainPath(pump, height, hose, volume, known))
        : Optional.empty();
  }

  /**
   * Why a drain pump has no path.
   *
   * @param component a drain pump that could not lift the water even in order
   * @return why, for a person, without a full stop
   */
  static String tooHigh(Component component) {
    double lift = or(component.si(DrainPump.STATIC_LIFT), USUAL_LIFT);
    return RatedPump.tooHigh(component, TYPE, "static-lift", lift);
  }

  private static double or(double stated, double usual) {
    return Double.isNaN(stated) ? usual : stated;
  }

  private static Circuit circuit(double lift, Hose hose) {
    return new Circuit(lift, List.of(hose), Double.POSITIVE_INFINITY);
  }

  /**
   * The flow rate in order.
   *
   * @param conditions the conditions of a reading: temperature of the water, supply
   * @return the flow rate under them, m³/s
   * @throws IllegalArgumentException if a condition is impossible
   */
  double flow(Conditions conditions) {
    return pump.point(circuit(lift, hose), conditions).flow();
  }

  /** The content of the hose, m³. */
  double content() {
    return HoseBackflow.volume(hose.bore(), hose.length());
  }

  /** What the pump works against. */
  Circuit against(State state) {
    double losses =
        loss(state, DrainFigure.STRAINER_CLOSED)
            + loss(state, DrainFigure.VALVE_CLOSED)
            + loss(state, DrainFigure.HOSE_CLOSED);
    return circuit(lift(state), hose.plus(losses));
  }

  private static double loss(State state, Figure closed) {
    return state.has(closed) ? BlockedBore.lossCoefficient(1 - state.of(closed)) : 0;
  }

  /** The height of the outlet above the water, m. */
  double lift(State state) {
    return lift + state.of(DrainFigure.TOO_HIGH);
  }

  /**
   * The height of the water in a clear hose on a tee between pump and check valve, above that in
   * the sump, in m: the pump's head less what the strainer takes and what the velocity has.
   */
  double outletHead(Running run) {
    return headLess(1 + loss(run.state(), DrainFigure.STRAINER_CLOSED), run.point());
  }

  /** The same on a tee between check valve and hose, in m: less what the valve takes. */
  double hoseHead(Running run) {
    double before = loss(run.state(), DrainFigure.STRAINER_CLOSED);
    double valve = loss(run.state(), DrainFigure.VALVE_CLOSED);
    return headLess(1 + before + CHECK_VALVE + valve, run.point());
  }

  private double headLess(double losses, OperatingPoint point) {
    return Math.max(0, point.head() - losses * PumpHead.velocityHead(point.flow(), hose.bore()));
  }

  /** The flow rate at the end of the hose, m³/s. */
  static double arriving(Running run) {
    return run.point().flow() * (1 - run.state().of(DrainFigure.ESCAPING));
  }

  /** The time of a full drain phase, s. */
  double drainTime(Running run) {
    return Math.min(GIVEN_UP, drainVolume / Math.max(run.point().flow(), drainVolume / GIVEN_UP));
  }

  /** What runs back of the content of the hose: little past a good valve, most without one; m³. */
  double returned(State state) {
    return content() * (0.08 + 0.85 * state.of(DrainFigure.VALVE_OPEN));
  }
}
