package coffee.grinder;

import kelter.core.diagnosis.model.State;

/**
 * A dose that went through burrs in some state.
 *
 * @param state the state of the burrs
 * @param dose what was filled in, in kg
 * @param rate the grinding rate in order, in kg/s
 */
record Ground(State state, double dose, double rate) {

  /** How long it took, in s. */
  double time() {
    return GrindTime.time(dose, rate * state.of(BurrFigure.RATE));
  }

  /** What came out, in kg. */
  double out() {
    return dose * (1 - state.of(BurrFigure.KEPT));
  }
}
