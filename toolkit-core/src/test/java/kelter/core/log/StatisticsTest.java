package kelter.core.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Means, spreads, autocorrelation and what they make of the uncertainty of a mean. */
class StatisticsTest {

  static CertifiedData[] certified() {
    return CertifiedData.all();
  }

  private static Window window(double... samples) {
    Series series = new Series();
    for (int i = 0; i < samples.length; i++) {
      series.add(i + 1, i, samples[i]);
    }
    return series.whole().orElseThrow();
  }

  /** NIST StRD, univariate: certified mean, standard deviation, autocorrelation coefficient. */
  @ParameterizedTest
  @MethodSource("certified")
  void certifiedValues(CertifiedData data) {
    Window window = window(data.samples());
    double relative = Math.pow(10, -data.digits());

    assertEquals(data.mean(), window.mean(), Math.abs(data.mean()) * 1e-14);
    assertEquals(
        data.standardDeviation(), window.standardDeviation(), data.standardDeviation() * relative);
    assertEquals(
        data.autocorrelation(),
        window.autocorrelation(),
        Math.abs(data.autocorrelation()) * relative);
  }

  /**
   * The variance of the mean of a stationary process, sigma^2/n (1 + 2 sum (1 - k/n) rho(k)), with
   * rho(k) = phi^k summed as a geometric series by hand: 1 + 2 [phi/(1-phi) - phi (1-phi^n) / (n
   * (1-phi)^2)] (arithmetic on the geometric series; Law and Kelton, equation 4.7, from memory).
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.5, 0.9, 0.99})
  void firstOrderProcessInClosedForm(double phi) {
    int n = 500;
    double[] rho = new double[n - 1];
    for (int k = 1; k < n; k++) {
      rho[k - 1] = Math.pow(phi, k);
    }
    double inflation =
        1 + 2 * (phi / (1 - phi) - phi * (1 - Math.pow(phi, n)) / (n * (1 - phi) * (1 - phi)));

    assertEquals(n / inflation, EffectiveObservations.of(n, rho).effective(), 1e-9);
  }

  /**
   * Of 300 runs of a first-order process (seeded), the means scatter as the uncertainties say,
   * within what 300 runs can tell (standard deviation of a standard deviation: 1/sqrt(2 * 299) = 4
   * %, times 3) and the bias of the estimated coefficients (a few per cent at 2000 samples).
   */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.5, 0.9})
  void uncertaintyIsThatOfTheMeansOfManyRuns(double phi) {
    Random random = new Random(17);
    int runs = 300;
    double squaresOfMeans = 0;
    double squaresOfUncertainties = 0;
    for (int run = 0; run < runs; run++) {
      double[] samples = firstOrder(2000, phi, random);
      Window window = window(samples);
      squaresOfMeans += window.mean() * window.mean() / runs;
      squaresOfUncertainties += window.uncertainty() * window.uncertainty() / runs;
    }
    assertEquals(1, Math.sqrt(squaresOfUncertainties / squaresOfMeans), 0.15);
  }

  private static double[] firstOrder(int n, double phi, Random random) {
    double[] samples = new double[n];
    double x = random.nextGaussian() / Math.sqrt(1 - phi * phi);
    for (int i = 0; i < n; i++) {
      x = phi * x + random.nextGaussian();
      samples[i] = x;
    }
    return samples;
  }

  /**
   * JCGM 100:2008, 4.4.3, table 1: 20 readings, mean 100.14 Cel, s 1.49 Cel, s of the mean 0.33.
   */
  @Test
  void independentReadingsAsInTheGuide() {
    double[] readings = {
      96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68,
      100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72
    };
    // In the order of size, as the table prints them, they would resemble their neighbours.
    double[] mixed = new double[readings.length];
    for (int i = 0; i < readings.length; i++) {
      mixed[i] = readings[(i * 9 + 3) % readings.length];
    }
    double squares = Autocorrelation.squares(mixed, Autocorrelation.mean(mixed));

    assertEquals(100.145, Autocorrelation.mean(mixed), 0.005);
    assertEquals(1.489, Math.sqrt(squares / 19), 0.0005);
    assertEquals(0.333, new EffectiveObservations(20, 20).uncertaintyOfMean(squares), 0.0005);
    assertTrue(window(readings).uncertainty() > 0.5, "sorted ones drift");
  }

  @Test
  void equalSamplesHaveNoScatter() {
    Window window = window(21.4, 21.4, 21.4, 21.4);
    assertEquals(0, window.uncertainty());
    assertEquals(4, window.effective());
    assertEquals(0, window.slope());
  }

  @Test
  void blocksGiveTheSameMeanSpreadAndTrendAsSingleSamples() {
    Random random = new Random(3);
    int n = 50_000;
    double[] noise = firstOrder(n, 0.8, random);
    Series series = new Series();
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double value = 1000 + 0.001 * i + noise[i];
      series.add(i + 1, i, value);
      sum += value;
    }
    double mean = sum / n;
    double squares = 0;
    double products = 0;
    double timeSquares = 0;
    for (int i = 0; i < n; i++) {
      double aside = 1000 + 0.001 * i + noise[i] - mean;
      squares += aside * aside;
      products += aside * (i - (n - 1) / 2.0);
      timeSquares += Math.pow(i - (n - 1) / 2.0, 2);
    }
    Window window = series.whole().orElseThrow();

    assertEquals(16, series.perBlock(), "50 000 samples in 4096 blocks at most");
    assertEquals(n, window.samples());
    assertEquals(mean, window.mean(), 1e-9);
    assertEquals(Math.sqrt(squares / (n - 1)), window.standardDeviation(), 1e-9);
    assertEquals(products / timeSquares, window.slope(), 1e-12);
    assertEquals(0.001, window.slope(), 4 * window.slopeUncertainty());
  }

  /**
   * Of a line with independent noise: sigma^2 / sum (t - m)^2 (any textbook), 2000 s, sigma 0.5.
   */
  @Test
  void uncertaintyOfATrend() {
    Random random = new Random(5);
    double[] samples = new double[2001];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = 20 + 0.05 * i + 0.5 * random.nextGaussian();
    }
    Window window = window(samples);
    double expected = 0.5 / Math.sqrt(2001.0 * (2001.0 * 2001.0 - 1) / 12);

    assertEquals(0.05, window.slope(), 4 * expected);
    assertEquals(expected, window.slopeUncertainty(), 0.15 * expected);
  }

  /** NIST/SEMATECH e-Handbook 1.3.5.17 gives 3.5; 0.6745 is the quartile of the normal. */
  @Test
  void limitOfOutliersGrowsWithTheNumberOfSamples() {
    assertEquals(3.5, ModifiedZScore.limit(20));
    // Two-sided 1/(2 n) at n = 1e6: 5.0e-7, whose normal quantile is 5.03 (tables: 5.0e-7 ->
    // 5.026).
    assertEquals(5.026, ModifiedZScore.limit(1_000_000), 0.002);
  }

  @Test
  void refusals() {
    Series series = new Series();
    series.add(1, 5, 1);
    assertThrows(IllegalArgumentException.class, () -> series.add(2, 4, 1));
    assertThrows(IllegalArgumentException.class, () -> series.add(2, 6, Double.NaN));
    assertThrows(
        IllegalArgumentException.class, () -> Autocorrelation.coefficient(new double[] {1, 2}, 2));
    assertThrows(IllegalArgumentException.class, () -> EffectiveObservations.of(new double[1]));
    assertThrows(
        IllegalArgumentException.class, () -> EffectiveObservations.of(3, new double[] {-1, -1}));
    assertThrows(IllegalArgumentException.class, () -> new SteadyRule(0, 20));
    assertThrows(IllegalArgumentException.class, () -> new SteadyRule(0.01, 2));
  }
}
