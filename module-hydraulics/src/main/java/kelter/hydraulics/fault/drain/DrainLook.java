package kelter.hydraulics.fault.drain;

import kelter.hydraulics.fault.Symptom;

/**
 * What is seen and heard of the drain faults. All figures are judgement: common practice, no
 * source.
 */
final class DrainLook {

  private static final double NOTHING = 0.1; // place of a machine in order on a scale from 0 to 1

  private DrainLook() {}

  static double noise(double[] s) {
    return Symptom.grade(
        NOTHING
            + 0.55 * DrainFault.PASSAGES_BLOCKED.in(s)
            + 0.45 * DrainFault.DRAG.in(s)
            + 0.25 * DrainFault.STRAINER_CLOGGED.in(s)
            + 0.25 * DrainFault.IMPELLER_SLIPS.in(s));
  }

  static double debris(double[] s) {
    return Symptom.grade(NOTHING + 0.85 * DrainFault.PASSAGES_BLOCKED.in(s));
  }

  static double strainer(double[] s) {
    return Symptom.grade(NOTHING + 0.85 * DrainFault.STRAINER_CLOGGED.in(s));
  }

  static double turns(double[] s) {
    return Symptom.grade(
        NOTHING + 0.85 * DrainFault.DRAG.in(s) + 0.25 * DrainFault.PASSAGES_BLOCKED.in(s));
  }

  static double loose(double[] s) {
    return Symptom.noticed(DrainFault.IMPELLER_SLIPS.in(s), 0.35, 0.08);
  }

  static double narrowed(double[] s) {
    return Symptom.noticed(DrainFault.HOSE_CLOGGED.in(s), 0.45, 0.1);
  }

  static double valveHangs(double[] s) {
    return Symptom.noticed(
        Math.max(DrainFault.VALVE_SHUT.in(s), DrainFault.VALVE_OPEN.in(s)), 0.4, 0.1);
  }

  static double returns(double[] s) {
    return Symptom.noticed(DrainFault.VALVE_OPEN.in(s), 0.35, 0.08);
  }

  /** Half of all owners notice two thirds of the flow; more if some water comes back. */
  static double drainsSlowly(double flowShare, double[] s) {
    return Symptom.either(
        Symptom.noticed(flowShare, 0.66, -0.07), 0.5 * DrainFault.VALVE_OPEN.in(s));
  }
}
