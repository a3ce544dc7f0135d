package kelter.core.log.change;

import kelter.core.source.Source;

/**
 * How a column goes from one level to another: at once, or along a straight line with a beginning
 * and an end. Both are fitted by least squares; it counts as gradual where the line leaves
 * significantly less (F test, {@value #SIGNIFICANT} for one more parameter: chance below 0.2 %).
 *
 * @param before how many samples belong to the level before
 * @param after the first sample of the level after; the same as {@code before} if it goes at once
 */
record Transition(int before, int after) {

  static final Source SOURCE =
      Source.fromMemory(
          "Hudson, Fitting segmented curves whose join points have to be estimated, J. Am. Statist."
              + " Ass. 61 (1966) 1097");

  private static final double SIGNIFICANT = 10;
  private static final int LEVELS_AND_ENDS = 4;

  /** The fewest samples between two levels that count as a line. */
  private static final int LEAST_LINE = 3;

  /** The fewest samples of a level. */
  private static final int LEAST = 3;

  /** The places that are tried at first, on either axis. */
  private static final int GRID = 40;

  boolean gradual() {
    return after > before;
  }

  /** Fits the samples, at least six of them. */
  static Transition of(double[] values) {
    return new Fit(values).best();
  }

  private static final class Fit {

    private final int n;
    private final double[] sums;
    private final double[] moments;
    private double squares;

    Fit(double[] values) {
      n = values.length;
      sums = new double[n + 1];
      moments = new double[n + 1];
      double middle = values[n / 2];
      for (int i = 0; i < n; i++) {
        double value = values[i] - middle;
        sums[i + 1] = sums[i] + value;
        moments[i + 1] = moments[i] + i * value;
        squares += value * value;
      }
    }

    Transition best() {
      Transition step = step();
      Transition line = refined(coarse());
      double left = Math.max(0, residual(line));
      double gain = residual(step) - left;
      boolean clear = gain * (n - LEVELS_AND_ENDS) > SIGNIFICANT * left;
      return line.after - line.before >= LEAST_LINE && clear ? line : step;
    }

    private Transition step() {
      Best best = new Best(new Transition(LEAST, LEAST));
      for (int i = LEAST + 1; i <= n - LEAST; i++) {
        best.look(i, i);
      }
      return best.found;
    }

    private int stride() {
      return Math.max(1, (n - 2 * LEAST) / GRID);
    }

    private Transition coarse() {
      Best best = new Best(new Transition(LEAST, LEAST));
      for (int from = LEAST; from <= n - LEAST; from += stride()) {
        for (int to = from; to <= n - LEAST; to += stride()) {
          best.look(from, to);
        }
      }
      return best.found;
    }

    /** Moves both ends by ever smaller strides as long as that fits better. */
    private Transition refined(Transition start) {
      Transition best = start;
      for (int stride = stride(); stride > 0; stride /= 2) {
        Transition next = beside(best, stride);
        while (next != best) {
          best = next;
          next = beside(best, stride);
        }
      }
      return best;
    }

    private Transition beside(Transition at, int stride) {
      Best best = new Best(at);
      for (int from = at.before - stride; from <= at.before + stride; from += stride) {
        for (int to = at.after - stride; to <= at.after + stride; to += stride) {
          if (from >= LEAST && to >= from && to <= n - LEAST) {
            best.look(from, to);
          }
        }
      }
      return best.found;
    }

    /** The transition that leaves least of those that were looked at. */
    private final class Best {

      private Transition found;
      private double least;

      Best(Transition first) {
        found = first;
        least = residual(first);
      }

      void look(int before, int after) {
        Transition other = new Transition(before, after);
        double residual = residual(other);
        if (residual < least) {
          least = residual;
          found = other;
        }
      }
    }

    /**
     * The sum of squares that is left: the levels are found by least squares, and a sample between
     * them has a share {@code t / (line + 1)} of the second, t counted from the last sample before.
     */
    private double residual(Transition at) {
      int line = at.after - at.before;
      double length = line + 1;
      double shares = line / 2.0;
      double squaresOfShares = line * (2.0 * line + 1) / 6 / length;
      double between = sums[at.after] - sums[at.before];
      double ofShares =
          (moments[at.after] - moments[at.before] - (at.before - 1) * between) / length;
      double firsts = at.before + line - 2 * shares + squaresOfShares;
      double seconds = squaresOfShares + n - at.after;
      double both = shares - squaresOfShares;
      double first = sums[at.before] + between - ofShares;
      double second = ofShares + sums[n] - sums[at.after];
      double determinant = firsts * seconds - both * both;
      double levelBefore = (first * seconds - second * both) / determinant;
      double levelAfter = (second * firsts - first * both) / determinant;
      return squares - levelBefore * first - levelAfter * second;
    }
  }
}
