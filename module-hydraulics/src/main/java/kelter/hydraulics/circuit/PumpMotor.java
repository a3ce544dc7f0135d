package kelter.hydraulics.circuit;

/**
 * How fast a motor turns under a load. Speeds are ratios of the rated speed, torques ratios of the
 * torque at the rated point of the pump.
 */
public sealed interface PumpMotor {

  /**
   * The speed at which motor and load agree.
   *
   * @param hydraulic the torque that the water would take at rated speed; it grows with the square
   *     of the speed; not negative
   * @param drag the torque of bearings, seals and rubbing, whatever the speed; not negative
   * @param supply what the motor is fed with
   * @return the speed as a ratio of the rated one; 0 if the motor cannot turn the load
   */
  double speed(double hydraulic, double drag, Supply supply);

  /**
   * A motor whose speed falls in proportion to its torque, as an induction motor's does up to its
   * pull-out torque: n = n0 (1 − s T / T_rated). The synchronous speed n0 goes with the frequency,
   * the torque for a given lag behind it, and the pull-out torque, with the square of the flux.
   *
   * <p>Source: the straight part of the torque curve, as in any handbook of electric machines; the
   * square of the voltage as in E. E. Kimberly, Electrical Engineering, section 20.16.
   *
   * @param ratedSlip the slip at the rated point, as a ratio of the synchronous speed, above 0 and
   *     below 0.5; small motors have 0.03 to 0.15 (from memory)
   * @param pullOut the greatest torque, as a ratio of the rated one, above 1; usually 1.8 to 2.5
   *     (from memory)
   */
  record Induction(double ratedSlip, double pullOut) implements PumpMotor {

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if the slip is not between 0 and 0.5 or the pull-out not
     *     above 1
     */
    public Induction {
      if (!(ratedSlip > 0 && ratedSlip < 0.5 && pullOut > 1)) {
        throw new IllegalArgumentException(
            "a rated slip lies between 0 and 0.5 and a pull-out torque above 1, not %s and %s"
                .formatted(ratedSlip, pullOut));
      }
    }

    @Override
    public double speed(double hydraulic, double drag, Supply supply) {
      double strength = supply.flux() * supply.flux();
      if (drag >= pullOut * strength) {
        return 0;
      }
      // r = (f - s (h r² + d) / strength) / (1 - s), so that r = 1 at h + d = 1: a quadratic in r.
      double lag = ratedSlip / (1 - ratedSlip) / strength;
      double constant = supply.frequency() / (1 - ratedSlip) - lag * drag;
      if (constant <= 0) {
        return 0;
      }
      double curvature = lag * hydraulic;
      // The root in the form that stays exact where the curvature goes to zero.
      return 2 * constant / (1 + Math.sqrt(1 + 4 * curvature * constant));
    }
  }

  /**
   * A synchronous motor: the speed of the supply up to its pull-out torque, and then none. A
   * permanent magnet pulls in proportion to the flux that the supply makes.
   *
   * @param pullOut the greatest torque, as a ratio of the rated one, above 1; small
   *     permanent-magnet drain pumps have about 1.5 to 2 (from memory)
   */
  record Synchronous(double pullOut) implements PumpMotor {

    /**
     * Checks the figure.
     *
     * @throws IllegalArgumentException if the pull-out is not above 1
     */
    public Synchronous {
      if (!(pullOut > 1)) {
        throw new IllegalArgumentException("a pull-out torque lies above 1, not at " + pullOut);
      }
    }

    @Override
    public double speed(double hydraulic, double drag, Supply supply) {
      double ratio = supply.frequency();
      return hydraulic * ratio * ratio + drag <= pullOut * supply.flux() ? ratio : 0;
    }
  }

  /**
   * A motor behind an inverter that holds its speed until the current, and with it the torque,
   * reaches its limit, and then gives way. What the inverter itself is fed with makes no
   * difference.
   *
   * @param limit the greatest torque, as a ratio of the rated one, 1 or more
   */
  record Inverter(double limit) implements PumpMotor {

    /**
     * Checks the figure.
     *
     * @throws IllegalArgumentException if the limit is below 1
     */
    public Inverter {
      if (!(limit >= 1)) {
        throw new IllegalArgumentException("a torque limit is 1 or more, not " + limit);
      }
    }

    @Override
    public double speed(double hydraulic, double drag, Supply supply) {
      if (hydraulic + drag <= limit) {
        return 1;
      }
      return drag >= limit ? 0 : Math.sqrt((limit - drag) / hydraulic);
    }
  }
}
