package kelter.hydraulics.pumppart;

import kelter.core.diagnosis.model.State;
import kelter.hydraulics.circuit.OperatingPoint;
import kelter.hydraulics.circuit.Supply;
import kelter.hydraulics.water.Water;

/**
 * A pump in a state at its operating point.
 *
 * @param state the figures
 * @param point where pump and circuit agree
 * @param supply what the motor is fed with
 * @param water what it moves
 */
public record Running(State state, OperatingPoint point, Supply supply, Water water) {

  /** Whether no current can flow. */
  boolean isDead() {
    return isDead(state);
  }

  static boolean isDead(State state) {
    return state.has(PumpFigure.OPEN_WINDING) || state.has(PumpFigure.NO_VOLTAGE);
  }
}
