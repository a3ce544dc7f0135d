package kelter.core.check;

/**
 * The straight line through points that leaves the least squares, with the standard uncertainty of
 * its slope from the scatter about it (JCGM 100:2008, H.3).
 *
 * @param intercept the value at zero
 * @param slope the slope
 * @param slopeUncertainty the standard uncertainty of the slope
 * @param degreesOfFreedom two less than there are points
 */
record LeastSquaresLine(
    double intercept, double slope, double slopeUncertainty, int degreesOfFreedom) {

  /**
   * Fits the line.
   *
   * @param x where, not all the same
   * @param y the values, as many, three or more
   * @return the line
   * @throws IllegalArgumentException if there are fewer than three points, or all at one place
   */
  public static LeastSquaresLine through(double[] x, double[] y) {
    int n = x.length;
    if (n < 3 || y.length != n) {
      throw new IllegalArgumentException("a line with its scatter needs three points or more");
    }
    double meanX = 0;
    double meanY = 0;
    for (int i = 0; i < n; i++) {
      meanX += x[i] / n;
      meanY += y[i] / n;
    }
    double squaresX = 0;
    double products = 0;
    for (int i = 0; i < n; i++) {
      squaresX += (x[i] - meanX) * (x[i] - meanX);
      products += (x[i] - meanX) * (y[i] - meanY);
    }
    if (squaresX == 0) {
      throw new IllegalArgumentException("all points lie at one place");
    }
    double slope = products / squaresX; // (H.13b)
    double left = 0;
    for (int i = 0; i < n; i++) {
      double residual = y[i] - meanY - slope * (x[i] - meanX);
      left += residual * residual;
    }
    double slopeUncertainty = Math.sqrt(left / (n - 2) / squaresX); // (H.13d) and (H.13f)
    return new LeastSquaresLine(meanY - slope * meanX, slope, slopeUncertainty, n - 2);
  }
}
