package kelter.core.law;

/**
 * What an induction motor pulls and draws at any slip, from its slip at rated load and its pull-out
 * torque.
 *
 * <p>Torque: T / T_k = 2 / (s / s_k + s_k / s) (Kloss's formula), with the slip at pull-out s_k =
 * s_r (T_k/T_r + √((T_k/T_r)² − 1)). Current: that of the rotor lies on a circle (Heyland's
 * diagram); its active part follows the torque and its reactive part is s / s_k times as great,
 * beside the current that magnetises, which stays.
 *
 * <p>It holds for the rated voltage; torque goes with the square of the flux, current with the
 * flux. Slip is told as the lag behind the field by the rated synchronous speed, so that it also
 * holds at another frequency. The resistance of the stator and what deep bars add at standstill are
 * left out, as both formulas do: for the textbook motor of the test the current at standstill comes
 * out 16 % low and the slip at pull-out a fifth. A motor with one main winding and a capacitor
 * starts weaker than this says.
 *
 * <p>Source: M. Kloß, Drehmoment und Schlüpfung des Drehstrommotors, Archiv für Elektrotechnik 5
 * (1916); A. Heyland, circle diagram (1894); both follow from the equivalent circuit of IEEE 112
 * and of S. J. Chapman, Electric Machinery Fundamentals, chapter on induction motors; editions from
 * memory.
 *
 * @param ratedSlip the slip at rated load, as a ratio of the synchronous speed, above 0 and below
 *     0.5; small motors have 0.03 to 0.15 (from memory)
 * @param pullOut the greatest torque, as a ratio of the rated one, above 1; usually 1.8 to 2.5
 *     (from memory)
 */
public record InductionMachine(double ratedSlip, double pullOut) {

  /** A small motor of an appliance; from memory. */
  public static final InductionMachine SMALL = new InductionMachine(0.08, 2.3);

  /**
   * What a small motor takes without a load, as a ratio of its rated power: what does not reach the
   * rotor; from memory.
   */
  public static final double IDLE_POWER = 0.25;

  private static final double MOST_SLIP = 0.5; // ratio

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if the slip is not between 0 and 0.5 or the pull-out not above
   *     1 and finite
   */
  public InductionMachine {
    if (!(ratedSlip > 0 && ratedSlip < MOST_SLIP && pullOut > 1 && Double.isFinite(pullOut))) {
      throw new IllegalArgumentException(
          "a rated slip lies between 0 and 0.5 and a pull-out torque above 1, not %s and %s"
              .formatted(ratedSlip, pullOut));
    }
  }

  /**
   * The slip at which it pulls most.
   *
   * @return the slip, as a ratio of the rated synchronous speed; above 1 for a motor that pulls
   *     most before it turns
   */
  public double pullOutSlip() {
    return ratedSlip * (pullOut + Math.sqrt(pullOut * pullOut - 1));
  }

  /**
   * The torque.
   *
   * @param slip the lag behind the field by the rated synchronous speed, 0 or more; 1 at standstill
   *     at rated frequency
   * @return the torque at rated flux as a ratio of the rated one
   */
  public double torque(double slip) {
    double x = slip / pullOutSlip();
    return 2 * pullOut * x / (1 + x * x);
  }

  /**
   * How the torque rises with the slip.
   *
   * @param slip the lag behind the field by the rated synchronous speed, 0 or more
   * @return the change of the torque at rated flux for each unit of the slip, as a ratio of the
   *     rated one; below 0 beyond pull-out
   */
  public double stiffness(double slip) {
    double most = pullOutSlip();
    double x = slip / most;
    double square = 1 + x * x;
    return 2 * pullOut * (1 - x * x) / (square * square * most);
  }

  /**
   * The reactive current that the stray field of the rotor takes, beyond that at rated load.
   *
   * @param slip the lag behind the field by the rated synchronous speed, 0 or more
   * @return the current at rated flux as a ratio of the active one of the rotor at rated load;
   *     below 0 for less than rated load
   */
  public double strayCurrent(double slip) {
    return (torque(slip) * slip - ratedSlip) / pullOutSlip();
  }

  /**
   * The current at rated voltage and frequency.
   *
   * @param slip the slip, 0 to 1
   * @param powerFactor the power factor at rated load, above 0, at most 1
   * @param idlePower the part of the rated power that does not reach the rotor, as a ratio, 0 or
   *     more, below 1
   * @return the current as a ratio of the rated one
   */
  public double current(double slip, double powerFactor, double idlePower) {
    double rotor = (1 - idlePower) * powerFactor;
    double active = idlePower * powerFactor + rotor * torque(slip);
    double reactive = Math.sqrt(1 - powerFactor * powerFactor) + rotor * strayCurrent(slip);
    return Math.hypot(active, reactive);
  }
}
