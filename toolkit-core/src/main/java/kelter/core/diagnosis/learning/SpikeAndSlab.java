package kelter.core.diagnosis.learning;

import java.util.ArrayList;
import java.util.List;
import kelter.core.source.Source;
import org.apache.commons.numbers.gamma.LogGamma;

/**
 * How much counts weigh against tables of which some are right, so that what strays from them is
 * chance, and others are not.
 *
 * <p>A table is right with a chance c that all tables share. Shares of one that is not are spread
 * about it by a Dirichlet distribution of strength s, which those tables share. With B the
 * likelihood of the counts under such a distribution as a ratio to that under the table, {@code ln
 * B = ln G(s) - ln G(s + N) + sum_k [ln G(s p_k + n_k) - ln G(s p_k) - n_k ln p_k]} with the gamma
 * function G, the counts of all tables tell c and s by the product of {@code c + (1 - c) B} over
 * them, and each table is right with {@code c / (c + (1 - c) B)}. Both are averaged over a grid,
 * their priors a beta distribution and a log-normal one within bounds.
 *
 * <p>The prediction averaged so is {@code p + w (n/N - p)} with the weight w of the counts, the
 * mean of N / (N + s) where the table is not right and 0 where it is.
 */
public final class SpikeAndSlab {

  /** Where the mixture comes from. */
  public static final Source SOURCE =
      Source.fromMemory(
          "Mitchell and Beauchamp, Bayesian variable selection in linear regression, Journal of the"
              + " American Statistical Association 83 (1988) 1023; Minka, Estimating a Dirichlet"
              + " distribution (2000)");

  private static final int STEPS = 60;
  private static final int CHANCES = 20;

  private final double[] right;
  private final double[] weight;

  private SpikeAndSlab(double[] right, double[] weight) {
    this.right = right;
    this.weight = weight;
  }

  /**
   * Weighs.
   *
   * @param samples what was counted, each against its own table
   * @param isRight how often tables are right, as it is thought before anything was counted
   * @param guess the strength of tables that are not right, as it is thought before
   * @return the weights
   */
  public static SpikeAndSlab of(
      List<Strength.Sample> samples, BetaDistribution isRight, Strength.Guess guess) {
    List<Point> points = new ArrayList<>();
    double step = Math.log(guess.most() / guess.least()) / STEPS;
    double highest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i <= STEPS; i++) {
      double strength = guess.least() * Math.exp(i * step);
      double[] logRatios = samples.stream().mapToDouble(each -> logRatio(each, strength)).toArray();
      for (int j = 0; j < CHANCES; j++) {
        double chance = (j + 0.5) / CHANCES;
        Point point = Point.of(strength, chance, logRatios, guess.logDensity(strength), isRight);
        highest = Math.max(highest, point.logHeight());
        points.add(point);
      }
    }
    return mean(samples, points, highest);
  }

  /** One pair of strength and chance, with how well the counts of all bear it out. */
  private record Point(double strength, double logHeight, double[] right) {

    static Point of(
        double strength,
        double chance,
        double[] logRatios,
        double logDensity,
        BetaDistribution isRight) {
      double sum =
          logDensity
              + (isRight.a() - 1) * Math.log(chance)
              + (isRight.b() - 1) * Math.log(1 - chance);
      double[] right = new double[logRatios.length];
      for (int i = 0; i < right.length; i++) {
        double logOdds = Math.log((1 - chance) / chance) + logRatios[i];
        right[i] = 1 / (1 + Math.exp(logOdds));
        sum += Math.log(chance) + Math.max(0, logOdds) + Math.log1p(Math.exp(-Math.abs(logOdds)));
      }
      return new Point(strength, sum, right);
    }
  }

  private static SpikeAndSlab mean(
      List<Strength.Sample> samples, List<Point> points, double highest) {
    double[] right = new double[samples.size()];
    double[] weight = new double[samples.size()];
    double all = 0;
    for (Point point : points) {
      double height = Math.exp(point.logHeight() - highest);
      all += height;
      for (int i = 0; i < right.length; i++) {
        double jobs = samples.get(i).number();
        right[i] += height * point.right()[i];
        weight[i] += height * (1 - point.right()[i]) * jobs / (jobs + point.strength());
      }
    }
    for (int i = 0; i < right.length; i++) {
      right[i] /= all;
      weight[i] /= all;
    }
    return new SpikeAndSlab(right, weight);
  }

  /** A class that was met although the table gives it no share tells nothing here. */
  private static double logRatio(Strength.Sample sample, double strength) {
    double jobs = 0;
    double sum = 0;
    for (int k = 0; k < sample.counts().length; k++) {
      double count = sample.counts()[k];
      double share = sample.prior()[k];
      if (count > 0 && share > 0) {
        double alpha = strength * share;
        sum += LogGamma.value(alpha + count) - LogGamma.value(alpha) - count * Math.log(share);
        jobs += count;
      }
    }
    return sum + LogGamma.value(strength) - LogGamma.value(strength + jobs);
  }

  /**
   * How likely a table is right.
   *
   * @param sample the number of its sample
   * @return 0 to 1
   */
  public double right(int sample) {
    return right[sample];
  }

  /**
   * How much counts weigh against their table.
   *
   * @param sample the number of the sample
   * @return w of the prediction, 0 to below 1; 0 if nothing was counted
   */
  public double weight(int sample) {
    return weight[sample];
  }
}
