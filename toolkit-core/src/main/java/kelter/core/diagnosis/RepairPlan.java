package kelter.core.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.job.Prices;
import kelter.core.quantity.Money;

/**
 * The order of remedies by chance of cure over cost (Kadane and Simon, Annals of Statistics 5,
 * 1977; the title was read, the rule is from memory): the one that cures most for its cost first,
 * then again with what is left.
 */
final class RepairPlan {

  /** A remedy that cures less than this is left out. */
  private static final double NOT_WORTH = 0.02;

  /**
   * What a part counts for, in minutes of work, where the job states no prices; common practice.
   */
  private static final double PART_IN_MINUTES = 30;

  private final Optional<Prices> prices;
  private final Map<String, Double> left = new LinkedHashMap<>();
  private final Map<String, Remedy> remedies = new LinkedHashMap<>();
  private final Map<String, List<String>> cures = new LinkedHashMap<>();

  private RepairPlan(Optional<Prices> prices) {
    this.prices = prices;
  }

  static List<Diagnosis.PlanStep> of(
      List<Diagnosis.FaultProbability> faults, Optional<Prices> prices) {
    RepairPlan plan = new RepairPlan(prices);
    for (Diagnosis.FaultProbability each : faults) {
      plan.left.put(each.fault().key(), each.probability());
      for (Remedy remedy : each.fault().remedies()) {
        String key = key(remedy);
        plan.remedies.putIfAbsent(key, remedy);
        plan.cures.computeIfAbsent(key, k -> new ArrayList<>()).add(each.fault().key());
      }
    }
    return plan.order();
  }

  private static String key(Remedy remedy) {
    return remedy.component() + "." + remedy.id();
  }

  private List<Diagnosis.PlanStep> order() {
    List<Diagnosis.PlanStep> steps = new ArrayList<>();
    List<String> open = new ArrayList<>(remedies.keySet());
    while (!open.isEmpty()) {
      String best =
          open.stream()
              .max(
                  Comparator.comparingDouble((String key) -> chance(key) / effort(key))
                      .thenComparing(Comparator.reverseOrder()))
              .orElseThrow();
      if (chance(best) < NOT_WORTH) {
        break;
      }
      Remedy remedy = remedies.get(best);
      steps.add(new Diagnosis.PlanStep(remedy, cures.get(best), chance(best), cost(remedy)));
      for (String fault : cures.get(best)) {
        left.merge(fault, 1 - remedy.probabilityOfCure(), (a, b) -> a * b);
      }
      open.remove(best);
    }
    return steps;
  }

  /** The chance that at least one of the faults is there and that the remedy cures it. */
  private double chance(String key) {
    double none = 1;
    for (String fault : cures.get(key)) {
      none *= 1 - left.get(fault);
    }
    return (1 - none) * remedies.get(key).probabilityOfCure();
  }

  private double effort(String key) {
    Remedy remedy = remedies.get(key);
    double cost = cost(remedy);
    return Double.isNaN(cost)
        ? remedy.minutes() + (remedy.needsPart() ? PART_IN_MINUTES : 0)
        : Math.max(cost, 1e-9);
  }

  /** Work and part, in the currency of the job; NaN if a price is not stated. */
  private double cost(Remedy remedy) {
    Optional<Double> labour =
        prices
            .flatMap(Prices::labourPerHour)
            .map(Money::toDouble)
            .map(h -> h * remedy.minutes() / 60);
    Optional<Double> part =
        remedy.needsPart()
            ? prices.map(p -> p.parts().get(key(remedy))).map(Money::toDouble)
            : Optional.of(0.0);
    return labour.isPresent() && part.isPresent() ? labour.get() + part.get() : Double.NaN;
  }
}
