package kelter.costing.choice;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Prices;
import kelter.core.problem.Problem;
import kelter.core.quantity.Money;

/**
 * The remedies that the options are made of.
 *
 * @param steps the remedies with the faults that they cure, by {@code component.remedy}
 */
public record PlannedWork(Map<String, Step> steps) {

  /**
   * A remedy.
   *
   * @param remedy what is done
   * @param cures the faults that it is meant for, {@code component.fault}
   */
  public record Step(Remedy remedy, Set<String> cures) {

    /**
     * Its name within an appliance.
     *
     * @return component and id, joined by a full stop
     */
    public String key() {
      return remedy.key();
    }
  }

  /**
   * The remedies of a diagnosis: those of its plan and those of its faults.
   *
   * @param diagnosis the diagnosis
   * @return the remedies
   */
  public static PlannedWork of(Diagnosis diagnosis) {
    Map<String, Step> steps = new LinkedHashMap<>();
    for (Diagnosis.PlanStep step : diagnosis.plan()) {
      add(steps, step.remedy(), step.cures());
    }
    for (Diagnosis.FaultProbability probable : diagnosis.faults()) {
      Fault fault = probable.fault();
      for (Remedy remedy : diagnosis.basis().remedies(fault)) {
        add(steps, remedy, List.of(fault.key()));
      }
    }
    return new PlannedWork(steps);
  }

  private static void add(Map<String, Step> steps, Remedy remedy, Collection<String> cures) {
    steps
        .computeIfAbsent(remedy.key(), key -> new Step(remedy, new LinkedHashSet<>()))
        .cures()
        .addAll(cures);
  }

  Step step(String key) {
    return steps.get(key);
  }

  /**
   * The same with some of the remedies.
   *
   * @param keys which remedies, {@code component.remedy}
   * @return those remedies
   */
  public PlannedWork only(Collection<String> keys) {
    Map<String, Step> kept = new LinkedHashMap<>(steps);
    kept.keySet().retainAll(keys);
    return new PlannedWork(kept);
  }

  /** The parts without a price. */
  List<Problem> missing(Prices prices) {
    List<Problem> problems = new ArrayList<>();
    for (Step step : steps.values()) {
      if (step.remedy().needsPart()
          && prices.part(step.remedy().component(), step.remedy().id()).isEmpty()) {
        problems.add(
            new Problem(
                "/prices/parts/" + step.key(),
                "is missing",
                "give the price of the part for '%s' in %s"
                    .formatted(step.remedy().title(), prices.currency())));
      }
    }
    return problems;
  }

  /** The price of a remedy without the call-out: work and part. */
  static double price(Remedy remedy, Prices prices, double labourPerHour) {
    double part = prices.part(remedy.component(), remedy.id()).map(Money::toDouble).orElse(0.0);
    return labourPerHour * remedy.minutes() / Costs.MINUTES_PER_HOUR + part;
  }
}
