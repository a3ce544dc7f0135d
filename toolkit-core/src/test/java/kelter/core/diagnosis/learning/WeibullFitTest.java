package kelter.core.diagnosis.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Lives of which some are only known to be longer. */
class WeibullFitTest {

  /** NIST/SEMATECH e-Handbook of Statistical Methods, 8.4.1.3: ten failures, ten left at 500 h. */
  private static Lives handbook() {
    Map<Double, Double> failed = new TreeMap<>();
    for (double hours : new double[] {54, 187, 216, 240, 244, 335, 361, 373, 375, 386}) {
      failed.put(hours, 1.0);
    }
    return new Lives(failed, Map.of(500.0, 10.0));
  }

  @Test
  @DisplayName("NIST 8.4.1.3: shape 1.7208, scale 606.5280, ln L -75.135, mean 540.737")
  void handbookExample() {
    WeibullFit fit = WeibullFit.of(handbook());

    assertEquals(1.7208, fit.shape(), 5.01e-5);
    // The handbook's own optimiser stops 5e-4 away from R's, so that its last digits are not held.
    assertEquals(606.5280, fit.scale(), 1e-3);
    assertEquals(-75.135, fit.logLikelihood(), 5.01e-4);
    assertEquals(540.737, fit.mean(), 1e-3);
  }

  /** The same lives by survreg of R 4.2.2, package survival 3.5-3. */
  @Test
  @DisplayName("survreg of R: 1.720797261, 606.527558, sd of the logarithms .2918128 and .2059439")
  void asRHasIt() {
    WeibullFit fit = WeibullFit.of(handbook());

    assertEquals(1.720797261, fit.shape(), 1e-6);
    assertEquals(606.527558, fit.scale(), 1e-4);
    assertEquals(-75.13461816, fit.logLikelihood(), 1e-8);
    assertEquals(.2918128, fit.sdLogShape(), 1e-6);
    assertEquals(.2059439, fit.sdLogScale(), 1e-6);
    assertEquals(10, fit.failures());
    assertEquals(10, fit.lasted());
  }

  @Test
  void anotherUnitChangesTheScaleAlone() {
    Map<Double, Double> failed = new TreeMap<>();
    handbook().failed().forEach((hours, number) -> failed.put(hours / 24, number));
    WeibullFit days = WeibullFit.of(new Lives(failed, Map.of(500.0 / 24, 10.0)));
    WeibullFit hours = WeibullFit.of(handbook());

    assertEquals(hours.shape(), days.shape(), 1e-8);
    assertEquals(hours.scale() / 24, days.scale(), 1e-7);
    assertEquals(hours.sdLogScale(), days.sdLogScale(), 1e-8);
  }

  /** Intervals of 95 % hold the truth in 95 of 100 draws; 400 draws stray by 1.1 of 100. */
  @Test
  void intervalsHoldTheTruthAsOftenAsTheySay() {
    SplittableRandom random = new SplittableRandom(5);
    int shapes = 0;
    int scales = 0;
    int draws = 400;
    for (int i = 0; i < draws; i++) {
      WeibullFit fit = WeibullFit.of(drawn(random));
      shapes += within(2.2, fit.shapeInterval());
      scales += within(14, fit.scaleInterval());
    }

    assertTrue(shapes >= 0.92 * draws && shapes <= 0.98 * draws, shapes + " shapes");
    assertTrue(scales >= 0.92 * draws && scales <= 0.98 * draws, scales + " scales");
  }

  /** Sixty machines of shape 2.2 and scale 14, each seen up to an age of 4 to 20. */
  private static Lives drawn(SplittableRandom random) {
    Map<Double, Double> failed = new TreeMap<>();
    Map<Double, Double> lasted = new TreeMap<>();
    for (int machine = 0; machine < 60; machine++) {
      double life = 14 * Math.pow(-Math.log(random.nextDouble()), 1 / 2.2);
      double seen = 4 + 16 * random.nextDouble();
      (life <= seen ? failed : lasted).merge(Math.min(life, seen), 1.0, Double::sum);
    }
    return new Lives(failed, lasted);
  }

  private static int within(double truth, WeibullFit.Interval interval) {
    return truth >= interval.low() && truth <= interval.high() ? 1 : 0;
  }

  @Test
  void whatTellsNoShapeIsRefused() {
    Map<Double, Double> none = Map.of();
    assertThrows(
        IllegalArgumentException.class, () -> WeibullFit.of(new Lives(Map.of(3.0, 1.0), none)));
    assertThrows(
        IllegalArgumentException.class, () -> WeibullFit.of(new Lives(Map.of(3.0, 8.0), none)));
    assertThrows(IllegalArgumentException.class, () -> new Lives(Map.of(0.0, 1.0), none));
    assertThrows(IllegalArgumentException.class, () -> new Lives(Map.of(1.0, Double.NaN), none));
  }

  /**
   * Of a complete sample the estimates of shape and scale go together, with a correlation of 0.313
   * whatever both are: variances of 0.608 and 1.109 and a covariance of 0.257 (large samples,
   * handbooks of the Weibull distribution, from memory). 200 lives at equal steps of probability.
   */
  @Test
  void shapeAndScaleOfACompleteSampleGoTogether() {
    Map<Double, Double> failed = new TreeMap<>();
    for (int i = 0; i < 200; i++) {
      failed.put(14 * Math.pow(-Math.log(1 - (i + 0.5) / 200), 1 / 2.2), 1.0);
    }
    WeibullFit fit = WeibullFit.of(new Lives(failed, Map.of()));
    assertEquals(0.313, fit.correlation(), 0.02);
    assertEquals(Math.sqrt(0.608 / 200), fit.sdLogShape(), 0.003);
    assertEquals(Math.sqrt(1.109 / 200) / 2.2, fit.sdLogScale(), 0.003);
  }
}
