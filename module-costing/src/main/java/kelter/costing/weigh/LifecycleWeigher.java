package kelter.costing.weigh;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.job.Job;
import kelter.core.option.CarbonBalance;
import kelter.core.option.Explained;
import kelter.core.option.LearnedLives;
import kelter.core.option.Option;
import kelter.core.option.Reasons;
import kelter.core.option.Weigher;
import kelter.core.option.Weighing;
import kelter.core.vocabulary.Statement;
import kelter.costing.choice.Assumption;
import kelter.costing.choice.Basis;
import kelter.costing.choice.Candidate;
import kelter.costing.choice.Costs;
import kelter.costing.choice.PlannedWork;
import kelter.costing.choice.States;

/**
 * Weighs the options of a diagnosed job by their annual cost over a common period, with the life
 * that is left, the posterior of the faults and later failures drawn at random.
 */
public final class LifecycleWeigher implements Weigher {

  /** The usual number of draws. */
  public static final int DRAWS = 20_000;

  private static final int LEAST_DRAWS = 100;

  private final int draws;
  private final LearnedLives lives;

  /**
   * A weigher.
   *
   * @param draws how many draws, at least 100
   * @param lives what somebody has learned of lives
   * @throws IllegalArgumentException if there are fewer draws
   */
  public LifecycleWeigher(int draws, LearnedLives lives) {
    if (draws < LEAST_DRAWS) {
      throw new IllegalArgumentException(
          "%s draws; %s or more are needed".formatted(draws, LEAST_DRAWS));
    }
    this.draws = draws;
    this.lives = lives;
  }

  @Override
  public Weigher learning(LearnedLives learned) {
    return new LifecycleWeigher(draws, learned);
  }

  @Override
  public Weighing weigh(Job job, Diagnosis diagnosis, long seed) {
    List<Statement> assumptions = new ArrayList<>();
    OptionComparison comparison = OptionComparison.of(job, diagnosis, lives, assumptions);
    return weighing(comparison, diagnosis, assumptions, Scenario.draw(comparison, draws, seed));
  }

  @Override
  public Explained weighAndExplain(Job job, Diagnosis diagnosis, long seed) {
    List<Statement> assumptions = new ArrayList<>();
    OptionComparison comparison = OptionComparison.of(job, diagnosis, lives, assumptions);
    double[][] costs = Scenario.draw(comparison, draws, seed);
    return new Explained(
        weighing(comparison, diagnosis, assumptions, costs),
        Optional.of(reasons(comparison, costs, seed)));
  }

  private Weighing weighing(
      OptionComparison comparison,
      Diagnosis diagnosis,
      List<Statement> assumptions,
      double[][] costs) {
    assumptions.addAll(Premises.of(comparison));
    return new Weighing(
        comparison.prices().currency(),
        comparison.prices().tax().isKnown(),
        diagnosis.basis().conclusion(),
        options(comparison, costs),
        comparison.breakEvenBill(),
        assumptions,
        Premises.sources(comparison));
  }

  /** The courses are drawn beside the rest, on another core if there is one. */
  private static Reasons reasons(OptionComparison comparison, double[][] costs, long seed) {
    ForkJoinTask<List<Reasons.Course>> courses =
        ForkJoinPool.commonPool().submit(new Courses(comparison, seed));
    return new Reasons(
        BreakEvenAge.of(comparison),
        Influences.of(comparison),
        regret(comparison, costs),
        courses.join(),
        RulesOfThumb.of(comparison));
  }

  @Override
  public Optional<CarbonBalance> carbon(Job job, Diagnosis diagnosis) {
    Basis basis = OptionComparison.of(job, diagnosis, lives, new ArrayList<>()).basis();
    return Optional.of(Footprint.of(job, basis.life().meanOfNew(basis.age())));
  }

  private static Map<String, Double> regret(OptionComparison comparison, double[][] costs) {
    int draws = costs[0].length;
    double[] sum = new double[costs.length];
    for (int i = 0; i < draws; i++) {
      addRegret(sum, costs, i);
    }
    Map<String, Double> regret = new LinkedHashMap<>();
    for (int k = 0; k < sum.length; k++) {
      regret.put(comparison.weighed().get(k).candidate().id(), sum[k] / draws);
    }
    return regret;
  }

  private static void addRegret(double[] sum, double[][] costs, int draw) {
    double least = costs[0][draw];
    for (double[] each : costs) {
      least = Math.min(least, each[draw]);
    }
    for (int k = 0; k < sum.length; k++) {
      sum[k] += costs[k][draw] - least;
    }
  }

  private static List<Option> options(OptionComparison comparison, double[][] costs) {
    double[] cheapest = probabilityCheapest(costs);
    Basis basis = comparison.basis();
    double left = basis.life().meanResidual(basis.age());
    List<Option> options = new ArrayList<>();
    for (int k = 0; k < costs.length; k++) {
      OptionComparison.Weighed each = comparison.weighed().get(k);
      Candidate candidate = each.candidate();
      Candidate.Kind kind = candidate.kind();
      boolean mends = kind == Candidate.Kind.MEND;
      options.add(
          new Option(
              candidate.id(),
              candidate.title(),
              mends ? candidate.steps().stream().map(PlannedWork.Step::key).toList() : List.of(),
              chanceThatItWorks(each, comparison.states()),
              outlay(each, comparison),
              kind == Candidate.Kind.REPLACE ? basis.life().meanOfNew(basis.age()) : left,
              Spreads.of(each.mean(), costs[k]),
              cheapest[k]));
    }
    return options;
  }

  private static double chanceThatItWorks(OptionComparison.Weighed option, States states) {
    return switch (option.candidate().kind()) {
      case MEND -> option.outcomes().chanceOfCure(states);
      case WAIT -> states.healthy();
      case REPLACE -> 1;
    };
  }

  private static double outlay(OptionComparison.Weighed option, OptionComparison comparison) {
    Costs costs = comparison.basis().costs();
    return switch (option.candidate().kind()) {
      case MEND -> option.outcomes().meanBill(comparison.states());
      case WAIT -> costs.callOut();
      case REPLACE -> costs.callOut() + costs.newMachine();
    };
  }

  /**
   * How often each option is the cheapest. Options that cost the same at a draw (a plan that ends
   * after its first step costs what that step costs) count for the one that is cheaper on average,
   * so that the chances sum to 1.
   */
  private static double[] probabilityCheapest(double[][] costs) {
    int draws = costs[0].length;
    double[] probability = new double[costs.length];
    for (int i = 0; i < draws; i++) {
      probability[cheapest(costs, i)]++;
    }
    for (int k = 0; k < probability.length; k++) {
      probability[k] /= draws;
    }
    return probability;
  }

  private static int cheapest(double[][] costs, int draw) {
    int cheapest = 0;
    for (int k = 1; k < costs.length; k++) {
      if (costs[k][draw] < costs[cheapest][draw]) {
        cheapest = k;
      }
    }
    return cheapest;
  }

  @Override
  public List<Statement> statements() {
    List<Statement> all = new ArrayList<>(Assumption.all());
    all.addAll(Influences.ALL);
    all.add(RulesOfThumb.HALF_PRICE);
    return List.copyOf(all);
  }
}
