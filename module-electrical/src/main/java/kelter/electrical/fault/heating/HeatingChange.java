package kelter.electrical.fault.heating;

import kelter.electrical.fault.EarthLeak;
import kelter.electrical.fault.StateModel.Change;

/**
 * What one fault changes in the heating circuit.
 *
 * @param effect what
 * @param i the place of its relay, sensor or thermal link among those of the circuit
 */
record HeatingChange(Effect effect, int i) implements Change<HeatingState> {

  /** What a heater shorted at its terminals keeps of its resistance. */
  private static final double WHOLE_SHORT = 0.01;

  /** A shorted sensor, as a factor of its resistance. */
  private static final double SENSOR_SHORT = 1e-3;

  /** By how much the worst drifted or loose sensor errs, K; from memory. */
  private static final double DRIFT = 12.5;

  /** What the faults of a heating circuit do. */
  enum Effect {
    SHORTS_TURNS,
    WEAKENS_HEATER,
    OPENS_ELEMENT,
    OPENS_HEATER,
    LEAKS,
    HOLDS_AIR,
    SCALES,
    LOWERS_VOLTAGE,
    LEAKS_ELSEWHERE,
    OPENS_LINK,
    BURNS_CONTACT,
    WELDS_CONTACT,
    OPENS_COIL,
    READS_TOO_WARM,
    READS_TOO_COLD,
    UNSEATS_SENSOR,
    SHORTS_SENSOR,
    OPENS_SENSOR
  }

  @Override
  public void apply(HeatingState state, double s) {
    switch (effect) {
      case SHORTS_TURNS, WEAKENS_HEATER, OPENS_ELEMENT, OPENS_HEATER, LEAKS -> heater(state, s);
      case HOLDS_AIR, SCALES -> deposit(state, s);
      case BURNS_CONTACT, WELDS_CONTACT, OPENS_COIL -> relay(state, s);
      case READS_TOO_WARM, READS_TOO_COLD, UNSEATS_SENSOR, SHORTS_SENSOR, OPENS_SENSOR ->
          sensor(state, s);
      case OPENS_LINK -> {
        state.link[i] = HeatingState.OPEN;
        state.interrupted = true;
      }
      case LOWERS_VOLTAGE -> {
        state.reaching = 1 - 0.3 * s;
        state.plugBurns = 0.3 + 0.5 * s;
        state.plugHot = 0.15 + 0.6 * s;
      }
      case LEAKS_ELSEWHERE -> state.otherLeak = EarthLeak.resistance(s);
    }
  }

  private void heater(HeatingState state, double s) {
    switch (effect) {
      case SHORTS_TURNS -> {
        state.heater *= Math.pow(WHOLE_SHORT, s);
        state.sheathDamaged = 0.3 + 0.4 * s;
      }
      case WEAKENS_HEATER -> {
        state.heater *= 1 + s;
        state.markingDiffers = 0.9;
      }
      case OPENS_ELEMENT -> state.heater *= state.elements / (state.elements - 1.0);
      case OPENS_HEATER -> {
        state.heater = HeatingState.OPEN;
        state.sheathDamaged = Math.max(state.sheathDamaged, 0.3);
      }
      default -> {
        state.leak = EarthLeak.resistance(s);
        state.sheathDamaged = Math.max(state.sheathDamaged, 0.15 + 0.45 * s);
      }
    }
  }

  private void deposit(HeatingState state, double s) {
    state.deposit = 0.35 + 0.6 * s;
    if (effect == Effect.SCALES) {
      state.duty *= 1 - 0.15 * s;
    } else {
      state.airflow *= 1 - 0.7 * s;
      state.duty *= 1 - 0.5 * s;
    }
  }

  private void relay(HeatingState state, double s) {
    switch (effect) {
      case BURNS_CONTACT -> {
        state.contact[i] *= Math.pow(150, s);
        state.burns[i] = 0.35 + 0.6 * s;
        state.burntSmell[i] = 0.1 + 0.6 * s;
        state.duty *= 1 - 0.8 * s;
      }
      case WELDS_CONTACT -> {
        state.closedWhenOff[i] = HeatingState.WELDED;
        state.burntSmell[i] = Math.max(state.burntSmell[i], 0.2);
        state.overheats = 0.8;
      }
      default -> {
        state.coil[i] = HeatingState.OPEN;
        // A welded contact stays closed whatever the coil does.
        state.interrupted |= !state.isWelded(i);
      }
    }
  }

  private void sensor(HeatingState state, double s) {
    switch (effect) {
      case READS_TOO_WARM -> {
        state.tooWarm[i] += DRIFT * s;
        state.reached *= 1 - 0.5 * s;
      }
      case READS_TOO_COLD -> {
        state.tooWarm[i] -= DRIFT * s;
        state.overheats = Math.max(state.overheats, 0.1 + 0.7 * s);
      }
      case UNSEATS_SENSOR -> {
        state.offSeat[i] = 0.98;
        state.offBy[i] -= DRIFT * s;
        state.overheats = Math.max(state.overheats, 0.1 + 0.7 * s);
      }
      default -> {
        state.sensorFactor[i] = effect == Effect.SHORTS_SENSOR ? SENSOR_SHORT : HeatingState.OPEN;
        state.interrupted |= !state.allWelded();
      }
    }
  }
}
