package kelter.costing.weigh;

import java.util.Arrays;
import java.util.List;
import kelter.costing.choice.Basis;
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
  private final Weibull[] components;
  private final double[][] hazardTo;
  private final double[] hazardReached;
  private final double period;
  private final double annualNew;

  private Scenario(Basis basis, Expectation expectation) {
    this.basis = basis;
    ApplianceLife life = basis.life();
    studies = life.studies().toArray(Weibull[]::new);
    components =
        life.studies().stream()
            .map(study -> study.stretched(basis.componentLife()))
            .toArray(Weibull[]::new);
    cumulativeWeights = cumulative(life.weights(basis.age()));
    hazardTo = new double[studies.length][Outcomes.WEAR.size()];
    for (int j = 0; j < studies.length; j++) {
      for (int w = 0; w < Outcomes.WEAR.size(); w++) {
        hazardTo[j][w] = components[j].hazardTo(Outcomes.WEAR.get(w) * basis.age());
      }
    }
    hazardReached = Arrays.stream(studies).mapToDouble(s -> s.hazardTo(basis.age())).toArray();
    period = expectation.period();
    annualNew = expectation.annualNew();
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
    double[][] costs = new double[outcomes.length][draws];
    double[] again = new double[Outcomes.WEAR.size()];
    double logRate = Math.log1p(basis.rate());
    for (int i = 0; i < draws; i++) {
      int study = place(cumulativeWeights, random.nextDouble());
      double lasts =
          studies[study].residual(
              hazardReached[study], exponential(random.nextDouble()), basis.age());
      double failsAgain = random.nextDouble();
      double worth = worth(lasts, logRate);
      double kept = (basis.running() - annualNew) * worth;
      for (int w = 0; w < Outcomes.WEAR.size(); w++) {
        double fails = fails(study, w, failsAgain);
        again[w] = fails < lasts ? Math.exp(-fails * logRate) : 0;
      }
      Weibull next = studies[(int) (random.nextDouble() * studies.length)];
      double lastsNew = next.residual(0, exponential(random.nextDouble()), 0);
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
    double[] failures = option.later()[state][place];
    double worth = option.paid()[place] + kept;
    for (int w = 0; w < again.length; w++) {
      worth += failures[w] * again[w];
    }
    return worth;
  }

  private double fails(int study, int wear, double uniform) {
    return components[study].residual(
        hazardTo[study][wear], exponential(uniform), Outcomes.WEAR.get(wear) * basis.age());
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
