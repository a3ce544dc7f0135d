package kelter.core.log;

import java.util.Arrays;
import kelter.core.numeric.Root;
import kelter.core.source.Source;
import kelter.core.uncertainty.Normal;

/**
 * How far a sample lies from the others, measured so that the odd one out does not hide itself:
 * {@code M = 0.6745 (x - median) / MAD}, with MAD the median of the absolute deviations from the
 * median.
 */
public final class ModifiedZScore {

  /** Where the score and its limit come from. */
  public static final Source SOURCE =
      Source.fromMemory(
          "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17 (Iglewicz and Hoaglin 1993)");

  /** The limit beyond which a sample is told as an outlier, same source. */
  public static final double LIMIT = 3.5;

  /** The third quartile of the standard normal distribution, same source. */
  static final double QUARTILE = 0.6745;

  /** The standard deviation of a normal distribution by its mean deviation: sqrt(pi / 2). */
  private static final double BY_MEAN = Math.sqrt(Math.PI / 2);

  private static final double FARTHEST = 40;

  private ModifiedZScore() {}

  /**
   * The scale that stands for the standard deviation: MAD / 0.6745.
   *
   * @param samples the samples, one or more
   * @return the scale, in the unit of the samples
   */
  public static double scale(double[] samples) {
    double middle = median(samples);
    double[] deviations = Arrays.stream(samples).map(x -> Math.abs(x - middle)).toArray();
    return median(deviations) / QUARTILE;
  }

  /**
   * The scale where the samples lie on a few levels, of which {@link #scale} tells only one: by the
   * mean of the absolute deviations from the median (Iglewicz and Hoaglin 1993, from memory).
   *
   * @param samples the samples, one or more
   * @return the scale, in the unit of the samples
   */
  public static double scaleByMean(double[] samples) {
    double middle = median(samples);
    double sum = 0;
    for (double x : samples) {
      sum += Math.abs(x - middle);
    }
    return BY_MEAN * sum / samples.length;
  }

  /**
   * The median.
   *
   * @param samples the samples, one or more
   * @return the middle one, or the mean of the two in the middle
   */
  public static double median(double[] samples) {
    double[] sorted = samples.clone();
    Arrays.sort(sorted);
    int half = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
  }

  /**
   * The limit for a great number of samples: the published one, or, if it is farther, the score
   * that half a sample would pass by chance if all were normally distributed (the criterion of
   * Chauvenet, from memory).
   *
   * @param samples how many samples there are
   * @return the limit of the score
   */
  public static double limit(long samples) {
    double chance = Math.log(0.25 / Math.max(1, samples));
    double score = Root.between(z -> Normal.logCdf(-z) - chance, 0, FARTHEST, 0);
    return Math.max(LIMIT, score);
  }
}
