package kelter.core.book.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The laws behind what a shop asks its book, each against figures of others or by hand. */
class FiguresTest {

  /** Newcombe, Stat. Med. 17 (1998) 857, table I, method 3 (score), from memory; printed digits. */
  @ParameterizedTest
  @CsvSource({
    "81, 263, 0.2553, 0.3662",
    "15, 148, 0.0624, 0.1605",
    "0, 20, 0, 0.1611",
    "1, 29, 0.0061, 0.1718"
  })
  void theIntervalOfAShareIsThatOfWilson(int cases, int of, double low, double high) {
    Interval interval = new Share(cases, of).interval();

    assertEquals(low, interval.low(), 0.00005);
    assertEquals(high, interval.high(), 0.00005);
  }

  @Test
  void aShareOfNothingSaysNothing() {
    assertEquals(new Interval(0, 1), new Share(0, 0).interval());
    assertThrows(IllegalArgumentException.class, () -> new Share(3, 2));
  }

  /**
   * Of ten figures the second and the ninth are 95 % limits of the median, which hold in 97.9 %
   * (binomial by hand: 2 (1 + 10)/1024 lie outside).
   */
  @Test
  void theMedianOfTenLiesBetweenTheSecondAndTheNinth() {
    Quantile median = Quantile.of(rising(10), 0.5).orElseThrow();

    assertEquals(new Quantile(10, 0.5, 5, OptionalDouble.of(2), OptionalDouble.of(9)), median);
  }

  /** 0.95^72 = 0.0249 and 0.95^71 = 0.0262: the greatest of 72 is a limit of 97.5 %, of 71 not. */
  @Test
  void anUpperLimitOfNineteenInTwentyTakesSeventyTwoFigures() {
    assertTrue(Quantile.of(rising(71), 0.95).orElseThrow().high().isEmpty());
    assertEquals(OptionalDouble.of(72), Quantile.of(rising(72), 0.95).orElseThrow().high());
    assertEquals(Optional.empty(), Quantile.of(new double[0], 0.5));
  }

  private static double[] rising(int number) {
    return IntStream.rangeClosed(1, number).asDoubleStream().toArray();
  }

  /** By hand: mean 3, standard deviation sqrt(2.5), t = 2.776 of four degrees (any table). */
  @Test
  void theIntervalOfAMeanIsThatOfStudent() {
    Mean mean = Mean.of(new double[] {1, 2, 3, 4, 5}).orElseThrow();

    assertEquals(3, mean.mean(), 1e-12);
    assertEquals(Math.sqrt(0.5), mean.standardError(), 1e-12);
    assertEquals(3 - 2.776 * Math.sqrt(0.5), mean.interval().low(), 0.001);
    assertEquals(Optional.empty(), Mean.of(new double[] {7}));
  }

  /**
   * By hand, no use in as long a time: r = 1/2 and p = 1/2 give chances of 0.70711, 0.17678 and
   * 0.06629 for none, one and two.
   */
  @Test
  void theDemandThatIsHardlyKnownIsNegativeBinomial() {
    Demand none = new Demand(0, 1);

    assertEquals(0.70711, none.met(0, 1), 1e-5);
    assertEquals(0.88388, none.met(1, 1), 1e-5);
    assertEquals(0.95018, none.met(2, 1), 1e-5);
    assertEquals(2, none.stockFor(1, 0.95));
    assertEquals(0, none.stockFor(1, 0.7));
  }

  /** Any table of Poisson's distribution with mean 2: 0.9473 up to four, 0.9834 up to five. */
  @Test
  void theDemandThatIsWellKnownIsThatOfPoisson() {
    Demand known = new Demand(2_000_000, 1_000_000);

    assertEquals(0.9473, known.met(4, 1), 0.00005);
    assertEquals(5, known.stockFor(1, 0.95));
    assertEquals(2, known.rate(), 1e-12);
  }

  /**
   * Twice a gamma variable of shape n + 1/2 is chi-squared with 2n + 1 degrees of freedom, of which
   * any table has 2.167 (n = 3, 7 degrees: 1.690 and 16.013; none, 1 degree: 5.024).
   */
  @Test
  void theIntervalOfARateIsByChiSquared() {
    assertEquals(1.690 / 2 / 2, new Demand(3, 2).interval().low(), 0.0005);
    assertEquals(16.013 / 2 / 2, new Demand(3, 2).interval().high(), 0.0005);
    assertEquals(0, new Demand(0, 2).interval().low());
    assertEquals(5.024 / 2 / 2, new Demand(0, 2).interval().high(), 0.0005);
  }

  /**
   * Remission under 6-mercaptopurine (Freireich et al. 1963, as in many textbooks): weeks 6
   * (three), 7, 10, 13, 16, 22, 23, others censored. Of the limits 0.857 (0.620 to 0.952) after 6
   * and 0.753 (0.503 to 0.889) after 10 weeks are those that Stata's manual prints, from memory;
   * the first also by hand.
   */
  @Test
  void theIntervalOfWhatStillRunsIsThatOfTheLogarithmOfTheLogarithm() {
    Map<Double, Double> failed = new TreeMap<>(Map.of(6.0, 3.0, 7.0, 1.0, 10.0, 1.0));
    failed.putAll(Map.of(13.0, 1.0, 16.0, 1.0, 22.0, 1.0, 23.0, 1.0));
    Map<Double, Double> lasted = new TreeMap<>(Map.of(6.0, 1.0, 9.0, 1.0, 10.0, 1.0, 11.0, 1.0));
    lasted.putAll(Map.of(17.0, 1.0, 19.0, 1.0, 20.0, 1.0, 25.0, 1.0, 32.0, 2.0, 34.0, 1.0));
    lasted.put(35.0, 1.0);
    Again again = new Again(failed, lasted);

    assertEquals(9, again.failures());
    assertEquals(12, again.lasted());
    ModelRecord.Running six = after(again, 6);
    assertEquals(0.857, six.share(), 0.0005);
    assertEquals(0.620, six.interval().low(), 0.0005);
    assertEquals(0.952, six.interval().high(), 0.0005);
    ModelRecord.Running ten = after(again, 10);
    assertEquals(0.753, ten.share(), 0.0005);
    assertEquals(0.503, ten.interval().low(), 0.0005);
    assertEquals(0.889, ten.interval().high(), 0.0005);
  }

  private static ModelRecord.Running after(Again again, double time) {
    return again.running().stream().filter(each -> each.years() == time).findFirst().orElseThrow();
  }

  /**
   * By hand: 10 of 100 at 50 with a standard error of 5; 0.01 * 25 + 2500 * 0.0009 - 0.0009 * 25 =
   * 2.4775, whose root is 1.5740.
   */
  @Test
  void theReserveIsRateTimesCost() {
    CallBacks some =
        new CallBacks("", new Share(10, 100), Optional.empty(), Optional.of(new Mean(8, 50, 5)));

    assertEquals(5, some.reserve().orElseThrow(), 1e-12);
    assertEquals(5 - 1.95996 * 1.5740, some.reserveInterval().orElseThrow().low(), 0.0005);
    assertEquals(5 + 1.95996 * 1.5740, some.reserveInterval().orElseThrow().high(), 0.0005);
    CallBacks few =
        new CallBacks("", new Share(1, 19), Optional.empty(), Optional.of(new Mean(8, 50, 5)));
    assertEquals(Optional.empty(), few.reserve());
  }
}
