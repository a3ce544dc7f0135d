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
    int last = draws.length - 1;
    int middle = rank(draws, MEDIAN);
    double median = select(scratch, 0, last, middle);
    double low = select(scratch, 0, middle, rank(draws, LOW));
    double high = select(scratch, middle, last, rank(draws, HIGH));
    return new Option.Spread(mean, low, median, high);
  }

  private static int rank(double[] draws, double share) {
    return (int) Math.min(draws.length - 1.0, Math.floor(share * draws.length));
  }

  /**
   * Brings the element of a rank to its place, none greater before it and none less behind it
   * (Hoare's selection): a sort would take far longer.
   */
  private static double select(double[] draws, int from, int to, int rank) {
    int low = from;
    int high = to;
    while (low < high) {
      double pivot = median(draws[low], draws[(low + high) >>> 1], draws[high]);
      int left = low;
      int right = high;
      while (left <= right) {
        left = notLess(draws, left, pivot);
        right = notGreater(draws, right, pivot);
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

  /** The first place from one onwards at which no lesser draw stands; soon compiled by itself. */
  private static int notLess(double[] draws, int from, double pivot) {
    int place = from;
    while (draws[place] < pivot) {
      place++;
    }
    return place;
  }

  private static int notGreater(double[] draws, int from, double pivot) {
    int place = from;
    while (draws[place] > pivot) {
      place--;
    }
    return place;
  }

  private static double median(double a, double b, double c) {
    return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
  }
}
