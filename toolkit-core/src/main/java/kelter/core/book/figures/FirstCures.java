package kelter.core.book.figures;

/**
 * How often the first job cures: its complaint is gone and did not come back in time. The book
 * tells jobs and not visits: one job may have taken several.
 *
 * @param kind the kind of machine; empty for all
 * @param share how many of the first jobs that ended as cured or not cured, whose time to come back
 *     is over
 */
public record FirstCures(String kind, Share share) {

  /** Fewer jobs than this tell no share; own choice. */
  public static final int LEAST_JOBS = 10;

  /**
   * Whether there are enough jobs.
   *
   * @return true if there are
   */
  public boolean isTold() {
    return share.of() >= LEAST_JOBS;
  }
}
