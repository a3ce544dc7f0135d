package kelter.costing.weigh;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.job.Job;
import kelter.core.option.CarbonBalance;
import kelter.core.owner.Use;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Quantity;
import kelter.core.source.Source;
import kelter.core.vocabulary.Statement;
import kelter.costing.choice.Assumption;
import kelter.costing.use.CarbonOfReplacing;
import kelter.costing.use.RunningCost;

/** What keeping and replacing the machine of a job emit. */
final class Footprint {

  /** Making, delivering and disposing of a household machine, in kg. */
  private static final double USUAL_MAKING = 300;

  private static final Source USUAL_MAKING_SOURCE =
      Source.fromMemory(
          "life cycle assessments of household washing machines and dishwashers, 200 to 400 kg for"
              + " making one");

  private Footprint() {}

  /**
   * The balance of a job.
   *
   * @param job the job
   * @param life the mean life of a new machine, in years
   * @return the balance
   * @throws InputException if the job lacks what cannot be assumed; every such thing is told
   */
  static CarbonBalance of(Job job, double life) {
    Use use = job.use();
    List<Problem> problems = new ArrayList<>();
    require(use.cyclesPerWeek(), "cycles-per-week", "\"4\"", problems);
    require(use.now().energy(), "energy-per-cycle", "\"1.1 kW.h\"", problems);
    require(use.next().energy(), "energy-per-cycle-new", "\"0.8 kW.h\"", problems);
    require(use.carbon().perKilowattHour(), "carbon-per-kwh", "\"0.3 kg\"", problems);
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    List<Statement> assumptions = new ArrayList<>();
    List<Source> sources = new ArrayList<>(List.of(CarbonOfReplacing.SOURCE));
    assumptions.add(Assumption.CARBON_OF_ENERGY_AND_MAKING.with());
    assumptions.add(Assumption.MAKING_SPREAD_OVER_LIFE.with());
    if (use.carbon().newMachine().isEmpty()) {
      assumptions.add(Assumption.MAKING_NOT_STATED.with());
      sources.add(USUAL_MAKING_SOURCE);
    }
    double making = use.carbon().newMachine().map(Quantity::si).orElse(USUAL_MAKING);
    double old = running(use, use.now());
    double young = running(use, use.next());
    return new CarbonBalance(
        old,
        young,
        making,
        making / life,
        CarbonOfReplacing.payBack(making, old, young).orElse(Double.NaN),
        assumptions,
        sources);
  }

  private static double running(Use use, Use.Consumption consumption) {
    double cycles = use.cyclesPerWeek().orElseThrow().si() * RunningCost.WEEKS_PER_YEAR;
    return CarbonOfReplacing.running(
        cycles * consumption.energy().orElseThrow().si(),
        use.carbon().perKilowattHour().orElseThrow().si());
  }

  private static void require(
      Optional<Quantity> figure, String name, String example, List<Problem> problems) {
    if (figure.isEmpty()) {
      problems.add(
          new Problem(
              "/use/" + name, "is missing", "give it, for instance " + example + ", for --carbon"));
    }
  }
}
