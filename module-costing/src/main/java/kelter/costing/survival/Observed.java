package kelter.costing.survival;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * One life as far as it was seen.
 *
 * <p>A machine that still works when it was last seen has lived at least so long: it is censored. A
 * part that is renewed although it has not failed is censored as well. The ages of machines that
 * are brought for repair are no lives by themselves: without the censored ones any fit is far too
 * short.
 *
 * @param time how long it was seen to live, in any unit of time, above zero
 * @param failed whether it failed then
 */
public record Observed(double time, boolean failed) {

  /**
   * Checks the time.
   *
   * @throws IllegalArgumentException if the time is not above zero and finite
   */
  public Observed {
    if (!(time > 0) || Double.isInfinite(time)) {
      throw new IllegalArgumentException(
          "a life of %s; it must be above zero and finite".formatted(time));
    }
  }

  /**
   * A life that ended by failure.
   *
   * @param time how long it lasted
   * @return the life
   */
  public static Observed failedAt(double time) {
    return new Observed(time, true);
  }

  /**
   * A life that had not ended when it was last seen.
   *
   * @param time how long it had lasted by then
   * @return the life
   */
  public static Observed aliveAt(double time) {
    return new Observed(time, false);
  }

  /** The times at which something failed, rising. */
  static SortedSet<Double> failures(List<Observed> lives) {
    return lives.stream()
        .filter(Observed::failed)
        .map(Observed::time)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** How many had been seen to reach a time. */
  static int atRisk(List<Observed> lives, double time) {
    return (int) lives.stream().filter(life -> life.time() >= time).count();
  }

  /** How many failed at a time. */
  static int failed(List<Observed> lives, double time) {
    return (int) lives.stream().filter(life -> life.failed() && life.time() == time).count();
  }
}
