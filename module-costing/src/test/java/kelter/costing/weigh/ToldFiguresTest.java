package kelter.costing.weigh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.job.Appliance;
import kelter.core.job.Job;
import kelter.core.job.Prices;
import kelter.core.option.LearnedLives;
import kelter.core.option.Option;
import kelter.core.option.Reasons;
import kelter.core.option.Weighing;
import kelter.core.owner.PriceSpread;
import kelter.core.owner.Supplies;
import kelter.core.owner.Terms;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.vocabulary.Statement;
import kelter.costing.choice.Assumption;
import org.junit.jupiter.api.Test;

/** The figures that a comparison tells a person beside the options, worked out by hand. */
class ToldFiguresTest {

  private static final long SEED = 4;
  private static final LifecycleWeigher WEIGHER = Cases.weigher(LifecycleWeigher.DRAWS);
  private static final Diagnosis LEAKS = Cases.certain(Cases.PUMP);

  private static OptionComparison comparison(Job job, Diagnosis diagnosis) {
    return OptionComparison.of(job, diagnosis, LearnedLives.NONE, new ArrayList<>());
  }

  private static Prices prices(
      double labour, double callOut, double pump, double machine, double running, Terms terms) {
    Prices p = Cases.prices(12, pump, machine, 3);
    return new Prices(
        p.currency(),
        Cases.some(labour),
        Cases.some(callOut),
        p.replacement(),
        Cases.some(0),
        Cases.some(running),
        p.runningPerYearNew(),
        p.discountRate(),
        p.parts(),
        terms,
        Supplies.UNKNOWN,
        PriceSpread.NONE);
  }

  private static List<String> told(Job job) {
    return Influences.of(comparison(job, LEAKS)).stream()
        .map(each -> each.what() + ": " + each.low() + " to " + each.high())
        .sorted()
        .toList();
  }

  /**
   * Prices a fifth up and down: 850 for a new machine, 100 a year for running the old one, 45 of
   * work and 300 for the part. A pump that cures by 98 % fails by 2 %: by half 1 %, by twice 4 %.
   * The ten studies have means from 8.3 to 16.4 years and 12.642 on average, of which the component
   * has half and twice.
   */
  @Test
  void eachFigureIsMovedAsFarAsIsSaid() {
    assertEquals(
        List.of(
            "age of the machine: 8.0 a to 10.0 a",
            "bill for the repair, without the call-out: 276.00 EUR to 414.00 EUR",
            "chance that the repair cures: 96 % to 99 %",
            "discount rate a year: 0 % to 6.0 %",
            "mean life of such machines: 8.3 a to 16.4 a",
            "mean life of the component: 6.3 a to 25.3 a",
            "price of a new machine, installed: 680.00 EUR to 1020.00 EUR",
            "prices of energy, water and detergent, against today's: 80 % to 120 %",
            "running cost of the old machine a year: 80.00 EUR to 120.00 EUR"),
        told(Cases.washer(9, prices(60, 45, 300, 850, 100, Terms.NONE))));
  }

  /** Twice the deviations stated: 30 %, 10 % and 40 %, and 2 * 1.5 years of the age. */
  @Test
  void whereTheJobStatesASpreadFiguresAreMovedByTwiceOfIt() {
    PriceSpread spread =
        new PriceSpread(Cases.percentage(15), Cases.percentage(5), Cases.percentage(20));
    Prices sure = prices(60, 45, 300, 850, 100, Terms.NONE);
    Job job = Cases.washer(9, Cases.with(sure, Terms.NONE, Supplies.UNKNOWN, spread));
    Appliance a = job.appliance();
    Quantity age =
        new Quantity(9, 1.5, Quantity.of(9, "a", QuantityKind.AGE).unit(), QuantityKind.AGE);
    Job unsure =
        new Job(
            job.id(),
            job.date(),
            new Appliance(a.kind(), "", "", "", Optional.of(age), a.nameplate(), List.of()),
            job.complaint(),
            List.of(),
            List.of(),
            job.prices());
    List<String> told = told(unsure);
    for (String expected :
        List.of(
            "age of the machine: 6.0 a to 12.0 a",
            "bill for the repair, without the call-out: 241.50 EUR to 448.50 EUR",
            "discount rate a year: 0 % to 6.0 %",
            "price of a new machine, installed: 765.00 EUR to 935.00 EUR",
            "prices of energy, water and detergent, against today's: 60 % to 140 %")) {
      assertTrue(told.contains(expected), expected + " in " + told);
    }
  }

  /** At a rate of 4 %, above the least of 3 %, twice that. */
  @Test
  void aStatedRateIsDoubled() {
    List<String> told = told(Cases.washer(9, Cases.prices(12, 300, 800, 4)));
    assertTrue(told.contains("discount rate a year: 0 % to 8.0 %"), told.toString());
  }

  @Test
  void theRuleOfHalfThePriceIsToldInFull() {
    Job job = Cases.washer(14, Cases.prices(12, 330, 800, 3));
    String bill = Money.rounded(WEIGHER.weigh(job, LEAKS, SEED).breakEvenRepair(), Cases.EUR);
    Reasons.RuleOfThumb rule = RulesOfThumb.of(comparison(job, LEAKS)).get(0);
    assertEquals("Repair only if it costs less than half the price of a new machine.", rule.rule());
    assertEquals(
        "The best repair costs 420.00 EUR, 49 % of a new machine at 850.00 EUR: the rule says"
            + " repair. The comparison comes to the opposite: the rule knows neither the age of the"
            + " machine, nor the chance of cure, nor the running costs. By the rule a repair pays"
            + " up to 425.00 EUR, by the comparison up to "
            + bill
            + ".",
        rule.here());
  }

  private static String rule(Job job) {
    return RulesOfThumb.of(comparison(job, LEAKS)).get(0).here();
  }

  /** 45 for coming, 45 for the work and 335 for the part are just half of 850. */
  @Test
  void justHalfThePriceIsNotLess() {
    String here = rule(Cases.washer(14, Cases.prices(12, 335, 800, 3)));
    assertTrue(here.contains("425.00 EUR, 50 % of a new machine"), here);
    assertTrue(here.contains("the rule says replace. The comparison comes to the same."), here);
  }

  @Test
  void aRepairThatIsNotEvenWorthItForNothing() {
    String thirsty = rule(Cases.washer(14, prices(60, 45, 300, 800, 900, Terms.NONE)));
    assertTrue(thirsty.endsWith("by the comparison not even for nothing."), thirsty);
    String gift = rule(Cases.washer(14, prices(60, 45, 300, 0, 80, Terms.NONE)));
    assertTrue(gift.contains(", more than the whole of a new machine at 0.00 EUR"), gift);
  }

  /**
   * A repair that costs nothing but coming: its bill may rise by what it saves a year over the
   * years of the comparison, 12.642 for a machine of age 0, where nothing is discounted.
   */
  @Test
  void theBreakEvenBillOfARepairForNothing() {
    Prices p = prices(0, 45, 0, 800, 80, Terms.NONE);
    Prices undiscounted =
        new Prices(
            p.currency(),
            p.labourPerHour(),
            p.callOut(),
            p.replacement(),
            p.installation(),
            p.runningPerYear(),
            p.runningPerYearNew(),
            Cases.percentage(0),
            p.parts());
    Diagnosis sure = Cases.certain(Cases.remedy("renew-pump", Cases.PUMP.restores(), 45, true, 1));
    OptionComparison comparison = comparison(Cases.washer(0, undiscounted), sure);
    assertTrue(comparison.saving() > 1);
    assertEquals(45 + comparison.saving() * 12.642, comparison.breakEvenBill(), 1e-2);
  }

  private static final String BACK = "The call-out is taken off again where the machine is mended.";
  private static final String PAID =
      "The call-out is paid whatever is done, also if the machine is replaced.";
  private static final String INCLUDED = Assumption.BEFORE_TAX.with().text();

  /** What is said after the premise that always comes last. */
  private static List<String> terms(Prices prices, Diagnosis diagnosis) {
    List<String> premises =
        Statement.texts(Premises.of(comparison(Cases.washer(6, prices), diagnosis)));
    return premises.subList(premises.indexOf(INCLUDED) + 1, premises.size());
  }

  private static Terms with(
      boolean credited,
      Optional<Quantity> part,
      Optional<Quantity> repair,
      Optional<Quantity> next) {
    return new Terms(
        Optional.empty(),
        Optional.of(credited),
        Optional.empty(),
        Optional.of(true),
        part,
        Optional.empty(),
        repair,
        next,
        Cases.some(30));
  }

  /** Of a call-out of 45 EUR the share stays that the work does not cure; bills are of a cure. */
  @Test
  void theCallOutIsCreditedForACureAlone() {
    Optional<Quantity> no = Optional.empty();
    Prices credited = prices(60, 45, 155, 850, 80, with(true, no, no, no));
    OptionComparison comparison = comparison(Cases.washer(6, credited), LEAKS);
    OptionComparison.Weighed repair = comparison.bestRepair().orElseThrow();
    double cured = repair.outcomes().chanceOfCure(comparison.states());

    assertTrue(cured > 0.5 && cured < 1);
    assertEquals(
        repair.outcomes().meanBill(comparison.states()) + 45 * (1 - cured),
        repair.outcomes().meanPaid(comparison.states()),
        1e-9);
    assertEquals(0, comparison.replacing().orElseThrow().outcomes().uncredited());
  }

  @Test
  void onlyWhatTheTermsBringWithThemIsSaid() {
    Optional<Quantity> no = Optional.empty();
    Prices plain = prices(60, 45, 155, 850, 80, with(false, no, no, no));
    assertEquals(List.of(PAID), terms(plain, LEAKS));
    Prices free = prices(60, 0, 155, 850, 80, with(false, no, no, no));
    assertEquals(List.of(), terms(free, LEAKS));
    Prices credited = prices(60, 45, 155, 850, 80, with(true, no, no, no));
    assertEquals(List.of(BACK), terms(credited, LEAKS));
    Prices repair = prices(60, 0, 155, 850, 80, with(false, no, Cases.time(1, "a"), no));
    assertEquals(
        List.of(
            "What was mended and fails again within 1.0 years of warranty is mended for nothing."),
        terms(repair, LEAKS));
    Prices next = prices(60, 0, 155, 850, 80, with(false, no, no, Cases.time(2, "a")));
    assertEquals(
        List.of("A new machine that ends within 2.0 years of warranty is replaced for nothing."),
        terms(next, LEAKS));
    Prices waiting = prices(60, 0, 155, 850, 80, with(false, Cases.time(4, "d"), no, no));
    assertEquals(1, terms(waiting, LEAKS).size());
    assertTrue(terms(waiting, LEAKS).get(0).startsWith("While a part or a new machine is awaited"));
  }

  @Test
  void aTenthThatNothingExplainsIsWorthTelling() {
    Prices free = prices(60, 0, 155, 850, 80, Terms.NONE);
    assertEquals(
        List.of(
            "By 10 % nothing that is known explains the readings. That counts as beyond repair"
                + " here."),
        terms(free, unexplained(0.9, 0.1)));
    assertEquals(List.of(), terms(free, unexplained(0.95, 0.05)));
  }

  private static Diagnosis unexplained(double known, double other) {
    Diagnosis sure = LEAKS;
    return Cases.diagnosis(
        List.of(
            Cases.state(known, sure.faults().get(0).fault()),
            new Diagnosis.RankedState(List.of(), true, other, List.of(), List.of())),
        List.of(
            new Diagnosis.FaultProbability(
                sure.faults().get(0).fault(), known, sure.faults().get(0).severity())),
        0,
        new Diagnosis.Unexplained(other, 0.5),
        List.of(),
        sure.plan(),
        List.of());
  }

  @Test
  void theSourceOfTheUsualRateIsNamedWhereItIsTaken() {
    Prices p = Cases.prices(12, 155, 850, 3);
    Prices silent =
        new Prices(
            p.currency(),
            p.labourPerHour(),
            p.callOut(),
            p.replacement(),
            p.installation(),
            p.runningPerYear(),
            p.runningPerYearNew(),
            Optional.empty(),
            p.parts());
    assertEquals(0, rateSources(Cases.washer(6, p)));
    assertEquals(1, rateSources(Cases.washer(6, silent)));
  }

  private static long rateSources(Job job) {
    return Premises.sources(comparison(job, LEAKS)).stream()
        .map(Source::document)
        .filter(each -> each.startsWith("10 CFR 436.14"))
        .count();
  }

  /** What cancels: regrets differ as the costs do, up to the error of the draws. */
  @Test
  void regretsDifferAsTheCostsDo() {
    Job job = Cases.washer(7, Cases.prices(12, 150, 800, 3));
    var explained = WEIGHER.weighAndExplain(job, Cases.diagnosis(0.5, 0.3, 0.05, 0.02), SEED);
    Map<String, Double> regret = explained.reasons().orElseThrow().regret();
    Iterator<Option> options = explained.weighing().options().iterator();
    Option best = options.next();
    double least = regret.get(best.id());
    assertTrue(least > 0 && least < 0.2 * best.annualCost().mean(), "least " + least);
    while (options.hasNext()) {
      Option other = options.next();
      double dearer = other.annualCost().mean() - best.annualCost().mean();
      assertEquals(dearer, regret.get(other.id()) - least, 0.05 * dearer + 1, other.id());
    }
  }

  /** Nothing is offered twice as the cheapest: the chances of all options sum to one. */
  @Test
  void oneOptionIsTheCheapestAtEachDraw() {
    Job job = Cases.washer(7, Cases.prices(12, 150, 800, 3));
    Weighing weighing = WEIGHER.weigh(job, Cases.diagnosis(0.5, 0.3, 0.05, 0.02), SEED);
    double sum = 0;
    for (Option option : weighing.options()) {
      sum += option.probabilityCheapest();
      assertEquals(option.id().equals("replace"), option.remedies().isEmpty(), option.id());
    }
    assertEquals(1, sum, 1e-12);
    assertTrue(weighing.options().get(1).probabilityCheapest() > 0);
  }

  @Test
  void aHundredDrawsAreEnough() {
    Job job = Cases.washer(7, Cases.prices(12, 150, 800, 3));
    assertEquals(2, Cases.weigher(100).weigh(job, LEAKS, SEED).options().size());
    assertEquals(
        "99 draws; 100 or more are needed",
        assertThrows(IllegalArgumentException.class, () -> Cases.weigher(99)).getMessage());
  }
}
