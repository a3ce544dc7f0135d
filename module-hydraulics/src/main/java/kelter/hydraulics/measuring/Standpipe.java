package kelter.hydraulics.measuring;

import kelter.core.uncertainty.ErrorModel;

/**
 * How far a head may be off that is read as the height of water in a clear hose held upright beside
 * a scale. The column stands before the scale, so that an eye above or below it sees the level
 * against another mark (parallax); the level is read between two marks; the point from which it is
 * counted is only so well known; and while a pump runs the level swings.
 *
 * <p>The first three are rectangular, the swing is U-shaped (JCGM 100:2008, 4.3.7 and 4.3.5); they
 * add as squares.
 *
 * @param division the distance between two marks of the scale, m; a level is read to half of it
 * @param depth how far the middle of the column stands before the scale, m
 * @param slope how steeply the eye may look up or down, as a ratio of height to distance
 * @param origin how far the point from which the height is counted may be off, m
 * @param swing how far the level swings to either side, m
 */
record Standpipe(double division, double depth, double slope, double origin, double swing)
    implements ErrorModel {

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if one is negative or not finite
   */
  public Standpipe {
    double sum = division + depth + slope + origin + swing;
    boolean negative = division < 0 || depth < 0 || slope < 0 || origin < 0 || swing < 0;
    if (negative || !Double.isFinite(sum)) {
      throw new IllegalArgumentException("the errors of a standpipe are finite and not negative");
    }
  }

  /**
   * The standard uncertainty of a head, the same at every height.
   *
   * @param head the head, m
   * @return the standard uncertainty, m
   */
  @Override
  public double standardUncertainty(double head) {
    double parallax = depth * slope;
    double rectangular = Math.hypot(Math.hypot(division / 2, parallax), origin) / Math.sqrt(3);
    return Math.hypot(rectangular, swing / Math.sqrt(2));
  }
}
