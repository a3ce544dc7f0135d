package kelter.core.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Budgets against the worked examples of JCGM 100:2008. */
class BudgetTest {

  private static final double LEVEL = 0.95;

  /**
   * JCGM 100:2008, H.1, end gauge: components in nm with their degrees of freedom (table H.1) 25
   * (18), 5.8 (24), 3.9 (5), 6.7 (8), 2.9 (50) and 16.6 (2). Printed: u_c = 32 nm, 16 effective
   * degrees of freedom, t99 = 2.92, U99 = 93 nm.
   */
  @Test
  void endGauge() {
    List<InputQuantity> inputs =
        List.of(
            of(50_000_623, 25, 18),
            of(215, 5.8, 24),
            of(0, 3.9, 5),
            of(0, 6.7, 8),
            of(0, 0.58e-6, 50),
            of(0, 0.029, 2),
            of(-0.1, 0.41, 1e9),
            of(11.5e-6, 1.2e-6, 1e9));
    Budget budget =
        budget(x -> x[0] + x[1] + x[2] + x[3] - x[0] * (x[4] * x[6] + x[7] * x[5]), inputs, 0.99);
    assertEquals(50_000_838, budget.result().value(), 0.5);
    assertEquals(32, budget.result().standardUncertainty(), 0.5);
    assertEquals(16, Math.floor(budget.degreesOfFreedom()), 0);
    assertEquals(2.92, budget.coverageFactor(), 5e-3);
    assertEquals(93, budget.expanded(), 0.6);
    assertEquals(List.of(0), budget.lines().get(0).effect().inputs());
    assertEquals(List.of(5), budget.lines().get(1).effect().inputs());
  }

  /**
   * JCGM 100:2008, G.4.1, example (figures from memory): a product of three means of 10, 5 and 15
   * readings with 0.25 %, 0.57 % and 0.82 %: u_c/y = 1.03 %, 19.0 degrees of freedom, U95 = 2.2 %.
   */
  @Test
  void productOfThreeMeans() {
    List<InputQuantity> inputs = List.of(of(1, 0.0025, 9), of(1, 0.0057, 4), of(1, 0.0082, 14));
    Budget budget = budget(x -> x[0] * x[1] * x[2], inputs, LEVEL);
    assertEquals(0.0103, budget.result().standardUncertainty(), 5e-5);
    assertEquals(19.0, budget.degreesOfFreedom(), 0.05);
    assertEquals(0.022, budget.expanded(), 5e-4);
  }

  /** JCGM 100:2008, equation (7), 4.3.9 and 4.3.5: half-widths over sqrt 3, sqrt 6; sqrt 2. */
  @Test
  void halfWidths() {
    assertEquals(0.577, ErrorTerm.within(Shape.RECTANGULAR, 1).standardUncertainty(), 5e-4);
    assertEquals(0.408, ErrorTerm.within(Shape.TRIANGULAR, 1).standardUncertainty(), 5e-4);
    assertEquals(0.707, ErrorTerm.within(Shape.U_SHAPED, 1).standardUncertainty(), 5e-4);
    assertThrows(IllegalArgumentException.class, () -> ErrorTerm.within(Shape.NORMAL, 1));
  }

  /**
   * JCGM 100:2008, H.2, table H.2 (raw readings from memory): the voltage is 4.9990 V with a
   * standard uncertainty of the mean of 0.0032 V.
   */
  @Test
  void meanOfReadings() {
    InputQuantity mean = InputQuantity.mean(5.007, 4.994, 5.005, 4.990, 4.999);
    assertEquals(4.9990, mean.value(), 5e-5);
    assertEquals(0.0032, mean.estimate().standardUncertainty(), 5e-5);
    assertEquals(4, mean.terms().get(0).degreesOfFreedom(), 0);
    assertThrows(IllegalArgumentException.class, () -> InputQuantity.mean(1));
  }

  /** JCGM 100:2008, table H.2: five sets of V, A and rad, written down from memory. */
  private static final double[][] READINGS = {
    {5.007, 19.663e-3, 1.0456},
    {4.994, 19.639e-3, 1.0438},
    {5.005, 19.640e-3, 1.0468},
    {4.990, 19.685e-3, 1.0428},
    {4.999, 19.678e-3, 1.0433}
  };

  /**
   * JCGM 100:2008, H.2, table H.3, simultaneous measurement of resistance and reactance: R 127.732
   * u 0.071, X 219.847 u 0.295, Z 254.260 u 0.236 ohm. Means and uncertainties are taken from the
   * readings: each set is an effect on all three means, its distance from them over the root of n
   * (n - 1), so that the effects have the covariances of equation (17). The tolerance is one unit
   * of the last digit, since the guide itself rounded on the way.
   */
  @Test
  void resistanceReactanceAndImpedance() {
    assertImpedance(127.732, 0.071, x -> x[0] / x[1] * Math.cos(x[2]));
    assertImpedance(219.847, 0.295, x -> x[0] / x[1] * Math.sin(x[2]));
    assertImpedance(254.260, 0.236, x -> x[0] / x[1]);
  }

  private static void assertImpedance(
      double value, double uncertainty, ToDoubleFunction<double[]> law) {
    int n = READINGS.length;
    double[] means = new double[3];
    for (double[] set : READINGS) {
      for (int i = 0; i < means.length; i++) {
        means[i] += set[i] / n;
      }
    }
    List<ErrorEffect> sets = new ArrayList<>();
    for (double[] set : READINGS) {
      List<Double> moves = new ArrayList<>();
      for (int i = 0; i < means.length; i++) {
        moves.add((set[i] - means[i]) / Math.sqrt(n * (n - 1.0)));
      }
      sets.add(
          new ErrorEffect("set", List.of(0, 1, 2), Shape.NORMAL, Double.POSITIVE_INFINITY, moves));
    }
    Estimate result = Budget.of(law, means, sets, LEVEL).result();
    assertEquals(value, result.value(), 1e-3);
    assertEquals(uncertainty, result.standardUncertainty(), 1e-3);
  }

  /**
   * JCGM 100:2008, 5.2.2, example: ten resistors of u = 0.1 ohm that were calibrated against one
   * standard give 1.0 ohm together, and not 0.32 ohm.
   */
  @Test
  void sharedErrorsAddUp() {
    List<InputQuantity> ten =
        java.util.Collections.nCopies(10, new InputQuantity(1000, List.of(ErrorTerm.normal(0.1))));
    double[] values = new double[10];
    Set<Integer> all = Set.of(0, 1, 2, 3, 4, 5, 6, 7, 8, 9);
    Budget shared = Budget.of(BudgetTest::sum, values, ErrorEffect.of(ten, all), LEVEL);
    Budget own = Budget.of(BudgetTest::sum, values, ErrorEffect.of(ten, Set.of()), LEVEL);
    assertEquals(1.0, shared.result().standardUncertainty(), 1e-12);
    assertEquals(0.32, own.result().standardUncertainty(), 5e-3);
    assertEquals(1, shared.lines().size());
    assertTrue(Double.isNaN(shared.lines().get(0).sensitivity()));
  }

  private static double sum(double[] x) {
    double sum = 0;
    for (double each : x) {
      sum += each;
    }
    return sum;
  }

  /** What is shared cancels in a difference; the scatter of readings does not. */
  @Test
  void scatterIsNeverShared() {
    List<InputQuantity> inputs =
        List.of(withError(InputQuantity.mean(9, 10, 11)), withError(InputQuantity.mean(4, 5, 6)));
    Budget budget =
        Budget.of(
            x -> x[0] - x[1], new double[] {10, 5}, ErrorEffect.of(inputs, Set.of(0, 1)), LEVEL);
    assertEquals(Math.sqrt(2.0 / 3), budget.result().standardUncertainty(), 1e-12);
  }

  private static InputQuantity withError(InputQuantity mean) {
    return new InputQuantity(
        mean.value(), List.of(mean.terms().get(0), ErrorTerm.within(Shape.RECTANGULAR, 2)));
  }

  @Test
  void errorsOfAnotherShapeAreNotShared() {
    List<InputQuantity> inputs =
        List.of(
            new InputQuantity(1, List.of(ErrorTerm.normal(1))),
            new InputQuantity(1, List.of(ErrorTerm.within(Shape.RECTANGULAR, 1))));
    assertThrows(IllegalArgumentException.class, () -> ErrorEffect.of(inputs, Set.of(0, 1)));
  }

  @Test
  void withoutUncertaintyThereIsNone() {
    Budget budget = budget(x -> 2 * x[0], List.of(InputQuantity.exact(3)), LEVEL);
    assertEquals(new Estimate(6, 0), budget.result());
    assertEquals(0, budget.expanded(), 0);
    assertTrue(budget.lines().isEmpty());
  }

  private static InputQuantity of(double value, double u, double dof) {
    return new InputQuantity(value, List.of(ErrorTerm.studentT(u, dof)));
  }

  private static Budget budget(
      java.util.function.ToDoubleFunction<double[]> law, List<InputQuantity> inputs, double level) {
    double[] values = inputs.stream().mapToDouble(InputQuantity::value).toArray();
    return Budget.of(law, values, ErrorEffect.of(inputs, Set.of()), level);
  }
}
