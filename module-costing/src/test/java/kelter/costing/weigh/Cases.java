package kelter.costing.weigh;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.diagnosis.Conclusion;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Diagnosis.FaultProbability;
import kelter.core.diagnosis.Diagnosis.PlanStep;
import kelter.core.diagnosis.Diagnosis.PresentFault;
import kelter.core.diagnosis.Diagnosis.RankedState;
import kelter.core.diagnosis.Diagnosis.Severity;
import kelter.core.diagnosis.Diagnosis.Unexplained;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.Remedy;
import kelter.core.diagnosis.Remedy.Restores;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Job;
import kelter.core.job.Nameplate;
import kelter.core.job.Prices;
import kelter.core.option.LearnedLives;
import kelter.core.owner.PriceSpread;
import kelter.core.owner.Supplies;
import kelter.core.owner.Terms;
import kelter.core.owner.Use;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.Unit;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.costing.life.KindOfLife;
import kelter.costing.life.Weibull;

/** Made-up jobs and diagnoses. */
final class Cases {

  static final Currency EUR = Currency.getInstance("EUR");

  static final Remedy CLEAN = remedy("clean-sump", Restores.FUNCTION, 30, false, 0.9);
  static final Remedy SEAL = remedy("renew-seal", Restores.PART, 60, true, 0.8);
  static final Remedy PUMP = remedy("renew-pump", Restores.COMPONENT, 45, true, 0.98);

  static final Fault BLOCKED = fault("blocked", CLEAN, PUMP);
  static final Fault LEAKING = fault("leaking", SEAL, PUMP);

  private static final Severity SEVERE = new Severity(0.6, 0.2);

  private Cases() {}

  static Remedy remedy(String id, Restores restores, double minutes, boolean part, double chance) {
    return remedy("drain-pump", id, restores, minutes, part, chance);
  }

  static Remedy remedy(
      String component, String id, Restores restores, double minutes, boolean part, double chance) {
    return new Remedy(id, component, "Do " + id, minutes, restores, part, chance, List.of());
  }

  static Fault fault(String id, Remedy... remedies) {
    Source made = new Source("a made-up machine", Standing.INVENTED);
    return new Fault(
        id, "drain-pump", "It is " + id, 0.1, made, List.of(remedies), Optional.empty());
  }

  static RankedState state(double probability, Fault... faults) {
    List<PresentFault> present = new ArrayList<>();
    for (Fault fault : faults) {
      present.add(new PresentFault(fault, SEVERE));
    }
    return new RankedState(present, false, probability, List.of(), List.of());
  }

  /** The two faults of the drain pump, both, none, or something else. */
  static Diagnosis diagnosis(double blocked, double leaking, double both, double healthy) {
    double other = 1 - blocked - leaking - both - healthy;
    return diagnosis(
        List.of(
            state(blocked, BLOCKED),
            state(leaking, LEAKING),
            state(both, BLOCKED, LEAKING),
            state(healthy),
            new RankedState(List.of(), true, other, List.of(), List.of())),
        List.of(
            new FaultProbability(BLOCKED, blocked + both, SEVERE),
            new FaultProbability(LEAKING, leaking + both, SEVERE)),
        healthy,
        new Unexplained(other, 0.5),
        List.of(),
        List.of(
            new PlanStep(CLEAN, List.of("drain-pump.blocked"), 0.9 * blocked, 30),
            new PlanStep(SEAL, List.of("drain-pump.leaking"), 0.8 * leaking, 80),
            new PlanStep(
                PUMP, List.of("drain-pump.blocked", "drain-pump.leaking"), 0.98 * blocked, 150)),
        List.of());
  }

  /** A pump that leaks for sure, cured by a new one. */
  static Diagnosis certain(Remedy remedy) {
    Fault fault = fault("leaking", remedy);
    return diagnosis(
        List.of(state(1, fault)),
        List.of(new FaultProbability(fault, 1, SEVERE)),
        0,
        new Unexplained(0, 1),
        List.of(),
        List.of(new PlanStep(remedy, List.of(fault.key()), remedy.probabilityOfCure(), 1)),
        List.of());
  }

  static Money eur(double amount) {
    return new Money(BigDecimal.valueOf(amount), EUR);
  }

  static Optional<Money> some(double amount) {
    return Optional.of(eur(amount));
  }

  /** Prices with nothing left to assume. */
  static Prices prices(double seal, double pump, double machine, double rate) {
    Map<String, Money> parts = new LinkedHashMap<>();
    parts.put("renew-seal", eur(seal));
    parts.put("renew-pump", eur(pump));
    return new Prices(
        EUR,
        some(60),
        some(45),
        some(machine),
        some(50),
        some(80),
        some(80),
        Optional.of(Quantity.of(rate, "%", QuantityKind.PERCENT)),
        parts);
  }

  static Job job(String kind, double age, Optional<Prices> prices) {
    Appliance appliance =
        new Appliance(
            kind,
            "",
            "",
            "",
            Double.isNaN(age)
                ? Optional.empty()
                : Optional.of(Quantity.of(age, "a", QuantityKind.AGE)),
            Nameplate.UNREADABLE,
            List.of());
    return new Job(
        "case",
        "",
        appliance,
        new Complaint("water stays in it", ""),
        List.of(),
        List.of(),
        prices);
  }

  static Job washer(double age, Prices prices) {
    return job("washing-machine", age, Optional.of(prices));
  }

  /**
   * What new washing machines cost a year where one has reached an age and nothing is discounted:
   * the price over the mean life by each study, each weighted by the share that reaches the age.
   */
  static double aYear(double price, double age) {
    double sum = 0;
    double all = 0;
    for (Weibull study : KindOfLife.of("washing-machine").life().studies()) {
      double reaches = Math.exp(-Math.pow(age / study.scale(), study.shape()));
      sum += reaches * price / study.mean();
      all += reaches;
    }
    return sum / all;
  }

  /** The same job, with so many cycles a week and the standard uncertainty of that. */
  static Job using(Job job, double cycles, double uncertainty) {
    Quantity weekly = new Quantity(cycles, uncertainty, Unit.ONE, QuantityKind.RATIO);
    return new Job(
        job.id(),
        job.date(),
        job.appliance(),
        job.complaint(),
        job.instruments(),
        job.measurements(),
        job.prices(),
        new Use(
            Optional.of(weekly),
            Optional.empty(),
            Use.Consumption.UNKNOWN,
            Use.Consumption.UNKNOWN,
            Use.Carbon.NONE));
  }

  /** The same prices under other terms. */
  static Prices with(Prices p, Terms terms, Supplies supplies, PriceSpread spread) {
    return new Prices(
        p.currency(),
        p.labourPerHour(),
        p.callOut(),
        p.replacement(),
        p.installation(),
        p.runningPerYear(),
        p.runningPerYearNew(),
        p.discountRate(),
        p.parts(),
        terms,
        supplies,
        spread);
  }

  static Optional<Quantity> time(double value, String unit) {
    return Optional.of(Quantity.of(value, unit, QuantityKind.AGE));
  }

  static Optional<Quantity> percentage(double value) {
    return Optional.of(Quantity.of(value, "%", QuantityKind.PERCENT));
  }

  /** Terms with everything in them that moves a figure. */
  static Terms terms() {
    return new Terms(
        Optional.of(LocalDate.of(2026, 10, 1)),
        Optional.of(true),
        Optional.of(Quantity.of(60, "min", QuantityKind.TIME)),
        Optional.of(true),
        time(4, "d"),
        time(9, "d"),
        time(1, "a"),
        time(2, "a"),
        some(30));
  }

  /** Prices that may turn out otherwise. */
  static PriceSpread spread() {
    return new PriceSpread(percentage(20), percentage(10), percentage(30));
  }

  /** A weigher to which nobody taught anything. */
  static LifecycleWeigher weigher(int draws) {
    return new LifecycleWeigher(draws, LearnedLives.NONE);
  }

  /** A diagnosis of which it is not told what it rests on. */
  static Diagnosis diagnosis(
      List<Diagnosis.RankedState> ranking,
      List<Diagnosis.FaultProbability> faults,
      double healthy,
      Diagnosis.Unexplained unexplained,
      List<Diagnosis.NextMeasurement> next,
      List<Diagnosis.PlanStep> plan,
      List<String> notUsed) {
    Conclusion open =
        new Conclusion(
            Conclusion.Reason.NOT_MEASURED, List.of(), Conclusion.Advice.MEASURE, "measure", true);
    return new Diagnosis(
        ranking,
        faults,
        healthy,
        unexplained,
        List.of(),
        next,
        plan,
        List.of(),
        notUsed,
        new Diagnosis.Basis(open, List.of(), List.of(), 0, false, false, Set.of()));
  }
}
