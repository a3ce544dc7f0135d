package kelter.hydraulics.fault.drain;

import kelter.hydraulics.circuit.Circuit;
import kelter.hydraulics.circuit.PumpCondition;
import kelter.hydraulics.fault.PumpFaults;

/**
 * What the severities of the drain faults mean in figures.
 *
 * <p>At severity 1 the drag is twice the rated torque, so that the motor cannot turn; the hose, the
 * check valve and the strainer leave 3 % of the bore; the outlet is 1.2 m too high. All that is
 * judgement: common practice, no source.
 *
 * @param condition the condition of the pump
 * @param circuit what it works against
 */
record DrainState(PumpCondition condition, Circuit circuit) {

  private static final double DRAG = 2; // ratio of the rated torque
  private static final double TOO_HIGH = 1.2; // m

  static DrainState of(DrainPath path, double[] severity) {
    double leak =
        PumpFaults.leakArea(
            DrainFault.INTERNAL_LEAK.in(severity), path.point().flow(), path.point().head());
    double loss =
        PumpFaults.clogged(DrainFault.HOSE_CLOGGED.in(severity))
            + PumpFaults.clogged(DrainFault.VALVE_SHUT.in(severity))
            + PumpFaults.clogged(DrainFault.STRAINER_CLOGGED.in(severity));
    return new DrainState(
        PumpFaults.condition(
            DrainFault.PASSAGES_BLOCKED.in(severity),
            DrainFault.IMPELLER_SLIPS.in(severity),
            leak,
            DRAG * DrainFault.DRAG.in(severity)),
        path.circuit(extraLift(severity), loss));
  }

  static double extraLift(double[] severity) {
    return TOO_HIGH * DrainFault.LIFT_TOO_HIGH.in(severity);
  }
}
