package kelter.core.uncertainty;

import java.util.ArrayList;
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
    double[] x = inputs.stream().mapToDouble(Estimate::value).toArray();
    List<Double> contributions = new ArrayList<>();
    double sumOfSquares = 0;
    for (int i = 0; i < x.length; i++) {
      double contribution = contribution(calculation, x, i, inputs.get(i).standardUncertainty());
      contributions.add(contribution);
      sumOfSquares += contribution * contribution; // JCGM 100:2008, equation (11a)
    }
    Estimate result = new Estimate(calculation.applyAsDouble(x.clone()), Math.sqrt(sumOfSquares));
    return new Propagated(result, contributions);
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

    public Propagated {
      contributions = List.copyOf(contributions);
    }
  }
}
