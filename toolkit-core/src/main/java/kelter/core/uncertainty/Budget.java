package kelter.core.uncertainty;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * An uncertainty budget: what each effect contributes to the uncertainty of a result, to first
 * order, with the expanded uncertainty (JCGM 100:2008, clauses 5 and 6 and annex G).
 *
 * <p>The contribution of an effect is half the change of the result when the effect goes from minus
 * to plus one standard uncertainty (5.1.3, note 2); contributions are independent and add as
 * squares (5.1.2, equation (10)), shared errors having been put together before.
 *
 * @param result the result with its combined standard uncertainty, in the coherent SI unit
 * @param lines the contributions, largest first
 * @param degreesOfFreedom the effective degrees of freedom, see {@link WelchSatterthwaite}
 * @param coverageProbability the coverage probability: 95 % is 0.95
 * @param coverageFactor the factor between combined and expanded uncertainty; NaN with less than
 *     one degree of freedom
 */
public record Budget(
    Estimate result,
    List<Line> lines,
    double degreesOfFreedom,
    double coverageProbability,
    double coverageFactor) {

  /** The coverage probability of the intervals that people see: 95 %. */
  public static final double COVERAGE_PROBABILITY = 0.95;

  public Budget {
    lines = List.copyOf(lines);
  }

  /**
   * One contribution.
   *
   * @param effect the effect
   * @param contribution its signed contribution, in the coherent SI unit of the result
   * @param share its share of the variance of the result, as a ratio
   */
  public record Line(ErrorEffect effect, double contribution, double share) {

    /**
     * How much the result moves with the input.
     *
     * @return the sensitivity coefficient (JCGM 100:2008, 5.1.3) in coherent SI units; NaN for an
     *     effect on several inputs, which has none
     */
    public double sensitivity() {
      return effect.inputs().size() == 1
          ? contribution / effect.moves().get(effect.inputs().get(0))
          : Double.NaN;
    }
  }

  /**
   * Draws up a budget.
   *
   * @param law the calculation; it must be defined one standard uncertainty to either side
   * @param values the estimates of its inputs, in coherent SI units
   * @param effects what is uncertain about them, independent of each other
   * @param coverageProbability above 0 and below 1
   * @return the budget
   * @throws IllegalArgumentException if the law refuses the values
   */
  public static Budget of(
      ToDoubleFunction<double[]> law,
      double[] values,
      List<ErrorEffect> effects,
      double coverageProbability) {
    double[] contributions = new double[effects.size()];
    double[] degreesOfFreedom = new double[effects.size()];
    double variance = 0;
    for (int i = 0; i < contributions.length; i++) {
      contributions[i] = contribution(law, values, effects.get(i));
      degreesOfFreedom[i] = effects.get(i).degreesOfFreedom();
      variance += contributions[i] * contributions[i]; // equation (10)
    }
    double effective = WelchSatterthwaite.degreesOfFreedom(contributions, degreesOfFreedom);
    double factor = effective >= 1 ? CoverageFactor.of(coverageProbability, effective) : Double.NaN;
    Estimate result = new Estimate(law.applyAsDouble(values.clone()), Math.sqrt(variance));
    return new Budget(
        result, lines(effects, contributions, variance), effective, coverageProbability, factor);
  }

  private static double contribution(
      ToDoubleFunction<double[]> law, double[] values, ErrorEffect effect) {
    double[] above = values.clone();
    double[] below = values.clone();
    for (int i = 0; i < values.length; i++) {
      above[i] += effect.moves().get(i);
      below[i] -= effect.moves().get(i);
    }
    return (law.applyAsDouble(above) - law.applyAsDouble(below)) / 2;
  }

  private static List<Line> lines(
      List<ErrorEffect> effects, double[] contributions, double variance) {
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < contributions.length; i++) {
      double share = variance > 0 ? contributions[i] * contributions[i] / variance : 0;
      lines.add(new Line(effects.get(i), contributions[i], share));
    }
    lines.sort(Comparator.comparingDouble((Line line) -> -Math.abs(line.contribution())));
    return lines;
  }

  /**
   * The expanded uncertainty (JCGM 100:2008, 6.2.1).
   *
   * @return half the width of the coverage interval, in the coherent SI unit; NaN without a
   *     coverage factor
   */
  public double expanded() {
    return coverageFactor * result.standardUncertainty();
  }
}
