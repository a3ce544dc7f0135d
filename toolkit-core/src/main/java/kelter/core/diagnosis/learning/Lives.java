package kelter.core.diagnosis.learning;

import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Times after which something failed, and times up to which it was seen to last, each with how
 * often. The unit is that of whoever counts.
 *
 * @param failed by the time, above 0, how many failed then, 0 or more
 * @param lasted by the time, above 0, how many were seen to last at least so long, 0 or more
 */
public record Lives(Map<Double, Double> failed, Map<Double, Double> lasted) {

  /**
   * Checks times and numbers.
   *
   * @throws IllegalArgumentException if a time is not above 0 and finite, or a number below 0
   */
  public Lives {
    failed = new TreeMap<>(failed);
    lasted = new TreeMap<>(lasted);
    failed.forEach(Lives::require);
    lasted.forEach(Lives::require);
  }

  private static void require(double time, double number) {
    if (!(time > 0 && time < Double.POSITIVE_INFINITY && number >= 0)) {
      throw new IllegalArgumentException(
          "%s with a life of %s; lives are above 0".formatted(number, time));
    }
  }

  /**
   * How many failed.
   *
   * @return their number
   */
  public double failures() {
    return failed.values().stream().mapToDouble(Double::doubleValue).sum();
  }

  /**
   * How many there are.
   *
   * @return those that failed and those that lasted
   */
  public double all() {
    return failures() + lasted.values().stream().mapToDouble(Double::doubleValue).sum();
  }

  NavigableSet<Double> times() {
    NavigableSet<Double> times = new TreeSet<>(failed.keySet());
    times.addAll(lasted.keySet());
    return times;
  }

  double failedAt(double time) {
    return failed.getOrDefault(time, 0.0);
  }

  double seenAt(double time) {
    return failedAt(time) + lasted.getOrDefault(time, 0.0);
  }
}
