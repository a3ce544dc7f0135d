package kelter.hydraulics.fault;

/**
 * Where the noise of a pump lies on the scale from silent over humming, usual and louder to
 * rattling, each word a fifth of it. All figures are judgement: common practice, no source.
 */
public final class PumpNoise {

  /** A pump that takes no power; some hear the rest of the machine. */
  public static final double SILENT = 0.08;

  /** A motor with voltage on it that cannot turn. */
  public static final double HUMS = 0.3;

  private static final double USUAL = 0.5;

  /** How two people would choose the word for a pump in order. */
  private static final double SPREAD = 0.05;

  private static final double MOST_SPREAD_ABOVE = 0.078;
  private static final double SPREAD_BELOW = 0.2; // per unit of the scale
  private static final double SPREAD_ABOVE = 0.28; // per unit of the scale

  /** Where something louder begins: the step to louder lies at 0.23, that to rattling at 0.57. */
  private static final double START = 0.46;

  private static final double SLOPE = 0.6;

  private PumpNoise() {}

  /**
   * The noise of a pump that turns.
   *
   * @param more how much louder than usual it is: 0 not at all, from 0.23 on it is called louder,
   *     from 0.57 on rattling
   * @return the place on the scale
   */
  public static double louder(double more) {
    return Symptom.grade(Math.max(USUAL, START + SLOPE * more));
  }

  /**
   * How far words for it differ.
   *
   * @param place the place on the scale
   * @return the standard deviation on the scale
   */
  public static double spread(double place) {
    return place < USUAL
        ? SPREAD + SPREAD_BELOW * (USUAL - place)
        : Math.min(MOST_SPREAD_ABOVE, SPREAD + SPREAD_ABOVE * (place - USUAL));
  }
}
