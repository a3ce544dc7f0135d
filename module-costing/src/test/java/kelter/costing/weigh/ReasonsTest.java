package kelter.costing.weigh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.job.Job;
import kelter.core.option.Explained;
import kelter.core.option.LearnedLives;
import kelter.core.option.Option;
import kelter.core.option.Reasons;
import kelter.core.option.Reasons.Influence;
import kelter.core.option.Weighing;
import kelter.core.source.Standing;
import kelter.costing.life.ApplianceLife;
import kelter.costing.life.Weibull;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReasonsTest {

  private static final long SEED = 4;
  private static final LifecycleWeigher WEIGHER = Cases.weigher(LifecycleWeigher.DRAWS);
  private static final Diagnosis LEAKS = Cases.certain(Cases.PUMP);

  private static Job washer(double age, double pump) {
    return Cases.washer(age, Cases.prices(12, pump, 800, 3));
  }

  private static Reasons reasons(double age, double pump) {
    return WEIGHER.weighAndExplain(washer(age, pump), LEAKS, SEED).reasons().orElseThrow();
  }

  private static Weighing weighing(double age, double pump) {
    return WEIGHER.weigh(washer(age, pump), LEAKS, SEED);
  }

  /** A dear assembly is worth it at 2 years and not at 14, so that the age between is found. */
  @Test
  void theBreakEvenAgeLiesBetween() {
    double age = reasons(2, 400).breakEvenAge();
    assertTrue(age > 2 && age < 14, "break-even age " + age);
    assertEquals(age, reasons(14, 400).breakEvenAge(), 1e-5);
  }

  @Test
  void atTheBreakEvenAgeTheBillIsTheBreakEvenBill() {
    double age = reasons(8, 400).breakEvenAge();
    Weighing there = weighing(age, 400);
    assertEquals(45 + 45 + 400, there.breakEvenRepair(), 0.01);
  }

  @Test
  void theDearerTheRepairTheYoungerTheBreakEvenAge() {
    double before = Double.POSITIVE_INFINITY;
    for (double pump : new double[] {300, 350, 400, 450, 500}) {
      double age = reasons(8, pump).breakEvenAge();
      assertTrue(age < before, pump + ": " + age);
      before = age;
    }
  }

  @Test
  void thereIsNoBreakEvenAgeIfOneCostsLessAtAnyAge() {
    assertTrue(Double.isNaN(reasons(8, 5_000).breakEvenAge()));
    assertTrue(Double.isNaN(reasons(8, 0).breakEvenAge()));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 2, 9, 14})
  void eachFigureMovesTheAnswerTheRightWay(double age) {
    Reasons reasons = reasons(age, 300);
    for (String helps :
        List.of(
            "price of a new machine, installed",
            "mean life of the component",
            "chance that the repair cures",
            "discount rate a year")) {
      Influence influence = influence(reasons, helps);
      assertTrue(influence.savingHigh() > influence.savingLow(), influence.toString());
    }
    for (String hurts :
        List.of(
            "age of the machine",
            "bill for the repair, without the call-out",
            "running cost of the old machine a year")) {
      Influence influence = influence(reasons, hurts);
      assertTrue(influence.savingHigh() < influence.savingLow(), influence.toString());
    }
  }

  private static Influence influence(Reasons reasons, String what) {
    return reasons.influences().stream()
        .filter(i -> i.what().equals(what))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theStrongestInfluenceComesFirst() {
    double before = Double.POSITIVE_INFINITY;
    for (Influence influence : reasons(9, 400).influences()) {
      double width = Math.abs(influence.savingHigh() - influence.savingLow());
      assertTrue(width <= before);
      before = width;
    }
  }

  /** For every kind that was studied and whatever the price, there is one age and no more. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "dishwasher",
        "freezer",
        "refrigerator",
        "oven",
        "tumble-dryer",
        "washing-machine"
      })
  void theSavingFallsWithAge(String kind) {
    double before = Double.POSITIVE_INFINITY;
    for (int age = 0; age <= 30; age += 2) {
      Job job = Cases.job(kind, age, Optional.of(Cases.prices(12, 300, 800, 3)));
      double saving =
          OptionComparison.of(job, LEAKS, LearnedLives.NONE, new ArrayList<>()).saving();
      assertTrue(saving < before, kind + " at " + age);
      before = saving;
    }
  }

  /** An unmoved figure is left out: here nothing is paid for running either machine. */
  @Test
  void whatMovesNothingIsNotShown() {
    kelter.core.job.Prices p = Cases.prices(12, 300, 800, 3);
    kelter.core.job.Prices noRunning =
        new kelter.core.job.Prices(
            p.currency(),
            p.labourPerHour(),
            p.callOut(),
            p.replacement(),
            p.installation(),
            Cases.some(0),
            Cases.some(0),
            p.discountRate(),
            p.parts());
    Reasons reasons =
        WEIGHER.weighAndExplain(Cases.washer(9, noRunning), LEAKS, SEED).reasons().orElseThrow();
    assertTrue(reasons.influences().stream().noneMatch(i -> i.what().contains("running")));
  }

  @Test
  void regretIsNeverNegativeAndLeastForTheCheapestOnAverage() {
    Reasons reasons =
        WEIGHER
            .weighAndExplain(washer(7, 150), Cases.diagnosis(0.5, 0.3, 0.05, 0.02), SEED)
            .reasons()
            .orElseThrow();
    double least = reasons.regret().values().iterator().next();
    for (double regret : reasons.regret().values()) {
      assertTrue(regret >= 0 && regret >= least - 0.5, reasons.regret().toString());
    }
  }

  /** Nothing uncertain is paid on the first day: arithmetic on the made-up prices. */
  @Test
  void coursesStartWithWhatIsPaidTodayAndRise() {
    Reasons reasons =
        WEIGHER
            .weighAndExplain(
                washer(7, 150),
                Cases.certain(Cases.remedy("renew-pump", Cases.PUMP.restores(), 45, true, 1)),
                SEED)
            .reasons()
            .orElseThrow();
    for (Reasons.Course course : reasons.courses()) {
      Option.Spread today = course.paid().get(0);
      double expected = course.option().equals("replace") ? 45 + 850 : 45 + 45 + 150;
      assertEquals(expected, today.mean(), 1e-9);
      assertEquals(today.low(), today.high());
      for (int year = 1; year < course.paid().size(); year++) {
        assertTrue(
            course.paid().get(year).mean() >= course.paid().get(year - 1).mean() + 80 - 1e-6);
      }
    }
    assertEquals(16, reasons.courses().get(0).paid().size());
  }

  /**
   * Renewal theory: lives without memory (shape 1) of a mean of 10 years end at random moments, so
   * that over 15 years 1.5 machines are bought on average after the first.
   */
  @Test
  void replacingIsPaidAgainWhenTheNewMachineEnds() {
    OptionComparison comparison =
        OptionComparison.of(washer(7, 150), LEAKS, LearnedLives.NONE, new ArrayList<>());
    ApplianceLife memoryless = new ApplianceLife(List.of(new Weibull(10, 1)));
    OptionComparison random = comparison.with(comparison.basis().withLife(memoryless, 1));
    Reasons.Course replace =
        new Courses(random, SEED)
            .call().stream()
                .filter(course -> course.option().equals("replace"))
                .findFirst()
                .orElseThrow();
    double machines = (replace.paid().get(15).mean() - 45 - 15 * 80) / 850;
    assertEquals(2.5, machines, 4 * Math.sqrt(1.5 / 4_000));
  }

  /** The same lives for the old machine: whatever its age, the first one is bought in its time. */
  @Test
  void repairingPutsTheFirstPurchaseOff() {
    Diagnosis sure = Cases.certain(Cases.remedy("renew-pump", Cases.PUMP.restores(), 45, true, 1));
    OptionComparison comparison =
        OptionComparison.of(washer(7, 150), sure, LearnedLives.NONE, new ArrayList<>());
    ApplianceLife memoryless = new ApplianceLife(List.of(new Weibull(10, 1)));
    OptionComparison random = comparison.with(comparison.basis().withLife(memoryless, 1e9));
    Reasons.Course repair =
        new Courses(random, SEED)
            .call().stream()
                .filter(course -> course.option().equals("drain-pump.renew-pump"))
                .findFirst()
                .orElseThrow();
    double machines = (repair.paid().get(15).mean() - 240 - 15 * 80) / 850;
    assertEquals(1.5, machines, 4 * Math.sqrt(1.5 / 4_000));
  }

  @Test
  void theHalfPriceRuleIsToldForWhatItIs() {
    Reasons.RuleOfThumb rule = reasons(14, 330).rules().get(0);
    assertEquals(Standing.COMMON_PRACTICE, rule.source().standing());
    assertTrue(rule.here().contains("420.00 EUR, 49 % of a new machine"), rule.here());
    assertTrue(rule.here().contains("the opposite"), rule.here());
    assertTrue(reasons(2, 300).rules().get(0).here().contains("the same"));
  }

  @Test
  void theSameSeedGivesTheSameBytes() {
    assertEquals(reasons(5, 200).toString(), reasons(5, 200).toString());
  }

  @Test
  void withoutARepairThereIsLittleToSay() {
    Diagnosis unknown =
        Cases.diagnosis(
            List.of(),
            List.of(),
            0,
            new Diagnosis.Unexplained(1, 0),
            List.of(),
            List.of(),
            List.of());
    Reasons reasons =
        WEIGHER.weighAndExplain(washer(5, 200), unknown, SEED).reasons().orElseThrow();
    assertTrue(reasons.influences().isEmpty());
    assertTrue(reasons.rules().isEmpty());
    assertTrue(Double.isNaN(reasons.breakEvenAge()));
    assertFalse(reasons.courses().isEmpty());
  }

  @Test
  void weighingAndExplainingAtOnceGivesWhatEachGives() {
    Job job = washer(7, 150);
    Explained both = WEIGHER.weighAndExplain(job, LEAKS, SEED);
    assertEquals(WEIGHER.weigh(job, LEAKS, SEED), both.weighing());
    assertEquals(WEIGHER.weighAndExplain(job, LEAKS, SEED).reasons(), both.reasons());
  }
}
