package kelter.electrical.heating;

import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.State;
import kelter.electrical.heating.Relay.Contact;
import kelter.electrical.rating.HeaterRating;

/**
 * A heating circuit while it should heat.
 *
 * @param state what faults have left
 * @param stated what is stated with the reading
 * @param idle the voltage at the outlet with nothing switched on, V
 * @param supply the voltage at the outlet, V
 * @param cold the resistance of the heater at 20 °C, Ohm
 * @param hot its resistance at work, Ohm
 * @param contacts the resistance of the contacts in series with it, Ohm; infinite if no current can
 *     flow
 * @param terminalJoint the resistance of the worst joint at the heater, Ohm
 * @param plugJoint the resistance of the worst joint from outlet to cord, Ohm
 * @param badJoints by how much both have risen, Ohm: with joints in order the power is the rated
 *     one
 */
record Operation(
    State state,
    Stated stated,
    double idle,
    double supply,
    double cold,
    double hot,
    double contacts,
    double terminalJoint,
    double plugJoint,
    double badJoints) {

  /** How much the mains change from one reading to the next, as a ratio; from memory. */
  static final double FROM_READING_TO_READING = 0.01;

  /**
   * The part of the tolerance by which cold and hot resistance of one heater do not agree, ratio:
   * 0.03 either way, as {@link HeaterRating#HOT_OVER_COLD} has it.
   */
  static final double HOT_AGAINST_COLD = 0.03 / Math.sqrt(3);

  /**
   * What is stated with a reading.
   *
   * @param voltage the voltage, which takes the place of the one in the state, V; NaN if none is
   * @param current the current, which takes the place of the one in the state for what is lost
   *     along a way, A; NaN if none is
   * @param warming how what is heated is warmed
   */
  record Stated(double voltage, double current, Medium.Warming warming) {}

  /**
   * How far readings of heaters with the same power and supply differ.
   *
   * @param power with what power of the voltage the figure goes
   * @param floor what there is at least, in the unit of the figure
   * @param warms whether it goes with how what is heated is warmed
   */
  record OfReading(double power, double floor, boolean warms) implements Spread<Operation> {

    OfReading(double power, double floor) {
      this(power, floor, false);
    }

    @Override
    public double of(double value, InOrder order, Operation at) {
      double drift = Double.isNaN(at.stated.voltage) ? power * FROM_READING_TO_READING : 0;
      double amount = warms ? at.stated.warming.uncertainty() : 0;
      return Math.hypot(floor, value * Math.hypot(Math.hypot(HOT_AGAINST_COLD, drift), amount));
    }
  }

  private double current(double voltage) {
    return voltage / (hot + contacts + badJoints);
  }

  private double power(double voltage) {
    double current = current(voltage);
    return current * current * hot;
  }

  private double voltage() {
    return stated.voltage > 0 ? stated.voltage : supply;
  }

  /** Current while it heats, A. */
  double current() {
    return current(voltage());
  }

  /** Power while it heats, W. */
  double power() {
    return power(voltage());
  }

  /** Voltage at the terminals of the heater, V. */
  double terminalVoltage() {
    return current(supply) * hot;
  }

  /** Voltage across the worst joint at the heater, V. */
  double jointDrop() {
    return flowing() * terminalJoint;
  }

  /**
   * Voltage along one conductor from the outlet to the machine, V.
   *
   * @param conductor its resistance without the joints, Ohm
   */
  double cordDrop(double conductor) {
    return flowing() * (conductor + plugJoint);
  }

  private double flowing() {
    return stated.current > 0 ? stated.current : current(supply);
  }

  /** How fast water warms, K/s, or how much warmer air gets, K, by the mean power. */
  double warming() {
    return power()
        * state.of(CircuitFigure.DUTY)
        * stated.warming.byWatt()
        / state.of(CircuitFigure.AIRFLOW);
  }

  /** Voltage across the contact of a relay, V: that of the mains where it stays open. */
  double contactDrop() {
    return Relay.isHeldOpen(state) ? supply : current(supply) * state.of(Contact.RESISTANCE);
  }
}
