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
 * judgement: common practice, no source.
 *
 * @param condition the condition of the pump
 * @param circuit what it works against
 * @param strainerLoss the loss coefficient of what is in the way before the pump, dimensionless
 */
record DrainState(PumpCondition condition, Circuit circuit, double strainerLoss) {

  private static final double DRAG = 2; // ratio of the rated torque
  private static final double TOO_HIGH = 1.2; // m
  private static final double ESCAPING = 0.9; // ratio of the flow rate

  static DrainState of(DrainPath path, double[] severity) {
    double leak =
        PumpFaults.leakArea(
            DrainFault.INTERNAL_LEAK.in(severity), path.point().flow(), path.point().head());
    double before = PumpFaults.clogged(DrainFault.STRAINER_CLOGGED.in(severity));
    double behind =
        PumpFaults.clogged(DrainFault.HOSE_CLOGGED.in(severity))
            + PumpFaults.clogged(DrainFault.VALVE_SHUT.in(severity));
    return new DrainState(
        PumpFaults.condition(
            DrainFault.PASSAGES_BLOCKED.in(severity),
            DrainFault.IMPELLER_SLIPS.in(severity),
            leak,
            DRAG * DrainFault.DRAG.in(severity)),
        path.circuit(extraLift(severity), before + behind),
        before);
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
    double velocityHead = PumpHead.velocityHead(point.flow(), hose.bore());
    return Math.max(0, point.head() - (1 + strainerLoss) * velocityHead);
  }

  static double extraLift(double[] severity) {
    return TOO_HIGH * DrainFault.LIFT_TOO_HIGH.in(severity);
  }
}
