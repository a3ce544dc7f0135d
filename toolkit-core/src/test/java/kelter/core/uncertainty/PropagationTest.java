package kelter.core.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Propagation of uncertainty against the worked examples of JCGM 100:2008 and JCGM 101:2008. */
class PropagationTest {

  /**
   * JCGM 100:2008, H.1, calibration of an end gauge, equation (H.3): l = l_S + d - l_S (δα·θ +
   * α_S·δθ). Lengths in nm, temperatures in Cel. Only the inputs with a sensitivity other than zero
   * at the estimates count (H.1.3): l_S 25 nm, d 5.8, 3.9 and 6.7 nm, δα 0.58e-6 /Cel (2.9 nm by
   * -l_S θ with θ = -0.1 Cel), δθ 0.029 Cel (16.6 nm by -l_S α_S). Printed: l = 50 000 838 nm, u_c
   * = 32 nm.
   */
  @Test
  void endGauge() {
    double mean = -0.1;
    double expansion = 11.5e-6;
    var result =
        Propagation.through(
            x -> x[0] + x[1] + x[2] + x[3] - x[0] * (x[4] * x[6] + x[7] * x[5]),
            List.of(
                new Estimate(50_000_623, 25),
                new Estimate(215, 5.8),
                new Estimate(0, 3.9),
                new Estimate(0, 6.7),
                new Estimate(0, 0.58e-6),
                new Estimate(0, 0.029),
                new Estimate(mean, 0.41),
                new Estimate(expansion, 1.2e-6)));
    assertEquals(50_000_838, result.estimate().value(), 0.5);
    assertEquals(32, result.estimate().standardUncertainty(), 0.5);
    assertEquals(25, result.contributions().get(0), 0.05);
    assertEquals(2.9, Math.abs(result.contributions().get(4)), 0.05);
    assertEquals(16.6, Math.abs(result.contributions().get(5)), 0.1);
    assertEquals(0, result.contributions().get(6), 1e-9);
    assertEquals(0, result.contributions().get(7), 1e-9);
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
   * u 0.071, X 219.847 u 0.295, Z 254.260 u 0.236 ohm. Means, uncertainties and coefficients are
   * taken from the readings, since the rounded coefficients of table H.2 give 0.070 for R; the
   * tolerance is one unit of the last digit, since the guide itself rounded on the way.
   */
  @Test
  void resistanceReactanceAndImpedance() {
    assertImpedance(127.732, 0.071, x -> x[0] / x[1] * Math.cos(x[2]));
    assertImpedance(219.847, 0.295, x -> x[0] / x[1] * Math.sin(x[2]));
    assertImpedance(254.260, 0.236, x -> x[0] / x[1]);
  }

  private static void assertImpedance(
      double value, double uncertainty, ToDoubleFunction<double[]> law) {
    List<Estimate> means = List.of(mean(0), mean(1), mean(2));
    double[][] r = {
      {1, correlation(0, 1), correlation(0, 2)},
      {correlation(0, 1), 1, correlation(1, 2)},
      {correlation(0, 2), correlation(1, 2), 1}
    };
    Estimate result = Propagation.through(law, means, r).estimate();
    assertEquals(value, result.value(), 1e-3);
    assertEquals(uncertainty, result.standardUncertainty(), 1e-3);
  }

  private static Estimate mean(int column) {
    double mean = Arrays.stream(READINGS).mapToDouble(row -> row[column]).average().orElseThrow();
    return new Estimate(mean, Math.sqrt(covariance(column, column)));
  }

  private static double correlation(int a, int b) {
    return covariance(a, b) / Math.sqrt(covariance(a, a) * covariance(b, b));
  }

  /** Of the means, JCGM 100:2008, equation (17). */
  private static double covariance(int a, int b) {
    int n = READINGS.length;
    double meanA = Arrays.stream(READINGS).mapToDouble(row -> row[a]).average().orElseThrow();
    double meanB = Arrays.stream(READINGS).mapToDouble(row -> row[b]).average().orElseThrow();
    return Arrays.stream(READINGS).mapToDouble(row -> (row[a] - meanA) * (row[b] - meanB)).sum()
        / (n * (n - 1.0));
  }

  /**
   * JCGM 100:2008, 5.2.2, example: ten resistors of u = 0.1 ohm, fully correlated, give 1.0 ohm.
   */
  @Test
  void resistorsCalibratedAgainstOneStandard() {
    double[][] full = new double[10][10];
    Arrays.stream(full).forEach(row -> Arrays.fill(row, 1));
    List<Estimate> resistors = Collections.nCopies(10, new Estimate(1000, 0.1));
    ToDoubleFunction<double[]> sum = x -> Arrays.stream(x).sum();
    Estimate result = Propagation.through(sum, resistors, full).estimate();
    assertEquals(10_000, result.value(), 1e-9);
    assertEquals(1.0, result.standardUncertainty(), 1e-9);
    assertEquals(0.32, Propagation.through(sum, resistors).estimate().standardUncertainty(), 5e-3);
  }

  /** The error of one instrument cancels in a difference. */
  @Test
  void whatIsSharedCancels() {
    List<Estimate> readings = List.of(new Estimate(60, 0.5), new Estimate(20, 0.5));
    double[][] full = {{1, 1}, {1, 1}};
    assertEquals(
        new Estimate(40, 0), Propagation.through(x -> x[0] - x[1], readings, full).estimate());
  }

  @Test
  void withoutCorrelationBothWaysAgree() {
    double[][] none = {{1, 0}, {0, 1}};
    assertEquals(
        Propagation.through(x -> x[0] * x[1], both(1, 2)),
        Propagation.through(x -> x[0] * x[1], both(1, 2), none));
  }

  static Stream<double[][]> impossible() {
    return Stream.of(
        new double[][] {{1}},
        new double[][] {{1, 0}, {0}},
        new double[][] {{1, 0.5}, {0.4, 1}},
        new double[][] {{1, 1.1}, {1.1, 1}},
        new double[][] {{1, Double.NaN}, {Double.NaN, 1}},
        new double[][] {{0.9, 0}, {0, 1}});
  }

  @ParameterizedTest
  @MethodSource("impossible")
  void coefficientsThatAreNoneAreRefused(double[][] correlation) {
    assertThrows(
        IllegalArgumentException.class,
        () -> Propagation.through(x -> x[0], both(1, 1), correlation));
  }

  @Test
  void coefficientsThatCannotBeTogetherAreRefused() {
    double[][] contrary = {{1, -1, -1}, {-1, 1, -1}, {-1, -1, 1}};
    List<Estimate> three = Collections.nCopies(3, new Estimate(1, 1));
    assertThrows(
        IllegalArgumentException.class,
        () -> Propagation.through(x -> x[0] + x[1] + x[2], three, contrary));
  }

  /** JCGM 101:2008, 9.2.2 and 9.2.3: the sum of four inputs of u = 1 has u = 2.0. */
  @Test
  void sumOfFour() {
    var result =
        Propagation.through(
            x -> x[0] + x[1] + x[2] + x[3],
            List.of(
                new Estimate(0, 1), new Estimate(0, 1), new Estimate(0, 1), new Estimate(0, 1)));
    assertEquals(2.0, result.estimate().standardUncertainty(), 0.05);
  }

  /** JCGM 101:2008, 9.2.4: three of u = 1 and one of u = 10 give 10.1 (printed to three digits). */
  @Test
  void oneInputDominates() {
    var result =
        Propagation.through(
            x -> x[0] + x[1] + x[2] + x[3],
            List.of(
                new Estimate(0, 1), new Estimate(0, 1), new Estimate(0, 1), new Estimate(0, 10)));
    assertEquals(10.1, result.estimate().standardUncertainty(), 0.05);
  }

  @Test
  void exactInputsContributeNothingAndAreNotMoved() {
    var result =
        Propagation.through(
            x -> {
              assertEquals(2, x[0], 0);
              return x[0] * x[1];
            },
            List.of(Estimate.exact(2), new Estimate(3, 0.5)));
    assertEquals(List.of(0.0, 1.0), result.contributions());
  }

  @Test
  void aLawThatChangesItsArgumentsDoesNotDisturbTheOthers() {
    var result =
        Propagation.through(
            x -> {
              double sum = x[0] + x[1];
              x[0] = Double.NaN;
              return sum;
            },
            List.of(new Estimate(1, 3), new Estimate(1, 4)));
    assertEquals(new Estimate(2, 5), result.estimate());
  }

  @Test
  void theUncertaintyIsNeverNegativeAndScales() {
    Random random = new Random(20261125L);
    for (int i = 0; i < 500; i++) {
      double a = random.nextGaussian();
      double b = random.nextGaussian();
      double u = random.nextDouble();
      Estimate once = Propagation.through(x -> a * x[0] + b * x[1], both(u, 2 * u)).estimate();
      Estimate thrice =
          Propagation.through(x -> a * x[0] + b * x[1], both(3 * u, 6 * u)).estimate();
      assertTrue(once.standardUncertainty() >= 0);
      assertEquals(
          3 * once.standardUncertainty(),
          thrice.standardUncertainty(),
          1e-9 * (1 + thrice.standardUncertainty()));
    }
  }

  private static List<Estimate> both(double first, double second) {
    return List.of(new Estimate(5, first), new Estimate(-7, second));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1e-12, Double.NaN, Double.NEGATIVE_INFINITY})
  void anUncertaintyThatIsNoneIsRefused(double u) {
    assertThrows(IllegalArgumentException.class, () -> new Estimate(1, u));
  }
}
