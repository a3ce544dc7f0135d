package kelter.core.diagnosis.simulation;

import java.util.Arrays;
import java.util.List;

/**
 * What is wrong with a machine that was drawn.
 *
 * @param severity for each group, the severity of each of its faults, 0 where it is not there
 * @param deviates for each group, how far each of its shared quantities is from the usual, in
 *     standard deviations
 * @param unexplained for each group, whether it does what no known fault explains
 */
record Machine(List<double[]> severity, List<double[]> deviates, List<Boolean> unexplained) {

  /** What a forecaster of a group is asked for. */
  double[] state(int group) {
    double[] faults = severity.get(group);
    double[] shared = deviates.get(group);
    double[] state = Arrays.copyOf(faults, faults.length + shared.length);
    System.arraycopy(shared, 0, state, faults.length, shared.length);
    return state;
  }

  boolean isSound() {
    return faults() == 0 && !isUnexplained();
  }

  boolean isUnexplained() {
    return unexplained.contains(true);
  }

  int faults() {
    return severity.stream().mapToInt(Machine::faults).sum();
  }

  static int faults(double[] group) {
    return (int) Arrays.stream(group).filter(s -> s > 0).count();
  }

  /** The severity of the slightest fault; infinite if there is none. */
  double leastSeverity() {
    double least = Double.POSITIVE_INFINITY;
    for (double[] group : severity) {
      for (double s : group) {
        least = s > 0 ? Math.min(least, s) : least;
      }
    }
    return least;
  }
}
