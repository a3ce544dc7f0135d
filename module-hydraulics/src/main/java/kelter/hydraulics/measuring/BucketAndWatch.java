package kelter.hydraulics.measuring;

import kelter.core.uncertainty.ErrorModel;

/**
 * How far a flow rate may be off that is found by filling a bucket to a mark and stopping the time:
 * Q = V / t. The mark may be missed, and so may the moments of starting and of stopping; the faster
 * it fills, the more these count.
 *
 * <p>The relative uncertainty is the root of the sum of the squares of those of volume and time
 * (JCGM 100:2008, 5.1.6, equation (12)); each error is rectangular.
 *
 * @param volume the volume at the mark, m3, above zero
 * @param mark how far the level may be from the mark, as a volume, m3
 * @param press how early or late the watch may be started, and again stopped, s
 */
record BucketAndWatch(double volume, double mark, double press) implements ErrorModel {

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if the volume is not above zero or an error is negative
   */
  public BucketAndWatch {
    if (!(volume > 0 && mark >= 0 && press >= 0) || Double.isInfinite(volume + mark + press)) {
      throw new IllegalArgumentException(
          "a bucket holds more than nothing, and its errors are not negative");
    }
  }

  /**
   * The standard uncertainty of a flow rate.
   *
   * @param flow the flow rate, m3/s
   * @return the standard uncertainty, m3/s
   */
  @Override
  public double standardUncertainty(double flow) {
    double ofVolume = mark / Math.sqrt(3) / volume;
    double time = volume / Math.abs(flow);
    double ofTime = Math.sqrt(2) * press / Math.sqrt(3) / time;
    return Math.abs(flow) * Math.hypot(ofVolume, ofTime); // (12)
  }
}
