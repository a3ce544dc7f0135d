package kelter.core.diagnosis.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.core.source64.XoRoShiRo128PlusPlus;
import org.apache.commons.rng.sampling.distribution.DirichletSampler;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** As how many jobs a table counts. */
class StrengthTest {

  private static final Strength.Guess WIDE = new Strength.Guess(30, 2, 2, 2000);

  /**
   * Under an even prior each number of successes is as likely (Bayes 1763), so that one order of 2
   * of 3 has the chance 1/4 / 3 = 1/12.
   */
  @Test
  @DisplayName("Bayes: one order of 2 successes of 3 has the chance 1/12 under an even prior")
  void likelihoodByHand() {
    Strength.Sample sample = new Strength.Sample(new double[] {.5, .5}, new double[] {2, 1});

    assertEquals(Math.log(1.0 / 12), sample.logLikelihood(2), 1e-14);
  }

  @Test
  void countsThatKeepToTheTableStrengthenIt() {
    double[] table = {.5, .3, .2};
    double close =
        Strength.of(List.of(new Strength.Sample(table, new double[] {50, 30, 20})), WIDE);
    double far = Strength.of(List.of(new Strength.Sample(table, new double[] {10, 20, 70})), WIDE);

    assertTrue(close > 60, "close " + close);
    assertTrue(far < 10, "far " + far);
  }

  /** Tables are drawn by commons-rng; the strength of 25 is found again to a fifth. */
  @Test
  void aKnownStrengthIsFound() {
    var random = new XoRoShiRo128PlusPlus(11, 12);
    double[] table = {.3, .25, .2, .1, .05, .05, .03, .02};
    double[] alpha = new double[table.length];
    for (int k = 0; k < alpha.length; k++) {
      alpha[k] = 25 * table[k];
    }
    DirichletSampler shops = DirichletSampler.of(random, alpha);
    List<Strength.Sample> samples = new ArrayList<>();
    for (int shop = 0; shop < 200; shop++) {
      double[] truth = shops.sample();
      double[] counts = new double[truth.length];
      for (int job = 0; job < 100; job++) {
        counts[drawn(truth, random.nextDouble())]++;
      }
      samples.add(new Strength.Sample(table, counts));
    }

    assertEquals(25, Strength.of(samples, WIDE), 5);
  }

  private static int drawn(double[] truth, double place) {
    int k = 0;
    double left = place;
    while (k < truth.length - 1 && left >= truth[k]) {
      left -= truth[k];
      k++;
    }
    return k;
  }

  @Test
  void withoutCountsItIsTheUsualOne() {
    assertEquals(30, Strength.of(List.of(), WIDE));
    Strength.Sample one = new Strength.Sample(new double[] {.5, .5}, new double[] {1, 0});
    assertEquals(30, Strength.of(List.of(one), WIDE), 1e-9);
  }

  @Test
  void itStaysWithinItsBounds() {
    Strength.Guess tight = new Strength.Guess(30, 0.7, 12, 400);
    double[] table = {.01, .99};
    double least = Strength.of(List.of(new Strength.Sample(table, new double[] {500, 0})), tight);

    assertEquals(12, least, 1e-9);
    assertThrows(IllegalArgumentException.class, () -> new Strength.Guess(5, 1, 12, 400));
  }
}
