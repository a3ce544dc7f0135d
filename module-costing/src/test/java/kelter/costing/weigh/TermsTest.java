package kelter.costing.weigh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Nameplate;
import kelter.core.job.Prices;
import kelter.core.option.LearnedLives;
import kelter.core.option.LearnedLives.LearnedLife;
import kelter.core.option.Option;
import kelter.core.option.Weighing;
import kelter.core.owner.PriceSpread;
import kelter.core.owner.Supplies;
import kelter.core.owner.Terms;
import kelter.core.owner.Use;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.core.vocabulary.Statement;
import kelter.costing.choice.Outcomes;
import kelter.costing.life.ApplianceLife;
import kelter.costing.life.KindOfLife;
import kelter.costing.life.Weibull;
import org.junit.jupiter.api.Test;

/** What the terms of a job, its use and learned lives do; expected figures are worked by hand. */
class TermsTest {

  private static final long SEED = 11;
  private static final LifecycleWeigher WEIGHER = Cases.weigher(LifecycleWeigher.DRAWS);
  private static final Diagnosis SURE =
      Cases.certain(Cases.remedy("renew-pump", Remedy.Restores.COMPONENT, 45, true, 1));
  private static final Source INVENTED = new Source("a made-up job book", Standing.INVENTED);
  private static final String REPAIR = "drain-pump.renew-pump";
  private static final Optional<Quantity> NO_TIME = Optional.empty();

  /** A pump that lasts far less than its machine, known from many jobs. */
  static final LearnedLives LEARNED =
      new LearnedLives() {
        @Override
        public Optional<LearnedLife> machine(String kind) {
          return Optional.of(new LearnedLife(20, 3, 2, INVENTED));
        }

        @Override
        public Optional<LearnedLife> component(String kind) {
          return kind.equals("drain-pump")
              ? Optional.of(new LearnedLife(3, 1.5, 9, INVENTED))
              : Optional.empty();
        }
      };

  private static final Prices PRICES = Cases.prices(12, 155, 950, 0);

  private static Terms terms(
      boolean credited,
      boolean available,
      Optional<Quantity> delivery,
      Optional<Quantity> repairWarranty,
      Optional<Quantity> newWarranty,
      Optional<Money> day) {
    return new Terms(
        Optional.empty(),
        Optional.of(credited),
        Optional.empty(),
        Optional.of(available),
        delivery,
        delivery,
        repairWarranty,
        newWarranty,
        day);
  }

  private static Job under(double age, Terms terms) {
    return Cases.washer(age, Cases.with(PRICES, terms, Supplies.UNKNOWN, PriceSpread.NONE));
  }

  static Job withPump(Job job) {
    Appliance a = job.appliance();
    Component pump =
        new Component(
            "drain-pump", "drain-pump", Nameplate.UNREADABLE, Map.of(), Map.of(), INVENTED);
    return new Job(
        job.id(),
        job.date(),
        new Appliance(a.kind(), "", "", "", a.age(), a.nameplate(), List.of(pump)),
        job.complaint(),
        List.of(),
        List.of(),
        job.prices(),
        job.use());
  }

  private static Job used(Job job, Use use) {
    return new Job(
        job.id(),
        job.date(),
        job.appliance(),
        job.complaint(),
        List.of(),
        List.of(),
        job.prices(),
        use);
  }

  private static Use cycles(double week, Optional<Double> built) {
    return new Use(
        Optional.of(number(week)),
        built.map(TermsTest::number),
        Use.Consumption.UNKNOWN,
        Use.Consumption.UNKNOWN,
        Use.Carbon.NONE);
  }

  private static Quantity number(double value) {
    return Quantity.of(value, "1", QuantityKind.RATIO);
  }

  private static Weighing weigh(Job job) {
    return WEIGHER.weigh(job, SURE, SEED);
  }

  private static Option option(Weighing weighing, String id) {
    return weighing.options().stream().filter(o -> o.id().equals(id)).findFirst().orElseThrow();
  }

  private static boolean says(Weighing weighing, String words) {
    return weighing.assumptions().stream().anyMatch(a -> a.text().contains(words));
  }

  @Test
  void aCreditedCallOutIsTakenOffTheRepairAndNotOffReplacing() {
    Weighing credited = weigh(under(6, terms(true, true, NO_TIME, NO_TIME, NO_TIME, none())));
    Weighing paid = weigh(under(6, terms(false, true, NO_TIME, NO_TIME, NO_TIME, none())));
    assertEquals(45 + 45 + 155, option(paid, REPAIR).outlay(), 1e-9);
    assertEquals(45 + 155, option(credited, REPAIR).outlay(), 1e-9);
    assertEquals(45 + 1000, option(credited, "replace").outlay(), 1e-9);
    assertTrue(says(credited, "taken off again"));
    assertTrue(says(paid, "paid whatever is done"));
  }

  /** By hand: 45 minutes of work at 60 an hour are charged as 80 where that is the least. */
  @Test
  void aLeastTimeOfWorkIsCharged() {
    Terms least =
        new Terms(
            Optional.empty(),
            Optional.of(false),
            Optional.of(Quantity.of(80, "min", QuantityKind.TIME)),
            Optional.empty(),
            NO_TIME,
            NO_TIME,
            NO_TIME,
            NO_TIME,
            none());
    assertEquals(45 + 80 + 155, option(weigh(under(6, least)), REPAIR).outlay(), 1e-9);
  }

  private static Optional<Money> none() {
    return Optional.empty();
  }

  /** Five days at 30 are in the cost by the year and not in the bill. */
  @Test
  void daysWithoutTheMachineCostTheOwnerAndAreOnNoBill() {
    Optional<Quantity> five = Cases.time(5, "d");
    Weighing spare = weigh(under(6, terms(false, true, five, NO_TIME, NO_TIME, Cases.some(0))));
    Weighing cafe = weigh(under(6, terms(false, true, five, NO_TIME, NO_TIME, Cases.some(30))));
    assertEquals(option(spare, REPAIR).outlay(), option(cafe, REPAIR).outlay(), 1e-9);
    double dearer =
        option(cafe, "replace").annualCost().mean() - option(spare, "replace").annualCost().mean();
    assertEquals(Cases.aYear(5 * 30, 6), dearer, 1e-4 * dearer);
    assertTrue(
        option(cafe, REPAIR).annualCost().mean() > option(spare, REPAIR).annualCost().mean());
    assertTrue(says(cafe, "stand still"));
  }

  /**
   * New machines without memory (shape 1) of a mean of 10 years, nothing discounted: one in 1 -
   * exp(-0.2) ends within two years and is replaced for nothing. The exponential distribution is in
   * the NIST/SEMATECH e-Handbook, 8.1.6.1.
   */
  @Test
  void theWarrantyOnANewMachineSavesWhatEndsWithinIt() {
    ApplianceLife memoryless = new ApplianceLife(List.of(new Weibull(10, 1)));
    OptionComparison without = comparison(terms(false, true, NO_TIME, NO_TIME, NO_TIME, none()));
    OptionComparison with =
        comparison(terms(false, true, NO_TIME, NO_TIME, Cases.time(2, "a"), none()));
    double bare =
        Expectation.of(without.basis().withLife(memoryless, 1), List.of()).capitalNew()[0];
    double covered =
        Expectation.of(with.basis().withLife(memoryless, 1), List.of()).capitalNew()[0];
    assertEquals(1000 / 10.0, bare, 1e-2);
    assertEquals(Math.exp(-0.2), covered / bare, 1e-6);
  }

  private static OptionComparison comparison(Terms terms) {
    return OptionComparison.of(under(6, terms), SURE, LearnedLives.NONE, new ArrayList<>());
  }

  /**
   * Machine and component without memory, both of a mean of 10 years, nothing discounted: the
   * component fails first, and after a warranty of 2 years, with a chance of exp(-0.4) / 2.
   */
  @Test
  void theWarrantyOnARepairSavesEarlyFailures() {
    ApplianceLife memoryless = new ApplianceLife(List.of(new Weibull(10, 1)));
    OptionComparison with =
        comparison(terms(false, true, NO_TIME, Cases.time(2, "a"), NO_TIME, none()));
    double[] again = Expectation.of(with.basis().withLife(memoryless, 1), everyLife()).again();
    for (double chance : again) {
      assertEquals(Math.exp(-0.4) / 2, chance, 1e-4);
    }
  }

  /** An option that pays later for components of every wear. */
  private static List<Outcomes> everyLife() {
    double[][][] later = {{{1, 1, 1}}};
    return List.of(
        new Outcomes(
            new double[1][1], new double[1], new double[1], later, new double[1][1][3], 0));
  }

  @Test
  void aMachineThatCannotBeHadIsNoOptionAndThatIsSaid() {
    Weighing weighing = weigh(under(6, terms(false, false, NO_TIME, NO_TIME, NO_TIME, none())));
    assertEquals(List.of(REPAIR), weighing.options().stream().map(Option::id).toList());
    assertTrue(Double.isNaN(weighing.breakEvenRepair()));
    assertTrue(says(weighing, "no new machine can be had"));
    Job job = under(6, terms(false, false, NO_TIME, NO_TIME, NO_TIME, none()));
    var reasons = WEIGHER.weighAndExplain(job, SURE, SEED).reasons().orElseThrow();
    assertTrue(Double.isNaN(reasons.breakEvenAge()));
    assertTrue(reasons.influences().isEmpty() && reasons.rules().isEmpty());
    Diagnosis unknown =
        Cases.diagnosis(
            List.of(),
            List.of(),
            0,
            new Diagnosis.Unexplained(1, 0),
            List.of(),
            List.of(),
            List.of());
    assertEquals(
        List.of("do-nothing"),
        WEIGHER.weigh(job, unknown, SEED).options().stream().map(Option::id).toList());
  }

  @Test
  void itsPriceIsNeededAllTheSame() {
    Prices p = Cases.with(PRICES, Cases.terms(), Supplies.UNKNOWN, PriceSpread.NONE);
    Prices bare =
        new Prices(
            p.currency(),
            p.labourPerHour(),
            p.callOut(),
            Optional.empty(),
            p.installation(),
            p.runningPerYear(),
            p.runningPerYearNew(),
            p.discountRate(),
            p.parts(),
            terms(false, false, NO_TIME, NO_TIME, NO_TIME, none()),
            p.supplies(),
            p.spread());
    InputException missing = assertThrows(InputException.class, () -> weigh(Cases.washer(6, bare)));
    assertEquals(
        List.of("/prices/replacement"), missing.problems().stream().map(Problem::where).toList());
  }

  /** Wear by cycles: three times the 220 cycles a year of a household, a third of the life. */
  @Test
  void aMachineThatRunsMoreLastsLess() {
    Job job = Cases.washer(0, PRICES);
    double household = 220 / (365.25 / 7);
    double studied = option(weigh(job), REPAIR).years();
    Weighing busy = weigh(used(job, cycles(3 * household, Optional.empty())));
    assertEquals(studied / 3, option(busy, REPAIR).years(), 1e-9);
    Weighing launderette = weigh(used(job, cycles(100, Optional.empty())));
    assertEquals(studied / 10, option(launderette, REPAIR).years(), 1e-9);
    assertTrue(says(launderette, "not beyond that"));
    Weighing idle = weigh(used(job, cycles(0.5, Optional.empty())));
    assertEquals(2 * studied, option(idle, REPAIR).years(), 1e-9);
  }

  /** 15 000 cycles at 60 a week are 15 000 / (60 * 52.18) = 4.79 years. */
  @Test
  void aMachineLastsTheCyclesThatItIsBuiltFor() {
    Job job = Cases.job("washer-extractor", 0, Optional.of(PRICES));
    Weighing weighing = weigh(used(job, cycles(60, Optional.of(15_000.0))));
    assertEquals(4.79, option(weighing, "replace").years(), 0.005);
    assertTrue(says(weighing, "15000 cycles"));
    Weighing unknown = weigh(used(job, cycles(60, Optional.empty())));
    assertEquals(option(weigh(job), "replace").years(), option(unknown, "replace").years(), 1e-12);
    assertTrue(says(unknown, "built for"));
  }

  /**
   * By hand: 10 cycles a week are 521.79 a year; a cycle takes 1 kW.h at 0.30, 50 L at 4 a cubic
   * metre and detergent at 0.20, together 0.70.
   */
  @Test
  void runningCostIsWorkedOutWhereItIsNotStated() {
    Supplies supplies = new Supplies(Cases.some(0.3), Cases.some(4), Cases.some(0.2));
    Prices p = PRICES;
    Prices unstated =
        new Prices(
            p.currency(),
            p.labourPerHour(),
            p.callOut(),
            p.replacement(),
            p.installation(),
            Optional.empty(),
            Optional.empty(),
            p.discountRate(),
            p.parts(),
            Terms.NONE,
            supplies,
            PriceSpread.NONE);
    Use use =
        new Use(
            Optional.of(number(10)),
            Optional.empty(),
            new Use.Consumption(
                Optional.of(Quantity.of(1, "kW.h", QuantityKind.ENERGY)),
                Optional.of(Quantity.of(50, "L", QuantityKind.VOLUME))),
            Use.Consumption.UNKNOWN,
            Use.Carbon.NONE);
    List<Statement> assumptions = new ArrayList<>();
    OptionComparison comparison =
        OptionComparison.of(
            used(Cases.washer(6, unstated), use), SURE, LearnedLives.NONE, assumptions);
    assertEquals(365.25, comparison.basis().costs().running(), 1e-9);
    assertEquals(365.25, comparison.basis().costs().runningNew(), 1e-9);
    assertTrue(assumptions.stream().anyMatch(a -> a.text().contains("worked out")));
    assertTrue(
        assumptions.stream().anyMatch(a -> a.text().contains("running cost of the new machine")));
  }

  /**
   * A lognormal price with a mean of 1 and a relative deviation of 20 % has its 5 % and 95 % points
   * at exp(-s^2/2 -+ 1.6449 s), s^2 = ln 1.04 (NIST/SEMATECH e-Handbook 1.3.6.6.9; 1.6449 is the
   * normal quantile of 1.3.6.7.1): 0.7080 and 1.3580.
   */
  @Test
  void unsurePricesWidenTheBandAndKeepTheMean() {
    PriceSpread spread = new PriceSpread(Cases.percentage(20), Optional.empty(), Optional.empty());
    Job sure = Cases.washer(6, PRICES);
    Job unsure = Cases.washer(6, Cases.with(PRICES, Terms.NONE, Supplies.UNKNOWN, spread));
    Option before = option(weigh(sure), REPAIR);
    Option after = option(weigh(unsure), REPAIR);
    assertEquals(before.annualCost().mean(), after.annualCost().mean(), 1e-9);
    assertEquals(before.outlay(), after.outlay(), 1e-9);
    assertNotEquals(before.annualCost().high(), after.annualCost().high());
    var today =
        WEIGHER.weighAndExplain(unsure, SURE, SEED).reasons().orElseThrow().courses().stream()
            .filter(course -> course.option().equals(REPAIR))
            .findFirst()
            .orElseThrow()
            .paid()
            .get(0);
    assertEquals(0.7080, today.low() / before.outlay(), 0.01);
    assertEquals(1.3580, today.high() / before.outlay(), 0.02);
    assertEquals(1, today.mean() / before.outlay(), 4 * 0.2 / Math.sqrt(4_000));
    assertTrue(says(weigh(unsure), "lognormal"));
  }

  @Test
  void whatIsLearnedCountsByItsWeight() {
    Job job = withPump(Cases.washer(0, PRICES));
    double studied = option(weigh(job), "replace").years();
    int studies = KindOfLife.of("washing-machine").studies().size();
    double own = new Weibull(20, 3).mean();
    Weighing learned = WEIGHER.learning(LEARNED).weigh(job, SURE, SEED);
    assertEquals(
        (studies * studied + 2 * own) / (studies + 2), option(learned, "replace").years(), 1e-9);
    assertTrue(says(learned, "made-up job book"));
    assertTrue(says(learned, "'drain-pump'"));
    assertTrue(
        learned.breakEvenRepair() < WEIGHER.weigh(job, SURE, SEED).breakEvenRepair(),
        "a pump that fails again soon is worth less");
  }

  /** From memory a drain pump lasts 11 years, less than the machine: it fails again more often. */
  @Test
  void whatIsRememberedOfComponentsCountsAndIsSaid() {
    Job bare = Cases.washer(0, PRICES);
    Weighing as = weigh(bare);
    Weighing remembered = weigh(withPump(bare));
    assertTrue(says(remembered, "from memory, at this use: drain-pump 11.0 years"));
    assertTrue(
        option(remembered, REPAIR).annualCost().mean() > option(as, REPAIR).annualCost().mean());
    assertTrue(remembered.sources().stream().anyMatch(s -> s.standing() == Standing.FROM_MEMORY));
  }

  /** By hand: one over the use, at its mean and at 1 -+ 0.3 sqrt(3) with a sixth each. */
  @Test
  void anUnsureUseSpreadsTheLife() {
    Job job = Cases.job("washer-extractor", 0, Optional.of(PRICES));
    Quantity unsure = new Quantity(60, 18, number(1).unit(), QuantityKind.RATIO);
    Use use =
        new Use(
            Optional.of(unsure),
            Optional.of(number(15_000)),
            Use.Consumption.UNKNOWN,
            Use.Consumption.UNKNOWN,
            Use.Carbon.NONE);
    double mean = option(weigh(used(job, use)), "replace").years();
    double half = 0.3 * Math.sqrt(3);
    double factor = (1 / (1 - half) + 1 / (1 + half)) / 6 + 2 / 3.0;
    assertEquals(15_000 / (60 * 365.25 / 7) * factor, mean, 1e-6);
  }

  @Test
  void aMachineUnderWarrantyIsPointedOut() {
    Terms terms = terms(false, true, NO_TIME, NO_TIME, Cases.time(2, "a"), none());
    assertTrue(says(weigh(under(1, terms)), "Ask who pays"));
    assertTrue(!says(weigh(under(3, terms)), "Ask who pays"));
  }

  /** The older machine is dearer the more energy it takes; the break-even bill follows. */
  @Test
  void aThirstierOldMachineSpeaksForReplacing() {
    double before = Double.POSITIVE_INFINITY;
    for (double running : new double[] {60, 80, 120, 200}) {
      Prices p = PRICES;
      Prices prices =
          new Prices(
              p.currency(),
              p.labourPerHour(),
              p.callOut(),
              p.replacement(),
              p.installation(),
              Cases.some(running),
              Cases.some(60),
              p.discountRate(),
              p.parts());
      double bill = weigh(Cases.washer(7, prices)).breakEvenRepair();
      assertTrue(bill < before, running + ": " + bill);
      before = bill;
    }
  }
}
