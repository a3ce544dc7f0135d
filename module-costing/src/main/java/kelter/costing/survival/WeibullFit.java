package kelter.costing.survival;

import java.util.List;
import kelter.core.numeric.Root;
import kelter.core.source.Source;
import kelter.costing.life.Weibull;

/**
 * The Weibull life that makes observed lives likeliest, censored ones included.
 *
 * <p>The shape solves {@code sum(t^k ln t) / sum(t^k) - 1/k = mean over failures of ln t}, whose
 * left side rises with k, so that it has one root; then {@code scale = (sum(t^k) /
 * failures)^(1/k)}. The standard errors are those of the logarithms, from the observed information.
 *
 * <p>Two failures at different times, or one failure and a censored life beyond it, are the least
 * that can be fitted; with fewer than five failures the interval is what counts, not the figure.
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, 8.4.1.3, maximum likelihood for
 * censored lives.
 *
 * @param life the fitted life, in the unit of the observed times
 * @param failures how many of the lives ended by failure
 * @param logLikelihood the natural logarithm of the likelihood
 * @param errorOfLogScale the standard error of the natural logarithm of the scale
 * @param errorOfLogShape the standard error of the natural logarithm of the shape
 */
public record WeibullFit(
    Weibull life,
    int failures,
    double logLikelihood,
    double errorOfLogScale,
    double errorOfLogShape) {

  /** Where the method comes from. */
  public static final Source SOURCE =
      Source.published(
          "NIST/SEMATECH e-Handbook of Statistical Methods, 8.4.1.3, maximum likelihood for"
              + " censored lives");

  /** Below this many failures the interval counts and not the figure. */
  public static final int FEW = 5;

  /** The 97.5 % point of the standard normal distribution. */
  private static final double NORMAL_975 = 1.959963984540054;

  private static final int PARAMETERS = 2;

  /**
   * Fits a life.
   *
   * @param observed the lives
   * @return the fit
   * @throws IllegalArgumentException if nothing failed, all lives are equal, or the shape would lie
   *     outside 0.2 to 50
   */
  public static WeibullFit of(List<Observed> observed) {
    double longest = observed.stream().mapToDouble(Observed::time).max().orElse(0);
    List<Observed> failed = observed.stream().filter(Observed::failed).toList();
    if (failed.isEmpty()) {
      throw new IllegalArgumentException(
          "none of %s lives ended by failure; a fit needs failures".formatted(observed.size()));
    }
    if (failed.stream().allMatch(life -> life.time() == longest)) {
      throw new IllegalArgumentException(
          "every failure is at %s and nothing lived longer; a fit needs lives that differ"
              .formatted(longest));
    }
    double shape = shape(observed, failed, longest);
    double sum = observed.stream().mapToDouble(o -> Math.pow(o.time() / longest, shape)).sum();
    double scale = longest * Math.pow(sum / failed.size(), 1 / shape);
    return withErrors(new Weibull(scale, shape), observed, failed);
  }

  private static double shape(List<Observed> observed, List<Observed> failed, double longest) {
    double low = Weibull.LEAST_SHAPE;
    double high = Weibull.GREATEST_SHAPE;
    if (slope(observed, failed, longest, low) > 0 || slope(observed, failed, longest, high) < 0) {
      throw new IllegalArgumentException(
          "the shape would lie outside %s to %s; such lives are no Weibull lives of a machine"
              .formatted(low, high));
    }
    return Root.between(k -> slope(observed, failed, longest, k), low, high, 0);
  }

  /** Times as ratios of the longest, so that no power overflows; the equation stays the same. */
  private static double slope(
      List<Observed> observed, List<Observed> failed, double longest, double k) {
    double sum = 0;
    double sumOfLogs = 0;
    for (Observed life : observed) {
      double ratio = life.time() / longest;
      double power = Math.pow(ratio, k);
      sum += power;
      sumOfLogs += power * Math.log(ratio);
    }
    double mean =
        failed.stream().mapToDouble(f -> Math.log(f.time() / longest)).average().orElse(0);
    return sumOfLogs / sum - 1 / k - mean;
  }

  private static WeibullFit withErrors(
      Weibull life, List<Observed> observed, List<Observed> failed) {
    double k = life.shape();
    double logLikelihood = 0;
    double sum = 0;
    double sumOfLogs = 0;
    double sumOfSquares = 0;
    double logsOfFailures = 0;
    for (Observed each : observed) {
      double y = Math.log(each.time() / life.scale());
      double z = Math.exp(k * y);
      sum += z;
      sumOfLogs += z * y;
      sumOfSquares += z * y * y;
      logLikelihood -= z;
      if (each.failed()) {
        logsOfFailures += y;
        logLikelihood += Math.log(k) + k * y - Math.log(each.time());
      }
    }
    double scaleScale = k * k * sum;
    double scaleShape = -k * (sum - failed.size()) - k * k * sumOfLogs;
    double shapeShape = k * sumOfLogs + k * k * sumOfSquares - k * logsOfFailures;
    double determinant = scaleScale * shapeShape - scaleShape * scaleShape;
    return new WeibullFit(
        life,
        failed.size(),
        logLikelihood,
        Math.sqrt(shapeShape / determinant),
        Math.sqrt(scaleScale / determinant));
  }

  /**
   * Akaike's information criterion: of two kinds of life fitted to the same data, the smaller one
   * fits better.
   *
   * @return twice the number of parameters less twice the log-likelihood
   */
  public double aic() {
    return 2 * PARAMETERS - 2 * logLikelihood;
  }

  /**
   * Between which limits the shape lies with a confidence of 95 %.
   *
   * @return lower and upper limit, by the normal approximation of its logarithm
   */
  public double[] shapeInterval() {
    return interval(life.shape(), errorOfLogShape);
  }

  /**
   * Between which limits the scale lies with a confidence of 95 %.
   *
   * @return lower and upper limit, in the unit of the observed times, by the normal approximation
   *     of its logarithm
   */
  public double[] scaleInterval() {
    return interval(life.scale(), errorOfLogScale);
  }

  private static double[] interval(double value, double error) {
    double factor = Math.exp(NORMAL_975 * error);
    return new double[] {value / factor, value * factor};
  }

  /**
   * Whether there are so few failures that the interval counts and not the figure.
   *
   * @return true below five failures
   */
  public boolean isBasedOnFew() {
    return failures < FEW;
  }
}
