package kelter.electrical.contact;

import kelter.core.check.Limits;
import kelter.core.source.Source;

/**
 * What a joint in order may lose under load: less than 5 W of heat and less than 1 % of the
 * voltage, whichever is less. From 5 W on glowing joints were seen, at 0.8 A; there the 1 % is the
 * stricter.
 */
public final class SoundJoint {

  /** Where the limits come from. */
  public static final Source SOURCE =
      Source.commonPractice(
          "a joint in order makes less than 5 W and loses less than 1 % of the voltage; glowing ones"
              + " make 5 W to 35 W (Meese and Beausoliel, NBSIR 76-1011, 1976)");

  /** What to do where nobody knows the current. */
  public static final String NO_CURRENT =
      "the heat of a joint is voltage times current: state the current with the reading, or power"
          + " and voltage on the nameplate";

  /** Most heat of one joint, W. */
  private static final double HEAT = 5;

  /** Most loss, as a ratio of the voltage. */
  private static final double SHARE = 0.01;

  private SoundJoint() {}

  /**
   * What may be lost along a way with one joint.
   *
   * @param current the current, A, above 0
   * @param volts the voltage of the mains, V; NaN if it is not known
   * @param along what the conductor by itself loses, V
   * @return the limits, V
   */
  public static Limits limits(double current, double volts, double along) {
    double byHeat = HEAT / current;
    return Limits.atMost(along + (volts > 0 ? Math.min(byHeat, SHARE * volts) : byHeat));
  }
}
