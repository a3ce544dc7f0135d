package kelter.costing.weigh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.job.Job;
import kelter.core.job.Prices;
import kelter.core.option.Option;
import kelter.core.option.Reasons;
import kelter.core.option.Weigher;
import kelter.core.option.Weighing;
import kelter.core.source.Source;
import kelter.costing.choice.Basis;
import kelter.costing.choice.Candidate;
import kelter.costing.choice.Outcomes;
import kelter.costing.choice.States;
import kelter.costing.choice.Work;
import kelter.costing.life.KindOfLife;
import kelter.costing.life.LifeStudy;
import kelter.costing.life.RemainingLife;
import kelter.costing.life.Weibull;
import kelter.costing.money.SinglePresentValue;

/**
 * Weighs the options of a diagnosed job by their annual cost over a common period, with the life
 * that is left, the posterior of the faults and later failures drawn at random.
 */
public final class LifecycleWeigher implements Weigher {

  /** How many draws are made unless somebody asks for another number. */
  public static final int DRAWS = 20_000;

  private final int draws;

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
    if (draws < 100) {
      throw new IllegalArgumentException("%d draws; 100 or more are needed".formatted(draws));
    }
    this.draws = draws;
  }

  @Override
  public Weighing weigh(Job job, Diagnosis diagnosis, long seed) {
    List<String> assumptions = new ArrayList<>();
    Comparison comparison = Comparison.of(job, diagnosis, assumptions);
    assumptions.addAll(method(comparison.basis()));
    return new Weighing(
        comparison.prices().currency(),
        options(comparison, seed),
        comparison.breakEvenBill(),
        assumptions,
        sources(comparison.kind(), comparison.prices()));
  }

  @Override
  public Optional<Reasons> explain(Job job, Diagnosis diagnosis, long seed) {
    Comparison comparison = Comparison.of(job, diagnosis, new ArrayList<>());
    Reasons reasons =
        new Reasons(
            BreakEvenAge.of(comparison),
            Influences.of(comparison),
            regret(comparison, Scenario.draw(comparison, draws, seed)),
            Courses.of(comparison, seed),
            RulesOfThumb.of(comparison));
    return Optional.of(reasons);
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
    Basis basis = comparison.basis();
    States states = comparison.states();
    double[][] costs = Scenario.draw(comparison, draws, seed);
    double[] cheapest = probabilityCheapest(costs);
    double left = basis.life().meanResidual(basis.age());
    List<Option> options = new ArrayList<>();
    for (int k = 0; k < costs.length; k++) {
      Candidate candidate = weighed.get(k).candidate();
      Outcomes outcomes = weighed.get(k).outcomes();
      boolean replaces = candidate.replaces();
      options.add(
          new Option(
              candidate.id(),
              candidate.title(),
              candidate.steps().stream().map(Work.Step::key).toList(),
              replaces ? 1 : outcomes.chanceOfCure(states),
              outcomes.meanPaid(states) + (replaces ? basis.newMachine() : 0),
              replaces ? basis.life().mean() : left,
              Spreads.of(weighed.get(k).mean(), costs[k]),
              cheapest[k]));
    }
    return options;
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

  private static List<String> method(Basis basis) {
    DoubleSummaryStatistics means =
        basis.life().studies().stream().mapToDouble(Weibull::mean).summaryStatistics();
    return List.of(
        String.format(
            Locale.ROOT,
            "The studies of the life of such machines give means from %.1f to %.1f years. For a"
                + " new machine each study counts the same; for this one a study counts the more,"
                + " the more machines reach its age by it.",
            means.getMin(),
            means.getMax()),
        String.format(
            Locale.ROOT,
            "All options are compared over the same %.1f years, the mean life of a new machine; a"
                + " machine that ends sooner is followed by a new one at today's price, and years"
                + " beyond are credited.",
            basis.life().mean()),
        "Prices stay as they are but for inflation: the discount rate is taken as a real rate.",
        "A mended machine lasts as long as any other of its age; the work renews the component or"
            + " part that it is done on and nothing else.",
        "No study of the life of components is known; a component is taken to last as long as a"
            + " machine of its kind. Renewing a part takes half of the age off its component,"
            + " cleaning and setting take none. If it fails again before the machine ends, the same"
            + " work is paid once more.",
        "Where the work does not cure, a new machine follows at once; it is in the annual cost, not"
            + " in what is paid now.",
        "The call-out is paid whatever is done, also if the machine is replaced.",
        "The days without a machine, taxes and warranties are not counted.");
  }

  private static List<Source> sources(KindOfLife kind, Prices prices) {
    List<Source> sources = new ArrayList<>();
    sources.add(SinglePresentValue.SOURCE);
    sources.add(RemainingLife.WEIBULL);
    sources.addAll(LifeStudy.sources(kind.studies()));
    sources.add(
        Source.fromMemory(
            "Kijima, Journal of Applied Probability 26 (1989): virtual age after repair"));
    if (prices.discountRate().isEmpty()) {
      sources.add(Source.published("10 CFR 436.14(a)(2): real discount rate of at least 3 %"));
    }
    return sources;
  }
}
