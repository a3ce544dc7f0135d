package kelter.core.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import kelter.core.uncertainty.Normal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SeverityIntegralTest {

  /**
   * A reading of 27.4 where the forecast is 24 + 8 s: the integral of its density over s is 1/8 as
   * long as the whole peak lies inside, by the substitution y = 24 + 8 s. A rule with 32 fixed
   * nodes is off by a half at a standard deviation of 0.10 (computed outside the project).
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.39, 0.10, 0.05, 0.02, 1e-3, 1e-5})
  void sharpPeakIsNotMissed(double sigma) {
    SeverityIntegral integral =
        SeverityIntegral.of(s -> Normal.logDensity((27.4 - 24 - 8 * s) / sigma) - Math.log(sigma));

    assertEquals(0.125, Math.exp(integral.logIntegral()), 0.125 * 1e-7);
    assertEquals(0.425, integral.mode(), 0.1 * sigma / 8, "well within the peak");
    assertEquals(sigma / 8, integral.distribution().sd(), sigma / 8 * 1e-5);
  }

  @Test
  void flatLikelihoodKeepsThePrior() {
    SeverityIntegral integral = SeverityIntegral.of(s -> -3);

    assertEquals(-3, integral.logIntegral(), 1e-12);
    assertEquals(0.5, integral.distribution().mean(), 1e-12);
    assertEquals(Math.sqrt(1.0 / 12), integral.distribution().sd(), 1e-12);
  }

  /** Exponential in s: the integral of exp(-a s) from 0 to 1 is (1 - exp(-a))/a. */
  @ParameterizedTest
  @ValueSource(doubles = {1, 30, 1000, 1e5})
  void peakAtTheEdge(double a) {
    SeverityIntegral integral = SeverityIntegral.of(s -> -a * s);

    assertEquals((1 - Math.exp(-a)) / a, Math.exp(integral.logIntegral()), 1e-6 / a);
  }

  @Test
  void twoPeaksCountBoth() {
    double sigma = 0.01;
    SeverityIntegral integral =
        SeverityIntegral.of(
            s ->
                Math.log(
                    Math.exp(Normal.logDensity((s - 0.2) / sigma)) / sigma
                        + 3 * Math.exp(Normal.logDensity((s - 0.8) / sigma)) / sigma
                        + 1e-200));

    assertEquals(4, Math.exp(integral.logIntegral()), 1e-4);
    assertEquals(0.65, integral.distribution().mean(), 1e-5);
  }
}
