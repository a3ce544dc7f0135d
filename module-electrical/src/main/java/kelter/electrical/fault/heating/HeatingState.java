package kelter.electrical.fault.heating;

import java.util.Arrays;
import kelter.electrical.component.Electrical;
import kelter.electrical.rating.HeaterRating;

/**
 * The heating circuit at one operating point. Made healthy for each forecast, changed by the faults
 * that are there, read by the answers, and dropped.
 */
final class HeatingState {

  /** What an open circuit measures, Ohm. */
  static final double OPEN = Electrical.RESISTANCE.high();

  /** A heater in order against earth, Ohm; from memory. */
  private static final double HEALTHY_INSULATION = 3e8;

  /** A closed contact or whole link on an ordinary meter, Ohm; from memory. */
  private static final double CLOSED = 0.1;

  /** A relay contact in order, Ohm; from memory. */
  private static final double CONTACT = 0.02;

  /** How many times the rated current a fuse or circuit-breaker does not bear; from memory. */
  private static final double OVERLOAD = 4;

  /** Probability that a welded contact is found closed though it should be open. */
  static final double WELDED = 0.99;

  final double ratedPower;
  final double ratedVoltage;

  /** How many like elements of the heater lie in parallel. */
  final int elements;

  final double[] link;
  final double[] contact;
  final double[] burns;
  final double[] burntSmell;
  final double[] closedWhenOff;
  final double[] coil;
  final double[] sensorFactor;

  /** By how much each sensor reads too warm, K. */
  final double[] tooWarm;

  /** By how much each sensor is warmer than what it should sense, K. */
  final double[] offBy;

  final double[] offSeat;

  /** Cold resistance of a heater of this kind in this state, Ohm. */
  double heater;

  /** Resistance of this very heater over that of its kind, within its tolerance. */
  double ofThisHeater = 1;

  /** Hot over cold resistance. */
  private final double hotOverCold;

  /** Voltage at the outlet without load, V. */
  double mains;

  /** Share of it that is left under load. */
  double reaching = 1;

  /** What leaks beside the heater's own insulation, Ohm. */
  double leak = Double.POSITIVE_INFINITY;

  /** What leaks elsewhere in the appliance, Ohm. */
  double otherLeak = Double.POSITIVE_INFINITY;

  /** Whether no current can flow for another reason than the heater. */
  boolean interrupted;

  /** Share of the time in which it heats while it should. */
  double duty = 1;

  /** Share of the wanted rise of temperature that is reached. */
  double reached = 1;

  /** Flow of air over the one in order. */
  double airflow = 1;

  /** Scale or lint, from 0 to 1. */
  double deposit = 0.15;

  /** Burnt look of the plug, from 0 to 1. */
  double plugBurns = 0.1;

  /** Probability that plug or cord get hot. */
  double plugHot = 0.03;

  /** Probability that the sheath is damaged. */
  double sheathDamaged = 0.02;

  /** Probability that the marking differs. */
  double markingDiffers = 0.02;

  /** Probability that it gets too hot. */
  double overheats = 0.02;

  HeatingState(HeatingGroup group) {
    HeaterRating rating = group.rating();
    ratedPower = rating.power();
    ratedVoltage = rating.voltage();
    mains = rating.mains();
    elements = rating.elements();
    heater = rating.cold();
    hotOverCold = ratedVoltage * ratedVoltage / (ratedPower * rating.cold());
    link = filled(group.links().size(), CLOSED);
    contact = filled(group.relays().size(), CONTACT);
    burns = filled(group.relays().size(), 0.1);
    burntSmell = filled(group.relays().size(), 0.02);
    closedWhenOff = filled(group.relays().size(), 0.01);
    coil = filled(group.relays().size(), 1);
    sensorFactor = filled(group.sensors().size(), 1);
    tooWarm = filled(group.sensors().size(), 0);
    offBy = filled(group.sensors().size(), 0);
    offSeat = filled(group.sensors().size(), 0.01);
  }

  private static double[] filled(int length, double value) {
    double[] all = new double[length];
    Arrays.fill(all, value);
    return all;
  }

  /** Resistance to earth, Ohm: the heater's own insulation and the leak side by side. */
  double insulation() {
    return 1 / (1 / HEALTHY_INSULATION + 1 / leak);
  }

  /** Resistance of the whole appliance to earth, Ohm. */
  double applianceInsulation() {
    return 1 / (1 / insulation() + 1 / otherLeak);
  }

  /** Whether anything leaks anywhere. */
  boolean anyLeak() {
    return !Double.isInfinite(Math.min(leak, otherLeak));
  }

  /** Whether the contact of a relay is welded. */
  boolean isWelded(int relay) {
    return closedWhenOff[relay] == WELDED;
  }

  /** Whether it heats whatever the control wants: each contact in the circuit is welded. */
  boolean allWelded() {
    for (int i = 0; i < closedWhenOff.length; i++) {
      if (!isWelded(i)) {
        return false;
      }
    }
    return closedWhenOff.length > 0;
  }

  /**
   * Whether so much current would flow that the fuse or circuit-breaker acts at once. What mains
   * and heaters differ from their ratings is nothing beside that.
   */
  boolean overloaded() {
    double usual = reaching * ratedVoltage / (heater * hotOverCold);
    return usual > OVERLOAD * ratedPower / ratedVoltage;
  }

  /** Voltage at the outlet while it should heat, V. */
  double supply() {
    return mains * reaching;
  }

  /** Current while it heats, A. */
  double current() {
    return current(supply());
  }

  /** Current while it heats at a voltage, V, at the outlet under load, A. */
  double current(double voltage) {
    if (interrupted || overloaded()) {
      return 0;
    }
    double series = 0;
    for (double one : contact) {
      series += one;
    }
    return voltage / (hot() + series);
  }

  /** Cold resistance of the heater, Ohm. */
  double cold() {
    return heater * ofThisHeater;
  }

  /** Resistance of the heater at work, Ohm. */
  private double hot() {
    return cold() * hotOverCold;
  }

  /** Voltage at the terminals while it heats, V. */
  double terminalVoltage() {
    return current() * hot();
  }

  /** Power of the heater while it heats at a voltage, V, at the outlet under load, W. */
  double power(double voltage) {
    double current = current(voltage);
    return current * current * hot();
  }

  /** Heat over the heat in order, all causes together. */
  double share() {
    return power(supply()) / ratedPower * duty * reached;
  }
}
