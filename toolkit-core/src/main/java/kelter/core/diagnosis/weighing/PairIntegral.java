package kelter.core.diagnosis.weighing;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.numeric.Simpson;

/**
 * The integral of a likelihood over the severities of two faults, each equally likely from 0 to 1
 * before anything is measured.
 *
 * <p>The square of severities is halved, along the side on which the forecasts change most, until
 * no reading that matters changes by more than a few standard deviations within a cell; Simpson's
 * rule is then taken in both directions. A cell is left out as soon as the greatest likelihood that
 * its forecasts allow, times its area and the prior of the pair, is negligible beside the states
 * weighed so far. That bound holds where the forecasts within a cell lie between those at its nine
 * points; what it amounts to is kept in {@link #logDropped}.
 */
final class PairIntegral {

  /** By how many standard deviations a reading may change in a cell, finely and roughly. */
  private static final double STEP = 1.5;

  private static final double WIDE_STEP = 4;

  private static final int DEEPEST = 9;

  private static final int MOST_CELLS = 1500;
  private static final int ALONE_STEPS = 6;

  private final Readings readings;
  private final PairForecast forecast;
  private final double logNegligible;
  private final double step;
  private final List<Point> points = new ArrayList<>();
  private final Queue<Cell> open = new ArrayDeque<>();
  private int cells;
  private double reference = Double.NEGATIVE_INFINITY;
  private double dropped;
  private double logIntegral = Double.NEGATIVE_INFINITY;
  private Diagnosis.Severity[] distributions;
  private final Cell root;
  private final double logRootBound;

  /** A point of the square with its share of the integral, in units of the reference. */
  private static final class Point {
    private final double one;
    private final double other;
    private final double[] forecast;
    private double log = Double.NaN;
    private double area;
    private double weight;

    private Point(double one, double other, double[] forecast) {
      this.one = one;
      this.other = other;
      this.forecast = forecast;
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

    /** The same cell, of which nothing is weighed yet. */
    Cell fresh() {
      Point[] nine = new Point[9];
      for (int i = 0; i < 9; i++) {
        nine[i] = new Point(points[i].one, points[i].other, forecasts[i]);
      }
      return new Cell(nine, depthOne, depthOther);
    }

    double area() {
      return (points[8].one - points[0].one) * (points[8].other - points[0].other);
    }
  }

  /**
   * Looks at the pair at nine points only.
   *
   * @param readings the readings
   * @param forecast the forecasts for the two faults
   */
  PairIntegral(Readings readings, PairForecast forecast) {
    this.readings = readings;
    this.forecast = forecast;
    this.logNegligible = Double.NEGATIVE_INFINITY;
    this.step = STEP;
    double[] at = {0, 0.5, 1};
    Point[] nine = new Point[9];
    for (int i = 0; i < 9; i++) {
      nine[i] = new Point(at[i / 3], at[i % 3], forecast.root()[i]);
    }
    this.root = new Cell(nine, 0, 0);
    this.logRootBound = readings.logBound(root.forecasts);
  }

  private PairIntegral(PairIntegral looked, double logNegligible, double step) {
    this.step = step;
    this.readings = looked.readings;
    this.forecast = looked.forecast;
    this.logNegligible = logNegligible;
    this.root = looked.root.fresh();
    this.logRootBound = looked.logRootBound;
  }

  /** The logarithm of a bound of the integral, from nine points. */
  double logBound() {
    return logRootBound;
  }

  /**
   * Integrates roughly, to some per cent, on forecasts as they are tabled.
   *
   * @param logNegligible the logarithm of what is negligible
   * @return the integral
   */
  PairIntegral rough(double logNegligible) {
    return new PairIntegral(this, logNegligible, WIDE_STEP).integrated();
  }

  /**
   * Integrates finely, on forecasts that were tabled as finely as it takes.
   *
   * @param logNegligible the logarithm of what is negligible
   * @return the integral
   */
  PairIntegral fine(double logNegligible) {
    forecast.refine();
    return new PairIntegral(this, logNegligible, STEP).integrated();
  }

  private PairIntegral integrated() {
    // The largest cells first, so that what is left when the work is cut short is evenly small.
    open.add(root);
    while (!open.isEmpty()) {
      visit(open.remove());
    }
    finish();
    return this;
  }

  private Point point(double first, double second) {
    return new Point(first, second, forecast.at(first, second));
  }

  private void visit(Cell cell) {
    double area = cell.area();
    double logBound = readings.logBound(cell.forecasts);
    if (cell != root && logBound + Math.log(area) < logNegligible) {
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
      nine[from + step] = point((left.one + right.one) / 2, (left.other + right.other) / 2);
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

  /** Weighs the points once all are known. */
  private void finish() {
    double sum = 0;
    for (Point point : points) {
      point.weight = point.area * Math.exp(point.log - reference);
      sum += point.weight;
    }
    logIntegral = sum == 0 ? Double.NEGATIVE_INFINITY : reference + Math.log(sum);
  }

  /** The natural logarithm of the integral; negative infinity if all of it was left out. */
  double logIntegral() {
    return logIntegral;
  }

  /** The natural logarithm of a bound of what was left out. */
  double logDropped() {
    return Math.log(dropped) + logNegligible;
  }

  /** Whether nothing of it was weighed. */
  boolean isLeftOut() {
    return points.isEmpty();
  }

  /** The severities of both faults at which the readings are likeliest. */
  double[] mode() {
    Point best = points.get(0);
    for (Point point : points) {
      best = point.log > best.log ? point : best;
    }
    return new double[] {best.one, best.other};
  }

  /** How the severity of one of the faults is distributed. */
  Diagnosis.Severity distribution(boolean first) {
    if (distributions == null) {
      distributions = new Diagnosis.Severity[] {distributionOf(true), distributionOf(false)};
    }
    return distributions[first ? 0 : 1];
  }

  private Diagnosis.Severity distributionOf(boolean first) {
    double mass = 0;
    double mean = 0;
    double square = 0;
    for (Point point : points) {
      double severity = first ? point.one : point.other;
      mass += point.weight;
      mean += point.weight * severity;
      square += point.weight * severity * severity;
    }
    mean /= mass;
    return new Diagnosis.Severity(mean, Math.sqrt(Math.max(0, square / mass - mean * mean)));
  }

  /**
   * The natural logarithm of the likelihood of one reading by itself, over the whole square: by the
   * middles of small cells, each widened by how much the forecast changes in it. For telling
   * evidence, not for weighing.
   */
  double logAlone(int item) {
    Likelihood likelihood = readings.items().get(item).likelihood();
    double step = 1.0 / ALONE_STEPS;
    double sum = 0;
    for (int i = 0; i < ALONE_STEPS; i++) {
      for (int j = 0; j < ALONE_STEPS; j++) {
        double s = (i + 0.5) * step;
        double t = (j + 0.5) * step;
        double along = rootForecast(s + step / 2, t, item) - rootForecast(s - step / 2, t, item);
        double across = rootForecast(s, t + step / 2, item) - rootForecast(s, t - step / 2, item);
        double spread = rootForecast(s, t, readings.count() + item);
        double blurred = Math.sqrt(spread * spread + (along * along + across * across) / 12);
        sum += likelihood.of(rootForecast(s, t, item), blurred);
      }
    }
    return Math.log(sum * step * step);
  }

  private double rootForecast(double s, double t, int column) {
    return Parabola.at(s, line(t, 0, column), line(t, 3, column), line(t, 6, column));
  }

  private double line(double t, int from, int column) {
    return Parabola.at(
        t,
        root.forecasts[from][column],
        root.forecasts[from + 1][column],
        root.forecasts[from + 2][column]);
  }

  /** A few pairs of severities that stand for equal shares of the posterior. */
  double[][] nodes(int count) {
    double[][] nodes = new double[count][];
    double mass = 0;
    for (Point point : points) {
      mass += point.weight;
    }
    double below = 0;
    int next = 0;
    for (Point point : points) {
      below += point.weight;
      while (next < count && below >= (next + 0.5) / count * mass) {
        nodes[next++] = new double[] {point.one, point.other};
      }
    }
    while (next < count) {
      Point last = points.get(points.size() - 1);
      nodes[next++] = new double[] {last.one, last.other};
    }
    return nodes;
  }
}
