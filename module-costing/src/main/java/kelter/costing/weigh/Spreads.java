package kelter.costing.weigh;

import kelter.core.option.Option;

/** Mean and quantiles of draws. */
final class Spreads {

  private static final double LOW = 0.05;
  private static final double MEDIAN = 0.5;
  private static final double HIGH = 0.95;

  private Spreads() {}

  /** The spread of some draws, with their own mean. */
  static Option.Spread of(double[] draws) {
    double sum = 0;
    for (double draw : draws) {
      sum += draw;
    }
    return of(sum / draws.length, draws);
  }

  /** The spread of some draws around a mean that is known better than by them. */
  static Option.Spread of(double mean, double[] draws) {
    double[] scratch = draws.clone();
    return new Option.Spread(mean, at(scratch, LOW), at(scratch, MEDIAN), at(scratch, HIGH));
  }

  private static double at(double[] draws, double share) {
    return select(draws, (int) Math.min(draws.length - 1.0, Math.floor(share * draws.length)));
  }

  /**
   * Brings the element of a rank to its place (Hoare's selection): a sort would take far longer.
   */
  private static double select(double[] draws, int rank) {
    int low = 0;
    int high = draws.length - 1;
    while (low < high) {
      double pivot = median(draws[low], draws[(low + high) >>> 1], draws[high]);
      int left = low;
      int right = high;
      while (left <= right) {
        while (draws[left] < pivot) {
          left++;
        }
        while (draws[right] > pivot) {
          right--;
        }
        if (left <= right) {
          double other = draws[left];
          draws[left++] = draws[right];
          draws[right--] = other;
        }
      }
      if (rank <= right) {
        high = right;
      } else if (rank >= left) {
        low = left;
      } else {
        return draws[rank];
      }
    }
    return draws[rank];
  }

  private static double median(double a, double b, double c) {
    return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
  }
}
