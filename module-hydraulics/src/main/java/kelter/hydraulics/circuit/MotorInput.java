package kelter.hydraulics.circuit;

/**
 * The power and the current that a small motor on alternating current takes at an operating point.
 *
 * <p>The power runs in a straight line from what the motor takes without a load to the rated one.
 * Of the current, what does work follows the power, what magnetises follows the flux, and the two
 * stand at right angles, I = √((P/U)² + Iq²). It holds for a sinusoidal supply; a motor behind an
 * inverter draws a distorted current that is higher, but rises and falls with the power all the
 * same.
 *
 * <p>Source: power triangle, IEC 60050-131, 131-11-44 (reactive power); number from memory.
 *
 * @param active the current that does work at the rated point, in A, above 0
 * @param reactive the current that magnetises at rated flux, in A, not negative
 */
public record MotorInput(double active, double reactive) {

  /** The power of a small motor without a load, as a ratio of the rated one; from memory. */
  private static final double IDLE_POWER = 0.25;

  /** The power of a small stalled motor, as a ratio of the rated one; from memory. */
  private static final double STALLED_POWER = 1.2;

  /** The current of a small stalled motor, as a ratio of the rated one; from memory. */
  private static final double STALLED_CURRENT = 1.3;

  /**
   * The currents by a nameplate.
   *
   * @param power the rated power input, W, above 0
   * @param voltage the rated voltage, V, above 0
   * @param current the rated current, A
   * @return the two currents; without a magnetising part if the nameplate leaves none
   */
  public static MotorInput rated(double power, double voltage, double current) {
    double active = power / voltage;
    return new MotorInput(active, Math.sqrt(Math.max(0, current * current - active * active)));
  }

  /**
   * The power at an operating point.
   *
   * @param point the point
   * @return the electric power as a ratio of the rated one
   */
  public static double powerShare(OperatingPoint point) {
    return point.turns() ? IDLE_POWER + (1 - IDLE_POWER) * point.shaftPower() : STALLED_POWER;
  }

  /**
   * The current at an operating point.
   *
   * @param point the point
   * @param supply what the motor is fed with
   * @return the current in A
   */
  public double current(OperatingPoint point, Supply supply) {
    if (!point.turns()) {
      return STALLED_CURRENT * supply.voltage() * Math.hypot(active, reactive);
    }
    return Math.hypot(active * powerShare(point) / supply.voltage(), reactive * supply.flux());
  }
}
