package kelter.core.book.figures;

import java.util.Optional;
import kelter.core.source.Source;

/**
 * How often cured complaints come back, what that takes, and what to lay aside for it.
 *
 * @param kind the kind of machine; empty for all
 * @param share how many of the cured jobs came back whose time for it is over
 * @param minutes the minutes of a call-back; empty where fewer than two tell them
 * @param cost what a call-back costs, minutes and parts, in the currency of the figures; empty
 *     where that is not known of two
 */
public record CallBacks(String kind, Share share, Optional<Mean> minutes, Optional<Mean> cost) {

  /** Where the deviation of the product comes from. */
  public static final Source SOURCE =
      Source.fromMemory("Goodman, J. Am. Stat. Assoc. 55 (1960) 708, equation 2");

  /** Fewer cured jobs than this tell no rate; own choice. */
  public static final int LEAST_JOBS = 20;

  /**
   * What to lay aside with each cured job: rate times mean cost.
   *
   * @return in the currency of the figures; empty with too few jobs or call-backs
   */
  public Optional<Double> reserve() {
    return isTold() ? cost.map(each -> share.rate() * each.mean()) : Optional.empty();
  }

  /**
   * Where the reserve lies with 95 %, not below 0: the variance of a product of independent
   * estimates is a^2 v(b) + b^2 v(a) - v(a) v(b), where the estimates stand for what they estimate.
   *
   * @return in the currency of the figures; empty with too few jobs or call-backs
   */
  public Optional<Interval> reserveInterval() {
    return isTold() ? cost.map(this::interval) : Optional.empty();
  }

  /**
   * Whether there are enough cured jobs to tell a rate.
   *
   * @return true if there are
   */
  public boolean isTold() {
    return share.of() >= LEAST_JOBS;
  }

  private Interval interval(Mean each) {
    double rate = share.rate();
    double ofRate = rate * (1 - rate) / share.of();
    double ofCost = each.standardError() * each.standardError();
    double variance = rate * rate * ofCost + each.mean() * each.mean() * ofRate - ofRate * ofCost;
    double half = Interval.TWO_SIDED_95 * Math.sqrt(Math.max(0, variance));
    double middle = rate * each.mean();
    return new Interval(Math.max(0, middle - half), middle + half);
  }
}
