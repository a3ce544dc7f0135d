package kelter.hydraulics.circuit;

import kelter.core.law.InductionMachine;

/**
 * The power and the current that a small motor on alternating current takes at an operating point.
 *
 * <p>What an induction motor takes follows its slip, whether it turns or is held: the power that
 * crosses the air gap goes with the torque at that slip, and its current lies on a circle ({@link
 * InductionMachine}). One that is slow because of its capacitor or its winding has that slip too: a
 * field that turns backward takes away the torque, not the current, so that it draws more. Of other
 * motors the power runs in a straight line from what the motor takes without a load to the rated
 * one, and of the current what magnetises stays; held, they take what small ones take that may be
 * held for good.
 *
 * <p>What does work and what magnetises stand at right angles, I = √((P/U)² + Iq²). It holds for a
 * sinusoidal supply; a motor behind an inverter draws a distorted current that is higher, but rises
 * and falls with the power all the same.
 *
 * <p>Source: power triangle, IEC 60050-131, 131-11-44 (reactive power), number from memory; {@link
 * InductionMachine}; revolving fields of a single-phase motor, A. E. Fitzgerald and others,
 * Electric Machinery, chapter on single-phase motors, from memory.
 *
 * @param active the current that does work at the rated point, in A, above 0
 * @param reactive the current that magnetises at rated flux, in A, not negative
 */
public record MotorInput(double active, double reactive) {

  private static final double IDLE_POWER = InductionMachine.IDLE_POWER;

  /**
   * The power of a small synchronous motor that is held, as a ratio of the rated one; from memory.
   */
  private static final double STALLED_POWER = 1.2;

  /**
   * The current of a small synchronous motor that is held, as a ratio of the rated one; from
   * memory.
   */
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
   * @param motor the motor
   * @param point the point
   * @param supply what the motor is fed with
   * @return the electric power as a ratio of the rated one
   */
  public static double powerShare(PumpMotor motor, OperatingPoint point, Supply supply) {
    if (motor instanceof PumpMotor.Induction induction) {
      double torque = induction.machine().torque(induction.slip(point, supply));
      double flux = supply.flux();
      return IDLE_POWER + (1 - IDLE_POWER) * torque * flux * flux * supply.frequency();
    }
    return point.turns() ? IDLE_POWER + (1 - IDLE_POWER) * point.shaftPower() : STALLED_POWER;
  }

  /**
   * The current at an operating point.
   *
   * @param motor the motor
   * @param point the point
   * @param supply what the motor is fed with
   * @return the current in A
   */
  public double current(PumpMotor motor, OperatingPoint point, Supply supply) {
    double working = active * powerShare(motor, point, supply) / supply.voltage();
    if (motor instanceof PumpMotor.Induction induction) {
      double stray = induction.machine().strayCurrent(induction.slip(point, supply));
      double rotor = (1 - IDLE_POWER) * active;
      return Math.hypot(working, Math.max(0, reactive + rotor * stray) * supply.flux());
    }
    return point.turns()
        ? Math.hypot(working, reactive * supply.flux())
        : STALLED_CURRENT * supply.voltage() * Math.hypot(active, reactive);
  }
}
