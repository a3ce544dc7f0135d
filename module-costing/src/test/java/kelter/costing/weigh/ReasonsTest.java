package kelter.costing.weigh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.job.Job;
import kelter.core.option.Option;
import kelter.core.option.Reasons;
import kelter.core.option.Reasons.Influence;
import kelter.core.option.Weighing;
import kelter.core.source.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReasonsTest {

  private static final long SEED = 4;
  private static final LifecycleWeigher WEIGHER = new LifecycleWeigher();
  private static final Diagnosis LEAKS = Cases.certain(Cases.PUMP);

  private static Job washer(double age, double pump) {
    return Cases.washer(age, Cases.prices(12, pump, 800, 3));
  }

  private static Reasons reasons(double age, double pump) {
    return WEIGHER.explain(washer(age, pump), LEAKS, SEED).orElseThrow();
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
    Reasons reasons = WEIGHER.explain(Cases.washer(9, noRunning), LEAKS, SEED).orElseThrow();
    assertTrue(reasons.influences().stream().noneMatch(i -> i.what().contains("running")));
  }

  @Test
  void regretIsNeverNegativeAndLeastForTheCheapestOnAverage() {
    Reasons reasons =
        WEIGHER.explain(washer(7, 150), Cases.diagnosis(0.5, 0.3, 0.05, 0.02), SEED).orElseThrow();
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
            .explain(
                washer(7, 150),
                Cases.certain(Cases.remedy("renew-pump", Cases.PUMP.restores(), 45, true, 1)),
                SEED)
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
   * Where a machine lasts for a mean of m years, n new ones are bought over a long time, the number
   * that renewal theory gives; over 15 years at least the first one and at most a few more.
   */
  @Test
  void replacingIsPaidAgainWhenTheNewMachineEnds() {
    Reasons reasons = reasons(7, 150);
    Reasons.Course replace =
        reasons.courses().stream()
            .filter(c -> c.option().equals("replace"))
            .findFirst()
            .orElseThrow();
    double machines = (replace.paid().get(15).mean() - 45 - 15 * 80) / 850;
    assertTrue(machines > 1.4 && machines < 2.2, "machines bought: " + machines);
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
        new Diagnosis(
            List.of(),
            List.of(),
            0,
            new Diagnosis.Unexplained(1, 0),
            List.of(),
            List.of(),
            List.of());
    Reasons reasons = WEIGHER.explain(washer(5, 200), unknown, SEED).orElseThrow();
    assertTrue(reasons.influences().isEmpty());
    assertTrue(reasons.rules().isEmpty());
    assertTrue(Double.isNaN(reasons.breakEvenAge()));
    assertFalse(reasons.courses().isEmpty());
  }
}
