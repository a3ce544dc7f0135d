package kelter.core.module;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import kelter.core.uncertainty.Estimate;

/**
 * First-order propagation of uncertainties through any calculation.
 *
 * <p>The contribution of an input is half the change of the result when that input moves from one
 * standard uncertainty below its estimate to one above (JCGM 100:2008, 5.1.3, note 2). This is
 * exact where the calculation is linear in the input, and needs nothing but the calculation itself.
 */
final class Propagation {

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
    double[] least = new double[inputs.size()];
    double[] most = new double[inputs.size()];
    Arrays.fill(least, Double.NEGATIVE_INFINITY);
    Arrays.fill(most, Double.POSITIVE_INFINITY);
    return through(calculation, inputs, least, most);
  }

  /**
   * The same where the calculation ends: an input is moved no farther than its limits, and the
   * change of the result is scaled up to two standard uncertainties.
   *
   * @param calculation takes the inputs in the order given and returns the result; it must be
   *     defined within the limits
   * @param inputs the estimates, uncorrelated, each within its limits
   * @param least the least value of each input
   * @param most the greatest value of each input
   * @return the result, and what each input contributes to its uncertainty
   */
  public static Propagated through(
      ToDoubleFunction<double[]> calculation,
      List<Estimate> inputs,
      double[] least,
      double[] most) {
    double[] x = inputs.stream().mapToDouble(Estimate::value).toArray();
    List<Double> contributions = new ArrayList<>();
    double sumOfSquares = 0;
    for (int i = 0; i < x.length; i++) {
      double u = inputs.get(i).standardUncertainty();
      double contribution = u == 0 ? 0 : contribution(calculation, x, i, u, least[i], most[i]);
      contributions.add(contribution);
      sumOfSquares += contribution * contribution; // JCGM 100:2008, equation (11a)
    }
    Estimate result = new Estimate(calculation.applyAsDouble(x.clone()), Math.sqrt(sumOfSquares));
    return new Propagated(result, contributions);
  }

  private static double contribution(
      ToDoubleFunction<double[]> calculation,
      double[] x,
      int i,
      double u,
      double least,
      double most) {
    double[] above = x.clone();
    above[i] = Math.min(x[i] + u, most);
    double[] below = x.clone();
    below[i] = Math.max(x[i] - u, least);
    boolean whole = x[i] + u <= most && x[i] - u >= least;
    double share = whole ? 0.5 : u / (above[i] - below[i]);
    return share * (calculation.applyAsDouble(above) - calculation.applyAsDouble(below));
  }

  /**
   * A result and where its uncertainty comes from.
   *
   * @param estimate the result with its combined standard uncertainty
   * @param contributions the signed contribution of each input, in the unit of the result, in the
   *     order of the inputs
   */
  public record Propagated(Estimate estimate, List<Double> contributions) {

    public Propagated {
      contributions = List.copyOf(contributions);
    }
  }
}
