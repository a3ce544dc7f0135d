package kelter.core.book.figures;

import java.util.Optional;
import kelter.core.source.Source;
import kelter.core.uncertainty.CoverageFactor;

/**
 * The mean of some figures, with its interval by Student's t.
 *
 * @param number of how many, 2 or more
 * @param mean the mean, in the unit of the figures
 * @param standardError the standard deviation of the mean, in that unit
 */
public record Mean(int number, double mean, double standardError) {

  /** Where the interval comes from. */
  public static final Source SOURCE = Source.published("JCGM 100:2008, 4.2.3 and G.3");

  private static final double COVERAGE = 0.95;

  /**
   * The mean of figures.
   *
   * @param figures the figures
   * @return their mean; empty of fewer than two
   */
  static Optional<Mean> of(double[] figures) {
    int n = figures.length;
    if (n < 2) {
      return Optional.empty();
    }
    double mean = 0;
    for (double each : figures) {
      mean += each / n;
    }
    double squares = 0;
    for (double each : figures) {
      squares += (each - mean) * (each - mean);
    }
    return Optional.of(new Mean(n, mean, Math.sqrt(squares / (n - 1) / n)));
  }

  /**
   * Where the mean of all such figures lies with 95 %.
   *
   * @return the interval
   */
  public Interval interval() {
    double half = CoverageFactor.of(COVERAGE, number - 1) * standardError;
    return new Interval(mean - half, mean + half);
  }
}
