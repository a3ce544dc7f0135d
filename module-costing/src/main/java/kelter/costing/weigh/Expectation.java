package kelter.costing.weigh;

import java.util.List;
import kelter.costing.choice.Basis;
import kelter.costing.choice.Costs;
import kelter.costing.choice.Outcomes;
import kelter.costing.choice.States;
import kelter.costing.life.ApplianceLife;
import kelter.costing.life.Weibull;
import kelter.costing.money.SinglePresentValue;
import kelter.costing.money.UniformPresentValue;

/**
 * What the options cost on average, by quadrature over the lives: the same world as in {@link
 * Scenario}, without drawing.
 *
 * <p>From now on the machine is worth the present value of the years that it lasts; a mended
 * component that fails at s costs its repair again if the machine is still alive then, so that the
 * expectation is a single integral over s.
 *
 * <p>How long machines last here is the same for the old one and for those that follow it: the same
 * owner uses them as hard, and the studies disagree about both. A machine that got old thus speaks
 * for long lives of new ones, too.
 *
 * @param period the worth today of one unit of money a year over the period of study, in years
 * @param capitalNew by each study, the annual cost of new machines, one after the other, without
 *     running them
 * @param annualNew the same over all studies, with the running cost of a new machine
 * @param worthLeft the worth of one unit of money a year over what is left of the life, in years
 * @param kept what the years that are left of the old machine cost beyond the annual cost of new
 *     ones in the same years, as a present value; below zero where keeping it saves
 * @param again the worth of one unit of money at the next failure of the mended component, by its
 *     life and how worn it is, nothing if the machine ends first or the failure is under warranty
 */
record Expectation(
    double period,
    double[] capitalNew,
    double annualNew,
    double worthLeft,
    double kept,
    double[] again) {

  /** With 32 points the worth of the years is right to five digits for every kind studied. */
  private static final int POINTS = 32;

  /**
   * Draws from the unit exponential distribution, and their weights: the midpoint rule after the
   * transformation {@code u = x - sin(2 pi x) / (2 pi)}, which makes it converge fast for
   * integrands with awkward ends (Sidi (1993), from memory).
   */
  private static final double[] EXPONENTIAL = new double[POINTS];

  private static final double[] WEIGHT = new double[POINTS];

  static {
    for (int i = 0; i < POINTS; i++) {
      double x = 2 * Math.PI * (i + 0.5) / POINTS;
      EXPONENTIAL[i] = -Math.log1p(-(x - Math.sin(x)) / (2 * Math.PI));
      WEIGHT[i] = (1 - Math.cos(x)) / POINTS;
    }
  }

  /** The averages for some options; lives of components that none of them pays for are left out. */
  static Expectation of(Basis basis, List<Outcomes> options) {
    boolean[] counted = Outcomes.laterLives(options, basis);
    ApplianceLife life = basis.life();
    List<Weibull> studies = life.studies();
    double[] weights = life.weights(basis.age());
    Costs costs = basis.costs();
    double[] capitalNew = new double[weights.length];
    double annualNew = 0;
    double worthLeft = 0;
    double kept = 0;
    double[] again = new double[counted.length];
    for (int j = 0; j < weights.length; j++) {
      Weibull study = studies.get(j);
      double free = worthWithin(study, basis.newWarranty(), basis.rate());
      double worthNew = meanWorth(study, 0, basis.rate());
      capitalNew[j] = costs.newMachineInAll() * (1 - free) / worthNew;
      double annual = capitalNew[j] + costs.runningNew();
      double worth = meanWorth(study, basis.age(), basis.rate());
      annualNew += weights[j] * annual;
      worthLeft += weights[j] * worth;
      kept += weights[j] * (costs.running() - annual) * worth;
      addAgain(study, weights[j], basis, counted, again);
    }
    return new Expectation(
        UniformPresentValue.factor(basis.rate(), life.meanOfNew(basis.age())),
        capitalNew,
        annualNew,
        worthLeft,
        kept,
        again);
  }

  /** The worth of one unit of money at the end of a new machine, if that is within its warranty. */
  private static double worthWithin(Weibull life, double warranty, double rate) {
    double share = warranty > 0 ? 1 - life.survival(warranty) : 0;
    double mean = 0;
    for (int i = 0; share > 0 && i < POINTS; i++) {
      double ended = -Math.expm1(-EXPONENTIAL[i]);
      double lasts = life.residual(0, -Math.log1p(-share * ended), 0);
      mean += WEIGHT[i] * SinglePresentValue.factor(rate, lasts);
    }
    return share * mean;
  }

  private static double meanWorth(Weibull life, double age, double rate) {
    double hazard = life.hazardTo(age);
    double mean = 0;
    for (int i = 0; i < POINTS; i++) {
      double lasts = life.residual(hazard, EXPONENTIAL[i], age);
      mean += WEIGHT[i] * UniformPresentValue.factor(rate, lasts);
    }
    return mean;
  }

  private static void addAgain(
      Weibull study, double weight, Basis basis, boolean[] counted, double[] again) {
    int wears = Outcomes.WEAR.size();
    Weibull component = null;
    for (int w = 0; w < again.length; w++) {
      component = w % wears == 0 ? basis.component(study, w / wears) : component;
      if (counted[w]) {
        again[w] += weight * again(study, component, Outcomes.WEAR.get(w % wears), basis);
      }
    }
  }

  /** Before the warranty on the repair ends, the component fails at no cost. */
  private static double again(Weibull study, Weibull component, double wear, Basis basis) {
    double warranty = basis.repairWarranty();
    double age = wear * basis.age();
    double hazard = component.hazardTo(age + warranty);
    double reached = study.hazardTo(basis.age());
    double logRate = Math.log1p(basis.rate());
    double mean = 0;
    for (int i = 0; i < POINTS; i++) {
      double fails = warranty + component.residual(hazard, EXPONENTIAL[i], age + warranty);
      double alive = Math.exp(reached - study.hazardTo(basis.age() + fails));
      mean += WEIGHT[i] * alive * Math.exp(-fails * logRate);
    }
    return component.survival(age, warranty) * mean;
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
        later += states.all().get(s).probability() * chance * afterCure(option.later()[s][i]);
      }
    }
    return annualNew + (option.meanPaid(states) + later) / period;
  }

  private double afterCure(double[] failures) {
    double worth = kept;
    for (int w = 0; w < again.length; w++) {
      worth += failures[w] * again[w];
    }
    return worth;
  }
}
