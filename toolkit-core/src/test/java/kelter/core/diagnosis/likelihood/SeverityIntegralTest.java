package kelter.core.diagnosis.likelihood;

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

  /**
   * With a chance of a blunder the likelihood is flat but near its peak, and the peak may lie
   * between any two points of a grid: (1 - b) times the part of the normal distribution inside 0 to
   * 1, plus b.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.3, 0.03, 0.002, 5e-4, 1e-5, 1e-7})
  void sharpPeakOverAFlatFloorIsNotMissed(double sigma) {
    for (double at : new double[] {0.02, 0.0517, 0.4375, 0.5, 0.98, 1}) {
      SeverityIntegral integral =
          SeverityIntegral.of(
              s -> Math.log(0.99 * Math.exp(Normal.logDensity((s - at) / sigma)) / sigma + 0.01),
              at(sigma, at));
      double inside = Normal.cdf((1 - at) / sigma) - Normal.cdf(-at / sigma);

      assertEquals(0.99 * inside + 0.01, Math.exp(integral.logIntegral()), 1e-7, "at " + at);
      assertEquals(at, integral.mode(), 1e-6);
    }
  }

  /** Two readings that disagree by three of their standard deviations: the product of two peaks. */
  @Test
  void peakBetweenTwoReadings() {
    double sigma = 1e-4;
    SeverityIntegral integral =
        SeverityIntegral.of(
            s ->
                Math.log(0.99 * Math.exp(Normal.logDensity((s - 0.3) / sigma)) / sigma + 0.01)
                    + Math.log(
                        0.99 * Math.exp(Normal.logDensity((s - 0.3003) / sigma)) / sigma + 0.01),
            at(sigma, 0.3, 0.3003));
    double apart = 3 / Math.sqrt(2);
    double both = 0.99 * 0.99 * Math.exp(Normal.logDensity(apart)) / (sigma * Math.sqrt(2));

    assertEquals(both + 2 * 0.99 * 0.01 + 1e-4, Math.exp(integral.logIntegral()), both * 1e-7);
    assertEquals(0.30015, integral.mode(), 0.1 * sigma);
  }

  /** A tail that sets in at 0.4375: the share of the severities above it, whatever its width. */
  @ParameterizedTest
  @ValueSource(doubles = {0.01, 1e-3, 1e-5})
  void sharpStepIsNotBlurred(double sigma) {
    SeverityIntegral integral =
        SeverityIntegral.of(
            s -> Math.log(0.99 * Normal.cdf((s - 0.4375) / sigma) + 0.01), at(sigma, 0.4375));

    assertEquals(0.99 * 0.5625 + 0.01, Math.exp(integral.logIntegral()), 1e-8);
  }

  private static SeverityIntegral.Edges at(double sigma, double... severities) {
    return new SeverityIntegral.Edges() {
      @Override
      public int count() {
        return severities.length;
      }

      @Override
      public double distance(int edge, double severity) {
        return (severities[edge] - severity) / sigma;
      }
    };
  }
}
