package kelter.core.diagnosis.learning;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Shares that last, without a law. */
class KaplanMeierTest {

  /**
   * Remission of leukaemia under 6-mercaptopurine, weeks (Freireich et al. 1963), as Kleinbaum &
   * Klein, Survival Analysis, 3rd edition, chapter 2, print it; figures from memory. The standard
   * deviations are those that survfit of R prints for it, from memory.
   */
  private static final Lives REMISSIONS =
      new Lives(
          Map.of(6.0, 3.0, 7.0, 1.0, 10.0, 1.0, 13.0, 1.0, 16.0, 1.0, 22.0, 1.0, 23.0, 1.0),
          Map.ofEntries(
              Map.entry(6.0, 1.0),
              Map.entry(9.0, 1.0),
              Map.entry(10.0, 1.0),
              Map.entry(11.0, 1.0),
              Map.entry(17.0, 1.0),
              Map.entry(19.0, 1.0),
              Map.entry(20.0, 1.0),
              Map.entry(25.0, 1.0),
              Map.entry(32.0, 2.0),
              Map.entry(34.0, 1.0),
              Map.entry(35.0, 1.0)));

  @Test
  @DisplayName("6-MP: .8571 .8067 .7529 .6902 .6275 .5378 .4482")
  void publishedTable() {
    double[] time = {6, 7, 10, 13, 16, 22, 23};
    double[] atRisk = {21, 17, 15, 12, 11, 7, 6};
    double[] survival = {.8571, .8067, .7529, .6902, .6275, .5378, .4482};
    double[] sd = {.0764, .0869, .0963, .1068, .1141, .1282, .1346};

    List<KaplanMeier.Step> steps = KaplanMeier.of(REMISSIONS).steps();

    assertEquals(time.length, steps.size());
    for (int i = 0; i < time.length; i++) {
      assertEquals(time[i], steps.get(i).time());
      assertEquals(atRisk[i], steps.get(i).atRisk());
      assertEquals(survival[i], steps.get(i).survival(), 5.01e-5);
      assertEquals(sd[i], steps.get(i).sd(), 5.01e-5);
    }
  }

  /** The other group of the same trial, of which all were seen to the end; from memory. */
  @Test
  @DisplayName("placebo: .9048 .8095 .7619 .6667 .5714 .3810 .2857 .1905 .1429 .0952 .0476 0")
  void withoutTreatment() {
    Map<Double, Double> weeks = new TreeMap<>();
    for (double week :
        new double[] {1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23}) {
      weeks.merge(week, 1.0, Double::sum);
    }
    KaplanMeier curve = KaplanMeier.of(new Lives(weeks, Map.of()));

    double[] left = {
      .9048, .8095, .7619, .6667, .5714, .3810, .2857, .1905, .1429, .0952, .0476, 0
    };
    assertArrayEquals(
        left, curve.steps().stream().mapToDouble(KaplanMeier.Step::survival).toArray(), 5.01e-5);
    assertEquals(8, curve.median().orElseThrow());
    assertEquals(0, curve.steps().get(11).sd());
  }

  /** NIST/SEMATECH e-Handbook 8.2.2.1: twenty units, ten failures, the rest seen up to 500 h. */
  @Test
  void theUnitsOfTheHandbook() {
    Map<Double, Double> failed = new TreeMap<>();
    for (double hours : new double[] {54, 187, 216, 240, 244, 335, 361, 373, 375, 386}) {
      failed.put(hours, 1.0);
    }
    KaplanMeier curve = KaplanMeier.of(new Lives(failed, Map.of(500.0, 10.0)));

    assertArrayEquals(
        new double[] {.95, .90, .85, .80, .75, .70, .65, .60, .55, .50},
        curve.steps().stream().mapToDouble(KaplanMeier.Step::survival).toArray(),
        1e-12);
    assertEquals(386, curve.median().orElseThrow());
  }

  @Test
  void withoutFailuresNothingIsSaid() {
    KaplanMeier curve = KaplanMeier.of(new Lives(Map.of(), Map.of(3.0, 1.0)));

    assertTrue(curve.steps().isEmpty());
    assertFalse(curve.median().isPresent());
    assertEquals(1, curve.survival(2));
  }

  @Test
  void theMedianIsTheFirstTimeAtWhichHalfHaveFailed() {
    KaplanMeier curve = KaplanMeier.of(REMISSIONS);

    assertEquals(23, curve.median().orElseThrow());
    assertEquals(1, curve.survival(5.9));
    assertEquals(curve.steps().get(0).survival(), curve.survival(6.5));
    assertFalse(KaplanMeier.of(new Lives(Map.of(2.0, 1.0), Map.of(3.0, 9.0))).median().isPresent());
  }

  /** Without those that lasted it is the share that is left: 4, 2 and 0 of 5. */
  @Test
  void withoutCensoringItIsTheShareThatIsLeft() {
    KaplanMeier curve = KaplanMeier.of(new Lives(Map.of(1.0, 1.0, 2.0, 2.0, 4.0, 2.0), Map.of()));

    assertEquals(.8, curve.survival(1), 1e-15);
    assertEquals(.4, curve.survival(3), 1e-15);
    assertEquals(0, curve.survival(4));
  }
}
