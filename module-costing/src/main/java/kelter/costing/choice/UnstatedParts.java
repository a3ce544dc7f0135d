package kelter.costing.choice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.job.Job;
import kelter.core.job.Prices;
import kelter.core.quantity.Money;
import kelter.core.vocabulary.Statement;

/**
 * Prices of parts that a job does not state. A machine has dozens of parts that may be behind a
 * complaint; nobody asks the price of one that is hardly needed.
 */
public final class UnstatedParts {

  /** What a part costs of a new machine, as a ratio, half or twice that; from memory. */
  private static final double OF_A_NEW_MACHINE = 0.1;

  /** From this chance on that a part is needed its price has to be stated. */
  private static final double HAS_TO_BE_STATED = 0.2;

  private UnstatedParts() {}

  /**
   * Takes a usual price for the parts that are hardly needed.
   *
   * @param job the job
   * @param diagnosis its diagnosis, which tells how likely a part is needed
   * @param work the work whose parts are to be priced
   * @param assumptions where to put what was taken
   * @return the job with those prices; the same if none is missing, or no price of a new machine is
   *     stated
   */
  public static Job assumed(
      Job job, Diagnosis diagnosis, PlannedWork work, List<Statement> assumptions) {
    if (job.prices().isEmpty() || job.prices().get().replacement().isEmpty()) {
      return job;
    }
    Prices prices = job.prices().get();
    long amount = Math.round(OF_A_NEW_MACHINE * prices.replacement().get().toDouble());
    Money usual =
        Money.parse(amount + " " + prices.currency().getCurrencyCode(), prices.currency());
    Map<String, Money> parts = new LinkedHashMap<>(prices.parts());
    List<String> taken = new ArrayList<>();
    for (PlannedWork.Step step : work.steps().values()) {
      boolean stated = prices.part(step.remedy().component(), step.remedy().id()).isPresent();
      if (step.remedy().needsPart() && !stated && chance(step, diagnosis) < HAS_TO_BE_STATED) {
        parts.put(step.key(), usual);
        taken.add(step.key());
      }
    }
    if (taken.isEmpty()) {
      return job;
    }
    assumptions.add(Assumption.PART_PRICES_GUESSED.with(String.join(", ", taken)));
    return job.at(prices.withParts(parts));
  }

  private static double chance(PlannedWork.Step step, Diagnosis diagnosis) {
    double chance = 0;
    for (Diagnosis.FaultProbability each : diagnosis.faults()) {
      chance += step.cures().contains(each.fault().key()) ? each.probability() : 0;
    }
    return chance;
  }
}
