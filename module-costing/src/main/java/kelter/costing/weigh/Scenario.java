package kelter.costing.weigh;

import java.util.List;
import kelter.costing.life.ApplianceLife;
import kelter.costing.life.Weibull;
import kelter.costing.money.UniformPresentValue;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

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

  /**
   * How old a mended component is afterwards, as a ratio of the age of the machine, by what the
   * remedy restores: function, part, component (virtual age after Kijima, J. Appl. Prob. 26
   * (1989)). The half for a renewed part is an assumption.
   */
  static final double[] WEAR = {1, 0.5, 0};

  private static final int QUANTILES = 400;

  private final Basis basis;
  private final Weibull[] studies;
  private final double[] cumulativeWeights;
  private final double[][] hazardTo;
  private final double period;
  private final double annualNew;

  Scenario(Basis basis) {
    this.basis = basis;
    ApplianceLife life = basis.life().life();
    studies = life.studies().toArray(Weibull[]::new);
    cumulativeWeights = cumulative(life.weights(basis.age()));
    hazardTo = new double[studies.length][WEAR.length];
    for (int j = 0; j < studies.length; j++) {
      for (int w = 0; w < WEAR.length; w++) {
        hazardTo[j][w] = studies[j].hazardTo(WEAR[w] * basis.age());
      }
    }
    period = UniformPresentValue.factor(basis.rate(), life.mean());
    annualNew = annualNew(basis);
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
   * The annual cost of new machines, one after the other: the price of one over the mean worth of
   * the years that it lasts (renewal reward), and its running cost.
   */
  private static double annualNew(Basis basis) {
    List<Weibull> lives = basis.life().life().studies();
    double sum = 0;
    for (Weibull life : lives) {
      for (int i = 0; i < QUANTILES; i++) {
        double lasts = life.residualQuantile(0, (i + 0.5) / QUANTILES);
        sum += UniformPresentValue.factor(basis.rate(), lasts);
      }
    }
    return basis.newMachine() * lives.size() * QUANTILES / sum + basis.runningNew();
  }

  /** The worth today of one unit of money a year over the period of study, in years. */
  double period() {
    return period;
  }

  /** The annual cost of a new machine, running cost included. */
  double annualNew() {
    return annualNew;
  }

  /**
   * Draws the annual costs.
   *
   * @param options the options
   * @param states the states of the machine
   * @param draws how many draws
   * @param seed the seed: the same seed gives the same draws
   * @return for each option, its annual cost at each draw
   */
  double[][] draw(List<Outcomes> options, States states, int draws, long seed) {
    UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
    double[] cumulativeStates =
        cumulative(states.all().stream().mapToDouble(States.State::probability).toArray());
    Outcomes[] outcomes = options.toArray(Outcomes[]::new);
    double[][] costs = new double[outcomes.length][draws];
    double[] again = new double[WEAR.length];
    double logRate = Math.log1p(basis.rate());
    for (int i = 0; i < draws; i++) {
      int study = place(cumulativeWeights, random.nextDouble());
      double lasts = residual(study, 0, random.nextDouble());
      double failsAgain = random.nextDouble();
      double worth = worth(lasts, logRate);
      double kept = (basis.running() - annualNew) * worth;
      for (int w = 0; w < WEAR.length; w++) {
        double fails = residual(study, w, failsAgain);
        again[w] = fails < lasts ? Math.exp(-fails * logRate) : 0;
      }
      Weibull next = studies[(int) (random.nextDouble() * studies.length)];
      double lastsNew = next.residual(0, -Math.log1p(-random.nextDouble()), 0);
      double renewed =
          basis.newMachine() + (basis.runningNew() - annualNew) * worth(lastsNew, logRate);
      int state = place(cumulativeStates, random.nextDouble());
      double cure = random.nextDouble();
      for (int k = 0; k < outcomes.length; k++) {
        costs[k][i] = annualNew + present(outcomes[k], state, cure, kept, renewed, again) / period;
      }
    }
    return costs;
  }

  /** What a draw costs beyond the annual cost of new machines, as a present value. */
  private static double present(
      Outcomes option, int state, double cure, double kept, double renewed, double[] again) {
    int place = option.place(state, cure);
    if (place == option.paid().length) {
      return option.paid()[place - 1] + renewed;
    }
    int wear = option.wear()[place];
    double later = wear < 0 ? 0 : option.again()[place] * again[wear];
    return option.paid()[place] + kept + later;
  }

  private double residual(int study, int wear, double uniform) {
    return studies[study].residual(
        hazardTo[study][wear], -Math.log1p(-uniform), WEAR[wear] * basis.age());
  }

  private double worth(double years, double logRate) {
    return logRate == 0 ? years : -Math.expm1(-years * logRate) / basis.rate();
  }

  private static int place(double[] cumulative, double uniform) {
    int place = 0;
    while (place < cumulative.length - 1 && uniform >= cumulative[place]) {
      place++;
    }
    return place;
  }
}
