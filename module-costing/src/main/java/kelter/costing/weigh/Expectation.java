package kelter.costing.weigh;

import java.util.List;
import kelter.costing.choice.Basis;
import kelter.costing.choice.Outcomes;
import kelter.costing.choice.States;
import kelter.costing.life.ApplianceLife;
import kelter.costing.life.Weibull;
import kelter.costing.money.UniformPresentValue;

/**
 * What the options cost on average, by quadrature over the lives: the same world as in {@link
 * Scenario}, without drawing.
 *
 * <p>From now on the machine is worth the present value of the years that it lasts; a mended
 * component that fails at s costs its repair again if the machine is still alive then, so that the
 * expectation is a single integral over s.
 *
 * @param period the worth today of one unit of money a year over the period of study, in years
 * @param annualNew the annual cost of new machines, one after the other, running cost included
 * @param worthLeft the worth of one unit of money a year over what is left of the life, in years
 * @param again the worth of one unit of money at the next failure of the mended component, by how
 *     worn it is, nothing if the machine ends first
 * @param running the running cost of the old machine a year
 */
record Expectation(
    double period, double annualNew, double worthLeft, double[] again, double running) {

  private static final int POINTS = 400;

  static Expectation of(Basis basis) {
    ApplianceLife life = basis.life();
    List<Weibull> studies = life.studies();
    double[] weights = life.weights(basis.age());
    double worthNew = 0;
    double worthLeft = 0;
    double[] again = new double[Outcomes.WEAR.size()];
    for (int j = 0; j < weights.length; j++) {
      Weibull study = studies.get(j);
      worthNew += meanWorth(study, 0, basis.rate()) / weights.length;
      worthLeft += weights[j] * meanWorth(study, basis.age(), basis.rate());
      for (int w = 0; w < again.length; w++) {
        again[w] += weights[j] * again(study, Outcomes.WEAR.get(w), basis);
      }
    }
    return new Expectation(
        UniformPresentValue.factor(basis.rate(), life.mean()),
        basis.newMachine() / worthNew + basis.runningNew(),
        worthLeft,
        again,
        basis.running());
  }

  private static double meanWorth(Weibull life, double age, double rate) {
    double sum = 0;
    for (int i = 0; i < POINTS; i++) {
      sum += UniformPresentValue.factor(rate, life.residualQuantile(age, (i + 0.5) / POINTS));
    }
    return sum / POINTS;
  }

  private static double again(Weibull study, double wear, Basis basis) {
    Weibull component = new Weibull(study.scale() * basis.componentLife(), study.shape());
    double sum = 0;
    for (int i = 0; i < POINTS; i++) {
      double fails = component.residualQuantile(wear * basis.age(), (i + 0.5) / POINTS);
      sum += study.survival(basis.age(), fails) * Math.exp(-fails * Math.log1p(basis.rate()));
    }
    return sum / POINTS;
  }

  /**
   * The mean annual cost of an option. A new machine costs its annual cost by definition, so that
   * only what is paid now and what the old machine saves tell the options apart.
   *
   * @param option what the option may turn out to be
   * @param states the states of the machine
   * @return the equivalent annual cost, in units of the currency
   */
  double annualCost(Outcomes option, States states) {
    double later = 0;
    for (int s = 0; s < option.cumulative().length; s++) {
      double before = 0;
      for (int i = 0; i < option.paid().length; i++) {
        double chance = option.cumulative()[s][i] - before;
        before = option.cumulative()[s][i];
        later += states.all().get(s).probability() * chance * afterCure(option, i);
      }
    }
    return annualNew + (option.meanPaid(states) + later) / period;
  }

  private double afterCure(Outcomes option, int place) {
    int wear = option.wear()[place];
    double failure = wear < 0 ? 0 : option.again()[place] * again[wear];
    return (running - annualNew) * worthLeft + failure;
  }
}
