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
import kelter.core.vocabulary.Statement;
import kelter.costing.choice.Basis;
import kelter.costing.choice.Candidate;
import kelter.costing.choice.Candidates;
import kelter.costing.choice.Outcomes;
import kelter.costing.choice.PlannedWork;
import kelter.costing.choice.StatedFigures;
import kelter.costing.choice.States;
import kelter.costing.choice.UnstatedParts;
import kelter.costing.life.KindOfLife;

/**
 * The options of a job with what each costs on average.
 *
 * @param kind which studies speak for the machine
 * @param prices the prices of the job
 * @param all the options, an id more than once where it may go on in several ways
 * @param states the states that the machine may be in
 * @param basis the figures that the comparison rests on
 * @param expectation the averages over the lives
 * @param weighed of each id the cheapest on average, the cheapest of all first
 */
record OptionComparison(
    KindOfLife kind,
    Prices prices,
    List<Weighed> all,
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

  OptionComparison {
    all = List.copyOf(all);
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
  static OptionComparison of(
      Job job, Diagnosis diagnosis, LearnedLives lives, List<Statement> assumptions) {
    States states = States.of(diagnosis);
    PlannedWork work = PlannedWork.of(diagnosis);
    List<Candidate> candidates = Candidates.of(job, diagnosis, states, work);
    List<String> needed =
        candidates.stream()
            .flatMap(each -> each.steps().stream())
            .map(PlannedWork.Step::key)
            .toList();
    KindOfLife kind = KindOfLife.of(job.appliance().kind());
    Job paid = job.prices().map(prices -> job.at(prices.asPaid())).orElse(job);
    Job priced = UnstatedParts.assumed(paid, diagnosis, work.only(needed), assumptions);
    Basis basis = StatedFigures.of(priced, work.only(needed), kind, lives, assumptions);
    Prices prices = priced.prices().orElseThrow();
    List<Outcomes> outcomes =
        candidates.stream().map(each -> Outcomes.of(each, states, prices, basis)).toList();
    return of(kind, prices, candidates, outcomes, states, basis);
  }

  private static OptionComparison of(
      KindOfLife kind,
      Prices prices,
      List<Candidate> candidates,
      List<Outcomes> outcomes,
      States states,
      Basis basis) {
    Expectation expectation = Expectation.of(basis, outcomes);
    List<Weighed> all = new ArrayList<>();
    for (int k = 0; k < candidates.size(); k++) {
      double mean = expectation.annualCost(outcomes.get(k), states);
      all.add(new Weighed(candidates.get(k), outcomes.get(k), mean));
    }
    return new OptionComparison(kind, prices, all, states, basis, expectation, cheapestOfEach(all));
  }

  /**
   * The same options with other lives or at another age or rate.
   *
   * @param other the figures, with the same costs and the same components whose lives are known
   */
  OptionComparison with(Basis other) {
    List<Candidate> candidates = all.stream().map(Weighed::candidate).toList();
    return of(kind, prices, candidates, outcomes(all), states, other);
  }

  /** Of the options of one id, such as the plans of all lengths, only the cheapest is kept. */
  private static List<Weighed> cheapestOfEach(List<Weighed> all) {
    Map<String, Weighed> best = new TreeMap<>();
    for (Weighed each : all) {
      Weighed other = best.get(each.candidate().id());
      if (other == null || each.mean() < other.mean()) {
        best.put(each.candidate().id(), each);
      }
    }
    return best.values().stream().sorted(Comparator.comparingDouble(Weighed::mean)).toList();
  }

  /** The outcomes of the options, in their order. */
  List<Outcomes> outcomes() {
    return outcomes(weighed);
  }

  private static List<Outcomes> outcomes(List<Weighed> options) {
    return options.stream().map(Weighed::outcomes).toList();
  }

  /** The cheapest option that mends something. */
  Optional<Weighed> bestRepair() {
    return first(Candidate.Kind.MEND);
  }

  /** The option to buy a new machine; empty if none can be had. */
  Optional<Weighed> replacing() {
    return first(Candidate.Kind.REPLACE);
  }

  /** The first option of a kind; empty if there is none. */
  Optional<Weighed> first(Candidate.Kind kindOfOption) {
    return weighed.stream().filter(each -> each.candidate().kind() == kindOfOption).findFirst();
  }

  /**
   * The bill at which the best repair costs as much as replacing, if its work and parts are dearer
   * or cheaper by one factor, now and where they have to be paid again; NaN if there is no repair
   * or no replacement.
   */
  double breakEvenBill() {
    return bestRepair().map(this::breakEvenBill).orElse(Double.NaN);
  }

  /** The cost is a straight line of the factor, so that two points tell where it crosses. */
  private double breakEvenBill(Weighed repair) {
    double callOut = basis.costs().callOutWithWork();
    double bill = repair.outcomes().meanBill(states);
    double dearer =
        expectation.annualCost(repair.outcomes().dearer(2, callOut), states) - repair.mean();
    return dearer > 0
        ? bill + (bill - callOut) * saving() / dearer
        : bill + saving() * expectation.period(); // work for nothing is for nothing again, too
  }

  /** What the best repair saves a year against replacing; NaN if there is not both. */
  double saving() {
    return bestRepair()
        .flatMap(repair -> replacing().map(replacing -> replacing.mean() - repair.mean()))
        .orElse(Double.NaN);
  }
}
