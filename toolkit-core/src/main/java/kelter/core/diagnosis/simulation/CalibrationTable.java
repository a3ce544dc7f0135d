package kelter.core.diagnosis.simulation;

import java.util.ArrayList;
import java.util.List;
import kelter.core.source.Source;

/**
 * How often things came, against how often they were said to: the cases are put into equal bins
 * (low, high] by what was said (0 belongs to the first), and each bin is held against what came.
 *
 * <p>With n_b of n cases in bin b, said c_b on average and true in a share a_b of them: {@code ECE
 * = sum_b (n_b/n) |a_b - c_b|}, {@code RMS = sqrt(sum_b (n_b/n) (a_b - c_b)^2)} and the greatest
 * {@code |a_b - c_b|}. On few cases these are above zero even for a seer who knows every chance.
 *
 * @param bins the bins, from the lowest; also those without a case
 */
public record CalibrationTable(List<Bin> bins) {

  /** Where the measures come from. */
  public static final Source SOURCE =
      Source.fromMemory(
          "Naeini, Cooper and Hauskrecht, Obtaining well calibrated probabilities using Bayesian"
              + " binning, AAAI 2015 (expected and greatest error)");

  /**
   * One bin.
   *
   * @param low what was said, above this (0 belongs to the first bin)
   * @param high and up to this
   * @param cases how many cases
   * @param said the mean probability that was said in them; NaN without a case
   * @param came the share of them in which it came; NaN without a case
   */
  public record Bin(double low, double high, int cases, double said, double came) {

    /**
     * How far what came was from what was said.
     *
     * @return the distance, 0 to 1; 0 without a case
     */
    public double gap() {
      return cases == 0 ? 0 : Math.abs(came - said);
    }
  }

  /** Takes the bins as they are. */
  public CalibrationTable {
    bins = List.copyOf(bins);
  }

  /**
   * Sorts the cases into bins.
   *
   * @param probability what was said of each case, 0 to 1
   * @param happened whether it came
   * @param bins how many bins of equal width, 1 or more
   * @return the table
   * @throws IllegalArgumentException if there are no cases, as many outcomes as forecasts are not
   *     given, a forecast is not from 0 to 1, or there is no bin
   */
  public static CalibrationTable of(double[] probability, boolean[] happened, int bins) {
    Forecasts.pairs(probability.length, happened.length);
    if (bins < 1) {
      throw new IllegalArgumentException(bins + " bins; 1 or more are allowed");
    }
    int[] cases = new int[bins];
    int[] came = new int[bins];
    double[] said = new double[bins];
    for (int i = 0; i < happened.length; i++) {
      double p = Forecasts.probability(probability[i]);
      int bin = bin(p, bins);
      cases[bin]++;
      came[bin] += happened[i] ? 1 : 0;
      said[bin] += p;
    }
    return of(cases, said, came);
  }

  /**
   * The table of what was counted by bin already.
   *
   * @param cases how many cases are in each bin, 0 or more
   * @param said the sum of what was said of them
   * @param came in how many of them it came
   * @return the table, with as many bins of equal width
   * @throws IllegalArgumentException if not as many of each are given, or none
   */
  public static CalibrationTable of(int[] cases, double[] said, int[] came) {
    int bins = cases.length;
    if (bins < 1 || said.length != bins || came.length != bins) {
      throw new IllegalArgumentException(
          "bins: %d with cases, %d with what was said, %d with what came; as many of each, 1 or more"
              .formatted(bins, said.length, came.length));
    }
    List<Bin> table = new ArrayList<>();
    for (int b = 0; b < bins; b++) {
      double n = cases[b];
      table.add(new Bin(edge(b, bins), edge(b + 1, bins), cases[b], said[b] / n, came[b] / n));
    }
    return new CalibrationTable(table);
  }

  private static double edge(int bin, int bins) {
    return (double) bin / bins;
  }

  /**
   * The bin whose edges, as they are rounded, hold a probability.
   *
   * @param p what was said, 0 to 1
   * @param bins how many bins of equal width, 1 or more
   * @return its number, from 0
   */
  public static int bin(double p, int bins) {
    int bin = Math.max(0, Math.min(bins - 1, (int) (p * bins)));
    if (bin > 0 && p <= edge(bin, bins)) {
      return bin - 1;
    }
    return p > edge(bin + 1, bins) ? bin + 1 : bin;
  }

  /**
   * How many cases there are.
   *
   * @return the number
   */
  public int cases() {
    return bins.stream().mapToInt(Bin::cases).sum();
  }

  /**
   * The expected calibration error, ECE.
   *
   * @return the mean gap over the cases, 0 to 1
   */
  public double expectedError() {
    return bins.stream().mapToDouble(bin -> bin.cases() * bin.gap()).sum() / cases();
  }

  /**
   * The root mean square of the gap over the cases.
   *
   * @return the error, 0 to 1
   */
  public double rmsError() {
    double sum = bins.stream().mapToDouble(bin -> bin.cases() * bin.gap() * bin.gap()).sum();
    return Math.sqrt(sum / cases());
  }

  /**
   * The gap of the worst bin that has a case.
   *
   * @return the error, 0 to 1
   */
  public double greatestError() {
    return bins.stream().mapToDouble(Bin::gap).max().orElse(0);
  }
}
