package kelter.core.log.change;

import kelter.core.log.Series;

/**
 * A change of the level of a column that was found in a log.
 *
 * @param row the first row that no longer belongs to the level before
 * @param time the last time of the level before, in s
 * @param endRow the first row of the level after
 * @param seconds how long the change took: to the first time of the level after, in s
 * @param gradual whether it went along a line, not at once
 * @param comparison the levels, with the uncertainty and the chance of their difference
 */
public record LevelChange(
    long row, double time, long endRow, double seconds, boolean gradual, Comparison comparison) {

  /**
   * The change as a break that no steady window spans.
   *
   * @return the break
   */
  public Series.Break asBreak() {
    return new Series.Break(row - 1, endRow);
  }
}
