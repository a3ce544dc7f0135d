package kelter.core.diagnosis.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import kelter.core.diagnosis.learning.LogNormalTimes.Expected;
import kelter.core.diagnosis.learning.LogNormalTimes.Timed;
import org.junit.jupiter.api.Test;

/** Times of work of which few were taken. */
class LogNormalTimesTest {

  private static Timed drawn(SplittableRandom random, double median, double sd, int times) {
    Timed timed = Timed.NONE;
    for (int i = 0; i < times; i++) {
      timed = timed.and(median * Math.exp(sd * random.nextGaussian()), 1);
    }
    return timed;
  }

  /** ln 10, ln 20 and ln 40 have the mean ln 20. */
  @Test
  void theMeanLogarithmIsThatOfTheTimes() {
    Timed timed = Timed.NONE.and(10, 1).and(20, 1).and(40, 1);

    assertEquals(Math.log(20), timed.mean(), 1e-14);
    assertEquals(3, timed.number());
  }

  /** The squares of ln 1 = 0 and ln e = 1, of which the second counts half, have the mean 1/3. */
  @Test
  void timesThatWereTakenApartAreTheSameTogether() {
    Timed both = Timed.NONE.and(1, 1).plus(Timed.NONE.and(Math.E, 0.5));

    assertEquals(new Timed(1.5, 1.0 / 3, 1.0 / 3), both);
    assertEquals(both, both.plus(Timed.NONE));
    assertEquals(both, Timed.NONE.plus(both));
    assertEquals(Timed.NONE, Timed.NONE.plus(Timed.NONE));
  }

  @Test
  void manyTimesSpeakForThemselves() {
    SplittableRandom random = new SplittableRandom(3);
    Map<String, Timed> sorts = new TreeMap<>();
    sorts.put("quick", drawn(random, 12, 0.3, 2000));
    sorts.put("slow", drawn(random, 90, 0.5, 2000));
    Map<String, Expected> expected = LogNormalTimes.of(sorts);

    assertEquals(12, expected.get("quick").median(), 0.5);
    assertEquals(90, expected.get("slow").median(), 4);
    assertEquals(0.3, expected.get("quick").sdLog(), 0.02);
    assertTrue(expected.get("quick").weight() > 0.99);
  }

  @Test
  void oneOddTimeIsDrawnToTheRest() {
    SplittableRandom random = new SplittableRandom(4);
    Map<String, Timed> sorts = new TreeMap<>();
    for (int sort = 0; sort < 12; sort++) {
      sorts.put("sort-" + sort, drawn(random, 30, 0.4, 50));
    }
    sorts.put("once", Timed.NONE.and(300, 1));
    Expected once = LogNormalTimes.of(sorts).get("once");

    assertTrue(once.weight() < 0.3, "weight " + once.weight());
    assertTrue(once.median() > 30 && once.median() < 70, "median " + once.median());
  }

  /** Of a log-normal time the mean is the median times exp(sd^2 / 2). */
  @Test
  void theMeanLiesAboveTheMedian() {
    Expected expected = new Expected(5, .5, 20, .6);

    assertEquals(20 * Math.exp(.18), expected.mean(), 1e-12);
  }

  /**
   * Two sorts by hand, logarithms of 2 and 4, 5 and 7: both sums of squares are 2, and four usual
   * times of (ln 1.5)² = 0.1644 make 4.6576 / 6 = 0.7763 within. The means of 3 and 6 lie 1.5 from
   * their middle: 2 · 2.25 · 2 - 0.7763 = 8.2237, over 4 - 8 / 4 = 2, is 4.1119 between. So each
   * counts 2 / (2 + 0.7763 / 4.1119) = 0.9137, the first is expected at 4.5 - 0.9137 · 1.5 =
   * 3.1294, and its own variance is (2 + 4 · 0.7763) / 5 = 1.0210.
   */
  @Test
  void twoSortsByHand() {
    Map<String, Timed> sorts = new LinkedHashMap<>();
    sorts.put("quick", new Timed(2, 3, 10));
    sorts.put("slow", new Timed(2, 6, 37));
    LogNormalTimes.Expected quick = LogNormalTimes.of(sorts).get("quick");
    assertEquals(0.9137, quick.weight(), 0.00005);
    assertEquals(3.1294, Math.log(quick.median()), 0.00005);
    assertEquals(Math.sqrt(1.0210), quick.sdLog(), 0.00005);
    assertEquals(2, quick.number(), 1e-12);
  }
}
