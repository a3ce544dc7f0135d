package kelter.core.log.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** How often a difference is told where none was made, and whether one that was made is found. */
class ComparisonTest {

  private static final int RUNS = 400;
  private static final int ROWS = 800;
  private static final int TO = 350;
  private static final int FROM = 450;

  /**
   * At most so many of 400 runs may have a chance below 5 %: 20 are expected, the standard
   * deviation of a binomial with 1 in 20 is 4.4, times 3.
   */
  private static final int MOST_FALSE = 20 + 13;

  private static int below(Function<Random, double[]> column, double resolution) {
    Random random = new Random(41);
    int below = 0;
    for (int run = 0; run < RUNS; run++) {
      double chance = SyntheticLog.compared(column.apply(random), TO, FROM, resolution).chance();
      below += chance < 0.05 ? 1 : 0;
    }
    return below;
  }

  @Test
  void whereNothingHappenedFewAreTold() {
    assertTrue(below(random -> SyntheticLog.noise(ROWS, random), 0) <= MOST_FALSE);
    assertTrue(below(random -> SyntheticLog.first(ROWS, 0.9, random), 0) <= MOST_FALSE);
    assertTrue(below(random -> SyntheticLog.first(ROWS, 0.98, random), 0) <= MOST_FALSE);
    assertTrue(
        below(random -> SyntheticLog.told(SyntheticLog.noise(ROWS, random), 2), 2) <= MOST_FALSE);
  }

  /** A pure walk has no level at all; by a t distribution on 15 steps a few more are told. */
  @Test
  void aColumnThatWalksIsNotToldAsChanged() {
    assertTrue(below(random -> SyntheticLog.walk(ROWS, 1, random), 0) <= 2 * MOST_FALSE);
    assertTrue(
        below(
                random -> {
                  double[] walk = SyntheticLog.walk(ROWS, 0.03, random);
                  return SyntheticLog.plus(SyntheticLog.noise(ROWS, random), i -> walk[(int) i]);
                },
                0)
            <= 2 * MOST_FALSE);
  }

  @Test
  void aTrendThatGoesOnIsNoChange() {
    assertTrue(
        below(random -> SyntheticLog.plus(SyntheticLog.noise(ROWS, random), i -> 0.01 * i), 0)
            <= MOST_FALSE);
  }

  @Test
  void aChangeIsFound() {
    Random random = new Random(43);
    int found = 0;
    for (int run = 0; run < RUNS; run++) {
      double[] stepped = SyntheticLog.plus(SyntheticLog.noise(ROWS, random), i -> i < 400 ? 0 : 2);
      Comparison comparison = SyntheticLog.compared(stepped, TO, FROM, 0);
      found += comparison.chance() < 0.05 ? 1 : 0;
      assertEquals(2, comparison.difference(), 2 * comparison.uncertainty());
    }
    assertTrue(found > 0.95 * RUNS, found + " of " + RUNS);
  }

  /** On for a minute, off for a minute: as its swing is 100, so is what its mean may do. */
  @Test
  void aStretchThatSwingsByItsOwnSizeIsNoLevel() {
    double[] swings =
        SyntheticLog.plus(
            SyntheticLog.noise(ROWS, new Random(47)),
            i -> i < TO ? (((int) i / 60) % 2 == 0 ? 100 : 0) : 80);
    Comparison comparison = SyntheticLog.compared(swings, TO, FROM, 0);

    assertTrue(comparison.uncertainty() > 25, comparison::toString);
    assertTrue(comparison.chance() > 0.05, comparison::toString);
  }

  /**
   * Constant at two neighbouring steps of a display: the truth may have moved by next to nothing.
   */
  @Test
  void oneStepOfTheDisplayIsNoChangeAndThreeAre() {
    double[] level = new double[ROWS];
    double[] one = SyntheticLog.plus(level, i -> i < 400 ? 32 : 33);
    double[] three = SyntheticLog.plus(level, i -> i < 400 ? 32 : 35);

    // Two rectangular distributions of width 1: sqrt(1/12 + 1/12).
    assertEquals(Math.sqrt(1 / 6.0), SyntheticLog.compared(one, TO, FROM, 1).uncertainty(), 1e-12);
    assertTrue(SyntheticLog.compared(one, TO, FROM, 1).chance() > 0.02);
    assertTrue(SyntheticLog.compared(three, TO, FROM, 1).chance() < 1e-4);
  }

  @Test
  void aHealthyStretchNeedsTwoValues() {
    assertThrows(IllegalArgumentException.class, () -> LocalLevel.of(new double[1], 1));
    assertThrows(IllegalArgumentException.class, () -> LocalLevel.of(new double[2], 0));
  }
}
