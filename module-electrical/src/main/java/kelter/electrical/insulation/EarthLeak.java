package kelter.electrical.insulation;

import kelter.core.diagnosis.model.Course;
import kelter.core.diagnosis.model.Spread;

/**
 * How a leak to earth shows at an insulation tester and at a residual-current device. All figures
 * but the rated current of the device are from memory.
 */
public final class EarthLeak {

  /** A leak that a tester just notices, Ohm. */
  private static final double FIRST = 2e6;

  /** Factor from the slightest to the worst leak. */
  private static final double RANGE = 2.5e-3;

  /** A part in order against earth, Ohm. */
  private static final double SOUND = 3e8;

  /**
   * Leakage of a hot wet part over what its cold insulation tells, where somebody complains: so
   * that of leaks in the middle of their range 86 in 100 trip.
   */
  private static final double HOT = 40;

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

  /** What a leak conducts to earth by its severity, S; leaks of several parts add up. */
  public static final Course CONDUCTANCE = Course.power(1 / FIRST, 1 / RANGE);

  /** The chance that such a leak trips a residual-current device of 30 mA, by its severity. */
  public static final Course TRIPS = severity -> tripping(CONDUCTANCE.at(severity));

  /** What an insulation tester shows: parts in order differ more than leaks of one severity. */
  public static final Spread<Object> SPREAD = new OfInsulation();

  /**
   * What share of the leaks of heaters shows only while they are warm: damp has been driven out or
   * a crack closes as they cool. From memory.
   */
  private static final double ONLY_WARM = 0.25;

  /** How bad a leak that shows only while warm is then: as one in the middle. From memory. */
  private static final double WHILE_WARM = 0.5;

  /**
   * What such a leak of a heater conducts while it is warm, S. Below a quarter the severity tells
   * that it shows only then.
   */
  public static final Course WARM_CONDUCTANCE =
      severity -> CONDUCTANCE.at(severity < ONLY_WARM ? WHILE_WARM : severity);

  /** What it conducts once it has cooled, S. */
  public static final Course COLD_CONDUCTANCE =
      severity -> severity < ONLY_WARM ? 0 : CONDUCTANCE.at(severity);

  /** The chance that it trips a residual-current device of 30 mA. */
  public static final Course HEATER_TRIPS = severity -> tripping(WARM_CONDUCTANCE.at(severity));

  private EarthLeak() {}

  private record OfInsulation() implements Spread<Object> {
    @Override
    public double of(double value, InOrder order, Object solved) {
      return value < order.value() ? LEAK_SPREAD : SOUND_SPREAD;
    }
  }

  /**
   * The insulation resistance.
   *
   * @param leak what leaks beside the insulation of a part in order, S; 0 if nothing does
   * @return the resistance to earth, Ohm
   */
  public static double insulation(double leak) {
    return 1 / (1 / SOUND + leak);
  }

  private static double tripping(double leak) {
    double logarithm = Math.log(HOT * MAINS * leak / TRIP_CURRENT);
    return 1 / (1 + Math.exp(-logarithm / TRIP_SCATTER));
  }
}
