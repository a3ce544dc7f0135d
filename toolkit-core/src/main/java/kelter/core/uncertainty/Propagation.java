package kelter.core.uncertainty;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * First-order propagation of uncertainties through any calculation.
 *
 * <p>The contribution of an input is half the change of the result when that input moves from one
 * standard uncertainty below its estimate to one above (JCGM 100:2008, 5.1.3, note 2). This is
 * exact where the calculation is linear in the input, and needs nothing but the calculation itself.
 */
public final class Propagation {

  /** What rounding may leave below zero of a variance, as a ratio of the sum of its terms. */
  private static final double ROUNDING = 1e-12;

  private Propagation() {}

  /**
   * The result with its combined standard uncertainty, for uncorrelated inputs.
   *
   * @param calculation takes the inputs in the order given and returns the result; it must be
   *     defined one standard uncertainty to either side of each estimate
   * @param inputs the estimates, uncorrelated
   * @return the result, and what each input contributes to its uncertainty
   */
  public static Propagated through(ToDoubleFunction<double[]> calculation, List<Estimate> inputs) {
    double[] contributions = contributions(calculation, inputs);
    double sumOfSquares = 0;
    for (double contribution : contributions) {
      sumOfSquares += contribution * contribution; // JCGM 100:2008, equation (11a)
    }
    return propagated(calculation, inputs, contributions, sumOfSquares);
  }

  /**
   * The result with its combined standard uncertainty, for inputs that hang together, such as
   * readings of one instrument, whose error is the same in each.
   *
   * @param calculation takes the inputs in the order given and returns the result; it must be
   *     defined one standard uncertainty to either side of each estimate
   * @param inputs the estimates
   * @param correlation the correlation coefficient of each pair of inputs, from -1 to 1: one row
   *     and one column for each input, symmetric, 1 on the diagonal
   * @return the result, and what each input contributes to its uncertainty by itself
   * @throws IllegalArgumentException if the coefficients are not such a table, or no inputs can
   *     hang together in that way
   */
  public static Propagated through(
      ToDoubleFunction<double[]> calculation, List<Estimate> inputs, double[][] correlation) {
    requireCorrelation(correlation, inputs.size());
    double[] contributions = contributions(calculation, inputs);
    double variance = 0;
    double size = 0;
    for (int i = 0; i < contributions.length; i++) {
      for (int j = 0; j < contributions.length; j++) {
        double product = contributions[i] * contributions[j];
        variance += product * correlation[i][j]; // JCGM 100:2008, equation (16)
        size += Math.abs(product);
      }
    }
    if (variance < -ROUNDING * size) {
      throw new IllegalArgumentException(
          "no inputs can hang together by these correlation coefficients: the variance would be "
              + variance);
    }
    return propagated(calculation, inputs, contributions, Math.max(0, variance));
  }

  private static void requireCorrelation(double[][] correlation, int inputs) {
    boolean square = correlation.length == inputs;
    for (int i = 0; square && i < inputs; i++) {
      square = correlation[i].length == inputs;
    }
    if (!square) {
      throw new IllegalArgumentException(
          "a table of %d by %d correlation coefficients is needed".formatted(inputs, inputs));
    }
    for (int i = 0; i < inputs; i++) {
      for (int j = 0; j <= i; j++) {
        double r = correlation[i][j];
        if (!(Math.abs(r) <= 1) || r != correlation[j][i] || (i == j && r != 1)) {
          throw new IllegalArgumentException(
              "the correlation coefficient of inputs %d and %d is %s and %s"
                  .formatted(i + 1, j + 1, r, correlation[j][i]));
        }
      }
    }
  }

  private static Propagated propagated(
      ToDoubleFunction<double[]> calculation,
      List<Estimate> inputs,
      double[] contributions,
      double variance) {
    double value = calculation.applyAsDouble(values(inputs));
    return new Propagated(
        new Estimate(value, Math.sqrt(variance)), Arrays.stream(contributions).boxed().toList());
  }

  private static double[] values(List<Estimate> inputs) {
    return inputs.stream().mapToDouble(Estimate::value).toArray();
  }

  private static double[] contributions(
      ToDoubleFunction<double[]> calculation, List<Estimate> inputs) {
    double[] x = values(inputs);
    double[] contributions = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      contributions[i] = contribution(calculation, x, i, inputs.get(i).standardUncertainty());
    }
    return contributions;
  }

  private static double contribution(
      ToDoubleFunction<double[]> calculation, double[] x, int i, double u) {
    if (u == 0) {
      return 0;
    }
    double[] above = x.clone();
    above[i] += u;
    double[] below = x.clone();
    below[i] -= u;
    return (calculation.applyAsDouble(above) - calculation.applyAsDouble(below)) / 2;
  }

  /**
   * A result and where its uncertainty comes from.
   *
   * @param estimate the result with its combined standard uncertainty
   * @param contributions the signed contribution of each input, in the unit of the result, in the
   *     order of the inputs
   */
  public record Propagated(Estimate estimate, List<Double> contributions) {

    /** Copies the list. */
    public Propagated {
      contributions = List.copyOf(contributions);
    }
  }
}
