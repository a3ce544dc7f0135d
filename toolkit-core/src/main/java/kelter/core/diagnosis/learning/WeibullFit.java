package kelter.core.diagnosis.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
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
 * <p>The intervals of 95 % have the shapes, or scales, whose likelihood with the best other figure
 * is not below the greatest one by more than half the 95 % quantile of chi squared with one degree
 * of freedom. With few failures they hold more nearly what they say than those of the standard
 * deviations (Meeker and Escobar, Statistical Methods for Reliability Data (1998), chapter 8, from
 * memory). An end that the lives do not tell is {@value #LEAST_SHAPE} or {@value #GREATEST_SHAPE}
 * of the shape, and ten thousand times less or more than the likeliest of the scale.
 *
 * @param shape the shape, as a ratio, {@value #LEAST_SHAPE} to {@value #GREATEST_SHAPE}
 * @param scale the scale, in the unit of the lives
 * @param sdLogShape the standard deviation of the natural logarithm of the shape
 * @param sdLogScale that of the scale
 * @param shapeInterval where the shape lies with 95 %
 * @param scaleInterval where the scale lies with 95 %, in the unit of the lives
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
    Interval shapeInterval,
    Interval scaleInterval,
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

  /** Half the 95 % quantile of chi squared with one degree of freedom. */
  private static final double FALL_95 = 3.841458820694124 / 2;

  /** The natural logarithm of how far an end of the scale is looked for. */
  private static final double FARTHEST = Math.log(1e4);

  private static final double TOLERANCE_OF_ENDS = 1e-7;

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
        if (lives.seenAt(time) > 0) {
          rows.add(new double[] {Math.log(time / longest), lives.seenAt(time)});
        }
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

    /**
     * ln L of a shape and the logarithm of a scale as a ratio to the longest, but for a constant.
     */
    private double logLikelihood(double shape, double logRatio) {
      double sum = 0;
      for (double[] row : rows) {
        sum += row[1] * Math.exp(shape * (row[0] - logRatio));
      }
      return failures * Math.log(shape) + shape * (logOfFailed - failures * logRatio) - sum;
    }

    private double bestLogRatio(double shape) {
      return Math.log(moment(shape, 0) / failures) / shape;
    }

    /** Falls with the shape. */
    private double slope(double shape, double logRatio) {
      double sum = failures / shape + logOfFailed - failures * logRatio;
      for (double[] row : rows) {
        double log = row[0] - logRatio;
        sum -= row[1] * Math.exp(shape * log) * log;
      }
      return sum;
    }

    private double bestShape(double logRatio) {
      if (slope(LEAST_SHAPE, logRatio) <= 0) {
        return LEAST_SHAPE;
      }
      return slope(GREATEST_SHAPE, logRatio) >= 0
          ? GREATEST_SHAPE
          : Root.between(
              shape -> slope(shape, logRatio), LEAST_SHAPE, GREATEST_SHAPE, TOLERANCE_OF_ENDS);
    }

    private Interval shapes(double shape, double least) {
      DoubleUnaryOperator above =
          logShape -> logLikelihood(Math.exp(logShape), bestLogRatio(Math.exp(logShape))) - least;
      double middle = Math.log(shape);
      return new Interval(
          Math.exp(end(above, middle, Math.log(LEAST_SHAPE))),
          Math.exp(end(above, middle, Math.log(GREATEST_SHAPE))));
    }

    private Interval scales(double logRatio, double least) {
      DoubleUnaryOperator above = ratio -> logLikelihood(bestShape(ratio), ratio) - least;
      return new Interval(
          longest * Math.exp(end(above, logRatio, logRatio - FARTHEST)),
          longest * Math.exp(end(above, logRatio, logRatio + FARTHEST)));
    }

    private static double end(DoubleUnaryOperator above, double middle, double farthest) {
      if (above.applyAsDouble(farthest) >= 0) {
        return farthest;
      }
      return Root.between(
          above, Math.min(middle, farthest), Math.max(middle, farthest), TOLERANCE_OF_ENDS);
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
      double least = logLikelihood(shape, logRatio) - FALL_95;
      return new WeibullFit(
          shape,
          scale,
          Math.sqrt(varianceOfShape),
          Math.sqrt(varianceOfScale),
          shapes(shape, least),
          scales(logRatio, least),
          correlation,
          logLikelihood,
          failures,
          all - failures);
    }
  }
}
