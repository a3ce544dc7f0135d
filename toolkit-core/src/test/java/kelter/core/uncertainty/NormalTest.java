package kelter.core.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The normal distribution against printed tables and an arbitrary-precision library. */
class NormalTest {

  /**
   * Abramowitz and Stegun, Handbook of Mathematical Functions, table 26.1, P(x), written down from
   * memory to seven digits; half a unit of the last digit.
   */
  @ParameterizedTest
  @CsvSource({
    "0, 0.5",
    "0.5, 0.6914625",
    "1, 0.8413447",
    "1.5, 0.9331928",
    "2, 0.9772499",
    "2.5, 0.9937903",
    "3, 0.9986501"
  })
  void printedTable(double z, double probability) {
    assertEquals(probability, Normal.cdf(z), 5e-8);
    assertEquals(1 - probability, Normal.cdf(-z), 5e-8);
  }

  /** JCGM 106:2012, table 1: probability of conformity and z, to the printed hundredth. */
  @ParameterizedTest
  @CsvSource({"0.80, 0.84", "0.90, 1.28", "0.95, 1.64", "0.99, 2.33", "0.999, 3.09"})
  void quantilesOfTheGuideOnConformity(double probability, double z) {
    assertTrue(Normal.cdf(z - 0.005) <= probability, "below");
    assertTrue(Normal.cdf(z + 0.005) >= probability, "above");
  }

  /** ln Φ(z) by the library mpmath at 30 digits. The tail series is good to 15/z^6. */
  @ParameterizedTest
  @CsvSource({
    "3, -0.00135080996474819379884, 1e-15",
    "-5, -15.0649983939887257360837, 1e-12",
    "-20, -203.917155371097263936804, 1e-10",
    "-29.9, -451.322912458528634467922, 1e-9",
    "-30.1, -457.329564416382257883088, 3e-8",
    "-40, -804.608442013753788166607, 5e-9",
    "-100, -5005.52420869420508862630, 1e-9"
  })
  void logarithmsFarIntoTheTail(double z, double logarithm, double tolerance) {
    assertEquals(logarithm, Normal.logCdf(z), tolerance);
  }

  @Test
  void theEnds() {
    assertEquals(0, Normal.cdf(Double.NEGATIVE_INFINITY), 0);
    assertEquals(1, Normal.cdf(Double.POSITIVE_INFINITY), 0);
    assertEquals(Double.NEGATIVE_INFINITY, Normal.logCdf(Double.NEGATIVE_INFINITY), 0);
    assertEquals(0, Normal.logCdf(Double.POSITIVE_INFINITY), 0);
    assertTrue(Double.isNaN(Normal.cdf(Double.NaN)));
    assertTrue(Double.isNaN(Normal.logCdf(Double.NaN)));
  }

  /** Handbook of Mathematical Functions, table 26.1: Z(0) = 0.3989423, Z(1) = 0.2419707. */
  @Test
  void density() {
    assertEquals(0.3989423, Math.exp(Normal.logDensity(0)), 5e-8);
    assertEquals(0.2419707, Math.exp(Normal.logDensity(1)), 5e-8);
  }
}
