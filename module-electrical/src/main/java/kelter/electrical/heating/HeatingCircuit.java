package kelter.electrical.heating;

import kelter.core.diagnosis.model.Circumstances;
import kelter.core.diagnosis.model.State;
import kelter.core.job.Conditions;
import kelter.electrical.component.Electrical;
import kelter.electrical.heating.HeatingFigures.Circuit;
import kelter.electrical.heating.HeatingFigures.Relay;
import kelter.electrical.heating.HeatingFigures.Sensor;
import kelter.electrical.rating.HeaterRating;

/**
 * A heater in series with the contacts of its relays on a supply that sags under load. A contact
 * closes as its coil and the temperature sensors let it; a welded one is closed whatever they do.
 *
 * @param rating what the heater has when it is in order
 * @param medium what it heats
 */
record HeatingCircuit(HeaterRating rating, Medium medium) implements Circumstances<Operation> {

  /** How many times the rated current a fuse or circuit-breaker does not bear; from memory. */
  private static final double OVERLOAD = 4;

  @Override
  public Solver<Operation> under(Conditions conditions) {
    return new Under(
        this,
        new Operation.Stated(
            conditions.si(Electrical.VOLTAGE, Double.NaN),
            medium.isStated(conditions),
            medium.warming(conditions)));
  }

  private record Under(HeatingCircuit circuit, Operation.Stated stated)
      implements Solver<Operation> {
    @Override
    public Operation in(State state) {
      return circuit.solve(state, stated);
    }
  }

  private Operation solve(State state, Operation.Stated stated) {
    double ofItsKind =
        state.has(Circuit.HEATER_OPEN)
            ? HeatingFigures.OPEN
            : rating.cold() * state.of(Circuit.RESISTANCE);
    double cold = ofItsKind * state.of(Circuit.TOLERANCE);
    double idle = rating.mains() * state.of(Circuit.MAINS);
    boolean overloaded = isOverload(ofItsKind, state.of(Circuit.REACHING));
    State[] relays = state.each(Relay.class);
    return new Operation(
        state,
        stated,
        rating.power(),
        idle,
        idle * state.of(Circuit.REACHING),
        cold,
        cold * hotOverCold(),
        overloaded || isInterrupted(state, relays) ? Double.POSITIVE_INFINITY : contacts(relays),
        overloaded);
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
      series += relay.of(Relay.CONTACT);
    }
    return series;
  }

  private static boolean isInterrupted(State state, State[] relays) {
    boolean allWelded = relays.length > 0;
    for (State relay : relays) {
      if (isHeldOpen(relay)) {
        return true;
      }
      allWelded &= relay.has(Relay.WELDED);
    }
    return state.has(Circuit.INTERRUPTED) || !allWelded && isUnreadable(state);
  }

  /** Whether the contact of a relay stays open because its coil is. */
  static boolean isHeldOpen(State relay) {
    return relay.has(Relay.COIL_OPEN) && !relay.has(Relay.WELDED);
  }

  /** Whether a sensor is open or shorted, so that the control does not let it heat. */
  private static boolean isUnreadable(State state) {
    for (State sensor : state.each(Sensor.class)) {
      if (sensor.of(Sensor.RESISTANCE) != Sensor.RESISTANCE.inOrder()) {
        return true;
      }
    }
    return false;
  }
}
