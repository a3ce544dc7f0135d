package kelter.electrical.rating;

import kelter.core.check.Limits;
import kelter.core.job.RatedRange;

/**
 * Between which voltages the mains lie on which a part runs, as its rated voltage tells: 10 % below
 * the lower limit to 10 % above the upper one.
 */
public final class MainsRange {

  /** Mains range, as a ratio: (EU) 2019/2014, Art. 2, and IEC 60038. */
  private static final double DEVIATION = 0.10;

  private MainsRange() {}

  /**
   * The mains.
   *
   * @param rated the rated voltage
   * @return least and greatest voltage, V
   */
  public static Limits of(RatedRange rated) {
    return new Limits(rated.low().si() * (1 - DEVIATION), rated.high().si() * (1 + DEVIATION));
  }
}
