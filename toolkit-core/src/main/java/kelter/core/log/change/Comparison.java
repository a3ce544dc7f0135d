package kelter.core.log.change;

import kelter.core.log.Quantisation;
import kelter.core.log.Window;

/**
 * What changed from one stretch of a column to another.
 *
 * <p>The uncertainty is that of the scatter, of the drift which a healthy stretch lets expect over
 * the time between the two, and of the steps in which the samples are told. An error of the
 * instrument that is the same in both drops out of the difference.
 *
 * @param before the mean before
 * @param after the mean after
 * @param uncertainty the standard uncertainty of their difference
 * @param degreesOfFreedom the degrees of freedom of that uncertainty, 1 or more
 * @param chance the chance of such a difference or a greater one if nothing happened, from 0 to 1
 */
public record Comparison(
    double before, double after, double uncertainty, double degreesOfFreedom, double chance) {

  /**
   * The difference.
   *
   * @return the mean after less the mean before
   */
  public double difference() {
    return after - before;
  }

  /**
   * A stretch of a column.
   *
   * @param length how long it is, from the beginning of its first sample to the end of its last
   * @param mean the mean of its samples
   * @param standardDeviation their experimental standard deviation
   * @param range the greatest less the least of them
   * @param uncertainty the standard uncertainty of the mean by its own scatter
   */
  record Side(
      double length, double mean, double standardDeviation, double range, double uncertainty) {

    double uncertaintyOfStep(double resolution) {
      return Quantisation.uncertaintyOfMean(resolution, standardDeviation, range);
    }
  }

  /**
   * Compares two windows of a column.
   *
   * @param before the one
   * @param after the other, before or behind it
   * @param healthy a healthy stretch, which tells of the drift: the window before for instance
   * @param step the usual time from sample to sample, in s; if it is 0, lengths are counted in rows
   * @param resolution the step in which the samples are told, 0 if it is not known
   * @return what changed
   */
  public static Comparison of(
      Window before, Window after, Stretch healthy, double step, double resolution) {
    LocalLevel level = LocalLevel.of(healthy.values(), length(healthy.window(), step));
    double gap =
        step > 0
            ? Math.max(after.from() - before.to(), before.from() - after.to()) - step
            : Math.max(after.firstRow() - before.lastRow(), before.firstRow() - after.lastRow())
                - 1;
    return of(side(before, step), gap, side(after, step), level, resolution);
  }

  /**
   * A healthy stretch.
   *
   * @param window the stretch
   * @param values its samples, or the means of equal blocks of them, two or more
   */
  public record Stretch(Window window, double[] values) {}

  private static Side side(Window window, double step) {
    return new Side(
        length(window, step),
        window.mean(),
        window.standardDeviation(),
        window.most() - window.least(),
        window.uncertainty());
  }

  private static double length(Window window, double step) {
    return step > 0 ? window.seconds() + step : window.lastRow() - window.firstRow() + 1;
  }

  static Comparison of(Side before, double gap, Side after, LocalLevel healthy, double resolution) {
    double steps =
        Math.hypot(before.uncertaintyOfStep(resolution), after.uncertaintyOfStep(resolution));
    LocalLevel.Spread spread =
        healthy.difference(before.length(), gap, after.length(), after.uncertainty(), steps);
    return new Comparison(
        before.mean(),
        after.mean(),
        spread.standardUncertainty(),
        spread.degreesOfFreedom(),
        spread.chance(after.mean() - before.mean()));
  }
}
