package kelter.core.book.learning;

import java.io.Serializable;
import java.util.Arrays;
import java.util.OptionalDouble;
import kelter.core.book.learned.KindTable;
import kelter.core.diagnosis.learning.Strength;

/** How often calls fell into each class, and how old their machines were. */
final class ShareTally implements Serializable {

  private static final long serialVersionUID = 2;

  /** By the number of a class what the calls that fell into it count. */
  private double[] counts = {};

  /** The same by age in whole years plus one; in front those whose age is not told. */
  private double[] ages = {};

  private int jobs;

  /** Counts a call, which may fall into several classes with a share of its weight each. */
  void add(int[] classes, double weight, OptionalDouble age) {
    jobs++;
    ages = added(ages, age.isPresent() ? (int) age.getAsDouble() + 1 : 0, weight);
    for (int each : classes) {
      counts = added(counts, each, weight / classes.length);
    }
  }

  /** Moves what was counted for one class to others, once more is known of the call. */
  void move(int from, int[] classes, double weight) {
    counts = added(counts, from, -weight);
    for (int each : classes) {
      counts = added(counts, each, weight / classes.length);
    }
  }

  private static double[] added(double[] sums, int place, double weight) {
    double[] all = place < sums.length ? sums : Arrays.copyOf(sums, place + 1);
    all[place] += weight;
    return all;
  }

  ShareTally plus(ShareTally other) {
    ShareTally both = new ShareTally();
    both.counts = sums(counts, other.counts);
    both.ages = sums(ages, other.ages);
    both.jobs = jobs + other.jobs;
    return both;
  }

  private static double[] sums(double[] one, double[] other) {
    double[] sums = Arrays.copyOf(one, Math.max(one.length, other.length));
    for (int i = 0; i < other.length; i++) {
      sums[i] += other[i];
    }
    return sums;
  }

  int jobs() {
    return jobs;
  }

  double weight() {
    return Arrays.stream(ages).filter(each -> each != 0).sum();
  }

  double[] counts(KindTable table) {
    double[] all = new double[table.keys().size()];
    for (int i = 0; i < counts.length; i++) {
      all[i] = Math.max(0, counts[i]);
    }
    return all;
  }

  /** What shares at the typical age would have made expect, at the ages of these machines. */
  double[] expected(KindTable table, double[] typical) {
    double[] mean = new double[typical.length];
    double sum = weight();
    for (int place = 0; place < ages.length; place++) {
      if (ages[place] != 0) {
        OptionalDouble age =
            place == 0 ? OptionalDouble.empty() : OptionalDouble.of(place - 1 + 0.5);
        double[] shares = table.at(typical, age);
        for (int i = 0; i < mean.length; i++) {
          mean[i] += shares[i] * ages[place] / sum;
        }
      }
    }
    return KindTable.normalised(mean);
  }

  Strength.Sample sample(KindTable table, double[] typical) {
    return new Strength.Sample(expected(table, typical), counts(table));
  }
}
