package kelter.core.book.figures;

import java.util.Optional;
import kelter.core.source.Source;

/**
 * Which share of all minutes went into something. Jobs differ, so that the share R = sum x / sum y
 * of minutes x in all minutes y of a job has the variance n/(n - 1) sum (x - R y)^2 / (sum y)^2.
 *
 * @param what what the time went into
 * @param sort whether that is a sort of doing, a work or a reading
 * @param times how often
 * @param minutes how many minutes in all
 * @param share the share, 0 to 1
 * @param interval where it lies with 95 %; empty with fewer than {@link #LEAST_JOBS} jobs
 */
public record TimeShare(
    String what, Sort sort, int times, double minutes, double share, Optional<Interval> interval) {

  /** Where the variance comes from. */
  public static final Source SOURCE =
      Source.fromMemory("Cochran, Sampling Techniques, 3rd edition (1977), 6.4");

  /** Fewer jobs than this tell no interval; own choice. */
  public static final int LEAST_JOBS = 10;

  /** What time goes into. */
  public enum Sort {
    /** All measuring, all renewing, or all other work. */
    DOING("doing"),
    /** One remedy. */
    WORK("work"),
    /** One reading. */
    READING("reading");

    private final String word;

    Sort(String word) {
      this.word = word;
    }

    /**
     * The word for it.
     *
     * @return in lower case
     */
    public String word() {
      return word;
    }
  }
}
