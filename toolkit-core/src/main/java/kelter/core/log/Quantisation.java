package kelter.core.log;

import kelter.core.source.Source;

/**
 * The steps in which an instrument or its converter tells values, made out from the samples
 * themselves: the greatest step of which all differences from sample to sample are multiples. A log
 * may be written to many more digits than its instrument resolves.
 *
 * <p>The step is the greatest common divisor of the differences (Euclid), each within what is lost
 * where values are written to six figures. It is taken as known only where {@value #LEAST_CHANGES}
 * changes between samples were seen, and with fewer than {@value #LEAST_VALUES} values only if it
 * is a few last digits: two levels far apart are something that is switched. To be filled by one
 * thread.
 */
public final class Quantisation {

  /** Where the uncertainty that the steps leave in a mean comes from. */
  public static final Source SOURCE =
      Source.fromMemory(
          "JCGM 100:2008, F.2.2.1; less by the noise that blurs the steps: Widrow and Kollar,"
              + " Quantization Noise (2008), characteristic function of a Gaussian input");

  /** So much of the greatest value may be lost in writing: six figures. */
  private static final double WRITTEN = 1e-5;

  private static final int LEAST_VALUES = 5;
  private static final int LEAST_CHANGES = 20;

  /** A step below so many times what is lost in writing cannot be told from it. */
  private static final double LEAST_STEP = 3;

  /** A step of fewer last digits than this is the digit itself. */
  private static final double DIGIT = 1.5;

  /** So many last digits a display may go at once: 1, 2, 5 or 10; common practice, no source. */
  private static final double MOST_DIGITS = 10;

  /** Samples within fewer steps than this may all stand for one value. */
  private static final double BLURRED = 1.5;

  private final double[] values = new double[LEAST_VALUES];
  private int distinct;
  private int changes;
  private double last = Double.NaN;
  private double greatest;
  private double step;
  private boolean fine;

  Quantisation() {}

  void add(double value) {
    if (fine) {
      return;
    }
    greatest = Math.max(greatest, Math.abs(value));
    note(value);
    double difference = Math.abs(value - last);
    last = value;
    if (difference > lost()) {
      changes++;
      step = commonDivisor(difference, step);
      fine = step <= LEAST_STEP * lost();
    }
  }

  private double lost() {
    return WRITTEN * greatest;
  }

  private void note(double value) {
    for (int i = 0; i < distinct; i++) {
      if (Math.abs(values[i] - value) <= lost()) {
        return;
      }
    }
    if (distinct < LEAST_VALUES) {
      values[distinct++] = value;
    }
  }

  private double commonDivisor(double one, double other) {
    double greater = one;
    double less = other;
    while (less > lost()) {
      double rest = Math.abs(greater - less * Math.rint(greater / less));
      greater = less;
      less = rest;
    }
    return greater;
  }

  /** The step of the samples, or their last digit where no greater step shows. */
  double step(double digit) {
    boolean known = changes >= LEAST_CHANGES && !fine && step > DIGIT * digit;
    boolean display = distinct >= LEAST_VALUES || step <= MOST_DIGITS * digit;
    return known && display ? step : digit;
  }

  /**
   * The standard uncertainty that the steps leave in a mean: that of a value which may lie anywhere
   * within a step, less where noise carries the samples over several steps.
   *
   * @param step the step, in the unit of the samples, 0 or more
   * @param standardDeviation the experimental standard deviation of the samples
   * @param range the greatest less the least of them
   * @return the standard uncertainty, from 0 to {@code step / sqrt(12)}
   */
  public static double uncertaintyOfMean(double step, double standardDeviation, double range) {
    double within = step / Math.sqrt(12);
    double noise = standardDeviation * standardDeviation - within * within;
    if (step == 0 || range < BLURRED * step || noise <= 0) {
      return within;
    }
    return within * Math.exp(-2 * Math.PI * Math.PI * noise / (step * step));
  }
}
