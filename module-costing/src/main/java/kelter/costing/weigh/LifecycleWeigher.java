package kelter.costing.weigh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.job.Job;
import kelter.core.job.Prices;
import kelter.core.option.Option;
import kelter.core.option.Weigher;
import kelter.core.option.Weighing;
import kelter.core.source.Source;
import kelter.costing.life.LifeStudy;
import kelter.costing.life.RemainingLife;
import kelter.costing.money.SinglePresentValue;

/**
 * Weighs the options of a diagnosed job by their annual cost over a common period, with the life
 * that is left, the posterior of the faults and later failures drawn at random.
 */
public final class LifecycleWeigher implements Weigher {

  /** How many draws are made unless somebody asks for another number. */
  public static final int DRAWS = 20_000;

  private static final double LOW = 0.05;
  private static final double MEDIAN = 0.5;
  private static final double HIGH = 0.95;

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
    States states = States.of(diagnosis);
    Work work = Work.of(diagnosis);
    List<Candidate> candidates = Candidates.of(job, diagnosis, states, work);
    List<String> needed =
        candidates.stream().flatMap(c -> c.steps().stream()).map(Work.Step::key).toList();
    List<String> assumptions = new ArrayList<>();
    Basis basis = Basis.of(job, work.only(needed), assumptions);
    Prices prices = job.prices().orElseThrow();
    Scenario scenario = new Scenario(basis);
    List<Weighed> all = weighed(candidates, states, prices, basis, scenario, seed);
    List<Weighed> kept = withBestPlan(all);
    List<Option> options = options(kept, states, basis);
    assumptions.addAll(method(basis));
    return new Weighing(
        prices.currency(),
        options,
        breakEven(kept, states, scenario),
        assumptions,
        sources(basis, prices));
  }

  /** An option with all its draws. */
  private record Weighed(Candidate candidate, Outcomes outcomes, double[] costs, double mean) {}

  private List<Weighed> weighed(
      List<Candidate> candidates,
      States states,
      Prices prices,
      Basis basis,
      Scenario scenario,
      long seed) {
    List<Outcomes> outcomes =
        candidates.stream().map(c -> Outcomes.of(c, states, prices, basis)).toList();
    double[][] costs = scenario.draw(outcomes, states, draws, seed);
    List<Weighed> weighed = new ArrayList<>();
    for (int k = 0; k < costs.length; k++) {
      double mean = Arrays.stream(costs[k]).sum() / draws;
      weighed.add(new Weighed(candidates.get(k), outcomes.get(k), costs[k], mean));
    }
    return weighed;
  }

  /** Of the plans of all lengths only the cheapest is put to the owner. */
  private static List<Weighed> withBestPlan(List<Weighed> all) {
    List<Weighed> kept =
        new ArrayList<>(
            all.stream().filter(w -> !w.candidate().id().equals(Candidate.PLAN)).toList());
    all.stream()
        .filter(w -> w.candidate().id().equals(Candidate.PLAN))
        .min(Comparator.comparingDouble(Weighed::mean))
        .ifPresent(kept::add);
    kept.sort(
        Comparator.comparingDouble(Weighed::mean)
            .thenComparing(weighed -> weighed.candidate().id()));
    return kept;
  }

  private List<Option> options(List<Weighed> kept, States states, Basis basis) {
    double[] cheapest = probabilityCheapest(kept);
    double left = basis.life().life().meanResidual(basis.age());
    List<Option> options = new ArrayList<>();
    for (int k = 0; k < kept.size(); k++) {
      Candidate candidate = kept.get(k).candidate();
      Outcomes outcomes = kept.get(k).outcomes();
      boolean replaces = candidate.replaces();
      options.add(
          new Option(
              candidate.id(),
              candidate.title(),
              candidate.steps().stream().map(Work.Step::key).toList(),
              replaces ? 1 : outcomes.chanceOfCure(states),
              outcomes.meanPaid(states) + (replaces ? basis.newMachine() : 0),
              replaces ? basis.life().life().mean() : left,
              spread(kept.get(k)),
              cheapest[k]));
    }
    return options;
  }

  /**
   * How often each option is the cheapest. Options that cost the same at a draw (a plan that ends
   * after its first step costs what that step costs) count for the one that is cheaper on average,
   * so that the chances sum to 1.
   */
  private double[] probabilityCheapest(List<Weighed> kept) {
    int[] count = new int[kept.size()];
    for (int i = 0; i < draws; i++) {
      int cheapest = 0;
      for (int k = 1; k < count.length; k++) {
        if (kept.get(k).costs()[i] < kept.get(cheapest).costs()[i]) {
          cheapest = k;
        }
      }
      count[cheapest]++;
    }
    return Arrays.stream(count).mapToDouble(times -> times / (double) draws).toArray();
  }

  private static Option.Spread spread(Weighed weighed) {
    double[] sorted = weighed.costs().clone();
    Arrays.sort(sorted);
    return new Option.Spread(weighed.mean(), at(sorted, LOW), at(sorted, MEDIAN), at(sorted, HIGH));
  }

  private static double at(double[] sorted, double share) {
    return sorted[(int) Math.min(sorted.length - 1.0, Math.floor(share * sorted.length))];
  }

  /** The bill of the best repair plus what it saves against replacing, as a present value. */
  private static double breakEven(List<Weighed> kept, States states, Scenario scenario) {
    double replacing =
        kept.stream().filter(w -> w.candidate().replaces()).findFirst().orElseThrow().mean();
    return kept.stream()
        .filter(w -> w.candidate().isRepair())
        .findFirst()
        .map(w -> w.outcomes().meanPaid(states) + (replacing - w.mean()) * scenario.period())
        .orElse(Double.NaN);
  }

  private static List<String> method(Basis basis) {
    return List.of(
        String.format(
            Locale.ROOT,
            "All options are compared over the same %.1f years, the mean life of a new machine; a"
                + " machine that ends sooner is followed by a new one at today's price, and years"
                + " beyond are credited.",
            basis.life().life().mean()),
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

  private static List<Source> sources(Basis basis, Prices prices) {
    List<Source> sources = new ArrayList<>();
    sources.add(SinglePresentValue.SOURCE);
    sources.add(RemainingLife.WEIBULL);
    basis.life().studies().stream().map(LifeStudy::source).distinct().forEach(sources::add);
    sources.add(
        Source.fromMemory(
            "Kijima, Journal of Applied Probability 26 (1989): virtual age after repair"));
    if (prices.discountRate().isEmpty()) {
      sources.add(Source.published("10 CFR 436.14(a)(2): real discount rate of at least 3 %"));
    }
    return sources;
  }
}
