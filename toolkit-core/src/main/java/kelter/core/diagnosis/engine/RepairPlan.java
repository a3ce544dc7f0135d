package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.Remedy;
import kelter.core.diagnosis.decision.RepairOrder;
import kelter.core.diagnosis.weighing.Group;
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
  private final int[][][] helps;
  private final int[][] curable;
  private final double[] failing;
  private final boolean priced;
  private final double[] cost;
  private final Map<String, List<String>> cures = new LinkedHashMap<>();

  private RepairPlan(List<Group> groups, JointPosterior posterior, Optional<Prices> prices) {
    this.groups = groups;
    this.posterior = posterior;
    this.prices = prices;
    this.remedies = worthTrying();
    this.helps = helping();
    this.curable = curable();
    this.failing = failing();
    this.priced = remedies.stream().noneMatch(remedy -> Double.isNaN(price(remedy)));
    this.cost = remedies.stream().mapToDouble(r -> priced ? price(r) : minutes(r)).toArray();
  }

  static RepairPlan of(List<Group> groups, JointPosterior posterior, Optional<Prices> prices) {
    return new RepairPlan(groups, posterior, prices);
  }

  private static String key(Remedy remedy) {
    return remedy.component() + "." + remedy.id();
  }

  /** The remedies that cure most for their cost. */
  private List<Remedy> worthTrying() {
    Map<String, Remedy> known = new LinkedHashMap<>();
    Map<String, Double> chance = new LinkedHashMap<>();
    for (int g = 0; g < groups.size(); g++) {
      for (int place = 0; place < groups.get(g).faults().size(); place++) {
        Fault fault = groups.get(g).faults().get(place);
        double probability = posterior.fault(g, place);
        for (Remedy remedy : fault.remedies()) {
          known.putIfAbsent(key(remedy), remedy);
          cures.computeIfAbsent(key(remedy), k -> new ArrayList<>()).add(fault.key());
          chance.merge(key(remedy), probability * remedy.probabilityOfCure(), Double::sum);
        }
      }
    }
    return known.values().stream()
        .filter(remedy -> chance.get(key(remedy)) >= NOT_WORTH)
        .sorted(GreatestFirst.by(r -> chance.get(key(r)) / minutes(r), RepairPlan::key))
        .limit(MOST_REMEDIES)
        .toList();
  }

  private RepairOrder order(IntToDoubleFunction notWorking) {
    return RepairOrder.best(
        remedies.size(),
        (remedy, done) -> cost[remedy],
        notWorking,
        priced ? newMachine() : Double.POSITIVE_INFINITY);
  }

  /** The remedies in their order. */
  List<Diagnosis.PlanStep> steps() {
    RepairOrder order = order(this::notWorking);
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
    return 1 - posterior.expectation(curable, cured(done, null));
  }

  /** The chance that a remedy finds and cures a fault that those before it have left. */
  private double chance(int number, int before) {
    double[][] same = new double[groups.size()][];
    for (int g = 0; g < same.length; g++) {
      same[g] = new double[helps[g].length];
      for (int state = 0; state < same[g].length; state++) {
        same[g][state] = 1;
        for (int helping : helps[g][state]) {
          same[g][state] *= 1 - cured(helping, before | 1 << number) + cured(helping, before);
        }
      }
    }
    return 1 - posterior.expectation(same);
  }

  /**
   * By how much a measurement lowers the expected cost of the repair, its own left out (the
   * expected value of sample information; Raiffa and Schlaifer, Applied Statistical Decision
   * Theory, 1961, from memory): the best order now, less the best order for each outcome. Never
   * negative.
   */
  double worth(int group, Outcomes outcomes) {
    double after = 0;
    double[][] likelihood = new double[groups.size()][];
    for (int outcome = 0; outcome < outcomes.count(); outcome++) {
      likelihood[group] = outcomes.likelihood(outcome);
      after += cost(likelihood);
    }
    return Math.max(0, cost(new double[groups.size()][]) - after);
  }

  /** The same for a measurement on each of two groups. */
  double worth(int one, Outcomes ofOne, int other, Outcomes ofOther) {
    double after = 0;
    double[][] likelihood = new double[groups.size()][];
    for (int first = 0; first < ofOne.count(); first++) {
      likelihood[one] = ofOne.likelihood(first);
      for (int second = 0; second < ofOther.count(); second++) {
        likelihood[other] = ofOther.likelihood(second);
        after += cost(likelihood);
      }
    }
    return Math.max(0, cost(new double[groups.size()][]) - after);
  }

  /** What some minutes cost, in what remedies are counted in. */
  double costOf(double minutes) {
    return priced
        ? prices.flatMap(Prices::labourPerHour).map(p -> p.toDouble() * minutes / 60).orElse(0.0)
        : minutes;
  }

  /**
   * The expected cost of the best order, times the probability of what was seen.
   *
   * @param likelihood for each group how likely what was seen is in each of its states; null where
   *     nothing was seen of it
   */
  private double cost(double[][] likelihood) {
    double seen = posterior.expectation(likelihood);
    return order(
            done -> Math.max(0, seen - posterior.expectation(curable, cured(done, likelihood))))
        .expectedCost();
  }

  /** The chance, for each curable state of each group, that the remedies done have put it right. */
  private double[][] cured(int done, double[][] likelihood) {
    double[][] cured = new double[curable.length][];
    for (int g = 0; g < cured.length; g++) {
      cured[g] = new double[curable[g].length];
      for (int i = 0; i < cured[g].length; i++) {
        int state = curable[g][i];
        double chance = likelihood == null || likelihood[g] == null ? 1 : likelihood[g][state];
        for (int helping : helps[g][state]) {
          chance *= cured(helping, done);
        }
        cured[g][i] = chance;
      }
    }
    return cured;
  }

  private double cured(int helping, int done) {
    return 1 - failing[helping & done];
  }

  /** The chance, for each set of remedies, that all of them fail to cure a fault that they help. */
  private double[] failing() {
    double[] chance = new double[1 << remedies.size()];
    chance[0] = 1;
    for (int set = 1; set < chance.length; set++) {
      int last = Integer.numberOfTrailingZeros(set);
      chance[set] = chance[set & (set - 1)] * (1 - remedies.get(last).probabilityOfCure());
    }
    return chance;
  }

  /** For each fault of each state of each group the remedies that cure it, one bit each. */
  private int[][][] helping() {
    int[][][] helping = new int[groups.size()][][];
    for (int g = 0; g < helping.length; g++) {
      Group group = groups.get(g);
      int[] ofFault = group.faults().stream().mapToInt(this::helping).toArray();
      helping[g] = new int[group.states()][];
      for (int state = 0; state < helping[g].length; state++) {
        int[] present = group.faultsOf(state);
        helping[g][state] = new int[present.length];
        for (int i = 0; i < present.length; i++) {
          helping[g][state][i] = ofFault[present[i]];
        }
      }
    }
    return helping;
  }

  /** The states of each group in which nothing is left that no remedy helps. */
  private int[][] curable() {
    int[][] curable = new int[groups.size()][];
    for (int g = 0; g < curable.length; g++) {
      int[] states = new int[helps[g].length];
      int count = 0;
      for (int state = 0; state < states.length; state++) {
        boolean helped = state != groups.get(g).unexplainedState();
        for (int helping : helps[g][state]) {
          helped &= helping != 0;
        }
        if (helped) {
          states[count++] = state;
        }
      }
      curable[g] = Arrays.copyOf(states, count);
    }
    return curable;
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
        .filter(p -> p.terms().replacementAvailable().orElse(true))
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
