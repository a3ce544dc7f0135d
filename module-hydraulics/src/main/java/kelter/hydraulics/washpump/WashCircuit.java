package kelter.hydraulics.washpump;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.model.Look;
import kelter.core.diagnosis.model.State;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Nameplate;
import kelter.core.law.InductionMachine;
import kelter.hydraulics.circuit.Circuit;
import kelter.hydraulics.circuit.PumpMotor;
import kelter.hydraulics.pipe.BlockedBore;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.pipe.TorricelliJet;
import kelter.hydraulics.pump.PumpHead;
import kelter.hydraulics.pumppart.PumpType;
import kelter.hydraulics.pumppart.RatedPump;
import kelter.hydraulics.pumppart.Running;

/**
 * A wash pump with its passage and jets, as the figures of the job give it, and what it does in any
 * state.
 *
 * @param pump the pump with its motor; known if its curve and the area of the jets are
 * @param lift the height of the jets above the water, in m
 * @param passage the passage from the sump to the jets with its bends
 * @param jetArea the discharge coefficient times the open area of the jets, in m2
 * @param level the height of the water above the pump inlet, in m
 * @param speed its rated speed in revolutions per second; NaN if it is not known
 * @param armSpeed the speed of the spray arm in revolutions per second; NaN if it is not known
 */
record WashCircuit(
    RatedPump pump,
    double lift,
    Hose passage,
    double jetArea,
    double level,
    double speed,
    double armSpeed) {

  /** The open area of the jets where a job has none, as {@link #TYPE}. */
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

  /** The greatest suction that a gauge at the inlet can show before the water boils, in m. */
  private static final double MOST_SUCTION = 9;

  /** The share of closed jets on a machine in order; judgement. */
  private static final double CLOSED_ANYWAY = 0.03;

  /** The share of its speed that all jets closed would cost the arm; judgement. */
  private static final double ARM_DRIVE = 0.5;

  /**
   * The middle of what dishwashers do, of which one may differ by a quarter and more: common
   * practice, no source. Their motor is a small two-pole induction motor: slip, pull-out torque and
   * efficiency from memory.
   */
  private static final PumpType TYPE =
      new PumpType(
          new double[] {0, 30.0 / 60_000, 60.0 / 60_000},
          new double[] {4.0, 3.4, 2.0},
          new PumpMotor.Induction(InductionMachine.SMALL),
          0.6,
          0.25,
          Double.NaN,
          0.05,
          2);

  /**
   * The circuit of a wash pump.
   *
   * @param component a wash pump
   * @param machine the nameplate of the machine that it sits in
   * @return the circuit, with a typical curve and typical jets where the component has none, or
   *     empty if the pump could not lift the water even in order
   * @throws IllegalArgumentException if its curve rises or a figure is impossible
   */
  static Optional<WashCircuit> of(Component component, Nameplate machine) {
    double lift = component.si(WashPump.JET_LIFT, USUAL_LIFT);
    Hose passage =
        new Hose(
            component.si(WashPump.PASSAGE_LENGTH, USUAL_LENGTH),
            component.si(WashPump.PASSAGE_BORE, USUAL_BORE),
            0,
            FITTINGS);
    double jets = TorricelliJet.SHARP_EDGE * component.si(WashPump.JET_AREA, TYPICAL_JETS);
    boolean jetsKnown = component.figure(WashPump.JET_AREA).isPresent();
    RatedPump pump =
        RatedPump.of(
            component, machine, TYPE, new Circuit(lift, List.of(passage), jets), jetsKnown);
    return pump.point().flow() > 0
        ? Optional.of(
            new WashCircuit(
                pump,
                lift,
                passage,
                jets,
                component.si(WashPump.WORKING_LEVEL, USUAL_LEVEL),
                component.si(WashPump.RATED_SPEED),
                component.si(WashPump.RATED_ARM_SPEED)))
        : Optional.empty();
  }

  /**
   * Why a wash pump has no circuit.
   *
   * @param component a wash pump that could not lift the water even in order
   * @return why, for a person, without a full stop
   */
  static String tooHigh(Component component) {
    double lift = component.si(WashPump.JET_LIFT, USUAL_LIFT);
    return RatedPump.tooHigh(component, TYPE, "jet-lift", lift);
  }

  /**
   * The flow rate in order.
   *
   * @param conditions the conditions of a reading: temperature of the water, supply
   * @return the flow rate under them, m³/s
   * @throws IllegalArgumentException if a condition is impossible
   */
  double flow(Conditions conditions) {
    return pump.point(new Circuit(lift, List.of(passage), jetArea), conditions).flow();
  }

  /**
   * The gauge pressure before the jets in order.
   *
   * @param conditions the conditions of a reading
   * @return the pressure in Pa
   * @throws IllegalArgumentException if a condition is impossible
   */
  double jetPressure(Conditions conditions) {
    return RatedPump.water(conditions).pressure(TorricelliJet.head(jetArea, flow(conditions)));
  }

  /** What the pump works against: the lower the water, the higher the jets above it. */
  Circuit against(State state) {
    double higher = level - level(state);
    return new Circuit(lift + higher, List.of(passage.plus(filterLoss(state))), area(state));
  }

  /** The loss coefficient of the filter by the velocity in the bore of the passage. */
  private static double filterLoss(State state) {
    double closed = state.of(WashFigure.FILTER_CLOSED);
    return closed > 0 ? BlockedBore.lossCoefficient(1 - closed) : 0;
  }

  private double area(State state) {
    return jetArea * (state.of(WashFigure.OPEN_JETS) + state.of(WashFigure.ESCAPE));
  }

  /** The height of the water above the pump inlet, m. */
  double level(State state) {
    return level * state.of(WashFigure.LEVEL);
  }

  /** The share of the jets that one would count as closed. */
  static double jetsClosed(State state) {
    return CLOSED_ANYWAY + (1 - CLOSED_ANYWAY) * (1 - state.of(WashFigure.OPEN_JETS));
  }

  /** The gauge pressure in the spray arm, Pa. */
  double jetPressure(Running run) {
    return run.water().pressure(jetHead(run));
  }

  private double jetHead(Running run) {
    return TorricelliJet.head(area(run.state()), run.point().flow());
  }

  /** The gauge pressure at the pump inlet, Pa: water above it, less loss and velocity. */
  double inletPressure(Running run) {
    double velocityHead = PumpHead.velocityHead(run.point().flow(), passage.bore());
    double head = level(run.state()) - (1 + filterLoss(run.state())) * velocityHead;
    return run.water().pressure(Math.max(-MOST_SUCTION, head));
  }

  /** The speed of the pump in revolutions per second. */
  double speed(Running run) {
    return speed * run.point().speed();
  }

  /** The speed of the spray arm in revolutions per second. */
  double armSpeed(Running run) {
    double drive = 1 - ARM_DRIVE * (1 - run.state().of(WashFigure.OPEN_JETS));
    return armSpeed * Math.sqrt(jetShare(run)) * drive;
  }

  private double jetShare(Running run) {
    return jetHead(run) / TorricelliJet.head(jetArea, pump.point().flow());
  }

  /** Whether the spray comes and goes: with air in the water, or starved; judgement. */
  static double swings(State state) {
    return Look.either(
        Look.probability(state.of(WashFigure.LEVEL), 0.775, -0.06), state.of(WashFigure.STARVING));
  }
}
