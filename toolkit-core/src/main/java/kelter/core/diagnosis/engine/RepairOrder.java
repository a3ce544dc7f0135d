package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.List;

/**
 * The order of remedies with the least expected cost, found exactly over all subsets.
 *
 * <p>Remedies are done one after the other, each followed by a trial, until the machine works.
 * After any of them one may give up and call for the service that always ends it, such as a new
 * machine. A remedy costs its price only if the machine does not work by then, so that the expected
 * cost of an order is the sum over its steps of cost times the chance that what was done before was
 * not enough. That chance depends on which remedies were done and not on their order; the best way
 * on is therefore found by dynamic programming over the 2^n subsets (Bellman's principle). Unlike
 * the order by chance over cost (Kadane and Simon, Annals of Statistics 5, 1977, from memory) this
 * is also right where remedies overlap, where several faults are there, or where opening the
 * machine is shared.
 *
 * @param remedies the remedies to do, in order, by their number
 * @param expectedCost the expected cost, from now
 * @param endsWithService whether the service follows if none of them helps
 */
public record RepairOrder(List<Integer> remedies, double expectedCost, boolean endsWithService) {

  /** The greatest number of remedies. */
  public static final int MOST = 12;

  /** What a remedy costs. */
  @FunctionalInterface
  public interface Cost {

    /**
     * The cost of a remedy after others.
     *
     * @param remedy its number
     * @param done the remedies done before, one bit each
     * @return the cost, not negative
     */
    double of(int remedy, int done);
  }

  /** Takes the order as it is. */
  public RepairOrder {
    remedies = List.copyOf(remedies);
  }

  /**
   * Finds the best order.
   *
   * @param count how many remedies there are, at most {@link #MOST}
   * @param cost what each costs
   * @param notWorking for each set of remedies, one bit each, the chance that the machine does not
   *     work once they are done; 2 to the power of their number
   * @param service the cost of the service that always ends it; infinite if there is none
   * @return the best order; without a service it holds every remedy that can still help
   * @throws IllegalArgumentException if there are more than {@link #MOST} remedies, a cost is
   *     negative or NaN, a chance is NaN, or there are not as many of them as sets
   */
  public static RepairOrder best(int count, Cost cost, double[] notWorking, double service) {
    if (count > MOST) {
      throw new IllegalArgumentException("at most " + MOST + " remedies, not " + count);
    }
    if (notWorking.length != 1 << count) {
      throw new IllegalArgumentException(
          "a chance is needed for each of the sets of " + count + " remedies");
    }
    notNegative(service, "a service cost");
    for (double chance : notWorking) {
      requireNumber(chance);
    }
    int[] step = new int[notWorking.length];
    double expectedCost = leastCost(count, cost, notWorking, service, step);
    return follow(step, expectedCost, !Double.isInfinite(service));
  }

  /** The least expected cost; each set of remedies done gets its next step, or -1 for none. */
  private static double leastCost(int count, Cost cost, double[] left, double service, int[] step) {
    boolean serviced = !Double.isInfinite(service);
    double[] ahead = new double[left.length];
    for (int done = left.length - 1; done >= 0; done--) {
      ahead[done] = serviced ? service * left[done] : 0;
      step[done] = -1;
      boolean mustGoOn = !serviced;
      for (int remedy = 0; remedy < count; remedy++) {
        int next = done | 1 << remedy;
        if (next == done || !(left[next] < left[done])) {
          continue;
        }
        double way = left[done] * notNegative(cost.of(remedy, done), "a cost") + ahead[next];
        if (mustGoOn || way < ahead[done]) {
          ahead[done] = way;
          step[done] = remedy;
          mustGoOn = false;
        }
      }
    }
    return ahead[0];
  }

  private static double notNegative(double cost, String what) {
    if (!(cost >= 0)) {
      throw new IllegalArgumentException(what + " of " + cost + "; 0 or more is allowed");
    }
    return cost;
  }

  private static void requireNumber(double chance) {
    if (Double.isNaN(chance)) {
      throw new IllegalArgumentException("a chance of NaN; 0 to 1 is allowed");
    }
  }

  private static RepairOrder follow(int[] step, double expectedCost, boolean service) {
    List<Integer> order = new ArrayList<>();
    int done = 0;
    while (step[done] >= 0) {
      order.add(step[done]);
      done |= 1 << step[done];
    }
    return new RepairOrder(order, expectedCost, service);
  }
}
