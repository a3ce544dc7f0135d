package kelter.core.uncertainty.montecarlo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kelter.core.uncertainty.Budget;

/**
 * The values of one result over the trials, and how steady their figures are from block to block.
 */
final class DrawnSeries {

  private static final int FIGURES = 4;

  private final Budget budget;
  private final double[] values;
  private final List<double[]> blocks = new ArrayList<>();
  private int size;
  private int undefined;

  DrawnSeries(Budget budget, int mostTrials) {
    this.budget = budget;
    this.values = new double[mostTrials];
  }

  /**
   * Takes one result of each trial of a block; what is missing or not finite is counted as none.
   */
  void addBlock(double[][] trials, int place) {
    int start = size;
    for (double[] results : trials) {
      if (place < results.length && Double.isFinite(results[place])) {
        values[size++] = results[place];
      } else {
        undefined++;
      }
    }
    if (size - start < trials.length / 2) {
      throw new IllegalArgumentException(
          "the uncertainties are so large that most values they allow give no result");
    }
    blocks.add(figures(Arrays.copyOfRange(values, start, size)));
  }

  /** Mean, standard deviation, low and high end of the coverage interval. */
  private double[] figures(double[] y) {
    Arrays.sort(y);
    double origin = y[y.length / 2];
    double sum = 0;
    for (double value : y) {
      sum += value - origin;
    }
    double mean = origin + sum / y.length; // equation (16)
    double squares = 0;
    for (double value : y) {
      squares += (value - mean) * (value - mean);
    }
    int inside = (int) (budget.coverageProbability() * y.length + 0.5); // 7.7.1
    int low = (y.length - inside + 1) / 2; // 7.7.2, counted from 1
    double u = Math.sqrt(squares / (y.length - 1)); // equation (17)
    return new double[] {mean, u, y[low - 1], y[low + inside - 1]};
  }

  /** Twice the standard deviation of the average over the blocks, of the least steady figure. */
  private double steadyWithin() {
    int h = blocks.size();
    double greatest = 0;
    for (int figure = 0; figure < FIGURES; figure++) {
      double mean = average(figure);
      double squares = 0;
      for (double[] block : blocks) {
        squares += (block[figure] - mean) * (block[figure] - mean);
      }
      greatest = Math.max(greatest, 2 * Math.sqrt(squares / (h - 1.0) / h)); // 7.9.4 g
    }
    return greatest;
  }

  private double average(int figure) {
    double sum = 0;
    for (double[] block : blocks) {
      sum += block[figure];
    }
    return sum / blocks.size();
  }

  /**
   * Whether more trials would not change the comparison with first order; needs two blocks or more.
   */
  boolean isSettled() {
    Validation two = validation(2);
    return two.isSettled() && (two.holds() == Validation.Answer.YES || validation(1).isSettled());
  }

  private Validation validation(int digits) {
    return Validation.of(budget, average(2), average(3), digits, steadyWithin(), undefined > 0);
  }

  MonteCarlo.Outcome outcome() {
    double[] all = figures(Arrays.copyOf(values, size));
    return new MonteCarlo.Outcome(
        all[0], all[1], all[2], all[3], size, undefined, validation(1), validation(2));
  }
}
