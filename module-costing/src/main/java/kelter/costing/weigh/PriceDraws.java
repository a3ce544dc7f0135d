package kelter.costing.weigh;

import kelter.costing.choice.Basis;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * Draws how prices turn out: a factor for each group of prices, lognormal with a mean of 1 and the
 * stated relative standard deviation, the same for today and later, so that the means of the
 * options stay as they are.
 *
 * <p>If {@code sigma^2 = ln(1 + spread^2)}, then {@code exp(sigma z - sigma^2 / 2)} with z standard
 * normal has that mean and that deviation (the moments of the lognormal distribution, NIST/SEMATECH
 * e-Handbook 1.3.6.6.9).
 */
final class PriceDraws {

  /** Sets the draws of prices apart from those of lives, which do not change with the spread. */
  private static final long APART = 0x9e3779b97f4a7c15L;

  private final boolean sure;
  private final double[] sigma;
  private final double[] factor = {1, 1, 1};
  private final ZigguratSampler.NormalizedGaussian normal;

  private PriceDraws(boolean sure, double[] sigma, ZigguratSampler.NormalizedGaussian normal) {
    this.sure = sure;
    this.sigma = sigma;
    this.normal = normal;
  }

  static PriceDraws of(Basis.Spread spread, long seed) {
    if (!spread.isAny()) {
      return new PriceDraws(true, new double[3], null);
    }
    UniformRandomProvider random = Seeds.generator(seed ^ APART);
    double[] sigma = {sigma(spread.repair()), sigma(spread.replacement()), sigma(spread.running())};
    return new PriceDraws(false, sigma, ZigguratSampler.NormalizedGaussian.of(random));
  }

  private static double sigma(double spread) {
    return Math.sqrt(Math.log1p(spread * spread));
  }

  /** Draws all factors anew. */
  void next() {
    for (int i = 0; !sure && i < factor.length; i++) {
      factor[i] = Math.exp(sigma[i] * (normal.sample() - sigma[i] / 2));
    }
  }

  /** How many times as dear repairs turn out. */
  double repair() {
    return factor[0];
  }

  /** How many times as dear new machines turn out. */
  double replacement() {
    return factor[1];
  }

  /** How many times as dear energy, water and detergent turn out. */
  double running() {
    return factor[2];
  }
}
