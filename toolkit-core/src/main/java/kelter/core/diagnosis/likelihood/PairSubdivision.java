package kelter.core.diagnosis.likelihood;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import kelter.core.numeric.Simpson;

/**
 * How the square of the severities of two faults is cut up for one integral, the work of one call
 * that nobody keeps.
 *
 * <p>The square is halved, along the side on which the forecasts change most, until no reading that
 * matters changes by more than a few standard deviations within a cell; Simpson's rule is then
 * taken in both directions. A cell is left out as soon as the greatest likelihood that its
 * forecasts allow, times its area and the prior of the pair, is negligible beside the states
 * weighed so far. That bound holds where the forecasts within a cell lie between those at its nine
 * points.
 */
final class PairSubdivision {

  private static final int DEEPEST = 9;
  private static final int MOST_CELLS = 1500;

  private final Readings readings;
  private final PairForecast forecast;
  private final double logNegligible;
  private final double step;
  private final List<Point> points = new ArrayList<>();
  private final Queue<Cell> open = new ArrayDeque<>();
  private int cells;
  private double reference = Double.NEGATIVE_INFINITY;
  private double dropped;

  /** A point of the square with its share of the integral. */
  private static final class Point {
    private final double one;
    private final double other;
    private final double[] forecast;
    private double log = Double.NaN;
    private double area;

    private Point(double one, double other, double[] forecast) {
      this.one = one;
      this.other = other;
      this.forecast = forecast;
    }

    /** How bad the two faults are; both are there, if only just. */
    private double[] severities() {
      return new double[] {
        Math.max(ForecastTable.LEAST, one), Math.max(ForecastTable.LEAST, other)
      };
    }
  }

  /** A cell by its nine points, the second severity running fastest. */
  private record Cell(Point[] points, double[][] forecasts, int depthOne, int depthOther) {

    Cell(Point[] points, int depthOne, int depthOther) {
      this(points, new double[9][], depthOne, depthOther);
      for (int i = 0; i < 9; i++) {
        forecasts[i] = points[i].forecast;
      }
    }

    double area() {
      return (points[8].one - points[0].one) * (points[8].other - points[0].other);
    }
  }

  /**
   * Cuts up nothing yet.
   *
   * @param logNegligible the logarithm of what is negligible
   * @param step by how many standard deviations a reading may change in a cell
   */
  PairSubdivision(Readings readings, PairForecast forecast, double logNegligible, double step) {
    this.readings = readings;
    this.forecast = forecast;
    this.logNegligible = logNegligible;
    this.step = step;
  }

  /** The integral for a pair of which nine points were looked at. */
  PairIntegral integral(PairLook look) {
    Point[] nine = new Point[9];
    for (int i = 0; i < 9; i++) {
      nine[i] = new Point(PairLook.severity(i / 3), PairLook.severity(i % 3), look.forecasts()[i]);
    }
    open.add(new Cell(nine, 0, 0));
    // The largest cells first, so that what is left when the work is cut short is evenly small.
    while (!open.isEmpty()) {
      visit(open.remove());
    }
    return weighed(look);
  }

  private void visit(Cell cell) {
    double area = cell.area();
    double logBound = readings.logBound(cell.forecasts);
    boolean whole = cell.depthOne + cell.depthOther == 0;
    if (!whole && logBound + Math.log(area) < logNegligible) {
      dropped += area * Math.exp(logBound - logNegligible);
      return;
    }
    double[] change = changes(cell);
    boolean first = cell.depthOne < DEEPEST && change[0] > step;
    boolean second = cell.depthOther < DEEPEST && change[1] > step;
    if (change[0] <= step && change[1] <= step) {
      add(cell, area);
      return;
    }
    if (++cells > MOST_CELLS || !first && !second) {
      addBlurred(cell, area);
      return;
    }
    boolean alongFirst = first && (!second || change[0] >= change[1]);
    for (int half = 0; half < 2; half++) {
      open.add(half(cell, alongFirst, half));
    }
  }

  /** The greatest change of a reading along each side, in standard deviations. */
  private double[] changes(Cell cell) {
    double[] change = new double[2];
    double[][] f = cell.forecasts;
    for (int k = 0; k < readings.count(); k++) {
      if (readings.isOutOfReach(k)) {
        continue;
      }
      double sd = readings.ownDeviation(f[4], k);
      for (int line = 0; line < 3; line++) {
        along(f[line][k], f[line + 3][k], f[line + 6][k], sd, change, 0);
        along(f[3 * line][k], f[3 * line + 1][k], f[3 * line + 2][k], sd, change, 1);
      }
    }
    return change;
  }

  private static void along(double a, double b, double c, double sd, double[] change, int side) {
    double most = Math.max(Math.abs(c - a), Math.max(Math.abs(b - a), Math.abs(c - b)));
    change[side] = Math.max(change[side], most / sd);
  }

  /** One half of a cell: three of its points are new. */
  private Cell half(Cell cell, boolean alongFirst, int half) {
    Point[] nine = new Point[9];
    int step = alongFirst ? 3 : 1;
    for (int line = 0; line < 3; line++) {
      int from = alongFirst ? line : 3 * line;
      Point a = cell.points[from];
      Point b = cell.points[from + step];
      Point c = cell.points[from + 2 * step];
      Point left = half == 0 ? a : b;
      Point right = half == 0 ? b : c;
      nine[from] = left;
      nine[from + 2 * step] = right;
      double one = (left.one + right.one) / 2;
      double other = (left.other + right.other) / 2;
      nine[from + step] = new Point(one, other, forecast.at(one, other));
    }
    return new Cell(
        nine, cell.depthOne + (alongFirst ? 1 : 0), cell.depthOther + (alongFirst ? 0 : 1));
  }

  /**
   * A cell that is not divided further though readings change in it: its middle, with the spread of
   * each forecast widened by that of its change, which is right to the first order.
   */
  private void addBlurred(Cell cell, double area) {
    Point middle = cell.points[4];
    double[] forecast = middle.forecast.clone();
    int n = readings.count();
    for (int k = 0; k < n; k++) {
      double one = cell.points[7].forecast[k] - cell.points[1].forecast[k];
      double other = cell.points[5].forecast[k] - cell.points[3].forecast[k];
      double spread = forecast[n + k];
      forecast[n + k] = Math.sqrt(spread * spread + (one * one + other * other) / 12);
    }
    Point blurred = new Point(middle.one, middle.other, forecast);
    blurred.log = readings.log(forecast);
    blurred.area = area;
    points.add(blurred);
    reference = Math.max(reference, blurred.log);
  }

  private void add(Cell cell, double area) {
    for (int i = 0; i < 9; i++) {
      Point point = cell.points[i];
      if (point.area == 0) {
        point.log = readings.log(point.forecast);
        points.add(point);
        reference = Math.max(reference, point.log);
      }
      point.area += area * Simpson.weight(i / 3) * Simpson.weight(i % 3);
    }
  }

  private PairIntegral weighed(PairLook look) {
    double[][] severities = new double[points.size()][];
    double[] weights = new double[points.size()];
    double sum = 0;
    double[] mode = null;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < weights.length; i++) {
      Point point = points.get(i);
      severities[i] = point.severities();
      weights[i] = point.area * Math.exp(point.log - reference);
      sum += weights[i];
      if (mode == null || point.log > most) {
        mode = severities[i];
        most = point.log;
      }
    }
    double logIntegral = sum == 0 ? Double.NEGATIVE_INFINITY : reference + Math.log(sum);
    double logDropped = Math.log(dropped) + logNegligible;
    return new PairIntegral(look, logIntegral, logDropped, severities, weights, mode);
  }
}
