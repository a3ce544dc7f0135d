package kelter.core.oracle.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import kelter.core.diagnosis.engine.RepairOrder;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The order by chance over cost: cases worked out by exact arithmetic outside the project. */
class ChanceOverCostTest {

  private static final double NONE = Double.POSITIVE_INFINITY;

  @Test
  @DisplayName("1.1: c, b, a, d at 96.0")
  void withoutService() {
    RepairOrder order =
        ChanceOverCost.best(new double[] {.45, .30, .15, .10}, new double[] {90, 40, 10, 25}, NONE);

    assertEquals(List.of(2, 1, 0, 3), order.remedies());
    assertEquals(96.0, order.expectedCost(), 1e-12);
  }

  @Test
  @DisplayName("1.3 A to D: how far to go before the service")
  void prefixes() {
    double[] p = {.40, .18, .14, .08};
    double[] cost = {95, 45, 70, 55};

    RepairOrder a = ChanceOverCost.best(new double[] {.5, .2, .1}, new double[] {20, 40, 60}, 150);
    assertEquals(List.of(0, 1), a.remedies());
    assertEquals(85, a.expectedCost(), 1e-12);
    assertTrue(a.endsWithService());
    assertEquals(218.8, ChanceOverCost.best(p, cost, 260).expectedCost(), 1e-12);
    assertEquals(List.of(), ChanceOverCost.best(p, cost, 150).remedies());
    assertEquals(150, ChanceOverCost.best(p, cost, 150).expectedCost(), 1e-12);
    RepairOrder d = ChanceOverCost.best(new double[] {.4, .5}, new double[] {45, 58}, 100);
    assertEquals(2, d.remedies().size(), "the first step alone is worse than none");
    assertEquals(89.8, d.expectedCost(), 1e-12);
  }

  @Test
  @DisplayName("Equal to the best of all orders of all subsets, for up to six remedies")
  void bruteForce() {
    Random random = new Random(5);
    for (int trial = 0; trial < 300; trial++) {
      int n = 1 + random.nextInt(6);
      double[] p = new double[n];
      double[] cost = new double[n];
      double rest = 1;
      for (int i = 0; i < n; i++) {
        p[i] = rest * random.nextDouble() * 0.7;
        rest -= p[i];
        cost[i] = 5 + 100 * random.nextDouble();
      }
      double service = 50 + 250 * random.nextDouble();

      double found = ChanceOverCost.best(p, cost, service).expectedCost();

      assertEquals(least(p, cost, service, new ArrayList<>()), found, 1e-9, "trial " + trial);
      assertTrue(found <= service);
      // Exact search over subsets, by itself held against all orders elsewhere.
      double[][] cure = new double[n][n + 1];
      double[] states = new double[n + 1];
      for (int i = 0; i < n; i++) {
        cure[i][i] = 1;
        states[i] = p[i];
      }
      states[n] = rest;
      assertEquals(found, Repairs.of(cost, cure, service).leastCost(states), 1e-9);
    }
  }

  /** The least expected cost of all orders that begin in a given way. */
  private static double least(double[] p, double[] cost, double service, List<Integer> start) {
    double left = 1;
    double sum = 0;
    for (int i : start) {
      sum += left * cost[i];
      left -= p[i];
    }
    double least = sum + left * service;
    for (int i = 0; i < p.length; i++) {
      if (!start.contains(i)) {
        start.add(i);
        least = Math.min(least, least(p, cost, service, start));
        start.remove(start.size() - 1);
      }
    }
    return least;
  }
}
