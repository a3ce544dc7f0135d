package kelter.hydraulics.pumppart;

import kelter.core.diagnosis.model.Spread;

/**
 * Where the noise of a pump lies on the scale from silent over humming, usual and louder to
 * rattling, each word a fifth of it, and how far words for it differ. All figures are judgement:
 * common practice, no source.
 */
record PumpNoise() implements Spread<Object> {

  /** A pump that takes no power; some hear the rest of the machine. */
  private static final double SILENT = 0.08;

  /** A motor with voltage on it that cannot turn. */
  private static final double HUMS = 0.3;

  private static final double USUAL = 0.5;

  /** How two people would choose the word for a pump in order. */
  private static final double SPREAD = 0.05;

  private static final double MOST_SPREAD_ABOVE = 0.078;
  private static final double SPREAD_BELOW = 0.2; // per unit of the scale
  private static final double SPREAD_ABOVE = 0.28; // per unit of the scale

  /** Where something louder begins: the step to louder lies at 0.23, that to rattling at 0.57. */
  private static final double START = 0.46;

  private static final double SLOPE = 0.6;

  /** The place of a pump: silent without power, humming if it has it and does not turn. */
  static double of(Running pump) {
    if (!pump.point().turns()) {
      return pump.isDead() ? SILENT : HUMS;
    }
    double louder = START + SLOPE * pump.state().of(PumpFigure.LOUDNESS);
    return Math.min(1, Math.max(USUAL, louder));
  }

  @Override
  public double of(double place, InOrder order, Object solved) {
    return place < USUAL
        ? SPREAD + SPREAD_BELOW * (USUAL - place)
        : Math.min(MOST_SPREAD_ABOVE, SPREAD + SPREAD_ABOVE * (place - USUAL));
  }
}
