package kelter.core.diagnosis.learning;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What counts of jobs tell. */
class LearningTest {

  /** Berkeley STAT 238: a die that fell 0, 0, 0, 0, 3, 1 times; Dirichlet with 1 for each side. */
  @Test
  @DisplayName("STAT 238, counts of a die: one tenth each for the four unseen sides, then .4, .2")
  void countsOfADie() {
    double[] even = new double[6];
    java.util.Arrays.fill(even, 1.0 / 6);
    double[] counts = {0, 0, 0, 0, 3, 1};
    DirichletPrior prior = DirichletPrior.of(even, 6);

    double[] expected = {.1, .1, .1, .1, .4, .2};
    assertArrayEquals(expected, prior.predictive(counts), 1e-15);
    assertEquals(.4, prior.weightOfCounts(counts), 1e-15);
    assertEquals(.4, prior.share(4, counts).mean(), 1e-15);
  }

  /**
   * Placenta previa, Bayesian Data Analysis, 2.4 (from memory): 437 of 980. Quantiles: qbeta of R
   * 4.2.2.
   */
  @Test
  @DisplayName("BDA 2.4: 437 of 980 on Beta(1, 1) give Beta(438, 544)")
  void shareOfGirls() {
    BetaDistribution share = new BetaDistribution(1, 1).and(980, 437);

    assertEquals(new BetaDistribution(438, 544), share);
    assertEquals(.446028513, share.mean(), 5.01e-10);
    assertEquals(.015854343, share.standardDeviation(), 5.01e-10);
    assertEquals(.41506549, share.quantile(.025), 5.01e-9);
    assertEquals(.47719977, share.quantile(.975), 5.01e-9);
  }

  @Test
  void withoutCountsThePriorStands() {
    double[] prior = {.28, .12, .18, .14, .08, .20};
    DirichletPrior shop = DirichletPrior.of(prior, 12);

    assertArrayEquals(prior, shop.predictive(new double[6]), 1e-15);
    assertEquals(0, shop.weightOfCounts(new double[6]));
  }

  @Test
  void thePredictionLiesBetweenPriorAndShares() {
    double[] prior = {.5, .3, .2};
    double[] counts = {2, 30, 8};
    DirichletPrior shop = DirichletPrior.of(prior, 10);
    double weight = shop.weightOfCounts(counts);

    assertEquals(.8, weight, 1e-15);
    for (int k = 0; k < 3; k++) {
      double between = weight * counts[k] / 40 + (1 - weight) * prior[k];
      assertEquals(between, shop.predictive(counts)[k], 1e-15);
    }
  }

  /** Ten jobs of three years ago: 10 * .9 * .9 * .9, by hand. */
  @Test
  void oldJobsCountForLess() {
    assertEquals(7.29, DirichletPrior.faded(10, 3), 1e-14);
    assertEquals(10, DirichletPrior.faded(10, 0));
    assertTrue(DirichletPrior.faded(10, 0.5) < 10);
  }

  @Test
  void whatIsNoCountIsRefused() {
    DirichletPrior prior = DirichletPrior.of(new double[] {.5, .5}, 2);
    refused(() -> DirichletPrior.of(new double[] {.5, .4}, 2));
    refused(() -> DirichletPrior.of(new double[] {1}, 0));
    refused(() -> DirichletPrior.of(new double[0], 1));
    refused(() -> DirichletPrior.of(new double[] {1}, Double.NaN));
    refused(() -> prior.predictive(new double[] {1}));
    refused(() -> prior.predictive(new double[] {1, -1}));
    refused(() -> prior.weightOfCounts(new double[] {1, Double.NaN}));
    refused(() -> DirichletPrior.faded(-1, 1));
    refused(() -> DirichletPrior.faded(1, Double.POSITIVE_INFINITY));
    refused(() -> new BetaDistribution(0, 1));
    refused(() -> new BetaDistribution(1, Double.NaN));
    refused(() -> new BetaDistribution(1, 1).and(2, 3));
    refused(() -> new BetaDistribution(1, 1).quantile(1.1));
  }

  private static void refused(org.junit.jupiter.api.function.Executable code) {
    assertThrows(IllegalArgumentException.class, code);
  }
}
