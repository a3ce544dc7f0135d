package kelter.core.book.figures;

import kelter.core.source.Source;
import org.apache.commons.statistics.distribution.GammaDistribution;

/**
 * How often a part was asked for, and what that makes expect. Uses are taken to come one by one, by
 * chance and at a steady rate, so that their number in a time is of Poisson; the rate is known by
 * the uses counted only. With the prior of Jeffreys it is Gamma(uses + 1/2, years), and the uses of
 * a coming time of t years are of the negative binomial distribution with r = uses + 1/2 and p =
 * years / (years + t).
 *
 * @param uses how often it was used, 0 or more
 * @param years in how many years, above 0
 */
public record Demand(int uses, double years) {

  /** Where rate and distribution come from. */
  public static final Source SOURCE =
      Source.fromMemory("Gelman et al., Bayesian Data Analysis, 3rd edition (2013), 2.6 and 2.8");

  private static final double JEFFREYS = 0.5;

  /** No shop carries more of a part. */
  private static final int MOST = 1_000_000;

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if uses are below 0 or the years not above 0
   */
  public Demand {
    if (uses < 0 || !(years > 0 && years < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          uses + " uses in " + years + " years; 0 or more in more than 0 are allowed");
    }
  }

  /**
   * The uses of a year.
   *
   * @return 0 or more, a year
   */
  public double rate() {
    return uses / years;
  }

  /**
   * Where the uses of a year lie with 95 % in the long run.
   *
   * @return the interval, a year
   */
  public Interval interval() {
    GammaDistribution rate = GammaDistribution.of(uses + JEFFREYS, 1 / years);
    return new Interval(
        uses == 0 ? 0 : rate.inverseCumulativeProbability(Interval.TAIL),
        rate.inverseSurvivalProbability(Interval.TAIL));
  }

  /**
   * The chance that a stock meets all that is asked for in a time.
   *
   * @param stock how many are there, 0 or more
   * @param time how long, years, above 0
   * @return 0 to 1
   */
  public double met(int stock, double time) {
    double r = uses + JEFFREYS;
    double p = years / (years + time);
    double each = Math.pow(p, r);
    double sum = each;
    for (int k = 0; k < stock; k++) {
      each *= (k + r) / (k + 1) * (1 - p);
      sum += each;
    }
    return Math.min(1, sum);
  }

  /**
   * How many to have so that all that is asked for in a time is met with a chance.
   *
   * @param time how long until more come, years, above 0
   * @param service the chance, above 0 and below 1
   * @return 0 or more
   */
  public int stockFor(double time, double service) {
    int stock = 0;
    while (met(stock, time) < service && stock < MOST) {
      stock++;
    }
    return stock;
  }
}
