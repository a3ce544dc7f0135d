package kelter.costing.weigh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.job.Job;
import kelter.core.option.CarbonBalance;
import kelter.core.option.LearnedLives;
import kelter.core.option.Option;
import kelter.core.option.Reasons;
import kelter.core.option.Weigher;
import kelter.core.option.Weighing;
import kelter.costing.choice.Basis;
import kelter.costing.choice.Candidate;
import kelter.costing.choice.Costs;
import kelter.costing.choice.Outcomes;
import kelter.costing.choice.States;
import kelter.costing.choice.Work;

/**
 * Weighs the options of a diagnosed job by their annual cost over a common period, with the life
 * that is left, the posterior of the faults and later failures drawn at random.
 */
public final class LifecycleWeigher implements Weigher {

  /** How many draws are made unless somebody asks for another number. */
  public static final int DRAWS = 20_000;

  private static final int LEAST_DRAWS = 100;

  private final int draws;
  private final LearnedLives lives;

  /** A weigher with the usual number of draws. */
  public LifecycleWeigher() {
    this(DRAWS);
  }

  /**
   * A weigher with a number of draws.
   *
   * @param draws how many, at least 100
   * @throws IllegalArgumentException if there are fewer
   */
  public LifecycleWeigher(int draws) {
    this(draws, LearnedLives.NONE);
  }

  private LifecycleWeigher(int draws, LearnedLives lives) {
    if (draws < LEAST_DRAWS) {
      throw new IllegalArgumentException(
          "%d draws; %d or more are needed".formatted(draws, LEAST_DRAWS));
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
    List<String> assumptions = new ArrayList<>();
    Comparison comparison = Comparison.of(job, diagnosis, lives, assumptions);
    assumptions.addAll(Premises.of(comparison));
    return new Weighing(
        comparison.prices().currency(),
        options(comparison, seed),
        comparison.breakEvenBill(),
        assumptions,
        Premises.sources(comparison));
  }

  @Override
  public Optional<Reasons> explain(Job job, Diagnosis diagnosis, long seed) {
    Comparison comparison = Comparison.of(job, diagnosis, lives, new ArrayList<>());
    Reasons reasons =
        new Reasons(
            BreakEvenAge.of(comparison),
            Influences.of(comparison),
            regret(comparison, Scenario.draw(comparison, draws, seed)),
            Courses.of(comparison, seed),
            RulesOfThumb.of(comparison));
    return Optional.of(reasons);
  }

  @Override
  public Optional<CarbonBalance> carbon(Job job, Diagnosis diagnosis) {
    Comparison comparison = Comparison.of(job, diagnosis, lives, new ArrayList<>());
    return Optional.of(Footprint.of(job, comparison.basis().life().mean()));
  }

  private static Map<String, Double> regret(Comparison comparison, double[][] costs) {
    Map<String, Double> regret = new LinkedHashMap<>();
    for (int k = 0; k < costs.length; k++) {
      double sum = 0;
      for (int i = 0; i < costs[k].length; i++) {
        double least = costs[0][i];
        for (double[] other : costs) {
          least = Math.min(least, other[i]);
        }
        sum += costs[k][i] - least;
      }
      regret.put(comparison.weighed().get(k).candidate().id(), sum / costs[k].length);
    }
    return regret;
  }

  private List<Option> options(Comparison comparison, long seed) {
    List<Comparison.Weighed> weighed = comparison.weighed();
    double[][] costs = Scenario.draw(comparison, draws, seed);
    double[] cheapest = probabilityCheapest(costs);
    List<Option> options = new ArrayList<>();
    for (int k = 0; k < costs.length; k++) {
      Comparison.Weighed each = weighed.get(k);
      options.add(option(each, comparison, Spreads.of(each.mean(), costs[k]), cheapest[k]));
    }
    return options;
  }

  private static Option option(
      Comparison.Weighed weighed, Comparison comparison, Option.Spread cost, double cheapest) {
    Candidate candidate = weighed.candidate();
    Outcomes outcomes = weighed.outcomes();
    Basis basis = comparison.basis();
    Costs costs = basis.costs();
    States states = comparison.states();
    double left = basis.life().meanResidual(basis.age());
    List<String> remedies = candidate.steps().stream().map(Work.Step::key).toList();
    return switch (candidate.kind()) {
      case MEND ->
          new Option(
              candidate.id(),
              candidate.title(),
              remedies,
              outcomes.chanceOfCure(states),
              outcomes.meanBill(states),
              left,
              cost,
              cheapest);
      case WAIT ->
          new Option(
              candidate.id(),
              candidate.title(),
              List.of(),
              states.healthy(),
              costs.callOut(),
              left,
              cost,
              cheapest);
      case REPLACE ->
          new Option(
              candidate.id(),
              candidate.title(),
              List.of(),
              1,
              costs.callOut() + costs.newMachine(),
              basis.life().mean(),
              cost,
              cheapest);
    };
  }

  /**
   * How often each option is the cheapest. Options that cost the same at a draw (a plan that ends
   * after its first step costs what that step costs) count for the one that is cheaper on average,
   * so that the chances sum to 1.
   */
  private double[] probabilityCheapest(double[][] costs) {
    int[] count = new int[costs.length];
    for (int i = 0; i < draws; i++) {
      int cheapest = 0;
      for (int k = 1; k < count.length; k++) {
        if (costs[k][i] < costs[cheapest][i]) {
          cheapest = k;
        }
      }
      count[cheapest]++;
    }
    return Arrays.stream(count).mapToDouble(times -> times / (double) draws).toArray();
  }
}
