package kelter.core.log.change;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import kelter.core.log.Series;
import kelter.core.log.Window;

/** Columns of which it is known what happened. */
final class SyntheticLog {

  private SyntheticLog() {}

  static double[] noise(int n, Random random) {
    return first(n, 0, random);
  }

  /** A process of first order: each sample keeps a share of the one before. */
  static double[] first(int n, double share, Random random) {
    double[] values = new double[n];
    double last = random.nextGaussian() / Math.sqrt(1 - share * share);
    for (int i = 0; i < n; i++) {
      last = share * last + random.nextGaussian();
      values[i] = last;
    }
    return values;
  }

  static double[] walk(int n, double step, Random random) {
    double[] values = new double[n];
    for (int i = 1; i < n; i++) {
      values[i] = values[i - 1] + step * random.nextGaussian();
    }
    return values;
  }

  /** Adds what is due at each sample. */
  static double[] plus(double[] values, DoubleUnaryOperator more) {
    double[] sum = values.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += more.applyAsDouble(i);
    }
    return sum;
  }

  /** As a display tells it. */
  static double[] told(double[] values, double step) {
    double[] told = values.clone();
    for (int i = 0; i < told.length; i++) {
      told[i] = step * Math.rint(told[i] / step);
    }
    return told;
  }

  /** A row a second. */
  static Series series(double[] values) {
    Series series = new Series();
    for (int i = 0; i < values.length; i++) {
      series.add(i + 1, i, values[i]);
    }
    return series;
  }

  /** Samples from one place to another against those from a third to the end. */
  static Comparison compared(double[] values, int to, int from, double resolution) {
    Series series = series(values);
    Window before = series.between(0, to - 1).orElseThrow();
    Window after = series.between(from, values.length - 1).orElseThrow();
    Comparison.Stretch healthy = new Comparison.Stretch(before, series.means(0, to - 1));
    return Comparison.of(before, after, healthy, 1, resolution);
  }
}
