package kelter.core.uncertainty.montecarlo;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import kelter.core.uncertainty.Budget;
import kelter.core.uncertainty.ErrorEffect;
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

  /** Blocks that are drawn together, on as many processors if there are. */
  private static final int WAVE = 4;

  private MonteCarlo() {}

  /**
   * How the trials are run.
   *
   * @param seed of the generator; the same seed gives the same figures
   * @param mostTrials at most so many trials, 40000 or more
   */
  public record Settings(long seed, int mostTrials) {

    /** Seed 1, up to 100000 trials. */
    public static final Settings USUAL = new Settings(1, 100_000);

    /** The fewest trials: the figures of four blocks can be compared. */
    public static final int LEAST_TRIALS = WAVE * BLOCK;

    /** The most trials: their values must be kept. */
    public static final int MOST_TRIALS = 10_000_000;

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if so many trials cannot be run
     */
    public Settings {
      if (mostTrials < LEAST_TRIALS || mostTrials > MOST_TRIALS) {
        throw new IllegalArgumentException(
            mostTrials + " trials cannot be run; " + LEAST_TRIALS + " to " + MOST_TRIALS + " can");
      }
    }
  }

  /**
   * What came out for one result.
   *
   * @param mean the average, in the coherent SI unit
   * @param standardUncertainty the standard deviation
   * @param low the lower end of the probabilistically symmetric coverage interval (7.7)
   * @param high its upper end
   * @param trials how many trials gave a result
   * @param undefined how many trials gave none
   * @param toOneDigit whether the first-order result holds to one digit of its uncertainty
   * @param toTwoDigits whether it holds to two
   */
  public record Outcome(
      double mean,
      double standardUncertainty,
      double low,
      double high,
      int trials,
      int undefined,
      Validation toOneDigit,
      Validation toTwoDigits) {}

  /**
   * Runs trials.
   *
   * @param law the calculation, safe for several threads; may throw an IllegalArgumentException
   *     where it is not defined
   * @param values the estimates of its inputs, in coherent SI units
   * @param budgets the first-order budget of each result, all of the same effects and the same
   *     coverage probability
   * @param effects what is uncertain about the inputs
   * @param settings how many trials, with which seed
   * @return one outcome for each result
   * @throws IllegalArgumentException if most trials give no result
   */
  public static List<Outcome> run(
      UnaryOperator<double[]> law,
      double[] values,
      List<Budget> budgets,
      List<ErrorEffect> effects,
      Settings settings) {
    List<DrawnSeries> results = new ArrayList<>();
    budgets.forEach(budget -> results.add(new DrawnSeries(budget, settings.mostTrials())));
    SplitMix64 seeds = new SplitMix64(settings.seed());
    int drawn = 0;
    boolean settled = false;
    while (!settled && drawn + WAVE * BLOCK <= settings.mostTrials()) {
      List<UniformRandomProvider> generators =
          IntStream.range(0, WAVE).mapToObj(i -> generator(seeds)).toList();
      List<double[][]> wave =
          generators.parallelStream().map(each -> block(law, values, effects, each)).toList();
      for (double[][] block : wave) {
        for (int i = 0; i < results.size(); i++) {
          results.get(i).addBlock(block, i);
        }
      }
      drawn += WAVE * BLOCK;
      settled = results.stream().allMatch(DrawnSeries::isSettled);
    }
    return results.stream().map(DrawnSeries::outcome).toList();
  }

  /** XoRoShiRo128++, its state filled by SplitMix64 as its authors advise. */
  private static UniformRandomProvider generator(SplitMix64 seeds) {
    return new XoRoShiRo128PlusPlus(seeds.nextLong(), seeds.nextLong());
  }

  /** The results of each trial of a block; none where the calculation refuses the values. */
  private static double[][] block(
      UnaryOperator<double[]> law,
      double[] values,
      List<ErrorEffect> effects,
      UniformRandomProvider random) {
    DoubleSupplier[] draws = new DoubleSupplier[effects.size()];
    double[][] moves = new double[effects.size()][];
    for (int e = 0; e < moves.length; e++) {
      draws[e] = Draw.of(effects.get(e), random);
      moves[e] = effects.get(e).moves().stream().mapToDouble(Double::doubleValue).toArray();
    }
    double[][] results = new double[BLOCK][];
    for (int trial = 0; trial < BLOCK; trial++) {
      double[] x = values.clone();
      for (int e = 0; e < moves.length; e++) {
        double z = draws[e].getAsDouble();
        for (int i = 0; i < x.length; i++) {
          x[i] += z * moves[e][i];
        }
      }
      results[trial] = compute(law, x);
    }
    return results;
  }

  private static double[] compute(UnaryOperator<double[]> law, double[] x) {
    try {
      return law.apply(x);
    } catch (IllegalArgumentException undefined) {
      return new double[0];
    }
  }
}
