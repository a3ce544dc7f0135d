package kelter.hydraulics.part;

import java.util.Optional;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Nameplate;
import kelter.hydraulics.circuit.Motor;
import kelter.hydraulics.circuit.Supply;

/**
 * What a pump was made for and what it runs on, as a job tells it.
 *
 * <p>It was made for what its own nameplate says, or else that of the machine. It runs on what the
 * conditions of a reading say, or else at the frequency of the machine's nameplate, so that a spare
 * part made for 60 Hz in a machine for 50 Hz is told as such. What neither says is taken as rated.
 * A motor behind an inverter does not notice.
 *
 * @param frequency the frequency for which the pump was made, in Hz
 * @param voltage the voltage for which it was made, in V
 * @param mains the frequency on which it runs, in Hz
 * @param torqueLimit the greatest torque of a motor behind an inverter as a ratio of its rated one;
 *     empty for a motor on the mains
 */
public record RatedSupply(
    Optional<Double> frequency,
    Optional<Double> voltage,
    Optional<Double> mains,
    Optional<Double> torqueLimit) {

  /** The word for the frequency of the supply. */
  static final String FREQUENCY = "frequency";

  /** The word for its voltage. */
  static final String VOLTAGE = "voltage";

  /** The word for the torque at which an inverter gives way. */
  public static final String TORQUE_LIMIT = "torque-limit";

  /**
   * What is known of a pump.
   *
   * @param pump a pump
   * @param machine the nameplate of the machine that it sits in
   * @return what it was made for
   */
  public static RatedSupply of(Component pump, Nameplate machine) {
    Nameplate own = pump.nameplate();
    return new RatedSupply(
        Given.si(own.frequency(), machine.frequency()),
        Given.si(own.voltage(), machine.voltage()),
        Given.si(machine.frequency()),
        Given.si(pump.figure(TORQUE_LIMIT)));
  }

  /**
   * What the motor is fed with.
   *
   * @param conditions the conditions of a reading
   * @return the supply by the rated one
   * @throws IllegalArgumentException if frequency or voltage are far from what the pump was made
   *     for
   */
  public Supply supply(Conditions conditions) {
    if (torqueLimit.isPresent()) {
      return Supply.RATED;
    }
    Optional<Double> stated = Given.si(conditions.figure(FREQUENCY));
    double hertz = ratio(stated.isPresent() ? stated : mains, frequency);
    double volts = ratio(Given.si(conditions.figure(VOLTAGE)), voltage);
    return hertz == 1 && volts == 1 ? Supply.RATED : new Supply(hertz, volts);
  }

  private static double ratio(Optional<Double> now, Optional<Double> rated) {
    return now.isPresent() && rated.isPresent() ? now.get() / rated.get() : 1;
  }

  /**
   * The motor.
   *
   * @param onTheMains what it is if no inverter feeds it
   * @return that motor, or one behind an inverter if the job gives its limit
   * @throws IllegalArgumentException if the limit is below the rated torque
   */
  public Motor motor(Motor onTheMains) {
    return torqueLimit.isPresent() ? new Motor.Inverter(torqueLimit.get()) : onTheMains;
  }
}
