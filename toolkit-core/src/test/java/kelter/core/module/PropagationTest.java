package kelter.core.module;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import kelter.core.uncertainty.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

  /**
   * JCGM 100:2008, equation (11a): of y = 3 x the contribution is 3 u, also where the calculation
   * ends at the estimate or on both sides of it.
   */
  @ParameterizedTest
  @CsvSource({"0, 0, 9", "9, 0, 9", "1, 0.9, 1.1"})
  void theCalculationIsAskedNowhereBeyondItsLimits(double x, double least, double most) {
    var result =
        Propagation.through(
            in -> in[0] >= least && in[0] <= most ? 3 * in[0] : Double.NaN,
            List.of(new Estimate(x, 0.5)),
            new double[] {least},
            new double[] {most});
    assertEquals(1.5, result.contributions().get(0), 1e-12);
  }
}
