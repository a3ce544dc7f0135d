package kelter.core.log.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import kelter.core.log.Series;
import org.junit.jupiter.api.Test;

/** Changes are found where they were put, and nowhere else. */
class ChangeSearchTest {

  private static List<LevelChange> changes(double[] values, double resolution) {
    return ChangeSearch.in(List.of(SyntheticLog.series(values)), List.of(), List.of(resolution))
        .get(0);
  }

  @Test
  void aStep() {
    double[] noise = SyntheticLog.noise(1000, new Random(1));
    List<LevelChange> changes = changes(SyntheticLog.plus(noise, i -> i < 500 ? 20 : 25), 0);

    assertEquals(1, changes.size(), changes::toString);
    assertFalse(changes.get(0).gradual());
    assertEquals(501, changes.get(0).row(), 2);
    assertEquals(1, changes.get(0).seconds());
    assertEquals(5, changes.get(0).comparison().difference(), 0.3);
  }

  /**
   * From 20 to 25 over 200 s; the ends are found to what the noise of 1 on a slope of 1/40 allows.
   * In a few of 20 logs the ramp may fall into pieces, which begin and end where it does.
   */
  @Test
  void aRampIsGradualWithItsBeginningAndItsEnd() {
    int whole = 0;
    for (int seed = 0; seed < 20; seed++) {
      double[] noise = SyntheticLog.noise(1000, new Random(seed));
      List<LevelChange> changes =
          changes(
              SyntheticLog.plus(noise, i -> 20 + 5 * Math.max(0, Math.min(1, (i - 400) / 200))), 0);

      assertFalse(changes.isEmpty());
      LevelChange first = changes.get(0);
      LevelChange last = changes.get(changes.size() - 1);
      assertEquals(400, first.time(), 40);
      assertEquals(600, last.time() + last.seconds(), 40);
      assertTrue(last.gradual());
      whole += changes.size() == 1 ? 1 : 0;
    }
    assertTrue(whole >= 18, whole + " of 20 in one piece");
  }

  @Test
  void aHeaterThatSwitches() {
    double[] noise = SyntheticLog.noise(1000, new Random(7));
    List<LevelChange> changes =
        changes(SyntheticLog.plus(noise, i -> (int) i / 100 % 2 == 0 ? 0 : 2000), 0);

    assertEquals(9, changes.size(), changes::toString);
    for (int i = 0; i < 9; i++) {
      assertEquals(100 * (i + 1) + 1, changes.get(i).row());
      assertEquals(i % 2 == 0 ? 2000 : -2000, changes.get(i).comparison().difference(), 2);
    }
  }

  /** Of 200 logs of six columns no more than 5 % have a change by chance. */
  @Test
  void whereNothingHappenedFewAreTold() {
    Random random = new Random(11);
    int told = 0;
    int logs = 200;
    for (int log = 0; log < logs; log++) {
      List<Series> columns = new ArrayList<>();
      for (double share : new double[] {0, 0, 0.5, 0.9}) {
        columns.add(SyntheticLog.series(SyntheticLog.first(400, share, random)));
      }
      columns.add(SyntheticLog.series(SyntheticLog.walk(400, 1, random)));
      columns.add(SyntheticLog.series(SyntheticLog.told(SyntheticLog.noise(400, random), 2)));
      List<List<LevelChange>> found =
          ChangeSearch.in(columns, List.of(), List.of(0.0, 0.0, 0.0, 0.0, 0.0, 2.0));
      told += found.stream().allMatch(List::isEmpty) ? 0 : 1;
    }
    assertTrue(told <= 0.05 * logs, told + " of " + logs);
  }

  @Test
  void noChangeIsToldAcrossAGap() {
    double[] noise = SyntheticLog.noise(400, new Random(3));
    Series series = SyntheticLog.series(SyntheticLog.plus(noise, i -> i < 200 ? 0 : 50));

    assertEquals(
        List.of(List.of()),
        ChangeSearch.in(List.of(series), List.of(new Series.Break(200, 201)), List.of(0.0)));
  }
}
