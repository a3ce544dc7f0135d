package kelter.costing.life;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.testkit.ledger.OutsideCheck;
import org.apache.commons.numbers.gamma.Erfcx;
import org.apache.commons.statistics.distribution.WeibullDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WeibullTest {

  /** The fit of NIST/SEMATECH e-Handbook 8.4.1.3, in hours: scale 606.5280, shape 1.7208. */
  private static final Weibull NIST = new Weibull(606.5280, 1.7208);

  /** Printed there: mean 540.737 h. A shape of five digits moves it by less than 0.01 h. */
  @OutsideCheck(of = "remaining-life", against = "NIST/SEMATECH e-Handbook 8.4.1.3, mean")
  @Test
  void meanOfTheNistExample() {
    assertEquals(540.737, NIST.mean(), 0.01);
  }

  /**
   * Residual life of the same fit at 500 h, by numerical integration outside the project with more
   * digits of the fit (shape 1.720797261, scale 606.527558): 0.232273793 fail within 100 h,
   * 303.117288 h are left on average.
   */
  @Test
  void residualLifeOfTheNistExample() {
    Weibull fit = new Weibull(606.527558, 1.720797261);
    assertEquals(0.232273793, 1 - fit.survival(500, 100), 1e-8);
    assertEquals(303.117288, fit.meanResidual(500), 1e-5);
  }

  @Test
  void agreesWithTheWeibullOfCommonsStatistics() {
    WeibullDistribution reference = WeibullDistribution.of(2.2, 13.65);
    Weibull life = new Weibull(13.65, 2.2);
    assertEquals(reference.getMean(), life.mean(), 1e-12);
    for (double t : new double[] {0, 0.1, 3, 12, 30, 60}) {
      assertEquals(reference.survivalProbability(t), life.survival(t), 1e-14);
    }
    for (double p : new double[] {0.001, 0.3, 0.5, 0.99}) {
      assertEquals(reference.inverseCumulativeProbability(p), life.residualQuantile(0, p), 1e-10);
    }
  }

  /** A shape of 1 is the exponential life, which has no memory: what is left is always the mean. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1, 100, 10_000, 1e6})
  void theExponentialLifeHasNoMemory(double age) {
    assertEquals(20, new Weibull(20, 1).meanResidual(age), 1e-9);
  }

  /**
   * A shape of 2 is the Rayleigh life, whose residual mean is {@code scale sqrt(pi)/2 erfcx(age /
   * scale)} with the scaled complementary error function; held against Commons Numbers on both
   * sides of the change to the asymptotic series.
   */
  @OutsideCheck(of = "remaining-life", against = "Commons Numbers, scaled error function, shape 2")
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.3, 1, 5, 22.3, 22.4, 50, 1e4})
  void theRayleighLifeIsAnErrorFunction(double ratio) {
    double expected = 10 * Math.sqrt(Math.PI) / 2 * Erfcx.value(ratio);
    assertEquals(expected, new Weibull(10, 2).meanResidual(10 * ratio), 1e-11 * expected);
  }

  /** Rows of Forti et al. (2018), as cited: mean, shape and scale of the same life. */
  @ParameterizedTest
  @CsvSource({
    "12.7, 1.64, 14.2, 0.06",
    "13.06, 1.37, 14.28, 0.02",
    "17.19, 1.28, 18.55, 0.03",
    "14.55, 2.2, 16.43, 0.01",
    "16, 2.47, 18.04, 0.01",
    "17.84, 1.31, 19.35, 0.03",
    "13.97, 2.58, 15.73, 0.01",
    "12.09, 2.2, 13.65, 0.01",
    "13.43, 2.2, 15.16, 0.01"
  })
  void scaleFromTheMean(double mean, double shape, double scale, double tolerance) {
    assertEquals(scale, Weibull.ofMean(mean, shape).scale(), tolerance);
  }

  @Test
  void quantileAndSurvivalAreInverse() {
    Weibull life = new Weibull(14, 1.6);
    for (double age : new double[] {0, 2, 14, 40}) {
      double median = life.residualQuantile(age, 0.5);
      assertEquals(0.5, life.survival(age, median), 1e-12);
    }
  }

  @Test
  void extremesStayFinite() {
    assertTrue(new Weibull(1, 50).meanResidual(1000) >= 0);
    assertTrue(Double.isFinite(new Weibull(0.01, 20).meanResidual(200)));
    assertTrue(new Weibull(1e-3, 0.2).meanResidual(1e3) > 0);
  }

  @Test
  void whatIsNoLifeIsRefusedAndNamed() {
    String zero =
        assertThrows(IllegalArgumentException.class, () -> new Weibull(0, 2)).getMessage();
    assertEquals("a characteristic life of 0.0; it must be above zero and finite", zero);
    assertThrows(IllegalArgumentException.class, () -> new Weibull(Double.NaN, 2));
    assertThrows(IllegalArgumentException.class, () -> new Weibull(10, 0));
    assertThrows(IllegalArgumentException.class, () -> new Weibull(10, Double.NaN));
    assertEquals(
        "a mean life of 0.0; it must be above zero and finite",
        assertThrows(IllegalArgumentException.class, () -> Weibull.ofMean(0, 2)).getMessage());
    assertThrows(IllegalArgumentException.class, () -> Weibull.ofMean(-3, 2));
    Weibull life = new Weibull(10, 2);
    assertEquals(0, life.residualQuantile(4, 0), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> life.survival(5, -1));
    assertThrows(IllegalArgumentException.class, () -> life.residualQuantile(1, -0.1));
    assertThrows(IllegalArgumentException.class, () -> life.meanResidual(-1));
    assertThrows(IllegalArgumentException.class, () -> life.survival(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> life.residualQuantile(1, 1));
  }
}
