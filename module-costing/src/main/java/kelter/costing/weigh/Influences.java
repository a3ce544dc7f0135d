package kelter.costing.weigh;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.option.Reasons.Influence;
import kelter.costing.choice.Basis;
import kelter.costing.choice.Costs;
import kelter.costing.choice.Outcomes;
import kelter.costing.choice.Rounded;
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

  private static final double PRICE = 0.2;
  private static final double TWICE = 2;

  /** An age without a stated uncertainty is taken to be known to a year. */
  private static final double USUAL_AGE_ERROR = 1;

  private final Comparison comparison;
  private final Comparison.Weighed repair;
  private final Comparison.Weighed replacing;
  private final Costs costs;

  private Influences(
      Comparison comparison, Comparison.Weighed repair, Comparison.Weighed replacing) {
    this.comparison = comparison;
    this.repair = repair;
    this.replacing = replacing;
    this.costs = comparison.basis().costs();
  }

  /** What moves the answer, the strongest first; empty if there is no repair. */
  static List<Influence> of(Comparison comparison) {
    Optional<Comparison.Weighed> best = comparison.bestRepair();
    List<Influence> influences = new ArrayList<>();
    if (best.isPresent() && comparison.replacing().isPresent()) {
      influences.addAll(new Influences(comparison, best.get(), comparison.replacing().get()).all());
    }
    return strongestFirst(influences);
  }

  /** Those that move anything, sorted by insertion: they are few. */
  private static List<Influence> strongestFirst(List<Influence> influences) {
    List<Influence> sorted = new ArrayList<>();
    for (Influence each : influences) {
      int place = sorted.size();
      while (place > 0 && isStronger(each, sorted.get(place - 1))) {
        place--;
      }
      if (strength(each) != 0) {
        sorted.add(place, each);
      }
    }
    return sorted;
  }

  private static boolean isStronger(Influence one, Influence other) {
    return strength(one) > strength(other)
        || (strength(one) == strength(other) && one.what().compareTo(other.what()) < 0);
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
    return figure(
        "age of the machine", years(low), years(high), basis.withAge(low), basis.withAge(high));
  }

  private Influence life() {
    Basis basis = comparison.basis();
    Weibull least = basis.life().studies().get(0);
    Weibull most = least;
    for (Weibull study : basis.life().studies()) {
      least = study.mean() < least.mean() ? study : least;
      most = study.mean() > most.mean() ? study : most;
    }
    return figure(
        "mean life of such machines",
        years(least.mean()),
        years(most.mean()),
        basis.withLife(new ApplianceLife(List.of(least)), basis.componentLife()),
        basis.withLife(new ApplianceLife(List.of(most)), basis.componentLife()));
  }

  private Influence componentLife() {
    Basis basis = comparison.basis();
    double mean = meanOfComponent(basis);
    return figure(
        "mean life of the component",
        years(mean / TWICE),
        years(mean * TWICE),
        basis.withLife(basis.life(), basis.componentLife() / TWICE),
        basis.withLife(basis.life(), basis.componentLife() * TWICE));
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
    double price = costs.newMachine();
    double share = share(comparison.basis().spread().replacement());
    return figure(
        "price of a new machine, installed",
        money(price * (1 - share)),
        money(price * (1 + share)),
        withCosts(price * (1 - share), costs.running(), costs.runningNew()),
        withCosts(price * (1 + share), costs.running(), costs.runningNew()));
  }

  private Influence running() {
    double running = costs.running();
    return figure(
        "running cost of the old machine a year",
        money(running * (1 - PRICE)),
        money(running * (1 + PRICE)),
        withCosts(costs.newMachine(), running * (1 - PRICE), costs.runningNew()),
        withCosts(costs.newMachine(), running * (1 + PRICE), costs.runningNew()));
  }

  /** What both machines use gets dearer or cheaper alike. */
  private Influence supplies() {
    double share = share(comparison.basis().spread().running());
    double old = costs.running();
    double young = costs.runningNew();
    return figure(
        "prices of energy, water and detergent, against today's",
        Rounded.percent(1 - share),
        Rounded.percent(1 + share),
        withCosts(costs.newMachine(), old * (1 - share), young * (1 - share)),
        withCosts(costs.newMachine(), old * (1 + share), young * (1 + share)));
  }

  /** By how much prices are moved: twice the deviation that the job states, or a fifth. */
  private static double share(double spread) {
    return spread > 0 ? Math.min(1, 2 * spread) : PRICE;
  }

  private Basis withCosts(double newMachine, double running, double runningNew) {
    return comparison
        .basis()
        .withCosts(
            new Costs(
                costs.labourPerHour(),
                costs.leastMinutes(),
                costs.callOut(),
                costs.callOutWithWork(),
                newMachine,
                running,
                runningNew,
                costs.waitForPart(),
                costs.waitForMachine()));
  }

  private Influence rate() {
    Basis basis = comparison.basis();
    double high = Math.max(basis.rate(), Basis.USUAL_RATE) * TWICE;
    return figure(
        "discount rate a year",
        "0 %",
        Rounded.decimal(100 * high, 1) + " %",
        basis.withRate(0),
        basis.withRate(high));
  }

  private Influence bill() {
    double callOut = costs.callOutWithWork();
    double work = repair.outcomes().meanBill(comparison.states()) - callOut;
    double share = share(comparison.basis().spread().repair());
    return new Influence(
        "bill for the repair, without the call-out",
        money(work * (1 - share)),
        money(work * (1 + share)),
        saving(repair.outcomes().dearer(1 - share, callOut)),
        saving(repair.outcomes().dearer(1 + share, callOut)));
  }

  private Influence chanceOfCure() {
    Outcomes likelier = repair.outcomes().failing(1 / TWICE);
    Outcomes unlikelier = repair.outcomes().failing(TWICE);
    return new Influence(
        "chance that the repair cures",
        Rounded.percent(unlikelier.chanceOfCure(comparison.states())),
        Rounded.percent(likelier.chanceOfCure(comparison.states())),
        saving(unlikelier),
        saving(likelier));
  }

  /** What the repair saves if it turns out otherwise, all figures as they are. */
  private double saving(Outcomes changed) {
    return replacing.mean() - comparison.expectation().annualCost(changed, comparison.states());
  }

  private Influence figure(String what, String low, String high, Basis least, Basis most) {
    return new Influence(what, low, high, saving(least), saving(most));
  }

  private double saving(Basis basis) {
    Expectation expectation =
        Expectation.of(basis, List.of(repair.outcomes(), replacing.outcomes()));
    States states = comparison.states();
    return expectation.annualCost(replacing.outcomes(), states)
        - expectation.annualCost(repair.outcomes(), states);
  }

  private String money(double amount) {
    return Rounded.money(amount, comparison.prices().currency());
  }

  private static String years(double years) {
    return Rounded.decimal(years, 1) + " a";
  }
}
