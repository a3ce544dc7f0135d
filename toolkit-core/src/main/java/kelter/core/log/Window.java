package kelter.core.log;

import java.util.List;

/**
 * A stretch of a column of a log, and what it is worth as a reading.
 *
 * @param firstRow the row of its first sample
 * @param lastRow the row of its last sample
 * @param from the time of its first sample, in s
 * @param to the time of its last sample, in s
 * @param samples how many samples it has
 * @param mean their mean
 * @param standardDeviation their experimental standard deviation
 * @param least the least of them
 * @param most the greatest of them
 * @param autocorrelation the autocorrelation coefficient at lag 1, of blocks where the series holds
 *     blocks
 * @param effective how many independent observations they are worth
 * @param uncertainty the standard uncertainty of the mean, type A, see {@link
 *     EffectiveObservations}
 * @param slope the trend by least squares, per s
 * @param slopeUncertainty the standard uncertainty of the trend, type A, per s
 */
public record Window(
    long firstRow,
    long lastRow,
    double from,
    double to,
    long samples,
    double mean,
    double standardDeviation,
    double least,
    double most,
    double autocorrelation,
    double effective,
    double uncertainty,
    double slope,
    double slopeUncertainty) {

  /**
   * How long the window is.
   *
   * @return the time from the first to the last sample, in s
   */
  public double seconds() {
    return to - from;
  }

  /** Two blocks or more, in order, as a window. */
  static Window of(List<Block> blocks) {
    Block all = Block.of(blocks);
    double[] means = blocks.stream().mapToDouble(block -> block.mean).toArray();
    double mean = Autocorrelation.mean(means);
    double squares = Autocorrelation.squares(means, mean);
    EffectiveObservations worth = EffectiveObservations.of(means);
    double u = worth.uncertaintyOfMean(squares);
    double slope = all.timeSquares > 0 ? all.products / all.timeSquares : 0;
    return new Window(
        all.first.row(),
        all.last.row(),
        all.first.time(),
        all.last.time(),
        all.count,
        all.mean,
        all.standardDeviation(),
        all.least.value(),
        all.most.value(),
        Autocorrelation.coefficient(means, 1),
        effective(all, worth, u),
        u,
        slope,
        slopeUncertainty(blocks, all, slope));
  }

  /** Of samples held one by one the number itself; of blocks the number that gives the same u. */
  private static double effective(Block all, EffectiveObservations worth, double u) {
    if (all.count == worth.observations() || u == 0) {
      return all.count == worth.observations() ? worth.effective() : all.count;
    }
    return Math.min(all.count, 1 + Math.max(0, all.squares) / all.count / (u * u));
  }

  /** Least squares, with as many degrees of freedom as the residuals are worth. */
  private static double slopeUncertainty(List<Block> blocks, Block all, double slope) {
    int n = blocks.size();
    if (n < 3 || !(all.timeSquares > 0)) {
      return 0;
    }
    double[] residuals = new double[n];
    double timeSquares = 0;
    for (int i = 0; i < n; i++) {
      double aside = blocks.get(i).meanTime - all.meanTime;
      residuals[i] = blocks.get(i).mean - all.mean - slope * aside;
      timeSquares += aside * aside;
    }
    double squares = Autocorrelation.squares(residuals, 0);
    double inflation = n / EffectiveObservations.of(residuals).effective();
    return timeSquares > 0 ? Math.sqrt(squares / (n - 2) / timeSquares * inflation) : 0;
  }
}
