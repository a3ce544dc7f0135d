package kelter.core.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.diagnosis.decision.RepairOrder;
import kelter.core.job.Prices;
import kelter.core.quantity.Money;

/**
 * Which remedies to try, in which order, before a new machine: the order of least expected cost by
 * {@link RepairOrder}. Where the job does not state all prices, time stands for cost.
 */
final class RepairPlan {

  /** A remedy that cures less than this is not thought of. */
  private static final double NOT_WORTH = 0.02;

  private static final int MOST_REMEDIES = 8;

  /**
   * What a part counts for, in minutes of work, where the job states no prices; common practice.
   */
  private static final double PART_IN_MINUTES = 30;

  private final List<Group> groups;
  private final JointPosterior posterior;
  private final Optional<Prices> prices;
  private final List<Remedy> remedies;
  private final int[][] helps;
  private final Map<String, List<String>> cures = new LinkedHashMap<>();

  private RepairPlan(List<Group> groups, JointPosterior posterior, Optional<Prices> prices) {
    this.groups = groups;
    this.posterior = posterior;
    this.prices = prices;
    this.remedies = worthTrying();
    this.helps = helping();
  }

  static List<Diagnosis.PlanStep> of(
      List<Group> groups, JointPosterior posterior, Optional<Prices> prices) {
    return new RepairPlan(groups, posterior, prices).steps();
  }

  private static String key(Remedy remedy) {
    return remedy.component() + "." + remedy.id();
  }

  /** The remedies that cure most for their cost. */
  private List<Remedy> worthTrying() {
    Map<String, Remedy> known = new LinkedHashMap<>();
    Map<String, Double> chance = new LinkedHashMap<>();
    for (int g = 0; g < groups.size(); g++) {
      Group group = groups.get(g);
      for (int state = 0; state < group.states(); state++) {
        if (!group.isFault(state)) {
          continue;
        }
        for (Remedy remedy : group.fault(state).remedies()) {
          known.putIfAbsent(key(remedy), remedy);
          cures.computeIfAbsent(key(remedy), k -> new ArrayList<>()).add(group.fault(state).key());
          chance.merge(
              key(remedy), posterior.marginal(g, state) * remedy.probabilityOfCure(), Double::sum);
        }
      }
    }
    return known.values().stream()
        .filter(remedy -> chance.get(key(remedy)) >= NOT_WORTH)
        .sorted(
            Comparator.comparingDouble((Remedy r) -> -chance.get(key(r)) / minutes(r))
                .thenComparing(RepairPlan::key))
        .limit(MOST_REMEDIES)
        .toList();
  }

  private List<Diagnosis.PlanStep> steps() {
    boolean priced = remedies.stream().noneMatch(remedy -> Double.isNaN(price(remedy)));
    RepairOrder order =
        RepairOrder.best(
            remedies.size(),
            (remedy, done) -> priced ? price(remedies.get(remedy)) : minutes(remedies.get(remedy)),
            this::notWorking,
            priced ? newMachine() : Double.POSITIVE_INFINITY);
    List<Diagnosis.PlanStep> steps = new ArrayList<>();
    int done = 0;
    for (int number : order.remedies()) {
      double before = notWorking(done);
      done |= 1 << number;
      double cured = before - notWorking(done);
      if (cured < NOT_WORTH && !steps.isEmpty()) {
        break;
      }
      Remedy remedy = remedies.get(number);
      steps.add(
          new Diagnosis.PlanStep(
              remedy,
              cures.get(key(remedy)),
              chance(number, done & ~(1 << number)),
              price(remedy)));
    }
    return steps;
  }

  /** The chance that the machine does not work once these remedies are done. */
  private double notWorking(int done) {
    return 1 - posterior.expectation(cured(done));
  }

  /** The chance that a remedy finds and cures a fault that those before it have left. */
  private double chance(int number, int before) {
    double[][] same = cured(before);
    double[][] now = cured(before | 1 << number);
    for (int g = 0; g < same.length; g++) {
      for (int state = 0; state < same[g].length; state++) {
        same[g][state] = 1 - (now[g][state] - same[g][state]);
      }
    }
    return 1 - posterior.expectation(same);
  }

  /** The chance, for each state of each group, that the remedies done have put it right. */
  private double[][] cured(int done) {
    double[][] cured = new double[groups.size()][];
    for (int g = 0; g < cured.length; g++) {
      cured[g] = new double[helps[g].length];
      cured[g][Group.HEALTHY] = 1;
      for (int state = 0; state < cured[g].length; state++) {
        if (groups.get(g).isFault(state)) {
          cured[g][state] = cured(helps[g][state], done);
        }
      }
    }
    return cured;
  }

  private double cured(int helping, int done) {
    double left = 1;
    for (int bits = helping & done; bits != 0; bits &= bits - 1) {
      left *= 1 - remedies.get(Integer.numberOfTrailingZeros(bits)).probabilityOfCure();
    }
    return 1 - left;
  }

  /** For each state of each group the remedies that cure it, one bit each. */
  private int[][] helping() {
    int[][] helping = new int[groups.size()][];
    for (int g = 0; g < helping.length; g++) {
      Group group = groups.get(g);
      helping[g] = new int[group.states()];
      for (int state = 0; state < helping[g].length; state++) {
        helping[g][state] = group.isFault(state) ? helping(group.fault(state)) : 0;
      }
    }
    return helping;
  }

  private int helping(Fault fault) {
    int helping = 0;
    for (int number = 0; number < remedies.size(); number++) {
      helping |= cures.get(key(remedies.get(number))).contains(fault.key()) ? 1 << number : 0;
    }
    return helping;
  }

  private static double minutes(Remedy remedy) {
    return remedy.minutes() + (remedy.needsPart() ? PART_IN_MINUTES : 0);
  }

  private double newMachine() {
    return prices
        .flatMap(Prices::replacement)
        .map(
            price ->
                price.toDouble()
                    + prices.flatMap(Prices::installation).map(Money::toDouble).orElse(0.0))
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Work and part, in the currency of the job; NaN if a price is not stated. */
  private double price(Remedy remedy) {
    Optional<Double> labour =
        prices
            .flatMap(Prices::labourPerHour)
            .map(Money::toDouble)
            .map(perHour -> perHour * remedy.minutes() / 60);
    Optional<Double> part =
        remedy.needsPart()
            ? prices.map(p -> p.parts().get(key(remedy))).map(Money::toDouble)
            : Optional.of(0.0);
    return labour.isPresent() && part.isPresent() ? labour.get() + part.get() : Double.NaN;
  }
}
