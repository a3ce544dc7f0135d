package kelter.costing.weigh;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import kelter.core.option.Reasons.Influence;
import kelter.core.quantity.Money;
import kelter.core.quantity.QuantityFormat;
import kelter.core.vocabulary.Statement;
import kelter.costing.choice.Basis;
import kelter.costing.choice.Costs;
import kelter.costing.choice.Outcomes;
import kelter.costing.choice.States;
import kelter.costing.life.ApplianceLife;
import kelter.costing.life.Weibull;

/**
 * Moves one figure at a time and looks at what the best repair saves against replacing. How far a
 * figure is moved is a judgement unless the job states it: prices by a fifth or twice their spread,
 * the chance of failing by half and twice, the life of components by half and twice, the discount
 * rate from nothing to twice, the life of the machine from the least to the most hopeful study.
 */
final class Influences {
  private static final Statement AGE_OF_MACHINE =
      new Statement("age-of-machine", "age of the machine");
  private static final Statement LIFE_OF_MACHINES =
      new Statement("life-of-machines", "mean life of such machines");
  private static final Statement LIFE_OF_COMPONENT =
      new Statement("life-of-component", "mean life of the component");
  private static final Statement PRICE_OF_NEW_MACHINE =
      new Statement("price-of-new-machine", "price of a new machine, installed");
  private static final Statement RUNNING_COST_OLD =
      new Statement("running-cost-old", "running cost of the old machine a year");
  private static final Statement PRICES_OF_SUPPLIES =
      new Statement("prices-of-supplies", "prices of energy, water and detergent, against today's");
  private static final Statement DISCOUNT_RATE =
      new Statement("discount-rate", "discount rate a year");
  private static final Statement BILL_FOR_REPAIR =
      new Statement("bill-for-repair", "bill for the repair, without the call-out");
  private static final Statement CHANCE_OF_CURE =
      new Statement("chance-of-cure", "chance that the repair cures");

  /** All figures that may be told. */
  static final List<Statement> ALL =
      List.of(
          AGE_OF_MACHINE,
          LIFE_OF_MACHINES,
          LIFE_OF_COMPONENT,
          PRICE_OF_NEW_MACHINE,
          RUNNING_COST_OLD,
          PRICES_OF_SUPPLIES,
          DISCOUNT_RATE,
          BILL_FOR_REPAIR,
          CHANCE_OF_CURE);

  private static final double PRICE = 0.2;
  private static final double TWICE = 2;

  /** An age without a stated uncertainty is taken to be known to a year. */
  private static final double USUAL_AGE_ERROR = 1;

  private final OptionComparison comparison;
  private final OptionComparison.Weighed repair;
  private final OptionComparison.Weighed replacing;
  private final Costs costs;

  private Influences(
      OptionComparison comparison,
      OptionComparison.Weighed repair,
      OptionComparison.Weighed replacing) {
    this.comparison = comparison;
    this.repair = repair;
    this.replacing = replacing;
    this.costs = comparison.basis().costs();
  }

  /** What moves the answer, the strongest first; empty if there is no repair. */
  static List<Influence> of(OptionComparison comparison) {
    Optional<OptionComparison.Weighed> best = comparison.bestRepair();
    List<Influence> influences = new ArrayList<>();
    if (best.isPresent() && comparison.replacing().isPresent()) {
      influences.addAll(new Influences(comparison, best.get(), comparison.replacing().get()).all());
    }
    return strongestFirst(influences);
  }

  private static List<Influence> strongestFirst(List<Influence> influences) {
    return influences.stream()
        .filter(each -> strength(each) != 0)
        .sorted(
            Comparator.comparingDouble(Influences::strength)
                .reversed()
                .thenComparing(Influence::what))
        .toList();
  }

  private static double strength(Influence influence) {
    return Math.abs(influence.savingHigh() - influence.savingLow());
  }

  private List<Influence> all() {
    return List.of(
        age(),
        life(),
        componentLife(),
        bill(),
        newMachine(),
        running(),
        supplies(),
        rate(),
        chanceOfCure());
  }

  private Influence age() {
    Basis basis = comparison.basis();
    double error = basis.ageUncertainty() > 0 ? 2 * basis.ageUncertainty() : USUAL_AGE_ERROR;
    double low = Math.max(0, basis.age() - error);
    double high = basis.age() + error;
    return moved(AGE_OF_MACHINE, low, high, Influences::years, basis::withAge);
  }

  private Influence life() {
    Basis basis = comparison.basis();
    List<Weibull> studies = basis.life().studies();
    Comparator<Weibull> byMean = Comparator.comparingDouble(Weibull::mean);
    Weibull least = Collections.min(studies, byMean);
    Weibull most = Collections.max(studies, byMean);
    return new Influence(
        LIFE_OF_MACHINES.id(),
        LIFE_OF_MACHINES.text(),
        years(least.mean()),
        years(most.mean()),
        saving(basis.withLife(new ApplianceLife(List.of(least)), basis.componentLife())),
        saving(basis.withLife(new ApplianceLife(List.of(most)), basis.componentLife())));
  }

  private Influence componentLife() {
    Basis basis = comparison.basis();
    double mean = meanOfComponent(basis);
    return moved(
        LIFE_OF_COMPONENT,
        1 / TWICE,
        TWICE,
        times -> years(mean * times),
        times -> basis.withLife(basis.life(), basis.componentLife() * times));
  }

  /** Of the component that the repair works on first. */
  private double meanOfComponent(Basis basis) {
    int group = basis.group(repair.candidate().steps().get(0).remedy().component());
    ApplianceLife life = basis.life();
    double mean = 0;
    for (int i = 0; i < life.studies().size(); i++) {
      mean += life.shares().get(i) * basis.component(life.studies().get(i), group).mean();
    }
    return mean;
  }

  private Influence newMachine() {
    return moved(
        PRICE_OF_NEW_MACHINE,
        share(comparison.basis().spread().replacement()),
        times -> money(costs.newMachine() * times),
        times -> costs.with(costs.newMachine() * times, costs.running(), costs.runningNew()));
  }

  private Influence running() {
    return moved(
        RUNNING_COST_OLD,
        PRICE,
        times -> money(costs.running() * times),
        times -> costs.with(costs.newMachine(), costs.running() * times, costs.runningNew()));
  }

  /** What both machines use gets dearer or cheaper alike. */
  private Influence supplies() {
    return moved(
        PRICES_OF_SUPPLIES,
        share(comparison.basis().spread().running()),
        Influences::percent,
        times ->
            costs.with(costs.newMachine(), costs.running() * times, costs.runningNew() * times));
  }

  /** By how much prices are moved: twice the deviation that the job states, or a fifth. */
  private static double share(double spread) {
    return spread > 0 ? Math.min(1, 2 * spread) : PRICE;
  }

  private Influence rate() {
    Basis basis = comparison.basis();
    double high = Math.max(basis.rate(), Basis.USUAL_RATE) * TWICE;
    return new Influence(
        DISCOUNT_RATE.id(),
        DISCOUNT_RATE.text(),
        "0 %",
        QuantityFormat.fixed(100 * high, 1) + " %",
        saving(basis.withRate(0)),
        saving(basis.withRate(high)));
  }

  private Influence bill() {
    double callOut = costs.callOutWithWork();
    double work = repair.outcomes().meanBill(comparison.states()) - callOut;
    double share = share(comparison.basis().spread().repair());
    return new Influence(
        BILL_FOR_REPAIR.id(),
        BILL_FOR_REPAIR.text(),
        money(work * (1 - share)),
        money(work * (1 + share)),
        saving(repair.outcomes().dearer(1 - share, callOut)),
        saving(repair.outcomes().dearer(1 + share, callOut)));
  }

  private Influence chanceOfCure() {
    Outcomes likelier = repair.outcomes().failing(1 / TWICE);
    Outcomes unlikelier = repair.outcomes().failing(TWICE);
    return new Influence(
        CHANCE_OF_CURE.id(),
        CHANCE_OF_CURE.text(),
        percent(unlikelier.chanceOfCure(comparison.states())),
        percent(likelier.chanceOfCure(comparison.states())),
        saving(unlikelier),
        saving(likelier));
  }

  /** What the repair saves if it turns out otherwise, all figures as they are. */
  private double saving(Outcomes changed) {
    return replacing.mean() - comparison.expectation().annualCost(changed, comparison.states());
  }

  /** A cost that is so much lower and higher, as a ratio of today's. */
  private Influence moved(
      Statement what, double share, DoubleFunction<String> told, DoubleFunction<Costs> changed) {
    return moved(
        what,
        1 - share,
        1 + share,
        told,
        times -> comparison.basis().withCosts(changed.apply(times)));
  }

  private Influence moved(
      Statement what,
      double low,
      double high,
      DoubleFunction<String> told,
      DoubleFunction<Basis> changed) {
    return new Influence(
        what.id(),
        what.text(),
        told.apply(low),
        told.apply(high),
        saving(changed.apply(low)),
        saving(changed.apply(high)));
  }

  private double saving(Basis basis) {
    Expectation expectation =
        Expectation.of(basis, List.of(repair.outcomes(), replacing.outcomes()));
    States states = comparison.states();
    return expectation.annualCost(replacing.outcomes(), states)
        - expectation.annualCost(repair.outcomes(), states);
  }

  private String money(double amount) {
    return Money.rounded(amount, comparison.prices().currency());
  }

  static String percent(double ratio) {
    return QuantityFormat.fixed(100 * ratio, 0) + " %";
  }

  private static String years(double years) {
    return QuantityFormat.fixed(years, 1) + " a";
  }
}
