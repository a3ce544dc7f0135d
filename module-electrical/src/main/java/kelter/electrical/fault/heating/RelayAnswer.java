package kelter.electrical.fault.heating;

import kelter.electrical.fault.StateModel.Answer;
import kelter.electrical.fault.StateModel.Forecast;

/**
 * How the state of a heating circuit shows at one of its relays.
 *
 * @param observable what is asked
 * @param place the place of the relay among those of the circuit
 * @param coil the resistance of its coil in order, Ohm; NaN where it is not known, and then not
 *     asked
 */
record RelayAnswer(String observable, int place, double coil) implements Answer<HeatingState> {

  @Override
  public Forecast of(HeatingState state) {
    return switch (observable) {
      case "coil-resistance" -> new Forecast(coil * state.coil[place], 0.1);
      case "voltage-drop" -> voltageDrop(state);
      case "contact-burns" -> new Forecast(state.burns[place], 0.13);
      case "burnt-smell" -> Forecast.chance(state.burntSmell[place]);
      case "closed-when-off" -> Forecast.chance(state.closedWhenOff[place]);
      default -> throw new IllegalArgumentException("no forecast of '" + observable + "'");
    };
  }

  private Forecast voltageDrop(HeatingState state) {
    boolean stays = state.coil[place] > 1;
    double drop = stays ? state.supply() : state.current() * state.contact[place];
    return new Forecast(drop, Math.hypot(0.1, 0.3 * drop));
  }
}
