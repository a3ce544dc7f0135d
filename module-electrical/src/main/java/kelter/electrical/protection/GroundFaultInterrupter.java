package kelter.electrical.protection;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.electrical.caution.ElectricalCautions;

/**
 * How long a North American ground-fault circuit-interrupter of class A may take at most: t = (20
 * mA / I)^1.43 s, from 6 mA to 264 mA. Below 4 mA it must not trip, from 6 mA on it must; between
 * the two it may.
 *
 * <p>A leak that a European device of 30 mA bears trips it long before. Currents outside 6 mA to
 * 264 mA are refused: below, no time is set; above, the shortest time of the formula holds.
 */
public final class GroundFaultInterrupter {

  /** Where the figures are cited. */
  public static final Source SOURCE =
      new Source(
          "UL 943, class A, and the note to the definition in NFPA 70, as cited by others",
          Standing.SECOND_HAND);

  /** From here on it must trip, A. UL 943. */
  private static final double MUST_TRIP = 6e-3;

  /** Below this it must not trip, A. UL 943. */
  private static final double MUST_NOT_TRIP = 4e-3;

  /** Up to here the formula is said to hold, A. UL 943. */
  private static final double GREATEST = 264e-3;

  /** The current at which it may take one second, A. UL 943. */
  private static final double ONE_SECOND = 20e-3;

  /** The exponent. UL 943. */
  private static final double EXPONENT = 1.43;

  /** What it does with a current. */
  public enum Answer {
    /** It must not trip. */
    MUST_NOT_TRIP,
    /** It may or may not. */
    MAY_TRIP,
    /** It must trip. */
    MUST_TRIP
  }

  private GroundFaultInterrupter() {}

  /**
   * The time by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "ground-fault-interrupter",
        "how long a ground-fault circuit-interrupter may take to trip",
        "time = (20 mA / current)^1.43 s",
        "class A, 6 mA to 264 mA; below 4 mA it must not trip, between 4 mA and 6 mA it may",
        SOURCE,
        List.of(
            Parameter.required(
                "current", "current to ground", QuantityKind.CURRENT, MUST_TRIP, GREATEST)),
        List.of(new Output("time", "longest time to trip", QuantityKind.TIME)),
        List.of(ElectricalCautions.LIVE_PARTS),
        x -> new double[] {formula(x[0])});
  }

  /**
   * What it does with a current to ground.
   *
   * @param current the current, A, 0 or above
   * @return whether it must, may or must not trip
   * @throws IllegalArgumentException if the current is negative or not finite
   */
  public static Answer answer(double current) {
    Require.notNegative("current to ground", current, "A");
    if (current >= MUST_TRIP) {
      return Answer.MUST_TRIP;
    }
    return current < MUST_NOT_TRIP ? Answer.MUST_NOT_TRIP : Answer.MAY_TRIP;
  }

  /**
   * The longest time.
   *
   * @param current the current to ground, A, from 6 mA to 264 mA
   * @return the time, s
   * @throws IllegalArgumentException if the current lies outside
   */
  public static double time(double current) {
    Require.within("current to ground", current * 1e3, MUST_TRIP * 1e3, GREATEST * 1e3, "mA");
    return formula(current);
  }

  private static double formula(double current) {
    return Math.pow(ONE_SECOND / current, EXPONENT);
  }
}
