package kelter.core.diagnosis.likelihood;

import java.util.Arrays;
import java.util.List;

/**
 * The forecasts of one fault by itself, tabled over its severity, so that the physics is solved
 * some dozen times and not some thousand times. Between the points the forecasts run in parabolas;
 * a piece is halved until its middle lies, for every reading, within a quarter of a standard
 * deviation of the straight line through its ends, which leaves the parabola far closer. What the
 * shared quantities do is asked for at a few severities and runs straight between them.
 */
final class ForecastTable {

  /** A severity just above none, where a fault is there but has not begun to show. */
  static final double LEAST = 1e-9;

  private static final int FIRST_PIECES = 4;
  private static final int DEEPEST = 9;
  private static final double CLOSE = 0.25;
  private static final double NOTHING = 1e-3;

  /** Halving a side as often as is done in {@link PairSubdivision} meets these parts of it. */
  private static final int STEPS = 1024;

  private final Readings readings;
  private final double[] severities;
  private final int fault;
  private final double[] interpolated;
  private final double[][] loads;
  private double[] at = new double[64];
  private double[][] forecast = new double[64][];
  private int points;
  private int hint;
  private Boolean startsHealthy;
  private double[][] kept;

  ForecastTable(Readings readings, int fault) {
    this.readings = readings;
    this.severities = readings.none();
    this.fault = fault;
    this.loads = new double[FIRST_PIECES + 1][];
    Point left = point(LEAST);
    loads[0] = left.forecast;
    this.interpolated = new double[left.forecast.length];
    add(left);
    for (int piece = 1; piece <= FIRST_PIECES; piece++) {
      Point right = point((double) piece / FIRST_PIECES);
      loads[piece] = right.forecast;
      fill(left, right, DEEPEST);
      left = right;
    }
  }

  /** Whether the forecast is the same however bad the fault is. */
  boolean isLevel() {
    for (int point = 1; point < points; point++) {
      if (!isSame(forecast[point], forecast[0], readings.withoutLoads())) {
        return false;
      }
    }
    for (double[] each : loads) {
      if (!isSame(each, loads[0], each.length)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isSame(double[] one, double[] other, int count) {
    return Arrays.equals(one, 0, count, other, 0, count);
  }

  /** The forecast at one of the severities that halving meets, kept for the next time. */
  double[] at(double severity) {
    int place = (int) (severity * STEPS);
    if (place != severity * STEPS) {
      return forecast(severity).clone();
    }
    if (kept == null) {
      kept = new double[STEPS + 1][];
    }
    if (kept[place] == null) {
      kept[place] = forecast(Math.max(LEAST, severity)).clone();
    }
    return kept[place];
  }

  /** Whether the fault shows nothing where it begins. */
  boolean startsHealthy() {
    if (startsHealthy == null) {
      double[] healthy = readings.healthy();
      boolean same = true;
      for (int k = 0; k < healthy.length; k++) {
        double sd = readings.ownDeviation(healthy, k % readings.count());
        same &= Math.abs(forecast[0][k] - healthy[k]) <= NOTHING * sd;
      }
      startsHealthy = same;
    }
    return startsHealthy;
  }

  private record Point(double at, double[] forecast) {}

  private Point point(double severity) {
    if (severity == Readings.HALF) {
      return new Point(severity, readings.halfThere(fault));
    }
    severities[fault] = severity;
    return new Point(severity, readings.forecast(severities));
  }

  private Point pointWithoutLoads(double severity) {
    severities[fault] = severity;
    return new Point(severity, readings.forecastWithoutLoads(severities));
  }

  /** Adds the middle and the right end of a piece, halved where it bends too much. */
  private void fill(Point left, Point right, int depth) {
    Point middle = pointWithoutLoads((left.at + right.at) / 2);
    if (depth == 0 || isNearlyStraight(left, middle, right)) {
      add(middle);
      add(right);
    } else {
      fill(left, middle, depth - 1);
      fill(middle, right, depth - 1);
    }
  }

  private boolean isNearlyStraight(Point left, Point middle, Point right) {
    for (int k = 0; k < readings.withoutLoads(); k++) {
      double bend = Math.abs(middle.forecast[k] - (left.forecast[k] + right.forecast[k]) / 2);
      int item = k % readings.count();
      if (!(bend <= CLOSE * readings.ownDeviation(middle.forecast, item))) {
        return false;
      }
    }
    return true;
  }

  private void add(Point point) {
    if (points == at.length) {
      at = Arrays.copyOf(at, 2 * points);
      forecast = Arrays.copyOf(forecast, 2 * points);
    }
    at[points] = point.at;
    forecast[points++] = point.forecast;
  }

  /** The natural logarithm of the likelihood of all readings at a severity. */
  double logLikelihood(double severity) {
    return readings.log(forecast(severity));
  }

  /** The natural logarithm of the likelihood of one reading at a severity. */
  double logLikelihood(double severity, int item) {
    return readings.log(forecast(severity), item);
  }

  /** The forecast at a severity; the array is used again by the next call. */
  private double[] forecast(double severity) {
    int left = piece(severity);
    double t = (severity - at[left]) / (at[left + 2] - at[left]);
    int n = readings.withoutLoads();
    for (int k = 0; k < n; k++) {
      interpolated[k] = between(left, t, k);
    }
    int piece = Math.min((int) (severity * FIRST_PIECES), FIRST_PIECES - 1);
    double part = severity * FIRST_PIECES - piece;
    for (int k = n; k < interpolated.length; k++) {
      interpolated[k] = (1 - part) * loads[piece][k] + part * loads[piece + 1][k];
    }
    return interpolated;
  }

  /** Where the likelihood of all readings has sharp edges. */
  SeverityIntegral.Edges edges() {
    return edges(readings.edges(0, readings.count()));
  }

  /** Where the likelihood of one reading has sharp edges. */
  SeverityIntegral.Edges edges(int item) {
    return edges(readings.edges(item, item + 1));
  }

  private SeverityIntegral.Edges edges(List<Readings.Edge> edges) {
    return new SeverityIntegral.Edges() {
      @Override
      public int count() {
        return edges.size();
      }

      @Override
      public double distance(int number, double severity) {
        return ForecastTable.this.distance(edges.get(number), severity);
      }
    };
  }

  private double distance(Readings.Edge edge, double severity) {
    int left = piece(severity);
    double t = (severity - at[left]) / (at[left + 2] - at[left]);
    double spread = between(left, t, readings.count() + edge.item());
    return (edge.at() - between(left, t, edge.item()))
        / readings.items().get(edge.item()).likelihood().deviationOf(spread);
  }

  /**
   * Lagrange's parabola through the ends and the middle of a piece, held between its points: beside
   * a jump it would swing out, to spreads and chances below zero.
   */
  private double between(int left, double t, int column) {
    return Parabola.at(
        t, forecast[left][column], forecast[left + 1][column], forecast[left + 2][column]);
  }

  /** The place of the left end of the piece that holds a severity; pieces span two steps. */
  private int piece(double severity) {
    int left = hint;
    while (left > 0 && severity < at[left]) {
      left -= 2;
    }
    while (left + 2 < points - 1 && severity > at[left + 2]) {
      left += 2;
    }
    hint = left;
    return left;
  }
}
