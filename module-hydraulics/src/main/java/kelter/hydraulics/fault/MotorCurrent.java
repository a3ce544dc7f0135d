package kelter.hydraulics.fault;

import java.util.Optional;
import kelter.core.job.Component;
import kelter.hydraulics.circuit.OperatingPoint;
import kelter.hydraulics.circuit.Supply;
import kelter.hydraulics.part.Given;
import kelter.hydraulics.part.RatedSupply;

/**
 * The current of a small motor on alternating current: what does work follows the power, what
 * magnetises follows the flux, and the two stand at right angles, I = √((P/U)² + Iq²).
 *
 * <p>It holds for a sinusoidal supply; a motor behind an inverter draws a distorted current that is
 * higher, but rises and falls with the power all the same.
 *
 * <p>Source: power triangle, IEC 60050-131, 131-11-44 (reactive power); number from memory.
 *
 * @param active the current that does work at the rated point, in A, above 0
 * @param reactive the current that magnetises at rated flux, in A, not negative
 */
public record MotorCurrent(double active, double reactive) {

  /** The current of a small stalled motor, as a ratio of the rated one; from memory. */
  private static final double STALLED = 1.3;

  /**
   * The current by the nameplate.
   *
   * @param pump a pump
   * @param supply what it was made for
   * @return the two currents, or empty if power, voltage or current is not known; without a
   *     magnetising part if the nameplate leaves none
   */
  public static Optional<MotorCurrent> of(Component pump, RatedSupply supply) {
    Optional<Double> power = Given.mean(pump.nameplate().power());
    Optional<Double> current = Given.si(pump.nameplate().current());
    if (power.isEmpty() || current.isEmpty() || supply.voltage().isEmpty()) {
      return Optional.empty();
    }
    double active = power.get() / supply.voltage().get();
    double square = current.get() * current.get() - active * active;
    return Optional.of(new MotorCurrent(active, Math.sqrt(Math.max(0, square))));
  }

  /**
   * The current at an operating point.
   *
   * @param point the point
   * @param supply what the motor is fed with
   * @return the current in A
   */
  public double at(OperatingPoint point, Supply supply) {
    if (!point.turns()) {
      return STALLED * supply.voltage() * Math.hypot(active, reactive);
    }
    double power = PumpFaults.electricPower(point.shaftPower(), true);
    return Math.hypot(active * power / supply.voltage(), reactive * supply.flux());
  }
}
