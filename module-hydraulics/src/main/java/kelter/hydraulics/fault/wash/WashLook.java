package kelter.hydraulics.fault.wash;

import kelter.hydraulics.fault.PumpNoise;
import kelter.hydraulics.fault.Symptom;

/**
 * What is seen and heard of the wash faults. All figures are judgement: common practice, no source.
 */
final class WashLook {

  private static final double NOTHING = 0.1; // place of a machine in order on a scale from 0 to 1

  private static final double HELD = 0.95; // place of a rotor that is held fast, same scale

  private WashLook() {}

  /** A pump without power is silent; one that has it and does not turn hums. */
  static double noise(double[] s, boolean dead, boolean turns) {
    if (!turns) {
      return dead ? PumpNoise.SILENT : PumpNoise.HUMS;
    }
    return PumpNoise.louder(
        0.45 * WashFault.PASSAGES_BLOCKED.in(s)
            + 0.5 * WashFault.DRAG.in(s)
            + 0.6 * WashFault.LOW_WATER.in(s)
            + 0.4 * WashFault.INLET_CLOGGED.in(s)
            + 0.2 * WashFault.IMPELLER_SLIPS.in(s));
  }

  static double swings(double[] s) {
    return Symptom.either(
        Symptom.noticed(WashFault.LOW_WATER.in(s), 0.3, 0.08),
        0.4 * WashFault.INLET_CLOGGED.in(s) * WashFault.INLET_CLOGGED.in(s));
  }

  static double filter(double[] s) {
    return Symptom.grade(NOTHING + 0.85 * WashFault.INLET_CLOGGED.in(s));
  }

  static double debris(double[] s) {
    double jam = WashFault.JAMMED.isThere(s) ? 0.5 : 0;
    return Symptom.grade(NOTHING + Math.max(jam, 0.85 * WashFault.PASSAGES_BLOCKED.in(s)));
  }

  static double turns(double[] s) {
    if (WashFault.JAMMED.isThere(s)) {
      return HELD;
    }
    return Symptom.grade(
        NOTHING + 0.8 * WashFault.DRAG.in(s) + 0.2 * WashFault.PASSAGES_BLOCKED.in(s));
  }

  static double loose(double[] s) {
    return Symptom.noticed(WashFault.IMPELLER_SLIPS.in(s), 0.35, 0.08);
  }

  static double leaks(double[] s) {
    return Symptom.noticed(WashFault.PASSAGE_LEAKS.in(s), 0.3, 0.08);
  }

  /** Half of all owners notice 60 % of the pressure, or a third of the jets closed. */
  static double weakJets(double pressureShare, double[] s) {
    return Symptom.either(
        Symptom.noticed(pressureShare, 0.6, -0.08),
        0.9 * (Symptom.noticed(1 - WashState.openJets(s), 0.35, 0.07) - 0.03));
  }
}
