package kelter.core.log.change;

import java.util.Arrays;
import kelter.core.source.Source;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * How far the mean of a column may move by itself, told by a stretch of it in which nothing
 * happened: noise about a level that walks, {@code y(t) = m(t) + e(t)}, {@code m(t+1) = m(t) +
 * w(t)}.
 *
 * <p>The stretch is cut into {@value #BATCHES} batches of equal length, and y are their means
 * (batch means). Which part of their scatter is walk cannot be told sharply from so few: the ratio
 * of walk to noise, {@code r = n sd(w) / sd(e)} with n batches, is taken as any of ten from 0 to
 * 64, each with the weight that the differences of the means give it (restricted likelihood; the
 * differences are a moving average of first order). What the trend of the stretch has beyond what
 * noise and walk explain may go on, and counts as an uncertainty by its full size.
 *
 * <p>Noise that resembles itself for longer than a batch, and swings as long as the stretch, look
 * like a walk and make the uncertainty greater, not less. It holds for samples at equal intervals.
 */
public final class LocalLevel {

  /** Where the model comes from. */
  public static final Source SOURCE =
      Source.fromMemory(
          "Harvey, Forecasting, Structural Time Series Models and the Kalman Filter (1989), 2.3 and"
              + " 4.3, local level model; batch means: Law, Simulation Modeling and Analysis, 9.5.3");

  private static final int BATCHES = 16;
  private static final double[] RATIOS = {0, 0.25, 0.5, 1, 2, 4, 8, 16, 32, 64};

  private final double[] weights = new double[RATIOS.length];
  private final double[] noise = new double[RATIOS.length];
  private final double[] trend = new double[RATIOS.length];
  private final double length;
  private final int batches;

  private LocalLevel(double[] means, double length) {
    this.batches = means.length;
    this.length = length;
    double slope = slope(means);
    for (int k = 0; k < RATIOS.length; k++) {
      MovingAverage differences = MovingAverage.of(means, walk(k));
      noise[k] = differences.variance();
      weights[k] = differences.logLikelihood();
      double explained = noise[k] * varianceOfSlope(walk(k));
      trend[k] = Math.max(0, slope * slope - explained);
    }
    normalise();
  }

  /**
   * Learns from a stretch.
   *
   * @param values its samples, or the means of equal blocks of them, two or more
   * @param length how long it is from the beginning of the first sample to the end of the last, in
   *     s or in samples, above 0
   * @return what it tells
   * @throws IllegalArgumentException if there are fewer than two values, or the length is not above
   *     0
   */
  public static LocalLevel of(double[] values, double length) {
    if (values.length < 2 || !(length > 0)) {
      throw new IllegalArgumentException(
          "%s values over a length of %s; two or more over more than 0 are allowed"
              .formatted(values.length, length));
    }
    double[] means = batches(values);
    return new LocalLevel(means, length / means.length);
  }

  /** The means of equal parts of the values; the values themselves if there are few. */
  private static double[] batches(double[] values) {
    int n = Math.min(BATCHES, values.length);
    double[] means = new double[n];
    for (int i = 0; i < n; i++) {
      int from = (int) ((long) i * values.length / n);
      int to = (int) ((long) (i + 1) * values.length / n);
      means[i] = Arrays.stream(values, from, to).sum() / (to - from);
    }
    return means;
  }

  /** The standard uncertainty of the mean of values that resemble their neighbours, by batches. */
  static double uncertaintyOfMean(double[] values) {
    double[] means = batches(values);
    double mean = Arrays.stream(means).sum() / means.length;
    double squares = Arrays.stream(means).map(x -> (x - mean) * (x - mean)).sum();
    return Math.sqrt(squares / (means.length - 1) / means.length);
  }

  /** The variance of a step of the walk, by that of the noise of a batch. */
  private double walk(int k) {
    double ratio = RATIOS[k] / batches;
    return ratio * ratio;
  }

  private static double slope(double[] means) {
    double middle = (means.length - 1) / 2.0;
    double products = 0;
    double squares = 0;
    for (int i = 0; i < means.length; i++) {
      products += (i - middle) * means[i];
      squares += (i - middle) * (i - middle);
    }
    return products / squares;
  }

  /**
   * Of the slope by least squares, by the variance of the noise: each step moves all that follow.
   */
  private double varianceOfSlope(double walk) {
    double middle = (batches - 1) / 2.0;
    double squares = batches * (batches * (double) batches - 1) / 12;
    double variance = 1 / squares;
    double following = 0;
    for (int i = batches - 1; i > 0; i--) {
      following += (i - middle) / squares;
      variance += walk * following * following;
    }
    return variance;
  }

  private void normalise() {
    double greatest = Arrays.stream(weights).max().orElseThrow();
    if (greatest == Double.POSITIVE_INFINITY) {
      Arrays.fill(weights, 1.0 / weights.length);
      return;
    }
    double sum = 0;
    for (int k = 0; k < weights.length; k++) {
      weights[k] = Math.exp(weights[k] - greatest);
      sum += weights[k];
    }
    for (int k = 0; k < weights.length; k++) {
      weights[k] /= sum;
    }
  }

  /**
   * The degrees of freedom of what is learnt.
   *
   * @return the batches less one
   */
  int degreesOfFreedom() {
    return batches - 1;
  }

  /**
   * What can be said of the difference of two means if nothing happened between them.
   *
   * @param before the length of the stretch before, in the unit of the healthy one, above 0
   * @param gap from its end to the beginning of the stretch after, in that unit
   * @param after the length of the stretch after, in that unit, above 0
   * @param scatter the standard uncertainty of the mean after by its own scatter, which counts
   *     where it is greater than that of the noise before
   * @param more a standard uncertainty that both share no part of
   * @return the difference to be met
   */
  Spread difference(double before, double gap, double after, double scatter, double more) {
    double first = before / length;
    double second = after / length;
    double apart = Math.max(0, gap) / length;
    double steps =
        within(first) + apart + (Math.min(1, first) + Math.min(1, second)) / 2 + within(second);
    double centres = apart + (first + second) / 2;
    double[] variances = new double[RATIOS.length];
    for (int k = 0; k < RATIOS.length; k++) {
      double ofAfter = Math.max(noise[k] / second, scatter * scatter);
      variances[k] =
          noise[k] / first
              + ofAfter
              + noise[k] * walk(k) * steps
              + trend[k] * centres * centres
              + more * more;
    }
    return new Spread(weights, variances, degreesOfFreedom());
  }

  /**
   * The part of a walk that is left in the mean of a stretch: sum (j/n)^2 for j from 1 to n - 1.
   */
  private static double within(double n) {
    return n > 1 ? (n - 1) * (2 * n - 1) / (6 * n) : 0;
  }

  /** A mixture of distributions of Student about 0. */
  record Spread(double[] weights, double[] variances, int degreesOfFreedom) {

    double standardUncertainty() {
      double sum = 0;
      for (int k = 0; k < weights.length; k++) {
        sum += weights[k] * variances[k];
      }
      return Math.sqrt(sum);
    }

    /** The chance of a difference as great as this one or greater, in either direction. */
    double chance(double difference) {
      if (difference == 0) {
        return 1;
      }
      TDistribution student = TDistribution.of(degreesOfFreedom);
      double sum = 0;
      for (int k = 0; k < weights.length; k++) {
        double ratio = Math.abs(difference) / Math.sqrt(variances[k]);
        sum += weights[k] * 2 * student.survivalProbability(ratio);
      }
      return Math.min(1, sum);
    }
  }

  /**
   * The differences of the means: variance {@code (2 + q) s^2}, covariance of neighbours {@code
   * -s^2}, with q the walk.
   *
   * @param variance the variance of the noise, s^2
   * @param logLikelihood the natural logarithm of the restricted likelihood, less a constant;
   *     infinite if all differences are 0
   */
  private record MovingAverage(double variance, double logLikelihood) {

    /** Factors the covariance as {@code L D L'}, one difference after another. */
    static MovingAverage of(double[] means, double walk) {
      double pivot = 2 + walk;
      double rest = means[1] - means[0];
      double squares = rest * rest / pivot;
      double logDeterminant = Math.log(pivot);
      for (int i = 2; i < means.length; i++) {
        rest = means[i] - means[i - 1] + rest / pivot;
        pivot = 2 + walk - 1 / pivot;
        squares += rest * rest / pivot;
        logDeterminant += Math.log(pivot);
      }
      int n = means.length - 1;
      return new MovingAverage(
          squares / n, -0.5 * logDeterminant - 0.5 * n * Math.log(squares / n));
    }
  }
}
