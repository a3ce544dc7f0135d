package kelter.hydraulics.fault;

import kelter.hydraulics.circuit.PumpCondition;
import kelter.hydraulics.pipe.BlockedBore;
import kelter.hydraulics.water.StandardGravity;

/**
 * What a severity of the faults of any centrifugal pump means in figures. The end points, at
 * severity 1, are judgement (common practice, no source): about as bad as it is met before the
 * machine is given up. In between every figure runs in a straight line.
 */
public final class PumpFaults {

  /** The share of the vane passages that is closed at severity 1. */
  private static final double CLOSED_PASSAGES = 0.95;

  /** The share of the head at no flow that is lost with all those passages closed. */
  private static final double LOST_HEAD = 0.2;

  /** The share of the speed that slips away at severity 1. */
  private static final double SLIPPING = 0.8;

  /** The flow that runs back at the rated head at severity 1, as a ratio of the rated flow. */
  private static final double RUNNING_BACK = 1.5;

  /** The share of a bore that is closed at severity 1. */
  private static final double CLOSED_BORE = 0.97;

  /**
   * The electric power of a small motor without a load, as a ratio of the rated one; from memory.
   */
  private static final double IDLE_POWER = 0.25;

  /** The electric power of a small stalled motor, as a ratio of the rated one; from memory. */
  private static final double STALLED_POWER = 1.2;

  /**
   * The drag on a rotor that is held fast, as a ratio of the rated torque: any number beyond what a
   * motor pulls.
   */
  public static final double LOCKED = 100;

  private PumpFaults() {}

  /**
   * The share of the vane passages that is open.
   *
   * @param severity how bad it is, 0 to 1
   * @return a ratio above 0
   */
  public static double openPassages(double severity) {
    return 1 - CLOSED_PASSAGES * severity;
  }

  /**
   * The head with some vanes out of work.
   *
   * @param blocked how bad the blockage is, 0 to 1
   * @return the head as a ratio of that with all vanes
   */
  public static double headShare(double blocked) {
    return 1 - LOST_HEAD * blocked;
  }

  /**
   * The speed of the impeller by that of the shaft.
   *
   * @param severity how bad it is, 0 to 1
   * @return a ratio above 0
   */
  public static double grip(double severity) {
    return 1 - SLIPPING * severity;
  }

  /**
   * The way back inside the pump.
   *
   * @param severity how bad it is, 0 to 1
   * @param ratedFlow the rated flow rate in m3/s
   * @param ratedHead the head there in m, above 0
   * @return discharge coefficient times area, in m2
   */
  public static double leakArea(double severity, double ratedFlow, double ratedHead) {
    return severity * RUNNING_BACK * ratedFlow / Math.sqrt(2 * StandardGravity.G * ratedHead);
  }

  /**
   * The loss coefficient of a clogged bore.
   *
   * @param severity how bad it is, 0 to 1
   * @return the coefficient by the velocity in the open bore
   */
  public static double clogged(double severity) {
    return severity == 0 ? 0 : BlockedBore.lossCoefficient(1 - CLOSED_BORE * severity);
  }

  /**
   * The electric power of a pump.
   *
   * @param shaftPower the power on the shaft as a ratio of the rated one
   * @param turns whether it turns at all
   * @return the electric power as a ratio of the rated one
   */
  public static double electricPower(double shaftPower, boolean turns) {
    return turns ? IDLE_POWER + (1 - IDLE_POWER) * shaftPower : STALLED_POWER;
  }

  /**
   * The condition of a pump in order but for what is said here.
   *
   * @param blocked how badly its vane passages are blocked, 0 to 1
   * @param slips how badly its impeller is worn or slips, 0 to 1
   * @param leakArea the way back inside, in m2
   * @param drag the drag as a ratio of the rated torque
   * @return the condition
   */
  public static PumpCondition condition(
      double blocked, double slips, double leakArea, double drag) {
    return new PumpCondition(
        openPassages(blocked), grip(slips), headShare(blocked), 1, leakArea, drag, 1);
  }
}
