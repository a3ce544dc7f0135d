package kelter.hydraulics.pumppart;

import java.util.Optional;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Nameplate;
import kelter.core.job.RatedRange;
import kelter.core.quantity.QuantityFormat;
import kelter.hydraulics.circuit.PumpMotor;
import kelter.hydraulics.circuit.Supply;

/**
 * What a pump was made for and what it runs on, as a job tells it.
 *
 * <p>It was made for what its own nameplate says, or else that of the machine. It runs on what the
 * conditions of a reading say, or else at the frequency of the machine's nameplate, so that a spare
 * part made for 60 Hz in a machine for 50 Hz is told as such. What neither says is taken as rated.
 * A motor behind an inverter does not notice.
 *
 * <p>A machine for 50 Hz and 60 Hz is taken to run on that of them which goes with its voltage: 60
 * Hz from 100 V to 127 V and at 208 V, else 50 Hz; common practice, no source. Figures of a pump
 * that is made for both are taken as those at the frequency on which it runs. Of a range of
 * voltages its figures belong to the mean.
 *
 * @param frequency the frequencies for which the pump was made, in Hz
 * @param voltage the voltage for which it was made, or the mean of its range, in V
 * @param mains the frequency on which it runs where a reading does not say, in Hz
 * @param mainsTaken whether that is taken, because the machine is made for more than one
 * @param torqueLimit the greatest torque of a motor behind an inverter as a ratio of its rated one;
 *     NaN for a motor on the mains
 */
public record RatedSupply(
    Optional<RatedRange> frequency,
    Optional<Double> voltage,
    Optional<Double> mains,
    boolean mainsTaken,
    double torqueLimit) {

  /** Up to this voltage nets usually have 60 Hz, V. */
  private static final double SIXTY_UP_TO = 127;

  /** The voltage between the lines of a net of 60 Hz, V. */
  private static final double SIXTY_BETWEEN_LINES = 208;

  /**
   * What is known of a pump.
   *
   * @param pump a pump
   * @param machine the nameplate of the machine that it sits in
   * @return what it was made for
   */
  public static RatedSupply of(Component pump, Nameplate machine) {
    Nameplate own = pump.nameplate();
    Optional<RatedRange> volts = first(machine.voltage(), own.voltage());
    return new RatedSupply(
        first(own.frequency(), machine.frequency()),
        mean(first(own.voltage(), machine.voltage())),
        mains(machine.frequency(), volts),
        machine.frequency().isPresent() && machine.frequency().get().isRange(),
        pump.si(PumpWords.TORQUE_LIMIT));
  }

  private static Optional<Double> mean(Optional<RatedRange> rated) {
    return rated.isPresent() ? Optional.of(rated.get().meanSi()) : Optional.empty();
  }

  /** The mean of what a nameplate says, or what is taken where it says nothing. */
  static double mean(Optional<RatedRange> rated, double usual) {
    return rated.isPresent() ? rated.get().meanSi() : usual;
  }

  /** Whether an inverter feeds the motor. */
  boolean isInverter() {
    return !Double.isNaN(torqueLimit);
  }

  private static Optional<RatedRange> first(
      Optional<RatedRange> counts, Optional<RatedRange> otherwise) {
    return counts.isPresent() ? counts : otherwise;
  }

  private static Optional<Double> mains(
      Optional<RatedRange> frequency, Optional<RatedRange> voltage) {
    return frequency.isPresent()
        ? Optional.of(frequency.get().nearestSi(isOnSixty(voltage) ? 60 : 50))
        : Optional.empty();
  }

  /** Whether a net of this voltage usually has 60 Hz; common practice, no source. */
  private static boolean isOnSixty(Optional<RatedRange> voltage) {
    if (voltage.isEmpty()) {
      return false;
    }
    double low = voltage.get().low().si();
    double high = voltage.get().high().si();
    return high <= SIXTY_UP_TO || (low == SIXTY_BETWEEN_LINES && low == high);
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
    if (isInverter()) {
      return Supply.RATED;
    }
    double now =
        conditions.si(PumpWords.AT_FREQUENCY, mains.isPresent() ? mains.get() : Double.NaN);
    double hertz =
        Double.isNaN(now) || frequency.isEmpty() ? 1 : now / frequency.get().nearestSi(now);
    double volts =
        voltage.isPresent()
            ? conditions.si(PumpWords.AT_VOLTAGE, voltage.get()) / voltage.get()
            : 1;
    return hertz == 1 && volts == 1 ? Supply.RATED : new Supply(hertz, volts);
  }

  /** What had to be taken of the frequency; empty if nothing had to. */
  private String taken(Conditions conditions) {
    if (isInverter() || frequency.isEmpty()) {
      return "";
    }
    boolean stated = conditions.figure(PumpWords.AT_FREQUENCY).isPresent();
    String supply =
        mainsTaken && !stated
            ? QuantityFormat.plain(mains.orElseThrow())
                + " Hz taken as the frequency of the supply, because no reading states it."
            : "";
    String figures =
        frequency.get().isRange()
            ? "The pump is made for "
                + frequency.get().display()
                + ": its figures are taken as those at the frequency on which it runs."
            : "";
    return supply.isEmpty() || figures.isEmpty() ? supply + figures : supply + " " + figures;
  }

  /**
   * A remark with what had to be taken of the frequency behind it.
   *
   * @param remark a remark, may be empty
   * @param conditions the conditions of a reading
   * @return both, as far as there are any
   */
  public String remark(String remark, Conditions conditions) {
    String taken = taken(conditions);
    return remark.isEmpty() || taken.isEmpty() ? remark + taken : remark + " " + taken;
  }

  /**
   * The motor.
   *
   * @param onTheMains what it is if no inverter feeds it
   * @return that motor, or one behind an inverter if the job gives its limit
   * @throws IllegalArgumentException if the limit is below the rated torque
   */
  public PumpMotor motor(PumpMotor onTheMains) {
    return isInverter() ? new PumpMotor.Inverter(torqueLimit) : onTheMains;
  }
}
