package kelter.core.book.figures;

import java.util.List;
import java.util.Optional;

/**
 * What the book knows of a model of a machine.
 *
 * @param kind the kind of machine
 * @param model maker and model as they were written first
 * @param jobs how many jobs were on such machines
 * @param machines how many machines are told apart by their serial numbers
 * @param cause the cause that was confirmed most often; empty if none was
 * @param ofCause how many of the jobs with a confirmed cause had it
 * @param failures how many machines failed again after a job
 * @param lasted how many had not when they were last heard of, or until now
 * @param running which share still runs by quarters of a year since a job, as long as five or more
 *     were seen so long; empty where no machine failed
 * @param life the fitted life until the next failure; empty with fewer than five failures
 */
public record ModelRecord(
    String kind,
    String model,
    int jobs,
    int machines,
    Optional<String> cause,
    Share ofCause,
    int failures,
    int lasted,
    List<Running> running,
    Optional<Life> life) {

  /** Models with fewer jobs are counted only; own choice. */
  public static final int LEAST_JOBS = 10;

  /** Copies the list. */
  public ModelRecord {
    running = List.copyOf(running);
  }

  /**
   * The share that still runs after a time.
   *
   * @param years since the job
   * @param share 0 to 1
   * @param interval where it lies with 95 %
   */
  public record Running(double years, double share, Interval interval) {}

  /**
   * A Weibull life.
   *
   * @param shape the shape, as a ratio
   * @param ofShape where it lies with 95 %
   * @param scale the scale, years
   * @param ofScale where it lies with 95 %
   */
  public record Life(double shape, Interval ofShape, double scale, Interval ofScale) {}

  /**
   * The share that still runs one year after a job.
   *
   * @return empty with fewer than five failures, or fewer than five machines seen so long
   */
  public Optional<Running> afterAYear() {
    return life.isEmpty()
        ? Optional.empty()
        : running.stream().filter(each -> each.years() == 1).findFirst();
  }
}
