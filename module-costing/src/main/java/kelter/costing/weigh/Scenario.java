package kelter.costing.weigh;

import java.util.Arrays;
import java.util.List;
import kelter.costing.choice.Basis;
import kelter.costing.choice.Costs;
import kelter.costing.choice.Outcomes;
import kelter.costing.choice.States;
import kelter.costing.life.ApplianceLife;
import kelter.costing.life.Weibull;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * Draws what the options may cost, all options in the same world at each draw (common random
 * numbers), so that only what tells them apart moves the odds.
 *
 * <p>A world is: the study whose life the machine follows, how long it lasts from now on, how long
 * a new one lasts, the state that the machine is in, how far the work has to go, and when the
 * mended component fails again. A draw costs, for each option and as a yearly amount over the
 * period of study: what is paid now; the running costs of the machine; what the same component
 * costs when it fails again before the machine does; and from the end of the machine on the annual
 * cost of a new one. Years beyond the period of study are credited at that same annual cost, so
 * that the period does not change the order of the options.
 */
final class Scenario {

  /** Below this, one less an exponential would lose digits. */
  private static final double NEARLY_NOTHING = 1e-3;

  private final Basis basis;
  private final Weibull[] studies;
  private final double[] cumulativeWeights;
  private final double[] cumulativeShares;
  private final int lives;
  private final Weibull[][] components;
  private final double[][] hazardTo;
  private final double[] hazardReached;
  private final double period;
  private final Expectation expectation;
  private final Costs costs;

  private Scenario(Basis basis, Expectation expectation) {
    this.basis = basis;
    ApplianceLife life = basis.life();
    studies = life.studies().toArray(Weibull[]::new);
    cumulativeShares =
        cumulative(life.shares().stream().mapToDouble(Double::doubleValue).toArray());
    cumulativeWeights = cumulative(life.weights(basis.age()));
    int wears = Outcomes.WEAR.size();
    lives = basis.groups() * wears;
    components = new Weibull[studies.length][lives];
    hazardTo = new double[studies.length][lives];
    for (int j = 0; j < studies.length; j++) {
      for (int w = 0; w < lives; w++) {
        components[j][w] = basis.component(studies[j], w / wears);
        hazardTo[j][w] = components[j][w].hazardTo(wear(w) * basis.age());
      }
    }
    hazardReached = Arrays.stream(studies).mapToDouble(s -> s.hazardTo(basis.age())).toArray();
    period = expectation.period();
    this.expectation = expectation;
    this.costs = basis.costs();
  }

  private static double wear(int life) {
    return Outcomes.WEAR.get(life % Outcomes.WEAR.size());
  }

  private static double[] cumulative(double[] weights) {
    double[] sums = new double[weights.length];
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i];
      sums[i] = sum;
    }
    return sums;
  }

  /**
   * Draws the annual costs of all options of a comparison.
   *
   * @param comparison the comparison
   * @param draws how many draws
   * @param seed the seed: the same seed gives the same draws
   * @return for each option in the order of the comparison, its annual cost at each draw
   */
  static double[][] draw(Comparison comparison, int draws, long seed) {
    return new Scenario(comparison.basis(), comparison.expectation())
        .draw(
            comparison.weighed().stream().map(Comparison.Weighed::outcomes).toList(),
            comparison.states(),
            draws,
            seed);
  }

  private double[][] draw(List<Outcomes> options, States states, int draws, long seed) {
    UniformRandomProvider random = Seeds.generator(seed);
    double[] cumulativeStates =
        cumulative(states.all().stream().mapToDouble(States.State::probability).toArray());
    Outcomes[] outcomes = options.toArray(Outcomes[]::new);
    boolean[] failing = failing(options);
    double[][] costsOf = new double[outcomes.length][draws];
    double[] again = new double[lives];
    double logRate = Math.log1p(basis.rate());
    PriceDraws prices = PriceDraws.of(basis.spread(), seed);
    for (int i = 0; i < draws; i++) {
      prices.next();
      double annualNew =
          prices.replacement() * expectation.capitalNew() + prices.running() * costs.runningNew();
      int study = place(cumulativeWeights, random.nextDouble());
      double lasts =
          studies[study].residual(
              hazardReached[study], exponential(random.nextDouble()), basis.age());
      again(study, random.nextDouble(), lasts, prices.repair(), logRate, failing, again);
      double worth = worth(lasts, logRate);
      double kept = (prices.running() * costs.running() - annualNew) * worth;
      Weibull next = studies[place(cumulativeShares, random.nextDouble())];
      double lastsNew = next.residual(0, exponential(random.nextDouble()), 0);
      double renewed =
          prices.replacement() * costs.newMachineInAll() * (1 - free(lastsNew, logRate))
              + (prices.running() * costs.runningNew() - annualNew) * worth(lastsNew, logRate);
      int state = place(cumulativeStates, random.nextDouble());
      double cure = random.nextDouble();
      for (int k = 0; k < outcomes.length; k++) {
        double present = present(outcomes[k], state, cure, prices.repair(), kept, renewed, again);
        costsOf[k][i] = annualNew + present / period;
      }
    }
    return costsOf;
  }

  /** Which lives of components any option pays for later. */
  private boolean[] failing(List<Outcomes> options) {
    boolean[] failing = new boolean[lives];
    for (Outcomes option : options) {
      for (double[][] state : option.later()) {
        for (double[] place : state) {
          for (int w = 0; w < lives; w++) {
            failing[w] |= place[w] != 0;
          }
        }
      }
    }
    return failing;
  }

  /** The worth of one unit of money at the end of a new machine that ends under warranty. */
  private double free(double lastsNew, double logRate) {
    return lastsNew < basis.newWarranty() ? Math.exp(-lastsNew * logRate) : 0;
  }

  /** The worth of what is paid where the mended component fails again, by its life and wear. */
  private void again(
      int study,
      double uniform,
      double lasts,
      double price,
      double logRate,
      boolean[] failing,
      double[] again) {
    double exponential = exponential(uniform);
    for (int w = 0; w < lives; w++) {
      if (!failing[w]) {
        continue;
      }
      double age = wear(w) * basis.age();
      double fails = components[study][w].residual(hazardTo[study][w], exponential, age);
      boolean paid = fails < lasts && fails >= basis.repairWarranty();
      again[w] = paid ? price * Math.exp(-fails * logRate) : 0;
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
      return price * option.paid()[place - 1] + renewed;
    }
    double[] failures = option.later()[state][place];
    double worth = price * option.paid()[place] + kept;
    for (int w = 0; w < again.length; w++) {
      worth += failures[w] * again[w];
    }
    return worth;
  }

  /** The same as the worth of the law, with the faster exponential where it is exact enough. */
  private double worth(double years, double logRate) {
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
