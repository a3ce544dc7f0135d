package kelter.core.book.learning;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import kelter.core.book.learned.KindTable;
import kelter.core.diagnosis.learning.Strength;

/** How often calls fell into each class, and how old their machines were. */
final class ShareTally {

  private static final int UNKNOWN = -1;

  /** Most tallies are of a model that was met once. */
  private static final int FEW = 2;

  private final Map<Integer, Double> counts = new HashMap<>(FEW);
  private final Map<Integer, Double> ages = new HashMap<>(FEW);
  private int jobs;

  /** Counts a call, which may fall into several classes with a share of its weight each. */
  void add(int[] classes, double weight, OptionalDouble age) {
    jobs++;
    ages.merge(age.isPresent() ? (int) age.getAsDouble() : UNKNOWN, weight, Double::sum);
    for (int each : classes) {
      counts.merge(each, weight / classes.length, Double::sum);
    }
  }

  /** Moves what was counted for one class to others, once more is known of the call. */
  void move(int from, int[] classes, double weight) {
    counts.merge(from, -weight, Double::sum);
    for (int each : classes) {
      counts.merge(each, weight / classes.length, Double::sum);
    }
  }

  int jobs() {
    return jobs;
  }

  double weight() {
    return ages.values().stream().mapToDouble(Double::doubleValue).sum();
  }

  double[] counts(KindTable table) {
    double[] all = new double[table.keys().size()];
    counts.forEach((each, count) -> all[each] = Math.max(0, count));
    return all;
  }

  /** What shares at the typical age would have made expect, at the ages of these machines. */
  double[] expected(KindTable table, double[] typical) {
    double[] mean = new double[typical.length];
    double sum = weight();
    for (Map.Entry<Integer, Double> each : ages.entrySet()) {
      OptionalDouble age =
          each.getKey() == UNKNOWN
              ? OptionalDouble.empty()
              : OptionalDouble.of(each.getKey() + 0.5);
      double[] shares = table.at(typical, age);
      for (int i = 0; i < mean.length; i++) {
        mean[i] += shares[i] * each.getValue() / sum;
      }
    }
    return KindTable.normalised(mean);
  }

  Strength.Sample sample(KindTable table, double[] typical) {
    return new Strength.Sample(expected(table, typical), counts(table));
  }
}
