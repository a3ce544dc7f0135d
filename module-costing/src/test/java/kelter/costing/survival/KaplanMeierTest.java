package kelter.costing.survival;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class KaplanMeierTest {

  private static double[] survivals(KaplanMeier estimate) {
    return estimate.steps().stream().mapToDouble(KaplanMeier.Step::survival).toArray();
  }

  private static double[] errors(KaplanMeier estimate) {
    return estimate.steps().stream().mapToDouble(KaplanMeier.Step::standardError).toArray();
  }

  /**
   * The classic remission data (Freireich 1963, Gehan 1965): printed to four decimals in texts on
   * survival; raw values from memory, recomputed outside the project. Standard errors by Greenwood.
   */
  @Test
  void remissionUnderTreatment() {
    KaplanMeier estimate = KaplanMeier.of(Data.treated());
    assertArrayEquals(
        new double[] {0.8571, 0.8067, 0.7529, 0.6902, 0.6275, 0.5378, 0.4482},
        survivals(estimate),
        0.5e-4);
    assertArrayEquals(
        new double[] {0.0764, 0.0869, 0.0963, 0.1068, 0.1141, 0.1282, 0.1346},
        errors(estimate),
        0.5e-4);
    assertEquals(23, estimate.median().orElseThrow());
    assertEquals(0.7529, estimate.survival(12), 0.5e-4);
    assertEquals(0.6902, estimate.survival(13), 0.5e-4);
  }

  @Test
  void remissionUnderPlacebo() {
    KaplanMeier estimate = KaplanMeier.of(Data.placebo());
    assertArrayEquals(
        new double[] {
          0.9048, 0.8095, 0.7619, 0.6667, 0.5714, 0.3810, 0.2857, 0.1905, 0.1429, 0.0952, 0.0476, 0
        },
        survivals(estimate),
        0.5e-4);
    assertEquals(8, estimate.median().orElseThrow());
    assertEquals(0, errors(estimate)[11]);
  }

  @Test
  void theMedianIsWhereJustHalfAreLeft() {
    KaplanMeier half = KaplanMeier.of(List.of(Observed.failedAt(3), Observed.aliveAt(5)));
    assertEquals(3, half.median().orElseThrow());
  }

  /**
   * By hand: at 1 two of three at risk are of the first group, at 2 one of two, at 3 the only one.
   * Expected are 2/3 + 1/2 + 1, the variance is 2/9 + 1/4 = 17/36, chi-squared (1/6)^2 / (17/36).
   */
  @Test
  void theLastOneAtRiskAddsNoVariance() {
    LogRank test =
        LogRank.of(
            List.of(Observed.failedAt(1), Observed.failedAt(3)), List.of(Observed.failedAt(2)));
    assertEquals(2, test.observed());
    assertEquals(13 / 6.0, test.expected(), 1e-12);
    assertEquals(17 / 36.0, test.variance(), 1e-12);
    assertEquals(1 / 17.0, test.chiSquared(), 1e-12);
  }

  /** NIST/SEMATECH e-Handbook 8.2.2.1: twenty units, ten failures, the rest censored at 500 h. */
  @Test
  void theUnitsOfTheNistHandbook() {
    assertArrayEquals(
        new double[] {0.95, 0.90, 0.85, 0.80, 0.75, 0.70, 0.65, 0.60, 0.55, 0.50},
        survivals(KaplanMeier.of(Data.nist())),
        1e-12);
  }

  /**
   * Log-rank test of the same trial: observed 9, expected 19.2505, variance 6.2570, chi-squared
   * 16.79 (known from memory, recomputed outside the project).
   */
  @Test
  void theTwoGroupsDiffer() {
    LogRank test = LogRank.of(Data.treated(), Data.placebo());
    assertEquals(9, test.observed());
    assertEquals(19.2505, test.expected(), 0.5e-4);
    assertEquals(6.2570, test.variance(), 0.5e-4);
    assertEquals(16.793, test.chiSquared(), 0.5e-3);
    assertTrue(test.probability() < 1e-4);
    assertEquals(test.chiSquared(), LogRank.of(Data.placebo(), Data.treated()).chiSquared(), 1e-9);
  }

  /** Table of the chi-squared distribution: 3.841 is the 95 % point with one degree of freedom. */
  @Test
  void theProbabilityIsThatOfTheTable() {
    assertEquals(0.05, new LogRank(0, Math.sqrt(3.841), 1).probability(), 1e-4);
  }

  @Test
  void alikeGroupsDoNotDiffer() {
    LogRank test = LogRank.of(Data.nist(), Data.nist());
    assertEquals(0, test.chiSquared(), 1e-12);
    assertEquals(1, test.probability(), 1e-12);
  }

  @Test
  void withoutFailuresNothingIsSaid() {
    KaplanMeier none = KaplanMeier.of(List.of(Observed.aliveAt(3)));
    assertTrue(none.steps().isEmpty());
    assertTrue(none.median().isEmpty());
    assertEquals(1, none.survival(2));
    List<Observed> alive = List.of(Observed.aliveAt(3));
    assertThrows(IllegalArgumentException.class, () -> LogRank.of(alive, alive));
  }
}
