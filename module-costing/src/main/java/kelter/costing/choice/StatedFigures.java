package kelter.costing.choice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Prices;
import kelter.core.option.LearnedLives;
import kelter.core.option.LearnedLives.LearnedLife;
import kelter.core.owner.PriceSpread;
import kelter.core.owner.Terms;
import kelter.core.owner.Use;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.CalendarDate;
import kelter.core.vocabulary.Statement;
import kelter.costing.life.ApplianceLife;
import kelter.costing.life.ComponentLives;
import kelter.costing.life.KindOfLife;
import kelter.costing.life.Weibull;
import kelter.costing.use.RunningCost;

/**
 * Reads the figures that a weighing rests on from a job, and notes what the job does not state.
 * What cannot be assumed is a mistake, and all mistakes are told at once.
 */
public final class StatedFigures {

  private static final double YEAR = QuantityKind.AGE.unit().factor();
  private static final double SECONDS_PER_MINUTE = 60;
  private static final double SECONDS_PER_DAY = 86_400;

  private final Job job;
  private final Prices prices;
  private final Terms terms;
  private final List<Statement> assumptions;
  private final List<String> nothing = new ArrayList<>();

  private StatedFigures(Job job, Prices prices, List<Statement> assumptions) {
    this.job = job;
    this.prices = prices;
    this.terms = prices.terms();
    this.assumptions = assumptions;
  }

  /**
   * Reads the figures from a job.
   *
   * @param job the job
   * @param work what work the options need
   * @param kind which studies speak for the machine
   * @param lives what somebody has learned of lives
   * @param assumptions where to put what the job does not state
   * @return the figures
   * @throws InputException if the job lacks what cannot be assumed; every such thing is told
   */
  public static Basis of(
      Job job, PlannedWork work, KindOfLife kind, LearnedLives lives, List<Statement> assumptions) {
    List<Problem> problems = new ArrayList<>();
    if (job.appliance().age().isEmpty()) {
      problems.add(
          new Problem(
              "/appliance/age",
              "is missing",
              "give the age of the machine, for instance \"8 a\"; what is left of its life"
                  + " depends on it"));
    }
    if (job.prices().isEmpty()) {
      problems.add(
          new Problem(
              "/prices",
              "is missing",
              "give the currency, the price of an hour of work and the price of a new machine"));
      throw new InputException(problems);
    }
    Prices prices = job.prices().get();
    require(prices, prices.labourPerHour(), "labour-per-hour", "an hour of work", problems);
    require(
        prices,
        prices.replacement(),
        "replacement",
        "a new machine (if none can be had, of the nearest that can: it values the years of the old"
            + " one)",
        problems);
    problems.addAll(work.missing(prices));
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return new StatedFigures(job, prices, assumptions).basis(work, kind, lives);
  }

  private static void require(
      Prices prices, Optional<Money> price, String name, String what, List<Problem> problems) {
    if (price.isEmpty()) {
      problems.add(
          new Problem(
              "/prices/" + name,
              "is missing",
              "give the price of %s in %s".formatted(what, prices.currency())));
    }
  }

  private Basis basis(PlannedWork work, KindOfLife kind, LearnedLives lives) {
    if (!kind.isStudied()) {
      assumptions.add(Assumption.KIND_NOT_STUDIED.with(kind.assumption()));
    }
    ApplianceLife used = UsedLife.of(kind, job.use(), assumptions);
    ApplianceLife life = withLearned(used, lives);
    Map<String, LearnedLife> learned = components(work, lives, used.mean() / kind.life().mean());
    Costs costs = costs();
    double repairWarranty = time(terms.repairWarranty(), YEAR, "warranty on the repair");
    double newWarranty = time(terms.newWarranty(), YEAR, "warranty on a new machine");
    Quantity stated = job.appliance().age().orElseThrow();
    double age = stated.si() / YEAR;
    if (age < newWarranty) {
      assumptions.add(Assumption.UNDER_WARRANTY.with());
    }
    Basis.Spread spread = spread();
    if (!nothing.isEmpty()) {
      assumptions.add(Assumption.TAKEN_AS_NOTHING.with(String.join("; ", nothing)));
    }
    double rate = rate();
    dates();
    return new Basis(
        age,
        stated.standardUncertaintySi() / YEAR,
        life,
        Basis.AS_THE_MACHINE,
        learned,
        costs,
        repairWarranty,
        newWarranty,
        rate,
        spread);
  }

  private ApplianceLife withLearned(ApplianceLife life, LearnedLives lives) {
    Optional<LearnedLife> learned = lives.machine(job.appliance().kind());
    if (learned.isEmpty()) {
      return life;
    }
    LearnedLife own = learned.get();
    assumptions.add(
        Assumption.LIFE_LEARNED.with(
            own.source().display(), QuantityFormat.fixed(own.weight(), 1)));
    return life.with(new Weibull(own.scale(), own.shape()), own.weight(), life.studies().size());
  }

  /**
   * What is known of the lives of the components that may be worked on: what was learned, else what
   * is remembered of households, scaled to the use here.
   */
  private Map<String, LearnedLife> components(PlannedWork work, LearnedLives lives, double scale) {
    Map<String, LearnedLife> known = new TreeMap<>();
    List<String> remembered = new ArrayList<>();
    for (Component component : job.appliance().components()) {
      if (!isWorkedOn(component.id(), work)) {
        continue;
      }
      Optional<LearnedLife> own = lives.component(component.kind());
      Optional<Weibull> memory = ComponentLives.of(component.kind());
      if (own.isPresent()) {
        known.put(component.id(), own.get());
        assumptions.add(
            Assumption.COMPONENT_LIFE_LEARNED.with(component.id(), own.get().source().display()));
      } else if (memory.isPresent()) {
        Weibull life = memory.get().stretched(scale);
        known.put(
            component.id(), new LearnedLife(life.scale(), life.shape(), 1, ComponentLives.SOURCE));
        remembered.add(component.id() + " " + QuantityFormat.fixed(life.mean(), 1) + " years");
      }
    }
    if (!remembered.isEmpty()) {
      assumptions.add(Assumption.COMPONENT_LIVES_REMEMBERED.with(String.join(", ", remembered)));
    }
    return known;
  }

  private static boolean isWorkedOn(String component, PlannedWork work) {
    return work.steps().values().stream()
        .anyMatch(step -> step.remedy().component().equals(component));
  }

  private static double si(Optional<Quantity> figure, double otherwise) {
    return figure.map(Quantity::si).orElse(otherwise);
  }

  private static double amount(Optional<Money> price) {
    return price.map(Money::toDouble).orElse(0.0);
  }

  private Costs costs() {
    double callOut = amount(prices.callOut(), "the price of the call-out");
    double installation =
        amount(
            prices.installation(),
            "the price of installing a new machine and taking the old one away");
    double[] running = running();
    double day = amount(terms.dayWithout(), "the cost of a day without the machine");
    double part = 0;
    double machine = 0;
    if (day > 0) {
      part = day * time(terms.partsDelivery(), SECONDS_PER_DAY, "the delivery time of parts");
      machine =
          day
              * time(
                  terms.replacementDelivery(),
                  SECONDS_PER_DAY,
                  "the delivery time of a new machine");
    }
    return new Costs(
        prices.labourPerHour().orElseThrow().toDouble(),
        time(terms.leastWork(), SECONDS_PER_MINUTE, "a least time of work that is charged"),
        callOut,
        credited(callOut) ? 0 : callOut,
        prices.replacement().orElseThrow().toDouble() + installation,
        running[0],
        running[1],
        part,
        machine);
  }

  private boolean credited(double callOut) {
    if (callOut > 0 && terms.callOutCredited().isEmpty()) {
      nothing.add("a credit for the call-out where the machine is mended");
    }
    return terms.callOutCredited().orElse(false);
  }

  private double amount(Optional<Money> price, String what) {
    return amount(noted(price, what));
  }

  private double time(Optional<Quantity> time, double unit, String what) {
    return si(noted(time, what), 0) / unit;
  }

  private <T> Optional<T> noted(Optional<T> figure, String what) {
    if (figure.isEmpty()) {
      nothing.add(what);
    }
    return figure;
  }

  private Basis.Spread spread() {
    PriceSpread stated = prices.spread();
    if (stated.repair().isEmpty() && stated.replacement().isEmpty() && stated.running().isEmpty()) {
      nothing.add("a spread of prices");
    }
    return new Basis.Spread(
        si(stated.repair(), 0), si(stated.replacement(), 0), si(stated.running(), 0));
  }

  private double[] running() {
    Optional<Double> old = running(prices.runningPerYear(), job.use().now(), "old");
    Optional<Double> young = running(prices.runningPerYearNew(), job.use().next(), "new");
    if (old.isEmpty() && young.isEmpty()) {
      assumptions.add(Assumption.NO_RUNNING_COSTS.with());
    } else if (young.isEmpty()) {
      assumptions.add(Assumption.NO_RUNNING_COST_NEW.with());
    } else if (old.isEmpty()) {
      assumptions.add(Assumption.NO_RUNNING_COST_OLD.with());
    }
    return new double[] {old.or(() -> young).orElse(0.0), young.or(() -> old).orElse(0.0)};
  }

  /** What is stated for a year, or else what cycles, energy, water and their prices come to. */
  private Optional<Double> running(
      Optional<Money> stated, Use.Consumption consumption, String which) {
    boolean energy =
        consumption.energy().isPresent() && prices.supplies().energyPerKilowattHour().isPresent();
    if (stated.isPresent() || !energy || job.use().cyclesPerWeek().isEmpty()) {
      return stated.map(Money::toDouble);
    }
    Optional<Money> water = prices.supplies().waterPerCubicMetre();
    Optional<Money> detergent = prices.supplies().detergentPerCycle();
    boolean wet = consumption.water().isPresent() && water.isPresent();
    assumptions.add(
        Assumption.RUNNING_COST_WORKED_OUT.with(
            which,
            wet ? " and water" : ", without water",
            detergent.isPresent() ? ", and the detergent." : ", without detergent."));
    double cycle =
        RunningCost.ofCycle(
            consumption.energy().get().si(),
            prices.supplies().energyPerKilowattHour().get().toDouble(),
            wet ? consumption.water().get().si() : 0,
            wet ? water.get().toDouble() : 0,
            amount(detergent));
    return Optional.of(cycle * job.use().cyclesPerWeek().get().si() * RunningCost.WEEKS_PER_YEAR);
  }

  private double rate() {
    if (prices.discountRate().isEmpty()) {
      assumptions.add(Assumption.NO_DISCOUNT_RATE.with());
    }
    return si(prices.discountRate(), Basis.USUAL_RATE);
  }

  private void dates() {
    Optional<LocalDate> day = terms.priceDate();
    if (day.isEmpty()) {
      assumptions.add(Assumption.NO_PRICE_DATE.with());
    } else {
      boolean old = day.get().plusYears(1).isBefore(CalendarDate.of(job.date()).orElse(day.get()));
      assumptions.add(
          Assumption.PRICE_DATE.with(day.get(), old ? ", more than a year before the call." : "."));
    }
  }
}
