package kelter.core.diagnosis.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Repair orders against cases worked out by exact arithmetic outside the project, and against all
 * orders tried one by one.
 */
class RepairOrderTest {

  private static final double NONE = Double.POSITIVE_INFINITY;

  private static IntToDoubleFunction disjoint(double... p) {
    return done -> {
      double left = 1;
      for (int i = 0; i < p.length; i++) {
        left -= (done >> i & 1) * p[i];
      }
      return left;
    };
  }

  private static RepairOrder best(double[] p, double[] cost, double service) {
    return RepairOrder.best(
        p.length, (remedy, done) -> cost[remedy], ofEachSet(p.length, disjoint(p)), service);
  }

  private static double[] ofEachSet(int count, IntToDoubleFunction notWorking) {
    return IntStream.range(0, 1 << count).mapToDouble(notWorking).toArray();
  }

  /** The expected cost of one order, straight from its definition. */
  private static double expected(
      List<Integer> order, RepairOrder.Cost cost, IntToDoubleFunction notWorking, double service) {
    double sum = 0;
    int done = 0;
    for (int remedy : order) {
      sum += notWorking.applyAsDouble(done) * cost.of(remedy, done);
      done |= 1 << remedy;
    }
    return Double.isInfinite(service) ? sum : sum + service * notWorking.applyAsDouble(done);
  }

  @Test
  @DisplayName("1.1: four remedies of one fault each, by chance over cost")
  void chanceOverCost() {
    RepairOrder order =
        best(new double[] {.45, .30, .15, .10}, new double[] {90, 40, 10, 25}, NONE);

    assertEquals(List.of(2, 1, 0, 3), order.remedies());
    assertEquals(96.0, order.expectedCost(), 1e-12);
  }

  @Test
  @DisplayName("1.2: overlapping remedies, where chance over cost goes wrong (1.50)")
  void overlapping() {
    double[] cause = {.20, .25, .40, .15};
    int[] cures = {0b0011, 0b0110, 0b1100};
    IntToDoubleFunction notWorking =
        done -> {
          int cured = 0;
          for (int a = 0; a < cures.length; a++) {
            cured |= (done >> a & 1) == 1 ? cures[a] : 0;
          }
          double left = 0;
          for (int c = 0; c < cause.length; c++) {
            left += (cured >> c & 1) == 0 ? cause[c] : 0;
          }
          return left;
        };
    RepairOrder order = RepairOrder.best(3, (remedy, done) -> 1, ofEachSet(3, notWorking), NONE);

    assertEquals(List.of(2, 0), order.remedies());
    assertEquals(1.45, order.expectedCost(), 1e-12);
  }

  @Test
  @DisplayName("1.3 A to D: how far to go before the service")
  void prefixes() {
    double[] fourP = {.40, .18, .14, .08};
    double[] fourC = {95, 45, 70, 55};

    RepairOrder a = best(new double[] {.5, .2, .1}, new double[] {20, 40, 60}, 150);
    assertEquals(List.of(0, 1), a.remedies());
    assertEquals(85, a.expectedCost(), 1e-12);

    assertEquals(218.8, best(fourP, fourC, 260).expectedCost(), 1e-12);
    assertEquals(4, best(fourP, fourC, 260).remedies().size());

    assertEquals(150, best(fourP, fourC, 150).expectedCost(), 1e-12);
    assertEquals(List.of(), best(fourP, fourC, 150).remedies());

    RepairOrder d = best(new double[] {.4, .5}, new double[] {45, 58}, 100);
    assertEquals(89.8, d.expectedCost(), 1e-12);
    assertEquals(2, d.remedies().size(), "the first step alone is worse than none");
  }

  @Test
  void equalsTheBestOfAllOrdersWithPairsOfFaultsAndASharedOpening() {
    Random random = new Random(17);
    for (int trial = 0; trial < 200; trial++) {
      int n = 2 + random.nextInt(4);
      double[] price = random.doubles(n, 5, 100).toArray();
      double[] chance = random.doubles(n, 0.05, 0.6).toArray();
      double[] cure = random.doubles(n, 0.5, 1).toArray();
      double opening = random.nextDouble() * 50;
      double service = random.nextBoolean() ? 150 + 200 * random.nextDouble() : NONE;
      RepairOrder.Cost cost = (remedy, done) -> price[remedy] + (done == 0 ? opening : 0);
      // Any number of independent faults may be there; the machine works once none is left.
      IntToDoubleFunction notWorking =
          done -> {
            double works = 1;
            for (int i = 0; i < n; i++) {
              works *= 1 - chance[i] * ((done >> i & 1) == 1 ? 1 - cure[i] : 1);
            }
            return 1 - works;
          };

      double found = RepairOrder.best(n, cost, ofEachSet(n, notWorking), service).expectedCost();

      double least = NONE;
      for (List<Integer> order : orders(n, !Double.isInfinite(service))) {
        least = Math.min(least, expected(order, cost, notWorking, service));
      }
      assertEquals(least, found, 1e-9, "trial " + trial);
      assertTrue(found <= service + 1e-9);
    }
  }

  /** All orders of all remedies, and those of fewer where one may stop early. */
  private static List<List<Integer>> orders(int n, boolean fewer) {
    List<List<Integer>> all = new ArrayList<>();
    extend(new ArrayList<>(), n, fewer, all);
    return all;
  }

  private static void extend(List<Integer> start, int n, boolean fewer, List<List<Integer>> all) {
    if (fewer || start.size() == n) {
      all.add(List.copyOf(start));
    }
    for (int i = 0; i < n; i++) {
      if (!start.contains(i)) {
        start.add(i);
        extend(start, n, fewer, all);
        start.remove(start.size() - 1);
      }
    }
  }
}
