package kelter.core.diagnosis;

import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;

/**
 * The integral of a likelihood over the severity of one fault, which is taken as equally likely
 * from 0 to 1 before anything is measured.
 *
 * <p>The modes are found on a grid and refined; the interval is then split at each mode and at
 * growing distances from it, in units of its own width, and each piece is integrated by a
 * Gauss-Legendre rule. Fixed nodes over the whole interval would miss a sharp likelihood.
 *
 * @param logIntegral the natural logarithm of the integral
 * @param severity the nodes
 * @param weight the posterior weight of each node, in the order of the nodes; the sum is 1
 * @param mode the likeliest severity
 */
record SeverityIntegral(double logIntegral, double[] severity, double[] weight, double mode) {

  private static final int GRID = 24;
  private static final double FLAT = 0.05;
  private static final double NEGLIGIBLE = 40;
  private static final double NARROWEST = 1e-9;
  private static final double GROWTH = 2;

  /** Gauss-Legendre, 8 nodes (Abramowitz and Stegun, table 25.4), on the interval from -1 to 1. */
  private static final double[] ABSCISSA = {
    0.183434642495649805, 0.525532409916328986, 0.796666477413626740, 0.960289856497536232
  };

  private static final double[] GAUSS_WEIGHT = {
    0.362683783378361983, 0.313706645877887287, 0.222381034453374471, 0.101228536290376259
  };

  static SeverityIntegral of(DoubleUnaryOperator logLikelihood) {
    double[] grid = new double[GRID + 1];
    double best = Double.NEGATIVE_INFINITY;
    for (int i = 0; i <= GRID; i++) {
      grid[i] = logLikelihood.applyAsDouble((double) i / GRID);
      best = Math.max(best, grid[i]);
    }
    TreeSet<Double> cuts = new TreeSet<>();
    cuts.add(0.0);
    cuts.add(1.0);
    double mode = 0;
    double top = Double.NEGATIVE_INFINITY;
    for (int i = 0; i <= GRID; i++) {
      if (isPeak(grid, i) && grid[i] > best - NEGLIGIBLE) {
        double peak = refine(logLikelihood, i);
        double height = logLikelihood.applyAsDouble(peak);
        if (height > top) {
          top = height;
          mode = peak;
        }
        cutAround(logLikelihood, peak, height, cuts);
      }
    }
    return integrate(logLikelihood, cuts, top, mode);
  }

  private static boolean isPeak(double[] grid, int i) {
    boolean abovePrevious = i == 0 || grid[i] >= grid[i - 1];
    boolean aboveNext = i == GRID || grid[i] > grid[i + 1];
    return abovePrevious && aboveNext;
  }

  /** Golden-section search around a grid point, until the peak is flat within the bracket. */
  private static double refine(DoubleUnaryOperator f, int i) {
    double ratio = (Math.sqrt(5) - 1) / 2;
    double a = Math.max(0, (i - 1.0) / GRID);
    double b = Math.min(1, (i + 1.0) / GRID);
    double c = b - ratio * (b - a);
    double d = a + ratio * (b - a);
    double fa = f.applyAsDouble(a);
    double fb = f.applyAsDouble(b);
    double fc = f.applyAsDouble(c);
    double fd = f.applyAsDouble(d);
    while (b - a > NARROWEST && Math.max(fc, fd) - Math.min(fa, fb) > FLAT) {
      if (fc >= fd) {
        b = d;
        fb = fd;
        d = c;
        fd = fc;
        c = b - ratio * (b - a);
        fc = f.applyAsDouble(c);
      } else {
        a = c;
        fa = fc;
        c = d;
        fc = fd;
        d = a + ratio * (b - a);
        fd = f.applyAsDouble(d);
      }
    }
    double inside = fc >= fd ? c : d;
    double edge = inside < 0.5 ? 0 : 1;
    return f.applyAsDouble(edge) > f.applyAsDouble(inside) ? edge : inside;
  }

  private static void cutAround(
      DoubleUnaryOperator f, double peak, double height, TreeSet<Double> cuts) {
    cuts.add(peak);
    for (int side = -1; side <= 1; side += 2) {
      double width = width(f, peak, height, side);
      double cut = peak + side * width;
      while (cut > 0 && cut < 1) {
        cuts.add(cut);
        if (f.applyAsDouble(cut) < height - NEGLIGIBLE) {
          break;
        }
        cut = peak + GROWTH * (cut - peak);
      }
    }
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
    double[] severity = new double[pieces * 2 * ABSCISSA.length];
    double[] weight = new double[severity.length];
    double sum = 0;
    int n = 0;
    double from = cuts.first();
    for (double to : cuts.tailSet(from, false)) {
      double half = (to - from) / 2;
      double middle = (to + from) / 2;
      for (int k = 0; k < ABSCISSA.length; k++) {
        for (int side = -1; side <= 1; side += 2) {
          severity[n] = middle + side * half * ABSCISSA[k];
          weight[n] = half * GAUSS_WEIGHT[k] * Math.exp(f.applyAsDouble(severity[n]) - top);
          sum += weight[n++];
        }
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

  /** A few nodes that stand for equal shares of the posterior, each the middle of its share. */
  double[] quantiles(int count) {
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
      while (next < count && below >= (next + 0.5) / count) {
        picked[next++] = severity[i];
      }
    }
    while (next < count) {
      picked[next++] = severity[order[order.length - 1]];
    }
    return picked;
  }
}
