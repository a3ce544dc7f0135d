package kelter.costing.life;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.statistics.distribution.LogNormalDistribution;
import org.junit.jupiter.api.Test;

class LognormalTest {

  private static final Lognormal LIFE = new Lognormal(11, 0.5);
  private static final LogNormalDistribution REFERENCE =
      LogNormalDistribution.of(Math.log(11), 0.5);

  @Test
  void agreesWithCommonsStatistics() {
    assertEquals(REFERENCE.getMean(), LIFE.mean(), 1e-11);
    for (double t : new double[] {0, 1, 11, 30, 100}) {
      assertEquals(REFERENCE.survivalProbability(t), LIFE.survival(t), 1e-13);
    }
  }

  /** By summing the survival function of the other library in small steps (trapezium rule). */
  @Test
  void whatIsLeftIsTheAreaUnderTheSurvivalFunction() {
    for (double age : new double[] {0.5, 8, 25}) {
      double step = 0.01;
      double sum = REFERENCE.survivalProbability(age) / 2;
      for (int i = 1; i < 60_000; i++) {
        sum += REFERENCE.survivalProbability(age + i * step);
      }
      double expected = sum * step / REFERENCE.survivalProbability(age);
      assertEquals(expected, LIFE.meanResidual(age), 1e-5 * expected);
    }
    assertEquals(LIFE.mean(), LIFE.meanResidual(0), 1e-12);
  }

  @Test
  void farOutItStaysFinite() {
    double left = LIFE.meanResidual(1e9);
    assertTrue(Double.isFinite(left) && left > 0, "left " + left);
  }

  @Test
  void whatIsNoLifeIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Lognormal(0, 1));
    assertThrows(IllegalArgumentException.class, () -> new Lognormal(1, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> LIFE.meanResidual(-1));
  }
}
