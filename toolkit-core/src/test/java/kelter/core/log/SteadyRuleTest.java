package kelter.core.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Windows are found where they were put. */
class SteadyRuleTest {

  private static Series series(int n, double noise, DoubleUnaryOperator value) {
    Random random = new Random(11);
    Series series = new Series();
    for (int i = 0; i < n; i++) {
      series.add(i + 1, i, value.applyAsDouble(i) + noise * random.nextGaussian());
    }
    return series;
  }

  private static List<SteadyRule.Steady> windows(Series series) {
    return SteadyRule.USUAL.windows(series, List.of(), 0);
  }

  @Test
  void aHeaterThatIsOffOnAndOffAgain() {
    List<SteadyRule.Steady> windows = windows(series(1200, 3, t -> t >= 300 && t < 900 ? 2980 : 0));

    assertEquals(3, windows.size());
    Window on = windows.get(1).window();
    assertEquals(301, on.firstRow(), 2);
    assertEquals(900, on.lastRow(), 2);
    assertEquals(2980, on.mean(), 4 * 3 / Math.sqrt(600));
    assertEquals(3, on.standardDeviation(), 0.5);
    assertEquals(3 / Math.sqrt(600), on.uncertainty(), 0.05);
  }

  @Test
  void aRiseIsNotSteadyButTheEndOfItIs() {
    List<SteadyRule.Steady> windows =
        windows(series(1500, 0.05, t -> t < 1000 ? 20 + 0.06 * t : 80));

    assertEquals(1, windows.size(), windows::toString);
    assertTrue(windows.get(0).window().from() > 980);
    assertEquals(80, windows.get(0).window().mean(), 0.05);
  }

  @Test
  void outliersAreToldAndStayIn() {
    Series series = new Series();
    Random random = new Random(2);
    double sum = 0;
    for (int i = 0; i < 400; i++) {
      double value = i == 137 ? 260 : 230 + 0.2 * random.nextGaussian();
      sum += value;
      series.add(i + 1, i, value);
    }
    List<SteadyRule.Steady> windows = windows(series);

    assertEquals(1, windows.size());
    assertEquals(400, windows.get(0).window().samples());
    assertEquals(sum / 400, windows.get(0).window().mean(), 1e-9);
    assertEquals(1, windows.get(0).outliers().size());
    assertEquals(138, windows.get(0).outliers().get(0).row());
    assertEquals(260, windows.get(0).outliers().get(0).value());
  }

  @Test
  void noWindowSpansAGap() {
    Series series = new Series();
    Spacing spacing = new Spacing();
    for (int i = 0; i < 200; i++) {
      double time = i < 80 ? i : i + 600;
      series.add(i + 1, time, 5);
      spacing.add(i + 1, time);
    }
    assertEquals(1, spacing.usual());
    assertEquals(List.of(new Spacing.Gap(80, 79, 601)), spacing.gaps());

    List<SteadyRule.Steady> windows = SteadyRule.USUAL.windows(series, spacing.breaks(), 0.1);
    assertEquals(
        List.of(80L, 120L), windows.stream().map(steady -> steady.window().samples()).toList());
  }

  @Test
  void aDisplayThatFlickersByADigitIsSteady() {
    List<SteadyRule.Steady> windows =
        SteadyRule.USUAL.windows(series(300, 0, t -> t % 7 < 3 ? 0.1 : 0.2), List.of(), 0.1);
    assertEquals(1, windows.size());
  }

  @Test
  void aLongLogIsHeldInLittleRoomAndItsWindowsAreFoundToABlock() {
    int n = 1_000_000;
    Series series = series(n, 2, t -> t < 400_000 ? 100 : 1000);

    List<SteadyRule.Steady> windows = windows(series);

    assertEquals(256, series.perBlock());
    assertEquals(2, windows.size());
    assertEquals(400_000, windows.get(0).window().lastRow(), 256);
    assertEquals(1000, windows.get(1).window().mean(), 0.02);
    assertEquals(2 / Math.sqrt(600_000), windows.get(1).window().uncertainty(), 0.001);
    assertEquals(600_000, windows.get(1).window().effective(), 100_000);
  }

  @Test
  void noisyRandomWalkHasNoLongWindow() {
    Random random = new Random(9);
    Series series = new Series();
    double x = 100;
    for (int i = 0; i < 2000; i++) {
      x += random.nextGaussian();
      series.add(i + 1, i, x);
    }
    assertTrue(
        windows(series).stream().allMatch(steady -> steady.window().samples() < 150),
        () -> windows(series).toString());
  }

  /** A flow told in whole steps, six of ten samples at one: a median deviation of zero. */
  @Test
  void aSignalInStepsHasNoOutliersButTheOddOne() {
    List<SteadyRule.Steady> windows =
        SteadyRule.USUAL.windows(
            series(1000, 0, t -> t == 500 ? 60 : t % 5 < 3 ? 32 : 31), List.of(), 1);

    List<SteadyRule.Outlier> outliers =
        windows.stream().flatMap(steady -> steady.outliers().stream()).toList();
    assertEquals(List.of(501L), outliers.stream().map(SteadyRule.Outlier::row).toList());
  }

  @Test
  void noWindowSpansABreak() {
    List<SteadyRule.Steady> windows =
        SteadyRule.USUAL.windows(
            series(300, 0.5, t -> t < 200 ? 2.4 : 0.6), List.of(new Series.Break(200, 201)), 0);

    assertTrue(
        windows.stream()
            .noneMatch(each -> each.window().firstRow() <= 200 && each.window().lastRow() > 200));
  }
}
