package kelter.costing.weigh;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import kelter.costing.choice.Basis;
import kelter.costing.choice.Costs;
import kelter.costing.choice.Outcomes;
import kelter.costing.life.ApplianceLife;
import kelter.costing.life.Weibull;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * Draws what the options may cost, all options in the same world at each draw (common random
 * numbers), so that only what tells them apart moves the odds.
 *
 * <p>A world is: the study whose life machines follow here, the old one and a new one, how long the
 * old one lasts from now on, how long a new one lasts, the state that the machine is in, how far
 * the work has to go, and when the mended component fails again. A draw costs, for each option and
 * as a yearly amount over the period of study: what is paid now; the running costs of the machine;
 * what the same component costs when it fails again before the machine does; and from the end of
 * the machine on the annual cost of a new one. Years beyond the period of study are credited at
 * that same annual cost, so that the period does not change the order of the options.
 */
final class Scenario implements Runnable {

  /** Below this, one less an exponential would lose digits. */
  private static final double NEARLY_NOTHING = 1e-3;

  /** How many draws one thread takes at a time. */
  private static final int BLOCK = 1_000;

  private final Basis basis;
  private final Weibull[] studies;
  private final double[] cumulativeWeights;
  private final double[] cumulativeStates;
  private final boolean[] failing;
  private final Weibull[][] components;
  private final double[][] hazardTo;
  private final double[] hazardReached;
  private final double logRate;
  private final Expectation expectation;
  private final Costs costs;
  private final Outcomes[] options;
  private final UniformRandomProvider random;
  private final PriceDraws prices;
  private final double[][] costsOf;
  private final int draws;
  private int taken;

  private Scenario(OptionComparison comparison, int draws, long seed) {
    basis = comparison.basis();
    expectation = comparison.expectation();
    costs = basis.costs();
    logRate = Math.log1p(basis.rate());
    ApplianceLife life = basis.life();
    studies = life.studies().toArray(new Weibull[0]);
    cumulativeWeights = cumulative(life.weights(basis.age()));
    cumulativeStates = cumulative(comparison.states().probabilities());
    options = comparison.outcomes().toArray(new Outcomes[0]);
    failing = Outcomes.laterLives(comparison.outcomes(), basis);
    components = new Weibull[studies.length][failing.length];
    hazardTo = new double[studies.length][failing.length];
    hazardReached = new double[studies.length];
    for (int j = 0; j < studies.length; j++) {
      hazardReached[j] = studies[j].hazardTo(basis.age());
      for (int w = 0; w < failing.length; w++) {
        components[j][w] = basis.component(studies[j], w / Outcomes.WEAR.size());
        hazardTo[j][w] = components[j][w].hazardTo(wear(w) * basis.age());
      }
    }
    random = Seeds.generator(seed);
    prices = PriceDraws.of(basis.spread(), seed);
    costsOf = new double[options.length][draws];
    this.draws = draws;
  }

  private static double wear(int life) {
    return Outcomes.WEAR.get(life % Outcomes.WEAR.size());
  }

  private static double[] cumulative(double[] weights) {
    double[] sums = weights.clone();
    for (int i = 1; i < sums.length; i++) {
      sums[i] += sums[i - 1];
    }
    return sums;
  }

  /**
   * Draws the annual costs of all options of a comparison, in as many threads as have something to
   * do. Chance is drawn by one at a time and block after block, and each draw has its place, so
   * that the result does not tell how many there were.
   *
   * @param comparison the comparison
   * @param draws how many draws
   * @param seed the seed: the same seed gives the same draws
   * @return for each option in the order of the comparison, its annual cost at each draw
   */
  static double[][] draw(OptionComparison comparison, int draws, long seed) {
    Scenario scenario = new Scenario(comparison, draws, seed);
    List<ForkJoinTask<?>> others = new ArrayList<>();
    int helping = Math.min(ForkJoinPool.getCommonPoolParallelism(), draws / BLOCK);
    for (int i = 0; i < helping; i++) {
      others.add(ForkJoinPool.commonPool().submit(scenario));
    }
    scenario.run();
    for (ForkJoinTask<?> other : others) {
      other.join();
    }
    return scenario.costsOf;
  }

  /** Works out, block after block, the draws that no other thread has begun. */
  @Override
  public void run() {
    double[][] chances = new double[BLOCK][];
    double[] again = new double[failing.length];
    for (int from = take(chances); from < draws; from = take(chances)) {
      for (int i = from; i < Math.min(draws, from + BLOCK); i++) {
        draw(i, chances[i - from], again);
      }
    }
  }

  /** Draws the chances of the next block, and tells where it begins. */
  private synchronized int take(double[][] chances) {
    int from = taken;
    for (int i = 0; i < BLOCK && from + i < draws; i++) {
      chances[i] = chances();
    }
    taken += BLOCK;
    return from;
  }

  private double[] chances() {
    prices.next();
    return new double[] {
      prices.repair(),
      prices.replacement(),
      prices.running(),
      random.nextDouble(),
      random.nextDouble(),
      random.nextDouble(),
      random.nextDouble(),
      random.nextDouble(),
      random.nextDouble()
    };
  }

  /** One draw; a method of its own, so that it is soon compiled. */
  private void draw(int i, double[] chances, double[] again) {
    double repair = chances[0];
    double replacement = chances[1];
    double running = chances[2];
    int study = place(cumulativeWeights, chances[3]);
    double annualNew = replacement * expectation.capitalNew()[study] + running * costs.runningNew();
    double lasts =
        studies[study].residual(hazardReached[study], exponential(chances[4]), basis.age());
    again(study, exponential(chances[5]), lasts, repair, again);
    double kept = (running * costs.running() - annualNew) * worth(lasts);
    double lastsNew = studies[study].residual(0, exponential(chances[6]), 0);
    double renewed =
        replacement * costs.newMachineInAll() * (1 - free(lastsNew))
            + (running * costs.runningNew() - annualNew) * worth(lastsNew);
    int state = place(cumulativeStates, chances[7]);
    for (int k = 0; k < options.length; k++) {
      double present = present(options[k], state, chances[8], repair, kept, renewed, again);
      costsOf[k][i] = annualNew + present / expectation.period();
    }
  }

  /** The worth of one unit of money at the end of a new machine that ends under warranty. */
  private double free(double lastsNew) {
    return lastsNew < basis.newWarranty() ? Math.exp(-lastsNew * logRate) : 0;
  }

  /** The worth of what is paid where the mended component fails again, by its life and wear. */
  private void again(int study, double exponential, double lasts, double price, double[] again) {
    for (int w = 0; w < failing.length; w++) {
      if (failing[w]) {
        double age = wear(w) * basis.age();
        double fails = components[study][w].residual(hazardTo[study][w], exponential, age);
        boolean paid = fails < lasts && fails >= basis.repairWarranty();
        again[w] = paid ? price * Math.exp(-fails * logRate) : 0;
      }
    }
  }

  /** What a draw costs beyond the annual cost of new machines, as a present value. */
  private static double present(
      Outcomes option,
      int state,
      double cure,
      double price,
      double kept,
      double renewed,
      double[] again) {
    int place = option.place(state, cure);
    if (place == option.paid().length) {
      return price * (option.paid()[place - 1] + option.uncredited()) + renewed;
    }
    double[] failures = option.later()[state][place];
    double worth = price * option.paid()[place] + kept;
    for (int w = 0; w < again.length; w++) {
      worth += failures[w] * again[w];
    }
    return worth;
  }

  /** The same as the worth of the law, with the faster exponential where it is exact enough. */
  private double worth(double years) {
    double exponent = years * logRate;
    if (logRate == 0) {
      return years;
    }
    double gone = exponent < NEARLY_NOTHING ? -Math.expm1(-exponent) : 1 - Math.exp(-exponent);
    return gone / basis.rate();
  }

  /** A draw from the unit exponential distribution by inversion. */
  private static double exponential(double uniform) {
    return -Math.log(1 - uniform);
  }

  private static int place(double[] cumulative, double uniform) {
    int place = 0;
    while (place < cumulative.length - 1 && uniform >= cumulative[place]) {
      place++;
    }
    return place;
  }
}
