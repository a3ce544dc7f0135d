package kelter.electrical.heating;

import kelter.core.diagnosis.model.Circumstances;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.State;
import kelter.core.job.Conditions;
import kelter.electrical.component.Electrical;
import kelter.electrical.heating.Relay.Contact;
import kelter.electrical.heating.TemperatureSensor.Sensor;
import kelter.electrical.rating.HeaterRating;
import kelter.electrical.supply.GlowingConnection;

/**
 * A heater in series with joints and the contacts of its relays on a supply that sags under load. A
 * contact closes as its coil and the temperature sensors let it; a welded one is closed whatever
 * they do. A joint has the resistance with which it makes its heat at the rated current ({@link
 * GlowingConnection}).
 *
 * @param rating what the heater has when it is in order
 * @param medium what it heats
 * @param balance what is heated along with water
 * @param glowing the resistance of a joint that glows at the rated current, Ohm
 */
record HeatingCircuit(HeaterRating rating, Medium medium, HeatBalance balance, double glowing)
    implements Circumstances<Operation> {

  /** How many times the rated current a fuse or circuit-breaker does not bear; from memory. */
  private static final double OVERLOAD = 4;

  /** Heat of a joint in order over that of a glowing one, as a ratio; from memory. */
  static final double SOUND_JOINT = 0.01;

  /** The part of the loss under load that is there with nothing switched on; from memory. */
  private static final double LOST_IDLE = 0.2;

  /** The circuit of a heater. */
  static HeatingCircuit of(HeatingGroup group) {
    HeaterRating rating = group.rating();
    double current = rating.lineCurrent();
    return new HeatingCircuit(
        rating,
        group.medium(),
        group.balance(),
        GlowingConnection.heat(current) / (current * current));
  }

  @Override
  public Solver<Operation> under(Conditions conditions) {
    return new Under(
        this,
        new Operation.Stated(
            conditions.si(Electrical.VOLTAGE, Double.NaN),
            conditions.si(Electrical.CURRENT, Double.NaN),
            medium.warming(balance, conditions)));
  }

  private record Under(HeatingCircuit circuit, Operation.Stated stated)
      implements Solver<Operation> {
    @Override
    public Operation in(State state) {
      return circuit.solve(state, stated);
    }
  }

  /** How far voltages of machines with the same supply differ, V. */
  Spread<Object> fromReadingToReading() {
    return Spread.constant(Operation.FROM_READING_TO_READING * rating.voltage());
  }

  private Operation solve(State state, Operation.Stated stated) {
    double ofItsKind =
        state.has(CircuitFigure.HEATER_OPEN)
            ? Electrical.RESISTANCE.high()
            : rating.cold() * state.of(CircuitFigure.RESISTANCE);
    double cold = ofItsKind * state.of(CircuitFigure.TOLERANCE);
    double mains = rating.mains() * state.of(CircuitFigure.MAINS);
    double reaching = state.of(CircuitFigure.REACHING);
    boolean overloaded = isOverload(ofItsKind, reaching);
    double terminal = state.of(CircuitFigure.TERMINAL_JOINT);
    double plug = state.of(CircuitFigure.PLUG_JOINT);
    State[] relays = state.each(Contact.ALL);
    return new Operation(
        state,
        stated,
        mains * (1 - LOST_IDLE * (1 - reaching)),
        mains * reaching,
        cold,
        cold * hotOverCold(),
        overloaded || isInterrupted(state, relays) ? Double.POSITIVE_INFINITY : contacts(relays),
        glowing * terminal,
        glowing * plug,
        glowing * (terminal + plug - 2 * SOUND_JOINT));
  }

  /** Resistance at work over the one at 20 °C, as the rating has it. */
  private double hotOverCold() {
    return rating.voltage() * rating.voltage() / (rating.power() * rating.cold());
  }

  /**
   * Whether so much current would flow that the fuse or circuit-breaker acts at once. What mains
   * and heaters differ from their ratings is nothing beside that.
   */
  private boolean isOverload(double cold, double reaching) {
    double usual = reaching * rating.voltage() / (cold * hotOverCold());
    return usual > OVERLOAD * rating.power() / rating.voltage();
  }

  private static double contacts(State[] relays) {
    double series = 0;
    for (State relay : relays) {
      series += relay.of(Contact.RESISTANCE);
    }
    return series;
  }

  private static boolean isInterrupted(State state, State[] relays) {
    boolean allWelded = relays.length > 0;
    for (State relay : relays) {
      if (Relay.isHeldOpen(relay)) {
        return true;
      }
      allWelded &= relay.has(Contact.WELDED);
    }
    return state.has(CircuitFigure.INTERRUPTED) || !allWelded && isUnreadable(state);
  }

  private static boolean isUnreadable(State state) {
    for (State sensor : state.each(Sensor.ALL)) {
      if (TemperatureSensor.isUnreadable(sensor)) {
        return true;
      }
    }
    return false;
  }
}
