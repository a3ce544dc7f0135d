package kelter.core.book.figures;

import java.util.Optional;

/**
 * How long jobs took, work and readings together, and what they brought.
 *
 * @param kind the kind of machine; empty for all
 * @param jobs how many had their minutes told
 * @param median the minutes that half of them exceed; empty with fewer than {@link #LEAST_JOBS}
 * @param high the minutes that one in twenty exceeds; likewise
 * @param brought what an hour brought, without parts and, where the shop states its rate, without
 *     tax; half of them more
 * @param broughtLow what an hour brought at least in 19 of 20 jobs
 */
public record JobTimes(
    String kind,
    int jobs,
    Optional<Quantile> median,
    Optional<Quantile> high,
    Optional<Quantile> brought,
    Optional<Quantile> broughtLow) {

  /** Fewer jobs than this tell no such figure; own choice. */
  public static final int LEAST_JOBS = 20;

  /**
   * By how much an hour must be asked dearer than it costs, where a fixed sum is reckoned by the
   * median, so that 19 of 20 jobs are paid.
   *
   * @return a ratio, 1 or more; empty with too few jobs
   */
  public Optional<Double> factor() {
    return median.isPresent() && high.isPresent()
        ? Optional.of(high.get().value() / median.get().value())
        : Optional.empty();
  }

  /**
   * Where that ratio lies: between the ratios of the ends of both intervals that lie farthest
   * apart, which holds with 90 % at least, since each end of two intervals of 95 % may fail
   * (Bonferroni).
   *
   * @return the interval; empty with too few jobs to tell all ends
   */
  public Optional<Interval> factorInterval() {
    boolean told =
        factor().isPresent()
            && median.get().low().orElse(0) > 0
            && median.get().high().isPresent()
            && high.get().low().isPresent()
            && high.get().high().isPresent();
    return told
        ? Optional.of(
            new Interval(
                high.get().low().getAsDouble() / median.get().high().getAsDouble(),
                high.get().high().getAsDouble() / median.get().low().getAsDouble()))
        : Optional.empty();
  }
}
