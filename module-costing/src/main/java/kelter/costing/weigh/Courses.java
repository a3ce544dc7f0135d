package kelter.costing.weigh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kelter.core.option.Reasons.Course;
import kelter.costing.choice.Basis;
import kelter.costing.choice.Costs;
import kelter.costing.choice.Outcomes;
import kelter.costing.choice.States;
import kelter.costing.life.Weibull;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * What each option has cost by the end of each year: the same world as in {@link Scenario}, with
 * what is really paid and when, nothing discounted and nothing spread; days without the machine are
 * counted where the job states what they cost.
 */
final class Courses {

  private static final int DRAWS = 4_000;
  private static final int YEARS = 15;

  private final Basis basis;
  private final States states;
  private final UniformRandomProvider random;
  private final double[] weights;
  private final PriceDraws prices;
  private final Costs costs;

  private Courses(Basis basis, States states, long seed) {
    this.basis = basis;
    this.states = states;
    this.random = Seeds.generator(seed);
    this.weights = basis.life().weights(basis.age());
    this.prices = PriceDraws.of(basis.spread(), seed);
    this.costs = basis.costs();
  }

  /** The courses of all options, in the order of the comparison. */
  static List<Course> of(Comparison comparison, long seed) {
    Courses courses = new Courses(comparison.basis(), comparison.states(), seed);
    List<Outcomes> options =
        comparison.weighed().stream().map(Comparison.Weighed::outcomes).toList();
    double[][][] paid = new double[options.size()][YEARS + 1][DRAWS];
    for (int i = 0; i < DRAWS; i++) {
      courses.draw(options, paid, i);
    }
    List<Course> all = new ArrayList<>();
    for (int k = 0; k < paid.length; k++) {
      String id = comparison.weighed().get(k).candidate().id();
      all.add(new Course(id, Arrays.stream(paid[k]).map(Spreads::of).toList()));
    }
    return all;
  }

  private void draw(List<Outcomes> options, double[][][] paid, int draw) {
    prices.next();
    Weibull study = study(weights, random.nextDouble());
    double lasts = study.residualQuantile(basis.age(), random.nextDouble());
    double failure = random.nextDouble();
    double[] renewals = renewals();
    int state = state(random.nextDouble());
    double cure = random.nextDouble();
    for (int k = 0; k < paid.length; k++) {
      Outcomes option = options.get(k);
      int place = option.place(state, cure);
      boolean works = place < option.paid().length;
      double end = works ? lasts : 0;
      double[] flows = new double[YEARS + 1];
      flows[0] = prices.repair() * option.paid()[works ? place : place - 1];
      if (works) {
        failAgain(flows, option.later()[state][place], study, failure, lasts);
      }
      replace(flows, end, renewals);
      run(flows, end);
      accumulate(flows, paid[k], draw);
    }
  }

  private void failAgain(
      double[] flows, double[] failures, Weibull study, double failure, double lasts) {
    int wears = Outcomes.WEAR.size();
    for (int w = 0; w < failures.length; w++) {
      double age = Outcomes.WEAR.get(w % wears) * basis.age();
      double fails = basis.component(study, w / wears).residualQuantile(age, failure);
      if (fails < lasts && fails >= basis.repairWarranty()) {
        pay(flows, fails, prices.repair() * failures[w]);
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
  private double[] renewals() {
    double[] lives = new double[YEARS];
    int count = 0;
    double sum = 0;
    double[] shares = basis.life().shares().stream().mapToDouble(Double::doubleValue).toArray();
    while (sum <= YEARS && count < lives.length) {
      Weibull next = study(shares, random.nextDouble());
      lives[count] = next.residualQuantile(0, random.nextDouble());
      sum += lives[count++];
    }
    return Arrays.copyOf(lives, count);
  }

  private Weibull study(double[] chances, double uniform) {
    double left = uniform;
    int place = 0;
    while (place < chances.length - 1 && left >= chances[place]) {
      left -= chances[place++];
    }
    return basis.life().studies().get(place);
  }

  private int state(double uniform) {
    double left = uniform;
    int place = 0;
    while (place < states.all().size() - 1 && left >= states.all().get(place).probability()) {
      left -= states.all().get(place++).probability();
    }
    return place;
  }
}
