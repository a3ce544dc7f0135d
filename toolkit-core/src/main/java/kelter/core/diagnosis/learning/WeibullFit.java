package kelter.core.diagnosis.learning;

import java.util.ArrayList;
import java.util.List;
import kelter.core.numeric.Root;
import kelter.core.source.Source;
import org.apache.commons.numbers.gamma.Gamma;

/**
 * The Weibull life that makes lives most likely, some of which are only known to be longer than
 * what was seen.
 *
 * <p>With shape k, scale h and r failures, ln L = sum over failures of [ln(k/h) + (k-1) ln(t/h)] -
 * sum over all of (t/h)^k. The scale follows from the shape, h = (sum t^k / r)^(1/k), and the shape
 * from sum t^k ln t / sum t^k - 1/k - mean over failures of ln t = 0, whose left side rises with k.
 * Standard deviations of ln k and ln h are those of the observed information.
 *
 * @param shape the shape, as a ratio, {@value #LEAST_SHAPE} to {@value #GREATEST_SHAPE}
 * @param scale the scale, in the unit of the lives
 * @param sdLogShape the standard deviation of the natural logarithm of the shape
 * @param sdLogScale that of the scale
 * @param correlation the correlation of both logarithms, -1 to 1
 * @param logLikelihood the natural logarithm of the greatest likelihood
 * @param failures how many failed
 * @param lasted how many were seen to last
 */
public record WeibullFit(
    double shape,
    double scale,
    double sdLogShape,
    double sdLogScale,
    double correlation,
    double logLikelihood,
    double failures,
    double lasted) {

  /** Where the equations come from. */
  public static final Source SOURCE =
      Source.published("NIST/SEMATECH e-Handbook of Statistical Methods, 8.4.1.3");

  /** Fewer failures than this tell no shape. */
  public static final double LEAST_FAILURES = 5;

  private static final double LEAST_SHAPE = 0.05;
  private static final double GREATEST_SHAPE = 50;
  private static final double TOLERANCE = 1e-10;

  /** Of a normal distribution, for 95 % on both sides together. */
  private static final double TWO_SIDED_95 = 1.959963984540054;

  /** An interval of 95 %. */
  public record Interval(double low, double high) {}

  /**
   * Fits.
   *
   * @param lives the lives
   * @return the fit
   * @throws IllegalArgumentException if fewer than two failed, or all at the same time and no other
   *     was seen longer, so that no shape is the likeliest
   */
  public static WeibullFit of(Lives lives) {
    double failures = lives.failures();
    if (!(failures >= 2)) {
      throw new IllegalArgumentException(failures + " failures; a life is fitted to 2 or more");
    }
    return new Sums(lives).fit();
  }

  /**
   * The mean life.
   *
   * @return in the unit of the lives
   */
  public double mean() {
    return scale * Gamma.value(1 + 1 / shape);
  }

  /**
   * Where the shape lies with 95 %.
   *
   * @return the interval, by the logarithm
   */
  public Interval shapeInterval() {
    return interval(shape, sdLogShape);
  }

  /**
   * Where the scale lies with 95 %.
   *
   * @return the interval, by the logarithm, in the unit of the lives
   */
  public Interval scaleInterval() {
    return interval(scale, sdLogScale);
  }

  private static Interval interval(double middle, double sdLog) {
    double factor = Math.exp(TWO_SIDED_95 * sdLog);
    return new Interval(middle / factor, middle * factor);
  }

  /** Times as ratios to the longest, so that no power of them is too great. */
  private static final class Sums {
    private final List<double[]> rows = new ArrayList<>();
    private final double longest;
    private final double failures;
    private final double all;
    private final double logOfFailed;

    Sums(Lives lives) {
      this.longest = lives.times().last();
      this.failures = lives.failures();
      this.all = lives.all();
      double logs = 0;
      for (double time : lives.times()) {
        rows.add(new double[] {Math.log(time / longest), lives.seenAt(time)});
        logs += lives.failedAt(time) * Math.log(time / longest);
      }
      this.logOfFailed = logs;
    }

    /** The sum over all of u^k (ln u)^power for the ratio u. */
    private double moment(double shape, int power) {
      double sum = 0;
      for (double[] row : rows) {
        sum += row[1] * Math.exp(shape * row[0]) * Math.pow(row[0], power);
      }
      return sum;
    }

    private double score(double shape) {
      return moment(shape, 1) / moment(shape, 0) - 1 / shape - logOfFailed / failures;
    }

    WeibullFit fit() {
      if (!(score(GREATEST_SHAPE) > 0) || !(score(LEAST_SHAPE) < 0)) {
        throw new IllegalArgumentException(
            "the lives fit no shape from %s to %s".formatted(LEAST_SHAPE, GREATEST_SHAPE));
      }
      double shape = Root.between(this::score, LEAST_SHAPE, GREATEST_SHAPE, TOLERANCE);
      double ratio = Math.pow(moment(shape, 0) / failures, 1 / shape);
      double logRatio = Math.log(ratio);
      double scale = ratio * longest;
      double logLikelihood =
          failures * Math.log(shape / scale)
              + (shape - 1) * (logOfFailed - failures * logRatio)
              - failures;
      // Second derivatives of -ln L by a = ln k and b = ln h, with z = k ln(t/h) and sum e^z = r:
      // aa: sum e^z (z^2 + z) - sum over failures of z; bb: k^2 r; ab: -k sum e^z z.
      double inverse = 1 / moment(shape, 0) * failures;
      double zz = 0;
      double z = 0;
      for (double[] row : rows) {
        double each = shape * (row[0] - logRatio);
        double weight = row[1] * Math.exp(shape * row[0]) * inverse;
        zz += weight * each * each;
        z += weight * each;
      }
      double ofFailed = shape * (logOfFailed - failures * logRatio);
      double shapes = zz + z - ofFailed;
      double scales = shape * shape * failures;
      double both = -shape * z;
      double determinant = shapes * scales - both * both;
      double varianceOfShape = scales / determinant;
      double varianceOfScale = shapes / determinant;
      double correlation = -both / determinant / Math.sqrt(varianceOfShape * varianceOfScale);
      return new WeibullFit(
          shape,
          scale,
          Math.sqrt(varianceOfShape),
          Math.sqrt(varianceOfScale),
          correlation,
          logLikelihood,
          failures,
          all - failures);
    }
  }
}
