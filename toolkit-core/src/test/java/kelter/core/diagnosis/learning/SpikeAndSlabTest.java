package kelter.core.diagnosis.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.core.source64.XoRoShiRo128PlusPlus;
import org.apache.commons.rng.sampling.distribution.DirichletSampler;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Tables of which some are right. */
class SpikeAndSlabTest {

  private static final BetaDistribution EVEN = new BetaDistribution(1, 1);
  private static final Strength.Guess WIDE = new Strength.Guess(60, 0.7, 20, 4000);
  private static final double[] TABLE = {.3, .25, .2, .1, .05, .05, .03, .02};

  private final XoRoShiRo128PlusPlus random = new XoRoShiRo128PlusPlus(11, 12);

  /**
   * Under an even prior, which is a strength of 2, one order of 2 successes of 3 has the chance
   * 1/12 (Bayes 1763), by the table 1/8. Both thought as likely before, the table is right with
   * (1/8) / (1/8 + 1/12) = 0.6, and the counts weigh 0.4 times 3 / (3 + 2) = 0.24.
   */
  @Test
  @DisplayName("Bayes: 2 successes of 3 leave an even table right with 0.6")
  void weightByHand() {
    Strength.Sample sample = new Strength.Sample(new double[] {.5, .5}, new double[] {2, 1});
    SpikeAndSlab tables = SpikeAndSlab.of(List.of(sample), EVEN, new Strength.Guess(2, 1, 2, 2));

    assertEquals(0.6, tables.right(0), 1e-12);
    assertEquals(0.24, tables.weight(0), 1e-12);
  }

  @Test
  void oneJobTellsNothingOfTheTable() {
    Strength.Sample one = new Strength.Sample(new double[] {.9, .1}, new double[] {0, 1});
    SpikeAndSlab tables = SpikeAndSlab.of(List.of(one), new BetaDistribution(9, 1), WIDE);

    // The grid of chances has steps of .05.
    assertEquals(0.9, tables.right(0), 5e-3);
    assertTrue(tables.weight(0) < 0.1 / 20, "weight " + tables.weight(0));
  }

  /** Every other table is right; the others are drawn with strength 25, by commons-rng. */
  @Test
  void rightTablesAreToldFromOthers() {
    List<Strength.Sample> samples = new ArrayList<>();
    for (int shop = 0; shop < 200; shop++) {
      samples.add(new Strength.Sample(TABLE, counts(shop % 2 == 0 ? TABLE : moved(), 100)));
    }
    SpikeAndSlab tables = SpikeAndSlab.of(samples, EVEN, WIDE);
    double said = 0;
    double apart = 0;
    for (int shop = 0; shop < 200; shop++) {
      said += tables.right(shop) / 200;
      apart += (shop % 2 == 0 ? tables.right(shop) : 1 - tables.right(shop)) / 200;
    }

    // One half with a standard error of .5 / sqrt(200) = .035, told apart most of the time.
    assertEquals(0.5, said, 0.1);
    assertTrue(apart > 0.8, "told apart " + apart);
  }

  /** What the others show counts for a table of which little is known. */
  @Test
  void otherTablesTellOfOne() {
    double[] few = {1, 0, 0, 1, 0, 0, 1, 0};
    double amongRight = lastOf(few, false);
    double amongMoved = lastOf(few, true);

    assertTrue(amongRight < amongMoved / 3, amongRight + " and " + amongMoved);
  }

  private double lastOf(double[] few, boolean moved) {
    List<Strength.Sample> samples = new ArrayList<>();
    for (int shop = 0; shop < 20; shop++) {
      samples.add(new Strength.Sample(TABLE, counts(moved ? moved() : TABLE, 200)));
    }
    samples.add(new Strength.Sample(TABLE, few));
    return SpikeAndSlab.of(samples, EVEN, WIDE).weight(20);
  }

  private double[] moved() {
    double[] alpha = new double[TABLE.length];
    for (int k = 0; k < alpha.length; k++) {
      alpha[k] = 25 * TABLE[k];
    }
    return DirichletSampler.of(random, alpha).sample();
  }

  private double[] counts(double[] shares, int jobs) {
    double[] counts = new double[shares.length];
    for (int job = 0; job < jobs; job++) {
      double left = random.nextDouble();
      int k = 0;
      while (k < shares.length - 1 && left >= shares[k]) {
        left -= shares[k++];
      }
      counts[k]++;
    }
    return counts;
  }

  @Test
  void whatWasNotCountedAndWhatTheTableDoesNotKnowAreNoEvidence() {
    Strength.Sample none = new Strength.Sample(new double[] {1, 0}, new double[] {0, 0});
    Strength.Sample unknown = new Strength.Sample(new double[] {1, 0}, new double[] {0, 3});
    SpikeAndSlab tables = SpikeAndSlab.of(List.of(none, unknown), EVEN, WIDE);

    assertEquals(0, tables.weight(0));
    assertEquals(0.5, tables.right(1), 1e-9);
    assertTrue(Double.isFinite(tables.weight(1)));
  }

  /** A hundred thousand jobs that stray leave no doubt, and nothing overflows. */
  @Test
  void manyJobsLeaveNoDoubt() {
    double[] half = {0, 0, 0, 0, 50_000, 50_000, 0, 0};
    SpikeAndSlab tables =
        SpikeAndSlab.of(
            List.of(new Strength.Sample(TABLE, half), new Strength.Sample(TABLE, many())),
            EVEN,
            WIDE);

    assertTrue(tables.weight(0) > 0.99, "strays " + tables.weight(0));
    assertTrue(tables.right(1) > 0.9, "keeps to it " + tables.right(1));
  }

  private static double[] many() {
    double[] many = TABLE.clone();
    for (int k = 0; k < many.length; k++) {
      many[k] *= 100_000;
    }
    return many;
  }
}
