package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.Remedy;
import kelter.core.diagnosis.likelihood.Group;
import kelter.core.job.Prices;
import kelter.core.quantity.Money;

/**
 * Which remedies to try, in which order, before a new machine: the order of least expected cost by
 * {@link RepairOrder}. A part without a price counts for a tenth of a new machine, from memory;
 * where the job does not state that either, or no price of work, time stands for cost.
 */
final class RepairPlan {

  /** A remedy that cures less than this is not thought of. */
  private static final double NOT_WORTH = 0.02;

  private static final int MOST_REMEDIES = 8;

  /** A difference of so small a part of the cost is the rounding of its sums. */
  private static final double ROUNDING = 1e-12;

  /**
   * What a part counts for, in minutes of work, where the job states no prices; common practice.
   */
  private static final double PART_IN_MINUTES = 30;

  /** What a part counts for where its price is not stated, as a ratio; from memory. */
  private static final double PART_OF_A_NEW_MACHINE = 0.1;

  private final Predicate<String> mended;
  private final List<Group> groups;
  private final JointPosterior posterior;
  private final Optional<Prices> prices;
  private final List<Remedy> remedies;
  private final CureChances sets;
  private final boolean priced;
  private final double[] cost;
  private final double costNow;
  private final Map<String, List<String>> cures = new LinkedHashMap<>();

  private RepairPlan(
      List<Group> groups,
      JointPosterior posterior,
      Optional<Prices> prices,
      Predicate<String> mended) {
    this.mended = mended;
    this.groups = groups;
    this.posterior = posterior;
    this.prices = prices;
    this.remedies = worthTrying();
    this.sets = new CureChances(groups, posterior, helping(), failing());
    this.priced = priced();
    this.cost = new double[remedies.size()];
    for (int number = 0; number < cost.length; number++) {
      cost[number] = priced ? counted(remedies.get(number)) : minutes(remedies.get(number));
    }
    this.costNow = cost(sets.notWorking());
  }

  private boolean priced() {
    boolean priced = true;
    for (Remedy remedy : remedies) {
      priced &= !Double.isNaN(counted(remedy));
    }
    return priced;
  }

  /**
   * A plan.
   *
   * @param mended whether work on a component may be proposed
   */
  static RepairPlan of(
      List<Group> groups,
      JointPosterior posterior,
      Optional<Prices> prices,
      Predicate<String> mended) {
    return new RepairPlan(groups, posterior, prices, mended);
  }

  /** The remedies that cure most for their cost. */
  private List<Remedy> worthTrying() {
    Map<String, Remedy> known = new LinkedHashMap<>();
    Map<String, Double> chance = new LinkedHashMap<>();
    for (int g = 0; g < groups.size(); g++) {
      for (int place = 0; place < groups.get(g).faults().size(); place++) {
        Fault fault = groups.get(g).faults().get(place);
        double probability = posterior.fault(g, place);
        for (Remedy remedy : permitted(fault)) {
          known.putIfAbsent(remedy.key(), remedy);
          cures.putIfAbsent(remedy.key(), new ArrayList<>());
          cures.get(remedy.key()).add(fault.key());
          double before = chance.getOrDefault(remedy.key(), 0.0);
          chance.put(remedy.key(), before + probability * remedy.probabilityOfCure());
        }
      }
    }
    List<Remedy> worth = new ArrayList<>();
    for (Remedy remedy : known.values()) {
      if (chance.get(remedy.key()) >= NOT_WORTH) {
        worth.add(remedy);
      }
    }
    worth.sort(GreatestFirst.by(r -> chance.get(r.key()) / minutes(r), Remedy::key));
    return List.copyOf(worth.subList(0, Math.min(MOST_REMEDIES, worth.size())));
  }

  /** The remedies of a fault that may be proposed. */
  private List<Remedy> permitted(Fault fault) {
    List<Remedy> permitted = new ArrayList<>(fault.remedies());
    permitted.removeIf(remedy -> !mended.test(remedy.component()));
    return permitted;
  }

  private RepairOrder order(double[] notWorking) {
    return RepairOrder.best(
        remedies.size(),
        (remedy, done) -> cost[remedy],
        notWorking,
        priced ? newMachine() : Double.POSITIVE_INFINITY);
  }

  /** The remedies in their order. */
  List<Diagnosis.PlanStep> steps() {
    double[] notWorking = sets.notWorking();
    RepairOrder order = order(notWorking);
    List<Diagnosis.PlanStep> steps = new ArrayList<>();
    int done = 0;
    for (int number : order.remedies()) {
      double before = notWorking[done];
      done |= 1 << number;
      double cured = before - notWorking[done];
      if (cured < NOT_WORTH && !steps.isEmpty()) {
        break;
      }
      Remedy remedy = remedies.get(number);
      steps.add(
          new Diagnosis.PlanStep(
              remedy,
              cures.get(remedy.key()),
              sets.chance(number, done & ~(1 << number)),
              price(remedy)));
    }
    return steps;
  }

  /**
   * By how much a measurement lowers the expected cost of the repair, its own left out (the
   * expected value of sample information; Raiffa and Schlaifer, Applied Statistical Decision
   * Theory, 1961, from memory): the best order now, less the best order for each outcome. Never
   * negative.
   */
  double worth(int group, AnswerOutcomes outcomes) {
    double after = 0;
    for (int outcome = 0; outcome < outcomes.count(); outcome++) {
      after += cost(sets.notWorking(group, outcomes.likelihood(outcome)));
    }
    return gain(after);
  }

  /** The same for a measurement on each of two groups. */
  double worth(int one, AnswerOutcomes ofOne, int other, AnswerOutcomes ofOther) {
    double after = 0;
    for (int first = 0; first < ofOne.count(); first++) {
      for (int second = 0; second < ofOther.count(); second++) {
        after +=
            cost(sets.notWorking(one, ofOne.likelihood(first), other, ofOther.likelihood(second)));
      }
    }
    return gain(after);
  }

  /** What is left of the difference when rounding errors are not taken for a gain. */
  private double gain(double after) {
    double gain = costNow - after;
    return gain > ROUNDING * costNow ? gain : 0;
  }

  /** What some minutes cost, in what remedies are counted in. */
  double costOf(double minutes) {
    if (!priced) {
      return minutes;
    }
    Optional<Money> labour = labourPerHour();
    return labour.isPresent() ? labour.get().toDouble() * minutes / 60 : 0;
  }

  /** The remedies of a fault that is known to be there, in the order of least expected cost. */
  List<Remedy> inOrder(Fault fault) {
    List<Remedy> order = permitted(fault);
    boolean allPriced = order.stream().noneMatch(r -> Double.isNaN(counted(r)));
    order.sort(
        GreatestFirst.by(
            r -> -(allPriced ? counted(r) : minutes(r)) / r.probabilityOfCure(), Remedy::key));
    return order;
  }

  /** The expected cost of the best order, times the probability of what was seen. */
  private double cost(double[] notWorking) {
    return order(notWorking).expectedCost();
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

  /** For each fault of each group the remedies that cure it, one bit each. */
  private int[][] helping() {
    int[][] helping = new int[groups.size()][];
    for (int g = 0; g < helping.length; g++) {
      List<Fault> faults = groups.get(g).faults();
      helping[g] = new int[faults.size()];
      for (int place = 0; place < helping[g].length; place++) {
        helping[g][place] = helping(faults.get(place));
      }
    }
    return helping;
  }

  private int helping(Fault fault) {
    int helping = 0;
    for (int number = 0; number < remedies.size(); number++) {
      helping |= cures.get(remedies.get(number).key()).contains(fault.key()) ? 1 << number : 0;
    }
    return helping;
  }

  private static double minutes(Remedy remedy) {
    return remedy.minutes() + (remedy.needsPart() ? PART_IN_MINUTES : 0);
  }

  private double newMachine() {
    if (prices.isEmpty()
        || prices.get().replacement().isEmpty()
        || !prices.get().terms().replacementAvailable().orElse(true)) {
      return Double.POSITIVE_INFINITY;
    }
    Optional<Money> installation = prices.get().installation();
    return prices.get().replacement().get().toDouble()
        + (installation.isPresent() ? installation.get().toDouble() : 0);
  }

  private Optional<Money> labourPerHour() {
    return prices.isPresent() ? prices.get().labourPerHour() : Optional.empty();
  }

  /** The same with a usual price of the part where none is stated; NaN if none can be taken. */
  private double counted(Remedy remedy) {
    double stated = price(remedy);
    if (!Double.isNaN(stated) || labourPerHour().isEmpty() || replacement().isEmpty()) {
      return stated;
    }
    return labourPerHour().get().toDouble() * remedy.minutes() / 60
        + PART_OF_A_NEW_MACHINE * replacement().get().toDouble();
  }

  private Optional<Money> replacement() {
    return prices.isPresent() ? prices.get().replacement() : Optional.empty();
  }

  /** Work and part, in the currency of the job; NaN if a price is not stated. */
  private double price(Remedy remedy) {
    Optional<Money> labour = labourPerHour();
    if (labour.isEmpty()) {
      return Double.NaN;
    }
    double work = labour.get().toDouble() * remedy.minutes() / 60;
    if (!remedy.needsPart()) {
      return work;
    }
    Optional<Money> part = prices.get().part(remedy.component(), remedy.id());
    return part.isPresent() ? work + part.get().toDouble() : Double.NaN;
  }
}
