package kelter.core.diagnosis;

import java.util.Arrays;
import java.util.List;

/**
 * The forecasts of one fault by itself, tabled over its severity, so that the physics is solved
 * some dozen times and not some thousand times. Between the points the forecasts run in parabolas;
 * a piece is halved until its middle lies, for every reading, within a tenth of a standard
 * deviation of the straight line through its ends, which leaves the parabola far closer.
 */
final class ForecastTable {

  /** A severity just above none, where a fault is there but has not begun to show. */
  private static final double LEAST = 1e-9;

  private static final int FIRST_PIECES = 4;
  private static final int DEEPEST = 9;
  private static final double CLOSE = 0.1;

  private final Forecaster forecaster;
  private final List<Likelihood> likelihoods;
  private final double[] severities;
  private final int fault;
  private final int items;
  private double[] at = new double[64];
  private double[][] value = new double[64][];
  private double[][] spread = new double[64][];
  private int points;
  private int hint;

  ForecastTable(Forecaster forecaster, int faults, int fault, List<Likelihood> likelihoods) {
    this.forecaster = forecaster;
    this.likelihoods = likelihoods;
    this.severities = new double[faults];
    this.fault = fault;
    this.items = likelihoods.size();
    Point left = point(LEAST);
    add(left);
    for (int piece = 1; piece <= FIRST_PIECES; piece++) {
      Point right = point((double) piece / FIRST_PIECES);
      fill(left, right, DEEPEST);
      left = right;
    }
  }

  private record Point(double at, double[] value, double[] spread) {}

  private Point point(double severity) {
    double[] values = new double[items];
    double[] spreads = new double[items];
    severities[fault] = severity;
    forecaster.forecast(severities, values, spreads);
    for (int k = 0; k < items; k++) {
      values[k] = likelihoods.get(k).scaled(values[k]);
    }
    return new Point(severity, values, spreads);
  }

  /** Adds the middle and the right end of a piece, halved where it bends too much. */
  private void fill(Point left, Point right, int depth) {
    Point middle = point((left.at + right.at) / 2);
    if (depth == 0 || isNearlyStraight(left, middle, right)) {
      add(middle);
      add(right);
    } else {
      fill(left, middle, depth - 1);
      fill(middle, right, depth - 1);
    }
  }

  private boolean isNearlyStraight(Point left, Point middle, Point right) {
    for (int k = 0; k < items; k++) {
      double bend = Math.abs(middle.value[k] - (left.value[k] + right.value[k]) / 2);
      double widening = Math.abs(middle.spread[k] - (left.spread[k] + right.spread[k]) / 2);
      double sd = likelihoods.get(k).deviationOf(middle.spread[k]);
      if (!(bend <= CLOSE * sd && widening <= CLOSE * sd)) {
        return false;
      }
    }
    return true;
  }

  private void add(Point point) {
    if (points == at.length) {
      at = Arrays.copyOf(at, 2 * points);
      value = Arrays.copyOf(value, 2 * points);
      spread = Arrays.copyOf(spread, 2 * points);
    }
    at[points] = point.at;
    value[points] = point.value;
    spread[points++] = point.spread;
  }

  /** The natural logarithm of the likelihood of all readings at a severity. */
  double logLikelihood(double severity) {
    return sum(severity, 0, items);
  }

  /** The natural logarithm of the likelihood of one reading at a severity. */
  double logLikelihood(double severity, int item) {
    return sum(severity, item, item + 1);
  }

  private double sum(double severity, int from, int to) {
    int left = piece(severity);
    double[] weight = weights(left, severity);
    double sum = 0;
    for (int k = from; k < to; k++) {
      sum +=
          likelihoods
              .get(k)
              .logScaled(between(value, left, weight, k), between(spread, left, weight, k));
    }
    return sum;
  }

  /** Where the likelihood of all readings has sharp edges. */
  SeverityIntegral.Edges edges() {
    return edges(0, items);
  }

  /** Where the likelihood of one reading has sharp edges. */
  SeverityIntegral.Edges edges(int item) {
    return edges(item, item + 1);
  }

  private SeverityIntegral.Edges edges(int from, int to) {
    int[] item = new int[2 * (to - from)];
    double[] edge = new double[item.length];
    int count = 0;
    for (int k = from; k < to; k++) {
      for (double each : likelihoods.get(k).edges()) {
        item[count] = k;
        edge[count++] = each;
      }
    }
    int edges = count;
    return new SeverityIntegral.Edges() {
      @Override
      public int count() {
        return edges;
      }

      @Override
      public double distance(int number, double severity) {
        return ForecastTable.this.distance(edge[number], item[number], severity);
      }
    };
  }

  private double distance(double edge, int item, double severity) {
    int left = piece(severity);
    double[] weight = weights(left, severity);
    double sd = likelihoods.get(item).deviationOf(between(spread, left, weight, item));
    return (edge - between(value, left, weight, item)) / sd;
  }

  /** Lagrange's parabola through the ends and the middle of a piece. */
  private double[] weights(int left, double severity) {
    double t = (severity - at[left]) / (at[left + 2] - at[left]);
    return new double[] {(1 - t) * (1 - 2 * t), 4 * t * (1 - t), t * (2 * t - 1)};
  }

  /**
   * The parabola, held between its points: beside a jump it would swing out, to spreads and chances
   * below zero.
   */
  private static double between(double[][] table, int left, double[] weight, int item) {
    double a = table[left][item];
    double b = table[left + 1][item];
    double c = table[left + 2][item];
    double parabola = weight[0] * a + weight[1] * b + weight[2] * c;
    double least = Math.min(a, Math.min(b, c));
    return Math.max(least, Math.min(Math.max(a, Math.max(b, c)), parabola));
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
