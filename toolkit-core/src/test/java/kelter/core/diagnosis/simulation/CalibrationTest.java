package kelter.core.diagnosis.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Scores against the worked examples of two libraries' manuals, inputs and results from memory; the
 * digits beyond those that the manuals print are arithmetic on these inputs.
 */
class CalibrationTest {

  @Test
  @DisplayName("scikit-learn manual, brier_score_loss, example (from memory): 0.0375")
  void brier() {
    double[] p = {.1, .9, .8, .3};
    boolean[] y = {false, true, true, false};

    assertEquals(0.0375, BrierScore.ofEvents(p, y), 5e-13);
  }

  @Test
  @DisplayName("Brier's own score sums over the classes: on two of them, twice the other")
  void brierOverClasses() {
    double[][] p = {{.9, .1}, {.1, .9}, {.2, .8}, {.7, .3}};

    assertEquals(2 * 0.0375, BrierScore.ofClasses(p, new int[] {0, 1, 1, 0}), 5e-13);
  }

  @Test
  @DisplayName("scikit-learn manual, log_loss, example (from memory): 0.21616")
  void logLoss() {
    assertEquals(0.216161874681, LogLoss.of(.9, .9, .8, .65), 5e-13);
    assertEquals(Double.POSITIVE_INFINITY, LogLoss.of(.9, 0));
    assertEquals(0, LogLoss.of(1, 1));
  }

  @Test
  @DisplayName("torchmetrics manual, calibration error of classes, example (from memory)")
  void calibrationOfTheTopClass() {
    CalibrationTable table =
        CalibrationTable.of(
            new double[] {.55, .55, .60, .90}, new boolean[] {false, false, true, true}, 3);

    assertEquals(.2000, table.expectedError(), 5e-5);
    assertEquals(.208167, table.rmsError(), 5e-7);
    assertEquals(.233333, table.greatestError(), 5e-7);
  }

  @Test
  @DisplayName("torchmetrics manual, calibration error of events, example (from memory)")
  void calibrationOfEvents() {
    CalibrationTable table =
        CalibrationTable.of(
            new double[] {.25, .25, .55, .75, .75},
            new boolean[] {false, false, true, true, true},
            2);

    assertEquals(.2900, table.expectedError(), 5e-5);
    assertEquals(.291833, table.rmsError(), 5e-7);
    assertEquals(.316667, table.greatestError(), 5e-7);
  }

  @Test
  void aBinHoldsItsUpperEdgeAndTheFirstAlsoZero() {
    for (int bins = 1; bins <= 60; bins++) {
      for (int edge = 0; edge <= bins; edge++) {
        double p = (double) edge / bins;
        int expected = Math.max(0, edge - 1);
        CalibrationTable table = CalibrationTable.of(new double[] {p}, new boolean[] {true}, bins);
        assertEquals(1, table.bins().get(expected).cases(), edge + " of " + bins);
        if (edge < bins) {
          table = CalibrationTable.of(new double[] {Math.nextUp(p)}, new boolean[] {true}, bins);
          assertEquals(1, table.bins().get(edge).cases(), "above " + edge + " of " + bins);
        }
      }
    }
  }

  @Test
  void forecastsThatHoldScoreNearZeroAndThoseThatDoNotDoNot() {
    Random random = new Random(3);
    int n = 100_000;
    double[] p = random.doubles(n).toArray();
    double[] bold = new double[n];
    boolean[] y = new boolean[n];
    for (int i = 0; i < n; i++) {
      y[i] = random.nextDouble() < p[i];
      bold[i] = p[i] > 0.5 ? 1 : 0;
    }

    CalibrationTable honest = CalibrationTable.of(p, y, 10);

    // Each of ten bins of 10,000 cases has a standard error of at most 0.005.
    assertTrue(honest.greatestError() < 5 * 0.005);
    // Said 1 or 0 where the chance is 3/4 or 1/4 on average.
    assertEquals(0.25, CalibrationTable.of(bold, y, 10).expectedError(), 0.01);
    // The score of an honest forecast of a chance that is itself uniform: E p(1-p) = 1/6.
    assertEquals(1.0 / 6, BrierScore.ofEvents(p, y), 0.005);
    assertEquals(n, honest.cases());
  }

  @Test
  void aSumOfProbabilitiesThatIsAboveOneByRoundingIsOne() {
    double p = Math.nextUp(1.0);

    assertEquals(0, BrierScore.ofEvents(new double[] {p}, new boolean[] {true}));
    assertEquals(0, LogLoss.of(p));
    CalibrationTable table = CalibrationTable.of(new double[] {p}, new boolean[] {true}, 10);
    assertEquals(1, table.bins().get(9).cases());
  }

  @Test
  void anEmptyBinHasNoGap() {
    CalibrationTable table = CalibrationTable.of(new double[] {.1}, new boolean[] {false}, 4);

    assertEquals(0, table.bins().get(3).gap());
    assertEquals(.1, table.expectedError(), 1e-15);
  }

  @Test
  void whatIsNoForecastIsRefused() {
    boolean[] one = {true};
    refused(() -> BrierScore.ofEvents(new double[] {Double.NaN}, one));
    refused(() -> BrierScore.ofEvents(new double[] {1.01}, one));
    refused(() -> BrierScore.ofEvents(new double[0], new boolean[0]));
    refused(() -> BrierScore.ofEvents(new double[] {.1, .2}, one));
    refused(() -> BrierScore.ofClasses(new double[][] {{.5, .4}}, new int[] {0}));
    refused(() -> BrierScore.ofClasses(new double[][] {{.5, .5}}, new int[] {2}));
    refused(() -> LogLoss.of());
    refused(() -> LogLoss.of(-0.1));
    refused(() -> CalibrationTable.of(new double[] {.5}, one, 0));
  }

  private static void refused(org.junit.jupiter.api.function.Executable code) {
    assertThrows(IllegalArgumentException.class, code);
  }

  /** By hand: of three cases of which .1, .2 and .3 was said, one came: 1/3 against 0.2. */
  @Test
  void whatWasCountedByBinMakesTheSameTable() {
    double[] said = {0.1, 0.2, 0.3, 0.9};
    boolean[] came = {false, true, false, true};
    CalibrationTable counted =
        CalibrationTable.of(
            new int[] {3, 1}, new double[] {0.1 + 0.2 + 0.3, 0.9}, new int[] {1, 1});

    assertEquals(CalibrationTable.of(said, came, 2), counted);
    assertEquals(1.0 / 3, counted.bins().get(0).came(), 1e-15);
    assertEquals(0.2, counted.bins().get(0).said(), 1e-15);
    assertThrows(
        IllegalArgumentException.class,
        () -> CalibrationTable.of(new int[2], new double[2], new int[1]));
    assertThrows(
        IllegalArgumentException.class,
        () -> CalibrationTable.of(new int[0], new double[0], new int[0]));
  }
}
