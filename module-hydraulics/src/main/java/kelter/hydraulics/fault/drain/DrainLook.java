package kelter.hydraulics.fault.drain;

import kelter.hydraulics.fault.PumpNoise;
import kelter.hydraulics.fault.Symptom;

/**
 * What is seen and heard of the drain faults. All figures are judgement: common practice, no
 * source.
 */
final class DrainLook {

  private static final double NOTHING = 0.1; // place of a machine in order on a scale from 0 to 1

  private static final double HELD = 0.95; // place of a rotor that is held fast, same scale

  private DrainLook() {}

  /** A pump without power is silent; one that has it and does not turn hums. */
  static double noise(double[] s, boolean dead, boolean turns) {
    if (!turns) {
      return dead ? PumpNoise.SILENT : PumpNoise.HUMS;
    }
    return PumpNoise.louder(
        0.55 * DrainFault.PASSAGES_BLOCKED.in(s)
            + 0.45 * DrainFault.DRAG.in(s)
            + 0.25 * DrainFault.STRAINER_CLOGGED.in(s)
            + 0.25 * DrainFault.IMPELLER_SLIPS.in(s));
  }

  static double debris(double[] s) {
    double jam = DrainFault.JAMMED.isThere(s) ? 0.5 : 0;
    return Symptom.grade(NOTHING + Math.max(jam, 0.85 * DrainFault.PASSAGES_BLOCKED.in(s)));
  }

  static double strainer(double[] s) {
    return Symptom.grade(NOTHING + 0.85 * DrainFault.STRAINER_CLOGGED.in(s));
  }

  static double turns(double[] s) {
    if (DrainFault.JAMMED.isThere(s)) {
      return HELD;
    }
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

  static double outside(double[] s) {
    return Symptom.noticed(DrainFault.HOSE_LEAKS.in(s), 0.2, 0.05);
  }

  /**
   * The share of the content of the hose that runs back: little past a good valve, most without
   * one.
   */
  static double returnedShare(double[] s) {
    return 0.08 + 0.85 * DrainFault.VALVE_OPEN.in(s);
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
