package kelter.electrical.fault;

import kelter.electrical.fault.StateModel.Forecast;

/**
 * How a leak to earth shows at an insulation tester and at a residual-current device. All figures
 * but the rated current of the device are from memory.
 */
public final class EarthLeak {

  /** A leak that a tester just notices, Ohm. */
  private static final double FIRST = 2e6;

  /** Factor from the slightest to the worst leak. */
  private static final double RANGE = 2.5e-3;

  /** Leakage of a hot wet part over what its cold insulation tells. */
  private static final double HOT = 4;

  /** Mains to earth, V: other nets change the chance of tripping little. */
  private static final double MAINS = 230;

  /** Residual current at which most devices of 30 mA trip, A: between half of it and all of it. */
  private static final double TRIP_CURRENT = 0.022;

  /** How much devices and heating up scatter, as a natural logarithm. */
  private static final double TRIP_SCATTER = 0.8;

  /** How much leaks of one severity differ, as a natural logarithm. */
  private static final double LEAK_SPREAD = 0.6;

  /** How much parts in order differ, as a natural logarithm. */
  private static final double SOUND_SPREAD = 1.7;

  private EarthLeak() {}

  /**
   * The resistance of a leak.
   *
   * @param severity how bad it is, from 0 to 1
   * @return the resistance, Ohm
   */
  public static double resistance(double severity) {
    return FIRST * Math.pow(RANGE, severity);
  }

  /**
   * What an insulation tester shows.
   *
   * @param insulation the insulation resistance, Ohm
   * @param leaks whether there is a leak: parts in order differ more than leaks of one severity
   * @return the forecast
   */
  public static Forecast shown(double insulation, boolean leaks) {
    return new Forecast(insulation, leaks ? LEAK_SPREAD : SOUND_SPREAD);
  }

  /**
   * The chance that a residual-current device of 30 mA trips.
   *
   * @param insulation the insulation resistance when cold, Ohm
   * @return a probability strictly between 0 and 1
   */
  public static double trips(double insulation) {
    double logarithm = Math.log(HOT * MAINS / insulation / TRIP_CURRENT);
    return 0.02 + 0.95 / (1 + Math.exp(-logarithm / TRIP_SCATTER));
  }
}
