package kelter.core.job;

import java.util.List;
import kelter.core.problem.Required;
import kelter.core.quantity.Quantity;

/**
 * A curve by its points, x rising.
 *
 * @param points two points or more
 */
public record Curve(List<Point> points) {

  /**
   * A point of a curve.
   *
   * @param x along the axis
   * @param y the value there
   */
  public record Point(Quantity x, Quantity y) {

    /** Checks that nothing is null. */
    public Point {
      Required.value(x, "x of a point of a curve");
      Required.value(y, "y of a point of a curve");
    }
  }

  /**
   * Checks the points.
   *
   * @throws IllegalArgumentException if there are fewer than two points or x does not rise
   */
  public Curve {
    points = Required.list(points, "points of a curve");
    if (points.size() < 2) {
      throw new IllegalArgumentException("a curve has two points or more");
    }
    for (int i = 1; i < points.size(); i++) {
      if (!(points.get(i).x().si() > points.get(i - 1).x().si())) {
        throw new IllegalArgumentException(
            "the points of a curve come in rising order, and point " + (i + 1) + " does not");
      }
    }
  }

  /**
   * The x of all points.
   *
   * @return one value for each point, in the coherent SI unit
   */
  public double[] xSi() {
    double[] x = new double[points.size()];
    for (int i = 0; i < x.length; i++) {
      x[i] = points.get(i).x().si();
    }
    return x;
  }

  /**
   * The y of all points.
   *
   * @return one value for each point, in the coherent SI unit
   */
  public double[] ySi() {
    double[] y = new double[points.size()];
    for (int i = 0; i < y.length; i++) {
      y[i] = points.get(i).y().si();
    }
    return y;
  }
}
