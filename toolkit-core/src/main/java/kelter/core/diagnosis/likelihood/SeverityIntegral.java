package kelter.core.diagnosis.likelihood;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.numeric.GaussLegendre;
import kelter.core.numeric.Root;

/**
 * The integral of a likelihood over the severity of one fault, which is taken as equally likely
 * from 0 to 1 before anything is measured.
 *
 * <p>The modes are found on a grid, to which the severities are added at which a forecast meets its
 * reading, and refined. Around each mode and each meeting the interval is then halved until no
 * piece is longer than a few times its distance from it, or a few times the width of what is there,
 * and each piece is integrated by a Gauss-Legendre rule. Fixed nodes over the whole interval would
 * miss a sharp likelihood, and so would the grid alone: with a chance of a blunder a likelihood is
 * flat but near its modes. A forecast that meets its reading twice between two points of the grid
 * is not covered.
 *
 * @param logIntegral the natural logarithm of the integral
 * @param severity the nodes
 * @param weight the posterior weight of each node, in the order of the nodes; the sum is 1
 * @param mode the likeliest severity
 */
record SeverityIntegral(double logIntegral, double[] severity, double[] weight, double mode) {

  private static final int GRID = 24;
  private static final int REFINEMENTS = 40;
  private static final double NEGLIGIBLE = 30;
  private static final double LEVEL = 0.01;
  private static final double NARROWEST = 1e-9;

  /** A piece is at most so many widths long where the likelihood is sharp. */
  private static final double SCALES = 2;

  /** A piece is at most so many times as long as it is far from where the likelihood is sharp. */
  private static final double GROWTH = 2;

  private static final double SLOPE_STEP = 1e-7;

  /** By how much a sum of shares may fall short of what it should be. */
  static final double ROUNDING = 1e-9;

  /** The shorter part of a line in the golden section. */
  private static final double GOLDEN = (3 - Math.sqrt(5)) / 2;

  /** The integral of a likelihood of 1, as where nothing was read. */
  private static final SeverityIntegral FLAT = of(severity -> 0);

  /** Where a likelihood has sharp edges: the values and limits that were read. */
  interface Edges {

    /** A likelihood without sharp edges. */
    Edges NONE =
        new Edges() {
          @Override
          public int count() {
            return 0;
          }

          @Override
          public double distance(int edge, double severity) {
            return Double.NaN;
          }
        };

    /** How many there are. */
    int count();

    /** How far the forecast for a severity lies from an edge, in standard deviations, signed. */
    double distance(int edge, double severity);
  }

  /** The integral of a likelihood that is the same however bad the fault is. */
  static SeverityIntegral flat(double logLikelihood) {
    return new SeverityIntegral(logLikelihood, FLAT.severity, FLAT.weight, FLAT.mode);
  }

  /** The integral of a likelihood without sharp edges. */
  static SeverityIntegral of(DoubleUnaryOperator logLikelihood) {
    return of(logLikelihood, Edges.NONE);
  }

  /**
   * The integral of a likelihood.
   *
   * @param logLikelihood its natural logarithm by severity
   * @param edges where it has sharp edges
   */
  static SeverityIntegral of(DoubleUnaryOperator logLikelihood, Edges edges) {
    TreeMap<Double, Double> sharp = meetings(edges);
    double[] s = grid(sharp.keySet());
    double[] height = new double[s.length];
    double best = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < s.length; i++) {
      height[i] = logLikelihood.applyAsDouble(s[i]);
      best = Math.max(best, height[i]);
    }
    for (int i = 0; i < s.length; i++) {
      if (height[i] < best - NEGLIGIBLE) {
        sharp.remove(s[i]);
      }
    }
    double mode = 0;
    double top = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < s.length; i++) {
      if (isPeak(height, i) && height[i] > best - NEGLIGIBLE) {
        double peak = refine(logLikelihood, s, i);
        double at = logLikelihood.applyAsDouble(peak);
        if (at > top) {
          top = at;
          mode = peak;
        }
        sharp.merge(peak, width(logLikelihood, peak, at), Math::min);
      }
    }
    TreeSet<Double> cuts = new TreeSet<>(List.of(0.0, 1.0));
    divide(0, 1, sharp, cuts);
    return integrate(logLikelihood, cuts, top, mode);
  }

  /** An even grid and some points more, in rising order. */
  private static double[] grid(Set<Double> more) {
    TreeSet<Double> points = new TreeSet<>(more);
    for (int i = 0; i <= GRID; i++) {
      points.add((double) i / GRID);
    }
    return points.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** The severities at which a distance is zero, each with the severity that makes it 1. */
  private static TreeMap<Double, Double> meetings(Edges edges) {
    TreeMap<Double, Double> meetings = new TreeMap<>();
    for (int k = 0; k < edges.count(); k++) {
      double before = edges.distance(k, 0);
      for (int i = 1; i <= GRID; i++) {
        double after = edges.distance(k, (double) i / GRID);
        if (before > 0 != after > 0) {
          int edge = k;
          double meeting =
              Root.between(
                  s -> edges.distance(edge, s), (i - 1.0) / GRID, (double) i / GRID, NARROWEST);
          double scale = scale(edges, k, meeting);
          meetings.put(meeting, Math.min(scale, meetings.getOrDefault(meeting, scale)));
        }
        before = after;
      }
    }
    return meetings;
  }

  private static double scale(Edges edges, int k, double meeting) {
    double a = Math.max(0, meeting - SLOPE_STEP);
    double b = Math.min(1, meeting + SLOPE_STEP);
    double slope = Math.abs(edges.distance(k, b) - edges.distance(k, a)) / (b - a);
    double scale = 1 / slope;
    return scale < 1 ? Math.max(scale, NARROWEST) : 1;
  }

  /**
   * Halves a piece until it fits its distance from each place where the likelihood is sharp.
   *
   * @param sharp these places, each with the width of what is there
   * @param cuts takes the middles
   */
  private static void divide(
      double from, double to, Map<Double, Double> sharp, TreeSet<Double> cuts) {
    for (Map.Entry<Double, Double> place : sharp.entrySet()) {
      double r = place.getKey();
      double distance = Math.max(0, Math.max(from - r, r - to));
      if (to - from > Math.max(SCALES * place.getValue(), GROWTH * distance)) {
        double middle = (from + to) / 2;
        cuts.add(middle);
        divide(from, middle, sharp, cuts);
        divide(middle, to, sharp, cuts);
        return;
      }
    }
  }

  private static boolean isPeak(double[] height, int i) {
    boolean abovePrevious = i == 0 || height[i] >= height[i - 1];
    boolean aboveNext = i == height.length - 1 || height[i] > height[i + 1];
    return abovePrevious && aboveNext;
  }

  /**
   * Golden-section search between the neighbours of a point, until two probes running find it
   * level. The best point known is never given up, so that a flat likelihood around a sharp peak
   * does not lead away from it.
   */
  private static double refine(DoubleUnaryOperator f, double[] s, int i) {
    double a = i == 0 ? s[0] : s[i - 1];
    double b = i == s.length - 1 ? s[i] : s[i + 1];
    double best = s[i];
    double height = f.applyAsDouble(best);
    int level = 0;
    for (int k = 0; k < 2 * REFINEMENTS && b - a > NARROWEST && level < 2; k++) {
      boolean right = b - best > best - a;
      double probe = best + GOLDEN * (right ? b - best : a - best);
      double at = f.applyAsDouble(probe);
      level = Math.abs(at - height) < LEVEL ? level + 1 : 0;
      if (at > height) {
        a = right ? best : a;
        b = right ? b : best;
        best = probe;
        height = at;
      } else if (right) {
        b = probe;
      } else {
        a = probe;
      }
    }
    return best;
  }

  /** The smaller of the two distances at which the logarithm has dropped by about one half. */
  private static double width(DoubleUnaryOperator f, double peak, double height) {
    double below = peak > 0 ? width(f, peak, height, -1) : 1;
    double above = peak < 1 ? width(f, peak, height, 1) : 1;
    return Math.min(below, above);
  }

  /** The distance at which the logarithm has dropped by about one half, by doubling and halving. */
  private static double width(DoubleUnaryOperator f, double peak, double height, int side) {
    double limit = side < 0 ? peak : 1 - peak;
    double near = 0;
    double far = Math.min(1.0 / GRID, limit);
    while (far < limit && f.applyAsDouble(peak + side * far) > height - 0.5) {
      near = far;
      far = Math.min(2 * far, limit);
    }
    for (int k = 0; k < 30 && far - near > 0.2 * far && far > NARROWEST; k++) {
      double middle = near == 0 ? far / 4 : (near + far) / 2;
      if (f.applyAsDouble(peak + side * middle) > height - 0.5) {
        near = middle;
      } else {
        far = middle;
      }
    }
    return Math.max(far, NARROWEST);
  }

  private static SeverityIntegral integrate(
      DoubleUnaryOperator f, TreeSet<Double> cuts, double top, double mode) {
    int pieces = cuts.size() - 1;
    double[] severity = new double[pieces * GaussLegendre.POINTS];
    double[] weight = new double[severity.length];
    double sum = 0;
    int n = 0;
    double from = cuts.first();
    for (double to : cuts.tailSet(from, false)) {
      double half = (to - from) / 2;
      double middle = (to + from) / 2;
      for (int point = 0; point < GaussLegendre.POINTS; point++) {
        severity[n] = middle + half * GaussLegendre.abscissa(point);
        double height = Math.exp(f.applyAsDouble(severity[n]) - top);
        weight[n] = half * GaussLegendre.weight(point) * height;
        sum += weight[n++];
      }
      from = to;
    }
    for (int i = 0; i < n; i++) {
      weight[i] /= sum;
    }
    return new SeverityIntegral(top + Math.log(sum), severity, weight, mode);
  }

  Diagnosis.Severity distribution() {
    double mean = 0;
    for (int i = 0; i < severity.length; i++) {
      mean += weight[i] * severity[i];
    }
    double variance = 0;
    for (int i = 0; i < severity.length; i++) {
      variance += weight[i] * (severity[i] - mean) * (severity[i] - mean);
    }
    return new Diagnosis.Severity(mean, Math.sqrt(variance));
  }

  /**
   * A few nodes that stand for equal shares of the posterior, each the middle of its share.
   *
   * @param count how many
   * @param weight the share of each node
   */
  double[] quantiles(int count, double[] weight) {
    Integer[] order = new Integer[severity.length];
    for (int i = 0; i < order.length; i++) {
      order[i] = i;
    }
    java.util.Arrays.sort(order, (a, b) -> Double.compare(severity[a], severity[b]));
    double[] picked = new double[count];
    double below = 0;
    int next = 0;
    for (int i : order) {
      below += weight[i];
      while (next < count && below >= (next + 0.5) / count - ROUNDING) {
        picked[next++] = severity[i];
      }
    }
    while (next < count) {
      picked[next++] = severity[order[order.length - 1]];
    }
    return picked;
  }
}
