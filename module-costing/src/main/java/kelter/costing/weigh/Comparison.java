package kelter.costing.weigh;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.job.Job;
import kelter.core.job.Prices;
import kelter.core.option.LearnedLives;
import kelter.core.problem.InputException;
import kelter.costing.choice.Basis;
import kelter.costing.choice.Candidate;
import kelter.costing.choice.Candidates;
import kelter.costing.choice.Outcomes;
import kelter.costing.choice.StatedFigures;
import kelter.costing.choice.States;
import kelter.costing.choice.Work;
import kelter.costing.life.KindOfLife;

/**
 * The options of a job with what each costs on average.
 *
 * @param kind which studies speak for the machine
 * @param prices the prices of the job
 * @param candidates the options, an id more than once where it may go on in several ways
 * @param states the states that the machine may be in
 * @param basis the figures that the comparison rests on
 * @param expectation the averages over the lives
 * @param weighed the options, the cheapest on average first
 */
record Comparison(
    KindOfLife kind,
    Prices prices,
    List<Candidate> candidates,
    States states,
    Basis basis,
    Expectation expectation,
    List<Weighed> weighed) {

  /**
   * An option with its mean annual cost.
   *
   * @param candidate the option
   * @param outcomes what it may turn out to be
   * @param mean its mean annual cost, in units of the currency
   */
  record Weighed(Candidate candidate, Outcomes outcomes, double mean) {}

  /** Copies the list. */
  Comparison {
    weighed = List.copyOf(weighed);
  }

  /**
   * Compares the options of a job.
   *
   * @param job the job
   * @param diagnosis its diagnosis
   * @param lives what somebody has learned of lives
   * @param assumptions where to put what the job does not state
   * @return the comparison
   * @throws InputException if the job lacks what cannot be assumed; every such thing is told
   */
  static Comparison of(Job job, Diagnosis diagnosis, LearnedLives lives, List<String> assumptions) {
    States states = States.of(diagnosis);
    Work work = Work.of(diagnosis);
    List<Candidate> candidates = Candidates.of(job, diagnosis, states, work);
    List<String> needed =
        candidates.stream().flatMap(c -> c.steps().stream()).map(Work.Step::key).toList();
    KindOfLife kind = KindOfLife.of(job.appliance().kind());
    Basis basis = StatedFigures.of(job, work.only(needed), kind, lives, assumptions);
    return of(kind, job.prices().orElseThrow(), candidates, states, basis);
  }

  private static Comparison of(
      KindOfLife kind, Prices prices, List<Candidate> candidates, States states, Basis basis) {
    Expectation expectation = Expectation.of(basis);
    List<Weighed> weighed = new ArrayList<>();
    for (Candidate candidate : candidates) {
      Outcomes outcomes = Outcomes.of(candidate, states, prices, basis);
      weighed.add(new Weighed(candidate, outcomes, expectation.annualCost(outcomes, states)));
    }
    return new Comparison(
        kind, prices, candidates, states, basis, expectation, cheapestOfEach(weighed));
  }

  /** The same options with other figures. */
  Comparison with(Basis other) {
    return of(kind, prices, candidates, states, other);
  }

  /** Of the options of one id, such as the plans of all lengths, only the cheapest is kept. */
  private static List<Weighed> cheapestOfEach(List<Weighed> all) {
    Map<String, Weighed> best = new TreeMap<>();
    for (Weighed each : all) {
      best.merge(
          each.candidate().id(), each, (one, other) -> other.mean() < one.mean() ? other : one);
    }
    List<Weighed> kept = new ArrayList<>(best.values());
    kept.sort(Comparator.comparingDouble(Weighed::mean).thenComparing(w -> w.candidate().id()));
    return kept;
  }

  /** The cheapest option that mends something. */
  Optional<Weighed> bestRepair() {
    return first(Candidate.Kind.MEND);
  }

  /** The option to buy a new machine; empty if none can be had. */
  Optional<Weighed> replacing() {
    return first(Candidate.Kind.REPLACE);
  }

  private Optional<Weighed> first(Candidate.Kind kindOfOption) {
    return weighed.stream().filter(w -> w.candidate().kind() == kindOfOption).findFirst();
  }

  /**
   * The bill at which the best repair costs as much as replacing: its own plus what it saves, as a
   * present value; NaN if there is no repair or no replacement.
   */
  double breakEvenBill() {
    return bestRepair()
        .map(repair -> repair.outcomes().meanBill(states) + saving() * expectation.period())
        .orElse(Double.NaN);
  }

  /** What the best repair saves a year against replacing; NaN if there is not both. */
  double saving() {
    return bestRepair()
        .flatMap(repair -> replacing().map(other -> other.mean() - repair.mean()))
        .orElse(Double.NaN);
  }
}
