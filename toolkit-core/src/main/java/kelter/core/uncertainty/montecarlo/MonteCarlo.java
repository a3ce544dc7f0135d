package kelter.core.uncertainty.montecarlo;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.function.UnaryOperator;
import kelter.core.uncertainty.Budget;
import kelter.core.uncertainty.Effect;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.core.source64.SplitMix64;
import org.apache.commons.rng.core.source64.XoRoShiRo128PlusPlus;

/**
 * Propagates the distributions of the inputs through a calculation by adaptive Monte Carlo (JCGM
 * 101:2008, 7.9): blocks of trials are drawn until the figures of all results are steady within
 * their numerical tolerance, or until there are so many trials as are allowed at most.
 *
 * <p>It holds each result against the first-order one and goes on until that comparison is settled,
 * see {@link Validation}.
 *
 * <p>A trial in which the calculation refuses the values or gives no finite result is counted and
 * left out. The same seed gives the same figures.
 */
public final class MonteCarlo {

  /** Trials in a block; JCGM 101:2008, 7.9.4 b, for a coverage probability up to 99 %. */
  public static final int BLOCK = 10_000;

  /** Significant digits of an uncertainty that are meaningful: as many as people see. */
  public static final int DIGITS = 2;

  private MonteCarlo() {}

  /**
   * What came out for one result.
   *
   * @param mean the average, in the coherent SI unit
   * @param standardUncertainty the standard deviation
   * @param low the lower end of the probabilistically symmetric coverage interval (7.7)
   * @param high its upper end
   * @param trials how many trials gave a result
   * @param undefined how many trials gave none
   * @param validation whether the first-order result holds
   */
  public record Outcome(
      double mean,
      double standardUncertainty,
      double low,
      double high,
      int trials,
      int undefined,
      Validation validation) {}

  /**
   * Runs trials.
   *
   * @param law the calculation; may throw an IllegalArgumentException where it is not defined
   * @param values the estimates of its inputs, in coherent SI units
   * @param budgets the first-order budget of each result, all of the same effects and the same
   *     coverage probability
   * @param effects what is uncertain about the inputs
   * @param seed of the generator
   * @param mostTrials at most so many trials, two blocks or more
   * @return one outcome for each result
   * @throws IllegalArgumentException if fewer than two blocks are allowed, or most trials give no
   *     result
   */
  public static List<Outcome> run(
      UnaryOperator<double[]> law,
      double[] values,
      List<Budget> budgets,
      List<Effect> effects,
      long seed,
      int mostTrials) {
    if (mostTrials < 2 * BLOCK) {
      throw new IllegalArgumentException(
          "at least " + 2 * BLOCK + " trials are needed, not " + mostTrials);
    }
    UniformRandomProvider random = generator(seed);
    DoubleSupplier[] draws = new DoubleSupplier[effects.size()];
    double[][] moves = new double[effects.size()][];
    for (int e = 0; e < moves.length; e++) {
      draws[e] = Draw.of(effects.get(e), random);
      moves[e] = effects.get(e).moves().stream().mapToDouble(Double::doubleValue).toArray();
    }
    List<Series> results = new ArrayList<>();
    budgets.forEach(budget -> results.add(new Series(budget, mostTrials)));
    int drawn = 0;
    boolean settled = false;
    while (drawn < 2 * BLOCK || (!settled && drawn + BLOCK <= mostTrials)) {
      for (int trial = 0; trial < BLOCK; trial++) {
        add(compute(law, drawn(values, draws, moves)), results);
      }
      results.forEach(Series::endBlock);
      drawn += BLOCK;
      settled = drawn >= 2 * BLOCK && results.stream().allMatch(Series::isSettled);
    }
    return results.stream().map(Series::outcome).toList();
  }

  /** XoRoShiRo128++, its state filled by SplitMix64 as its authors advise. */
  private static UniformRandomProvider generator(long seed) {
    SplitMix64 filler = new SplitMix64(seed);
    return new XoRoShiRo128PlusPlus(filler.nextLong(), filler.nextLong());
  }

  private static double[] drawn(double[] values, DoubleSupplier[] draws, double[][] moves) {
    double[] x = values.clone();
    for (int e = 0; e < moves.length; e++) {
      double z = draws[e].getAsDouble();
      for (int i = 0; i < x.length; i++) {
        x[i] += z * moves[e][i];
      }
    }
    return x;
  }

  private static double[] compute(UnaryOperator<double[]> law, double[] x) {
    try {
      return law.apply(x);
    } catch (IllegalArgumentException undefined) {
      return new double[0];
    }
  }

  private static void add(double[] y, List<Series> results) {
    for (int i = 0; i < results.size(); i++) {
      results.get(i).add(i < y.length ? y[i] : Double.NaN);
    }
  }
}
