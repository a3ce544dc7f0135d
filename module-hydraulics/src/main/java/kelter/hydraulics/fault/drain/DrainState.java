package kelter.hydraulics.fault.drain;

import kelter.hydraulics.circuit.Circuit;
import kelter.hydraulics.circuit.OperatingPoint;
import kelter.hydraulics.circuit.PumpCondition;
import kelter.hydraulics.fault.PumpFaults;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.pump.PumpHead;

/**
 * What the severities of the drain faults mean in figures.
 *
 * <p>At severity 1 the drag is twice the rated torque, so that the motor cannot turn; the hose, the
 * check valve and the strainer leave 3 % of the bore; the outlet is 1.2 m too high; nine tenths of
 * the flow escape near the end of a leaking hose, which the pump does not notice. All that is
 * judgement: common practice, no source. A pump that is jammed or gets no power does not turn at
 * any severity.
 *
 * @param condition the condition of the pump
 * @param circuit what it works against
 * @param strainerLoss the loss coefficient of what is in the way before the pump, dimensionless
 * @param valveLoss the loss coefficient that a valve stuck shut adds, dimensionless
 * @param dead whether the pump takes no power
 */
record DrainState(
    PumpCondition condition, Circuit circuit, double strainerLoss, double valveLoss, boolean dead) {

  private static final double DRAG = 2; // ratio of the rated torque
  private static final double TOO_HIGH = 1.2; // m
  private static final double ESCAPING = 0.9; // ratio of the flow rate

  static DrainState of(DrainPath path, double[] severity) {
    double leak =
        PumpFaults.leakArea(
            DrainFault.INTERNAL_LEAK.in(severity), path.point().flow(), path.point().head());
    double before = PumpFaults.clogged(DrainFault.STRAINER_CLOGGED.in(severity));
    double valve = PumpFaults.clogged(DrainFault.VALVE_SHUT.in(severity));
    double hose = PumpFaults.clogged(DrainFault.HOSE_CLOGGED.in(severity));
    boolean dead = dead(severity);
    boolean held = dead || DrainFault.JAMMED.isThere(severity);
    return new DrainState(
        PumpFaults.condition(
            DrainFault.PASSAGES_BLOCKED.in(severity),
            DrainFault.IMPELLER_SLIPS.in(severity),
            leak,
            held ? PumpFaults.LOCKED : DRAG * DrainFault.DRAG.in(severity)),
        path.circuit(extraLift(severity), before + valve + hose),
        before,
        valve,
        dead);
  }

  private static boolean dead(double[] severity) {
    return DrainFault.WINDING_OPEN.isThere(severity) || DrainFault.NO_VOLTAGE.isThere(severity);
  }

  /** The share of the flow rate of the pump that reaches the end of the hose. */
  static double arriving(double[] severity) {
    return 1 - ESCAPING * DrainFault.HOSE_LEAKS.in(severity);
  }

  /**
   * The height of the water in a clear hose on a tee between pump and check valve, above that in
   * the sump, in m: the pump's head less what the strainer takes and what the velocity has.
   */
  double outletHead(OperatingPoint point, Hose hose) {
    return headLess(1 + strainerLoss, point, hose);
  }

  /** The same on a tee between check valve and hose, in m: less what the valve takes. */
  double hoseHead(OperatingPoint point, Hose hose) {
    return headLess(1 + strainerLoss + DrainPath.CHECK_VALVE + valveLoss, point, hose);
  }

  private static double headLess(double losses, OperatingPoint point, Hose hose) {
    double velocityHead = PumpHead.velocityHead(point.flow(), hose.bore());
    return Math.max(0, point.head() - losses * velocityHead);
  }

  static double extraLift(double[] severity) {
    return TOO_HIGH * DrainFault.LIFT_TOO_HIGH.in(severity);
  }
}
