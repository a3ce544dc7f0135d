package kelter.costing.weigh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import kelter.core.option.Option;
import kelter.core.option.Reasons.Course;
import kelter.costing.choice.Basis;
import kelter.costing.choice.Costs;
import kelter.costing.choice.Outcomes;
import kelter.costing.life.Weibull;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * What each option has cost by the end of each year: the same world as in {@link Scenario}, with
 * what is really paid and when, nothing discounted and nothing spread; days without the machine are
 * counted where the job states what they cost.
 */
final class Courses implements Callable<List<Course>> {

  private static final int DRAWS = 4_000;
  private static final int YEARS = 15;

  private final Basis basis;
  private final OptionComparison comparison;
  private final UniformRandomProvider random;
  private final Weibull[] studies;
  private final double[] weights;
  private final double[] states;
  private final PriceDraws prices;
  private final Costs costs;
  private final List<Outcomes> options;
  private final Weibull[][] components;
  private final boolean[] failing;
  private final double[] fails;
  private final double[][][] paid;

  Courses(OptionComparison comparison, long seed) {
    this.comparison = comparison;
    this.basis = comparison.basis();
    this.random = Seeds.generator(seed);
    this.studies = basis.life().studies().toArray(new Weibull[0]);
    this.weights = basis.life().weights(basis.age());
    this.components = new Weibull[studies.length][basis.groups()];
    for (int j = 0; j < components.length; j++) {
      for (int group = 0; group < components[j].length; group++) {
        components[j][group] = basis.component(studies[j], group);
      }
    }
    this.states = comparison.states().probabilities();
    this.prices = PriceDraws.of(basis.spread(), seed);
    this.costs = basis.costs();
    this.options = comparison.outcomes();
    this.failing = Outcomes.laterLives(options, basis);
    this.fails = new double[failing.length];
    this.paid = new double[options.size()][YEARS + 1][DRAWS];
  }

  /** The courses of all options, in the order of the comparison; called for once. */
  @Override
  public List<Course> call() {
    for (int i = 0; i < DRAWS; i++) {
      draw(i);
    }
    List<Course> all = new ArrayList<>();
    for (int k = 0; k < paid.length; k++) {
      List<Option.Spread> years = Arrays.stream(paid[k]).map(Spreads::of).toList();
      all.add(new Course(comparison.weighed().get(k).candidate().id(), years));
    }
    return all;
  }

  private void draw(int draw) {
    prices.next();
    int study = place(weights, random.nextDouble());
    double lasts = studies[study].residualQuantile(basis.age(), random.nextDouble());
    failAgain(study, random.nextDouble());
    double[] renewals = renewals(studies[study]);
    int state = place(states, random.nextDouble());
    double cure = random.nextDouble();
    for (int k = 0; k < paid.length; k++) {
      Outcomes option = options.get(k);
      int place = option.place(state, cure);
      boolean works = place < option.paid().length;
      double end = works ? lasts : 0;
      double[] flows = new double[YEARS + 1];
      double today = works ? option.paid()[place] : option.paid()[place - 1] + option.uncredited();
      flows[0] = prices.repair() * today;
      if (works) {
        payAgain(flows, option.later()[state][place], lasts);
      }
      replace(flows, end, renewals);
      run(flows, end);
      accumulate(flows, paid[k], draw);
    }
  }

  /** When the components fail again that any option works on. */
  private void failAgain(int study, double uniform) {
    int wears = Outcomes.WEAR.size();
    for (int w = 0; w < failing.length; w++) {
      if (failing[w]) {
        double age = Outcomes.WEAR.get(w % wears) * basis.age();
        fails[w] = components[study][w / wears].residualQuantile(age, uniform);
      }
    }
  }

  private void payAgain(double[] flows, double[] failures, double lasts) {
    for (int w = 0; w < failures.length; w++) {
      if (failures[w] != 0 && fails[w] < lasts && fails[w] >= basis.repairWarranty()) {
        pay(flows, fails[w], prices.repair() * failures[w]);
      }
    }
  }

  /** Buys a new machine at the end of the old one, and again at the end of each new one. */
  private void replace(double[] flows, double end, double[] renewals) {
    double price = prices.replacement() * costs.newMachineInAll();
    double at = end;
    pay(flows, at, price);
    for (double lasts : renewals) {
      at += lasts;
      pay(flows, at, lasts < basis.newWarranty() ? 0 : price);
    }
  }

  private static void pay(double[] flows, double at, double amount) {
    if (at <= YEARS) {
      flows[(int) Math.ceil(at)] += amount;
    }
  }

  private void run(double[] flows, double end) {
    for (int year = 1; year <= YEARS; year++) {
      double old = Math.min(1, Math.max(0, end - (year - 1)));
      flows[year] += prices.running() * (old * costs.running() + (1 - old) * costs.runningNew());
    }
  }

  private static void accumulate(double[] flows, double[][] paid, int draw) {
    double sum = 0;
    for (int year = 0; year <= YEARS; year++) {
      sum += flows[year];
      paid[year][draw] = sum;
    }
  }

  /** The lives of the new machines until the years are over, each followed by another. */
  private double[] renewals(Weibull next) {
    double[] lives = new double[YEARS];
    int count = 0;
    double sum = 0;
    while (sum <= YEARS && count < lives.length) {
      lives[count] = next.residualQuantile(0, random.nextDouble());
      sum += lives[count++];
    }
    return Arrays.copyOf(lives, count);
  }

  private static int place(double[] chances, double uniform) {
    double left = uniform;
    int place = 0;
    while (place < chances.length - 1 && left >= chances[place]) {
      left -= chances[place++];
    }
    return place;
  }
}
