package kelter.core.oracle.decision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import kelter.core.diagnosis.engine.RepairOrder;
import kelter.core.source.Source;

/**
 * The order of any number of remedies by their chance over their cost, followed by a service.
 *
 * <p>The expected cost of the first k of them and then the service is {@code sum_(i<=k) C_i (1 -
 * sum_(j<i) p_j) + S (1 - sum_(i<=k) p_i)}; the least over all k is taken, since a step that is
 * worse than none may be followed by one that makes up for it. It is the best of all orders if one
 * fault is there, each is cured by at most one remedy, the trial after a remedy shows whether it
 * did, and costs do not depend on what was done before. Elsewhere {@link RepairOrder} is right.
 */
public final class ChanceOverCost {

  /** Where the order comes from. */
  public static final Source SOURCE =
      Source.fromMemory(
          "Kadane and Simon, Optimal strategies for a class of constrained sequential problems,"
              + " Annals of Statistics 5 (1977) 237");

  private static final double SUM_TOLERANCE = 1e-9;

  private ChanceOverCost() {}

  /**
   * Finds the order.
   *
   * @param chance for each remedy the chance that it cures, 0 to 1, in sum at most 1
   * @param cost what each costs with the trial after it, not negative
   * @param service the cost of the service that always ends it; infinite if there is none
   * @return the order; without a service it holds every remedy that can help
   * @throws IllegalArgumentException if there are not as many costs as chances, a chance is not
   *     from 0 to 1 or their sum above 1, or a cost is negative
   */
  public static RepairOrder best(double[] chance, double[] cost, double service) {
    check(chance, cost, service);
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < chance.length; i++) {
      if (chance[i] > 0) {
        order.add(i);
      }
    }
    order.sort(Comparator.comparingDouble(i -> cost[i] / chance[i]));
    boolean serviced = !Double.isInfinite(service);
    double left = 1;
    double spent = 0;
    double least = serviced ? service : Double.POSITIVE_INFINITY;
    int best = 0;
    for (int k = 0; k < order.size(); k++) {
      spent += cost[order.get(k)] * left;
      left = Math.max(0, left - chance[order.get(k)]);
      double whole = serviced ? spent + service * left : spent;
      if (!serviced || whole < least) {
        least = whole;
        best = k + 1;
      }
    }
    return new RepairOrder(order.subList(0, best), best == 0 && !serviced ? 0 : least, serviced);
  }

  private static void check(double[] chance, double[] cost, double service) {
    if (chance.length != cost.length || !(service >= 0)) {
      throw new IllegalArgumentException(
          "%d chances, %d costs and a service at %s; as many of both and a cost of 0 or more"
              .formatted(chance.length, cost.length, service));
    }
    double sum = 0;
    for (int i = 0; i < chance.length; i++) {
      if (!(chance[i] >= 0 && cost[i] >= 0 && cost[i] < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException(
            "remedy %d with a chance of %s at a cost of %s; 0 or more are allowed"
                .formatted(i, chance[i], cost[i]));
      }
      sum += chance[i];
    }
    if (!(sum <= 1 + SUM_TOLERANCE)) {
      throw new IllegalArgumentException("the chances sum to " + sum + "; 1 is the most");
    }
  }
}
