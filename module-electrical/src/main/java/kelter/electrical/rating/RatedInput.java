package kelter.electrical.rating;

import java.util.Optional;
import kelter.core.check.Limits;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.RatedRange;
import kelter.core.law.PowerInputBand;
import kelter.core.quantity.QuantityFormat;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.electrical.heater.HeaterResistance;

/**
 * To which voltage the rated power of a heater belongs where its nameplate has a range of voltages
 * (IEC 60335-1, clauses 7.5 and 10.1).
 *
 * <p>Limits of voltage that lie no more than 10 % of their mean apart: one power belongs to the
 * mean, and is held against the band of {@link PowerInputBand} there. Limits further apart: the
 * band is held at both; one power is taken as that at the upper limit, and what belongs to the
 * lower one is left open. Two powers belong to the two limits, each to its own.
 *
 * <p>A heater follows Joule's law: it takes P (V / U)² at the voltage V.
 *
 * @param low voltage and power at the lower limit
 * @param high voltage and power at the upper limit
 * @param assumed voltage and power that are taken as those of the heater
 * @param basis why
 */
public record RatedInput(Point low, Point high, Point assumed, Basis basis) {

  /** How far apart the limits may lie for one power to belong to their mean, as a ratio of it. */
  public static final double FROM_MEAN = 0.10;

  /** Where the rule for ranges comes from. */
  public static final Source RANGES =
      new Source(
          PowerInputBand.SOURCE.document()
              + "; for a range of voltages clauses 10.1 (second-hand) and 7.5",
          Standing.FROM_MEMORY);

  /** At or below this rated power the table has no lower deviation, W. */
  private static final double NO_BAND_UP_TO = 25;

  /** Half-width over standard deviation of a triangular distribution (JCGM 100:2008, 4.3.9). */
  private static final double TRIANGULAR = Math.sqrt(6);

  /**
   * A voltage and the power that belongs to it.
   *
   * @param voltage the voltage, V
   * @param power the power, W
   */
  public record Point(double voltage, double power) {

    /** The resistance at work that belongs to both, Ohm. */
    double resistance() {
      return HeaterResistance.resistance(power, voltage);
    }
  }

  /** Why a voltage is taken. */
  public enum Basis {
    /** The nameplate has one voltage and one power. */
    ONE_VOLTAGE,
    /** The limits are close, and the power belongs to their mean. */
    MEAN,
    /** The limits are far apart, and it is open to which the power belongs. */
    OPEN,
    /** The nameplate has a power for each limit. */
    EACH
  }

  /**
   * The rated voltage of a heater: that of its own nameplate, else of the appliance's.
   *
   * @param appliance the machine
   * @param heater one of its heaters
   * @return the voltage or range of voltages, or empty
   */
  public static Optional<RatedRange> voltage(Appliance appliance, Component heater) {
    Optional<RatedRange> own = heater.nameplate().voltage();
    return own.isPresent() ? own : appliance.nameplate().voltage();
  }

  /**
   * Reads voltage and power of a heater.
   *
   * @param appliance the machine
   * @param heater one of its heaters
   * @return what its nameplate says, or empty if it has no power, or neither it nor the machine has
   *     a voltage
   */
  public static Optional<RatedInput> of(Appliance appliance, Component heater) {
    Optional<RatedRange> voltage = voltage(appliance, heater);
    Optional<RatedRange> power = heater.nameplate().power();
    return voltage.isPresent() && power.isPresent()
        ? Optional.of(of(voltage.get(), power.get()))
        : Optional.empty();
  }

  /**
   * Brings voltage and power of a nameplate together.
   *
   * @param voltage the rated voltages
   * @param power the rated powers
   * @return which belongs to which
   */
  public static RatedInput of(RatedRange voltage, RatedRange power) {
    Point low = new Point(voltage.low().si(), power.low().si());
    Point high = new Point(voltage.high().si(), power.high().si());
    if (power.isRange()) {
      double resistance = (low.resistance() + high.resistance()) / 2;
      double mean = voltage.meanSi();
      return new RatedInput(low, high, new Point(mean, mean * mean / resistance), Basis.EACH);
    }
    if (!voltage.isRange()) {
      return new RatedInput(low, high, high, Basis.ONE_VOLTAGE);
    }
    return isWide(voltage)
        ? new RatedInput(low, high, high, Basis.OPEN)
        : new RatedInput(low, high, new Point(voltage.meanSi(), low.power()), Basis.MEAN);
  }

  /**
   * Whether the limits of a range lie further apart than 10 % of their mean (IEC 60335-1, 10.1).
   *
   * @param voltage the rated voltages
   * @return whether they do
   */
  public static boolean isWide(RatedRange voltage) {
    return voltage.high().si() - voltage.low().si() > FROM_MEAN * voltage.meanSi();
  }

  /**
   * Whether the table of deviations has a lower one, without which there is no band.
   *
   * @return whether the power is above 25 W
   */
  public boolean hasBand() {
    return low.power > NO_BAND_UP_TO;
  }

  /**
   * What the heater may measure at working temperature.
   *
   * @return least and greatest resistance, Ohm
   * @throws IllegalArgumentException if there is no band
   */
  public Limits resistance() {
    Limits first = HeaterResistance.band(first().power, first().voltage);
    Limits second = HeaterResistance.band(second().power, second().voltage);
    return new Limits(Math.min(first.low(), second.low()), Math.max(first.high(), second.high()));
  }

  /**
   * What the heater may take at voltages between two.
   *
   * @param least the least voltage, V
   * @param most the greatest voltage, V
   * @return least power at the least and greatest power at the greatest voltage, W
   */
  public Limits power(double least, double most) {
    return new Limits(
        Math.min(
            at(least, first(), PowerInputBand.TABLE.heating(first().power).low()),
            at(least, second(), PowerInputBand.TABLE.heating(second().power).low())),
        Math.max(
            at(most, first(), PowerInputBand.TABLE.heating(first().power).high()),
            at(most, second(), PowerInputBand.TABLE.heating(second().power).high())));
  }

  /** A power at the voltage of a point, brought to another voltage, W. */
  private static double at(double voltage, Point point, double power) {
    double ratio = voltage / point.voltage;
    return power * ratio * ratio;
  }

  private Point first() {
    return basis == Basis.MEAN ? assumed : low;
  }

  private Point second() {
    return basis == Basis.MEAN ? assumed : high;
  }

  /**
   * How far the resistance may be off because the voltage that the power belongs to was taken: what
   * was taken is likeliest, the limit that lies farthest from it least likely (own choice).
   *
   * @return the standard uncertainty as a ratio of the resistance; 0 for one voltage
   */
  public double uncertainty() {
    double taken = assumed.resistance();
    double off = Math.max(Math.abs(low.resistance() - taken), Math.abs(high.resistance() - taken));
    return off / taken / TRIANGULAR;
  }

  /**
   * Where a limit by this rating comes from.
   *
   * @param ofOneVoltage where it comes from if the nameplate has one voltage and one power
   * @return that, or the rule for ranges
   */
  public Source source(Source ofOneVoltage) {
    return basis == Basis.ONE_VOLTAGE ? ofOneVoltage : RANGES;
  }

  /**
   * What was taken, for a person.
   *
   * @return a remark, empty for one voltage and one power
   */
  public String remark() {
    return switch (basis) {
      case ONE_VOLTAGE -> "";
      case MEAN ->
          "power taken as that at "
              + volts(assumed)
              + ", the mean of "
              + volts(low)
              + " to "
              + volts(high);
      case OPEN ->
          "limits for "
              + volts(low)
              + " and for "
              + volts(high)
              + ", because the nameplate does not say to which its power belongs";
      case EACH ->
          watts(low) + " taken at " + volts(low) + ", " + watts(high) + " at " + volts(high);
    };
  }

  private static String volts(Point point) {
    return QuantityFormat.plain(point.voltage) + " V";
  }

  private static String watts(Point point) {
    return QuantityFormat.plain(point.power) + " W";
  }

  /**
   * A remark with the one on the rating before it.
   *
   * @param remark a remark
   * @return both, as far as there are any
   */
  public String remark(String remark) {
    if (basis == Basis.ONE_VOLTAGE) {
      return remark;
    }
    String own = remark();
    return remark.isEmpty() ? own : own + "; " + remark;
  }
}
