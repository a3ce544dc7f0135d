package kelter.core.oracle.decision;

import java.util.List;

/**
 * Which reading to take next, if any.
 *
 * @param costNow the expected cost of what is best to do without another reading
 * @param readings the observables that are left, the one to take first at the head
 * @param enough whether no reading is worth its price, so that another one would not change what to
 *     do for the better
 */
public record Advice(double costNow, List<Reading> readings, boolean enough) {

  /** Takes the readings as they are. */
  public Advice {
    readings = List.copyOf(readings);
  }

  /**
   * One reading that could be taken.
   *
   * @param observable its number
   * @param bits how much it tells of the state, in bits
   * @param saving what it saves before its price, EVSI
   * @param expectedCost its price and the expected cost of what is best to do after it, ECO
   * @param expectedCostWithSecond the same where one more reading may follow it; equal to that
   *     where it was not thought of
   */
  public record Reading(
      int observable,
      double bits,
      double saving,
      double expectedCost,
      double expectedCostWithSecond) {}
}
