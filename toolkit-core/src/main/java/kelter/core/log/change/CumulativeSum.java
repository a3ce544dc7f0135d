package kelter.core.log.change;

import java.util.ArrayList;
import java.util.List;
import kelter.core.source.Source;

/**
 * Where a column may have left its level: the cumulative sums of Page, {@code S = max(0, S + z -
 * k)}, upwards and downwards, that tell of a change once they pass h. z is how far a sample lies
 * from the mean of all since the last change, by their standard deviation, so that no level and no
 * noise has to be known beforehand (self-starting).
 *
 * <p>The change is put where two means fit best up to the alarm (least squares). Samples that
 * resemble their neighbours raise many false alarms: each is a candidate, to be judged by a {@link
 * Comparison}.
 */
final class CumulativeSum {

  static final Source SOURCE =
      Source.fromMemory(
          "Page, Continuous inspection schemes, Biometrika 41 (1954) 100; self-starting: Hawkins,"
              + " The Statistician 36 (1987) 299; samples cut: Lucas and Crosier, Technometrics 24"
              + " (1982) 199; place of the change: Hinkley, Biometrika 57 (1970) 1");

  /** Half the shift to be found, in standard deviations. */
  private static final double ALLOWANCE = 0.5;

  /** The sum that gives an alarm; about one in 10 000 independent samples is false. */
  private static final double ALARM = 8;

  /** Farther than this a sample counts no more, so that a single one gives no alarm. */
  private static final double FARTHEST = 6;

  private static final int LEARNT = 10;

  /** The fewest samples on each side of a change. */
  static final int LEAST = 10;

  private final double[] values;
  private final double floor;

  private CumulativeSum(double[] values, double floor) {
    this.values = values;
    this.floor = floor;
  }

  /**
   * The places of possible changes.
   *
   * @param values samples in order
   * @param floor the least standard deviation to reckon with
   * @return the first sample behind each, in order
   */
  static List<Integer> candidates(double[] values, double floor) {
    CumulativeSum search = new CumulativeSum(values, floor);
    List<Integer> found = new ArrayList<>();
    int start = 0;
    int alarm = search.alarm(start);
    while (alarm > 0) {
      start = search.split(start, alarm + 1);
      if (start > values.length - LEAST) {
        break;
      }
      found.add(start);
      alarm = search.alarm(start);
    }
    return found;
  }

  /** The sample at which a sum passes the limit; -1 if none does. */
  private int alarm(int start) {
    double mean = 0;
    double squares = 0;
    double up = 0;
    double down = 0;
    for (int i = start; i < values.length; i++) {
      int count = i - start;
      if (count >= LEARNT) {
        double deviation = Math.max(floor, Math.sqrt(squares / (count - 1)));
        double z = standardised(values[i] - mean, deviation) * Math.sqrt(count / (count + 1.0));
        up = Math.max(0, up + z - ALLOWANCE);
        down = Math.max(0, down - z - ALLOWANCE);
        if (up > ALARM || down > ALARM) {
          return i;
        }
      }
      double aside = values[i] - mean;
      mean += aside / (count + 1);
      squares += aside * (values[i] - mean);
    }
    return -1;
  }

  private static double standardised(double aside, double deviation) {
    if (aside == 0) {
      return 0;
    }
    return Math.max(-FARTHEST, Math.min(FARTHEST, aside / deviation));
  }

  /** The first sample of the second part where two means fit best. */
  private int split(int start, int end) {
    double sum = 0;
    for (int i = start; i < end; i++) {
      sum += values[i];
    }
    double middle = sum / (end - start);
    int best = start + LEAST;
    double most = -1;
    double before = 0;
    for (int i = start; i < end - 1; i++) {
      before += values[i] - middle;
      int first = i + 1 - start;
      int second = end - i - 1;
      double squares = before * before / first + before * before / second;
      if (first >= LEAST && squares > most) {
        most = squares;
        best = i + 1;
      }
    }
    return best;
  }
}
