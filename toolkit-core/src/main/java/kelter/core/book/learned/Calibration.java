package kelter.core.book.learned;

import java.util.List;

/**
 * How the shop's own predictions held: what was told before the work against what was confirmed.
 *
 * @param jobs how many jobs had both
 * @param logLoss the mean of -ln of what was told of a confirmed cause, a chance below one in a
 *     thousand taken as that; 0 is perfect
 * @param brier the mean squared error of what was told of the cause named first, 0 to 1
 * @param expectedError how far off it was on average, 0 to 1
 * @param bins what was told of the cause named first against how often it was confirmed
 */
public record Calibration(
    int jobs, double logLoss, double brier, double expectedError, List<Bin> bins) {

  /**
   * Jobs of which like chances were told.
   *
   * @param jobs how many
   * @param said the mean of what was told, 0 to 1
   * @param came how often it was confirmed, 0 to 1
   */
  public record Bin(int jobs, double said, double came) {}

  /** Copies the bins. */
  public Calibration {
    bins = List.copyOf(bins);
  }
}
