package kelter.costing.weigh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Complaint;
import kelter.core.job.Job;
import kelter.core.job.Prices;
import kelter.core.option.Option;
import kelter.core.option.Weighing;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.costing.life.KindOfLife;
import kelter.costing.money.UniformPresentValue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LifecycleWeigherTest {

  private static final long SEED = 20_261_125;
  private static final LifecycleWeigher WEIGHER = Cases.weigher(LifecycleWeigher.DRAWS);
  private static final Diagnosis LIKELY_BLOCKED = Cases.diagnosis(0.6, 0.25, 0.05, 0.02);

  private static Weighing weigh(Job job, Diagnosis diagnosis) {
    return WEIGHER.weigh(job, diagnosis, SEED);
  }

  private static Option option(Weighing weighing, String id) {
    return weighing.options().stream().filter(o -> o.id().equals(id)).findFirst().orElseThrow();
  }

  private static double mean(Weighing weighing, String id) {
    return option(weighing, id).annualCost().mean();
  }

  private static Prices dearPump() {
    return Cases.prices(12, 400, 800, 3);
  }

  @Test
  void aYoungMachineWithADearAssemblyIsRepairedAnOldOneReplaced() {
    Diagnosis leaks = Cases.certain(Cases.PUMP);
    Weighing young = weigh(Cases.washer(2, dearPump()), leaks);
    Weighing old = weigh(Cases.washer(14, dearPump()), leaks);
    assertEquals("drain-pump.renew-pump", young.options().get(0).id());
    assertEquals("replace", old.options().get(0).id());
    double bill = 45 + 45 + 400;
    assertEquals(bill, option(young, "drain-pump.renew-pump").outlay(), 1e-9);
    assertTrue(young.breakEvenRepair() > bill, "young: " + young.breakEvenRepair());
    assertTrue(old.breakEvenRepair() < bill, "old: " + old.breakEvenRepair());
  }

  @Test
  void theSameSeedGivesTheSameBytesAndAnotherOneNot() {
    Job job = Cases.washer(7, dearPump());
    Weighing one = WEIGHER.weigh(job, LIKELY_BLOCKED, 1);
    assertEquals(one.toString(), WEIGHER.weigh(job, LIKELY_BLOCKED, 1).toString());
    assertEquals(
        one.toString(),
        Cases.weigher(LifecycleWeigher.DRAWS).weigh(job, LIKELY_BLOCKED, 1).toString());
    assertNotEquals(one.toString(), WEIGHER.weigh(job, LIKELY_BLOCKED, 2).toString());
  }

  /** The chance of cure counts every state: arithmetic on the made-up posterior. */
  @Test
  void theChanceOfCureIsThatOfThePosteriorNotOfTheBestFault() {
    Weighing weighing = weigh(Cases.washer(7, dearPump()), LIKELY_BLOCKED);
    double clean = 0.02 + 0.6 * 0.9;
    double pump = 0.02 + (0.6 + 0.25) * 0.98 + 0.05 * 0.98 * 0.98;
    assertEquals(clean, option(weighing, "drain-pump.clean-sump").probabilityOfCure(), 1e-12);
    assertEquals(pump, option(weighing, "drain-pump.renew-pump").probabilityOfCure(), 1e-12);
  }

  @Test
  void thePlanGoesOnWhereASingleRemedyStops() {
    Weighing weighing = weigh(Cases.washer(2, Cases.prices(12, 60, 800, 3)), LIKELY_BLOCKED);
    Option plan = option(weighing, "plan");
    assertEquals("plan", weighing.options().get(0).id());
    assertEquals("drain-pump.clean-sump", plan.remedies().get(0));
    assertTrue(
        plan.probabilityOfCure() > option(weighing, "drain-pump.clean-sump").probabilityOfCure());
    assertTrue(plan.outlay() > option(weighing, "drain-pump.clean-sump").outlay());
  }

  /**
   * Where nothing is uncertain but the lives, the mean of replacing must be the annual cost of new
   * machines one after the other: the price over the mean worth of the years, by renewal reward.
   * Without discounting that is price over mean life, by each study.
   */
  @Test
  void replacingCostsThePriceOverTheMeanLifeIfMoneyCostsNothing() {
    Prices free = Cases.prices(12, 400, 950, 0);
    Weighing weighing = Cases.weigher(200_000).weigh(Cases.washer(5, free), LIKELY_BLOCKED, SEED);
    double callOut = 45 / KindOfLife.of("washing-machine").life().meanOfNew(5);
    double expected = Cases.aYear(1000, 5) + 80 + callOut;
    assertEquals(expected, mean(weighing, "replace"), 0.002 * expected);
  }

  /**
   * The same for a certain repair: what is saved is the annual cost of a new one times the years.
   */
  @Test
  void repairingIsWorthTheYearsThatAreLeft() {
    Prices free = Cases.prices(12, 400, 950, 0);
    Diagnosis sure = Cases.certain(Cases.remedy("renew-pump", Cases.PUMP.restores(), 45, true, 1));
    Weighing weighing = Cases.weigher(200_000).weigh(Cases.washer(0, free), sure, SEED);
    KindOfLife life = KindOfLife.of("washing-machine");
    double period = UniformPresentValue.factor(0, life.life().mean());
    double left = option(weighing, "drain-pump.renew-pump").years();
    assertEquals(life.life().mean(), left, 1e-9);
    double saved = 1000 - 45 - 45 - 400 + 45;
    double again = 0.5 * (45 + 45 + 400);
    double difference = mean(weighing, "replace") - mean(weighing, "drain-pump.renew-pump");
    assertEquals((saved - again) / period, difference, 0.02 * saved / period);
  }

  @ParameterizedTest
  @CsvSource({"0, 3", "3, 6", "6, 9", "9, 12", "12, 16", "16, 20"})
  void theOlderTheLessARepairMayCost(double younger, double older) {
    Weighing young = weigh(Cases.washer(younger, dearPump()), LIKELY_BLOCKED);
    Weighing old = weigh(Cases.washer(older, dearPump()), LIKELY_BLOCKED);
    double youngGap = mean(young, "replace") - mean(young, "drain-pump.renew-pump");
    double oldGap = mean(old, "replace") - mean(old, "drain-pump.renew-pump");
    assertTrue(oldGap < youngGap, oldGap + " at " + older + ", " + youngGap + " at " + younger);
    assertTrue(old.breakEvenRepair() < young.breakEvenRepair());
  }

  @Test
  void aDearerPartMakesItsRepairDearerAndReplacingLikelierTheCheapest() {
    Weighing cheap = weigh(Cases.washer(9, Cases.prices(12, 100, 800, 3)), LIKELY_BLOCKED);
    Weighing dear = weigh(Cases.washer(9, Cases.prices(12, 500, 800, 3)), LIKELY_BLOCKED);
    assertTrue(mean(dear, "drain-pump.renew-pump") > mean(cheap, "drain-pump.renew-pump"));
    assertTrue(
        option(dear, "replace").probabilityCheapest()
            >= option(cheap, "replace").probabilityCheapest());
  }

  @Test
  void aDearerNewMachineSpeaksForRepairing() {
    Weighing cheap = weigh(Cases.washer(9, Cases.prices(12, 200, 500, 3)), LIKELY_BLOCKED);
    Weighing dear = weigh(Cases.washer(9, Cases.prices(12, 200, 1500, 3)), LIKELY_BLOCKED);
    assertTrue(dear.breakEvenRepair() > cheap.breakEvenRepair());
  }

  /** The dearer money is, the more it is worth to put off the larger payment. */
  @Test
  void aHigherDiscountRateSpeaksForTheSmallerPaymentNow() {
    Diagnosis leaks = Cases.certain(Cases.PUMP);
    Weighing low = weigh(Cases.washer(8, Cases.prices(12, 300, 800, 1)), leaks);
    Weighing high = weigh(Cases.washer(8, Cases.prices(12, 300, 800, 15)), leaks);
    double gapLow = mean(low, "replace") - mean(low, "drain-pump.renew-pump");
    double gapHigh = mean(high, "replace") - mean(high, "drain-pump.renew-pump");
    assertTrue(gapHigh > gapLow, gapHigh + " at 15 %, " + gapLow + " at 1 %");
  }

  @Test
  void aThriftierNewMachineSpeaksForReplacing() {
    Prices same = Cases.prices(12, 200, 800, 3);
    Prices thrifty =
        new Prices(
            same.currency(),
            same.labourPerHour(),
            same.callOut(),
            same.replacement(),
            same.installation(),
            same.runningPerYear(),
            Cases.some(30),
            same.discountRate(),
            same.parts());
    assertTrue(
        weigh(Cases.washer(8, thrifty), LIKELY_BLOCKED).breakEvenRepair()
            < weigh(Cases.washer(8, same), LIKELY_BLOCKED).breakEvenRepair());
  }

  /**
   * The comparison itself turns at the break-even bill: a pump so much dearer is worth it a little
   * below, and not a little above. The same work is then dearer where it fails again, too.
   */
  @ParameterizedTest
  @CsvSource({"2, 0", "2, 3", "8, 3", "13, 0"})
  void theComparisonTurnsAtTheBreakEvenBill(double age, double rate) {
    Diagnosis leaks = Cases.certain(Cases.PUMP);
    double bill =
        weigh(Cases.washer(age, Cases.prices(12, 200, 800, rate)), leaks).breakEvenRepair();
    double part = bill - 45 - 45;
    Weighing below = weigh(Cases.washer(age, Cases.prices(12, part - 0.1, 800, rate)), leaks);
    Weighing above = weigh(Cases.washer(age, Cases.prices(12, part + 0.1, 800, rate)), leaks);
    assertEquals("drain-pump.renew-pump", below.options().get(0).id());
    assertEquals("replace", above.options().get(0).id());
  }

  /** The older the machine, the less speaks for mending it, also where its use is hardly known. */
  @ParameterizedTest
  @ValueSource(strings = {"washing-machine, unsure use", "washing-machine", "oven", "softener"})
  void anOlderMachineIsNotBetterToRepair(String what) {
    double before = Double.POSITIVE_INFINITY;
    double oddsBefore = 1;
    for (double age : new double[] {2, 8, 14, 20, 25, 30}) {
      Job plain = Cases.job(what.split(",")[0], age, Optional.of(Cases.prices(12, 200, 800, 3)));
      Job job = what.contains("unsure") ? Cases.using(plain, 4, 2) : plain;
      Weighing weighing = weigh(job, Cases.certain(Cases.PUMP));
      double odds = 1 - option(weighing, "replace").probabilityCheapest();
      assertTrue(weighing.breakEvenRepair() < before, what + " at " + age);
      assertTrue(odds < oddsBefore + 0.01, what + " at " + age + ": " + odds);
      before = weighing.breakEvenRepair();
      oddsBefore = odds;
    }
  }

  @Test
  void figuresAreInOrder() {
    Weighing weighing = weigh(Cases.washer(8, dearPump()), LIKELY_BLOCKED);
    double before = 0;
    for (Option option : weighing.options()) {
      Option.Spread cost = option.annualCost();
      assertTrue(cost.low() <= cost.median() && cost.median() <= cost.high(), option.id());
      assertTrue(option.probabilityCheapest() >= 0 && option.probabilityCheapest() <= 1);
      assertTrue(cost.mean() >= before, "the cheapest first");
      before = cost.mean();
    }
    double odds = weighing.options().stream().mapToDouble(Option::probabilityCheapest).sum();
    assertEquals(1, odds, 1e-9);
  }

  @Test
  void doingNothingIsOfferedOnlyWhereItMakesSense() {
    Job complained = Cases.washer(5, dearPump());
    Job routine =
        new Job(
            "case",
            "",
            complained.appliance(),
            Complaint.NONE,
            List.of(),
            List.of(),
            complained.prices());
    Diagnosis sound = Cases.diagnosis(0.05, 0.05, 0, 0.88);
    assertTrue(
        weigh(complained, LIKELY_BLOCKED).options().stream()
            .noneMatch(o -> o.id().equals("do-nothing")));
    Option nothing = option(weigh(routine, LIKELY_BLOCKED), "do-nothing");
    assertEquals(0.02, nothing.probabilityOfCure(), 1e-12);
    Weighing likelySound = weigh(complained, sound);
    assertEquals("do-nothing", likelySound.options().get(0).id());
    assertEquals(0.88, option(likelySound, "do-nothing").probabilityOfCure(), 1e-12);
  }

  @Test
  void everythingThatIsMissingIsToldAtOnce() {
    Prices bare =
        new Prices(
            Cases.EUR,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Map.of());
    Job job = Cases.job("washing-machine", Double.NaN, Optional.of(bare));
    InputException missing = assertThrows(InputException.class, () -> weigh(job, LIKELY_BLOCKED));
    assertEquals(
        List.of(
            "/appliance/age",
            "/prices/labour-per-hour",
            "/prices/replacement",
            "/prices/parts/drain-pump.renew-seal",
            "/prices/parts/drain-pump.renew-pump"),
        missing.problems().stream().map(Problem::where).toList());
    assertTrue(missing.problems().stream().noneMatch(p -> p.remedy().isEmpty()));
    Job none = Cases.job("washing-machine", 3, Optional.empty());
    assertEquals(
        List.of("/prices"),
        assertThrows(InputException.class, () -> weigh(none, LIKELY_BLOCKED)).problems().stream()
            .map(Problem::where)
            .toList());
  }

  @Test
  void whatIsAssumedIsListed() {
    Prices full = dearPump();
    Prices sparse =
        new Prices(
            full.currency(),
            full.labourPerHour(),
            Optional.empty(),
            full.replacement(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            full.parts());
    int stated = weigh(Cases.washer(8, full), LIKELY_BLOCKED).assumptions().size();
    Weighing guessed = weigh(Cases.job("washer-extractor", 8, Optional.of(sparse)), LIKELY_BLOCKED);
    assertEquals(stated + 2, guessed.assumptions().size());
    for (String word : List.of("washer-extractor", "call-out", "installing", "running", "3 %")) {
      assertTrue(guessed.assumptions().stream().anyMatch(a -> a.text().contains(word)), word);
    }
  }

  @Test
  void aPartMayBePricedUnderItsComponent() {
    Prices full = dearPump();
    Prices keyed =
        withParts(
            full, Map.of("drain-pump.renew-pump", Cases.eur(70), "renew-seal", Cases.eur(12)));
    Weighing weighing = weigh(Cases.washer(8, keyed), LIKELY_BLOCKED);
    assertEquals(45 + 45 + 70, option(weighing, "drain-pump.renew-pump").outlay(), 1e-9);
  }

  /**
   * A diagnosis shows its likeliest states only; the rest follows from what it says of each fault.
   */
  @Test
  void statesThatAreNotShownAreTakenFromTheFaults() {
    Diagnosis all = Cases.diagnosis(0.5, 0.3, 0, 0.1);
    Diagnosis first =
        Cases.diagnosis(
            all.ranking().subList(0, 1),
            all.faults(),
            all.healthy(),
            all.unexplained(),
            all.next(),
            all.plan(),
            all.notUsed());
    Job job = Cases.washer(7, dearPump());
    Weighing whole = weigh(job, all);
    Weighing partly = weigh(job, first);
    for (Option option : whole.options()) {
      assertEquals(
          option.probabilityOfCure(), option(partly, option.id()).probabilityOfCure(), 1e-12);
      assertEquals(option.annualCost().mean(), mean(partly, option.id()), 1e-9);
    }
  }

  /** Two components at fault for sure: mending both is put beside renewing both. */
  @Test
  void severalComponentsAreMendedOrRenewedTogether() {
    Remedy scrape = Cases.remedy("heater", "descale", Remedy.Restores.FUNCTION, 40, false, 1);
    Remedy heater = Cases.remedy("heater", "renew-heater", Remedy.Restores.COMPONENT, 50, true, 1);
    Fault scaled =
        new Fault(
            "scaled",
            "heater",
            "It is scaled",
            0.1,
            Cases.BLOCKED.source(),
            List.of(scrape, heater),
            Optional.empty());
    Diagnosis.Severity severe = new Diagnosis.Severity(0.5, 0.1);
    Diagnosis both =
        Cases.diagnosis(
            List.of(Cases.state(1, Cases.BLOCKED, scaled)),
            List.of(
                new Diagnosis.FaultProbability(Cases.BLOCKED, 1, severe),
                new Diagnosis.FaultProbability(scaled, 1, severe)),
            0,
            new Diagnosis.Unexplained(0, 1),
            List.of(),
            List.of(
                new Diagnosis.PlanStep(Cases.CLEAN, List.of(Cases.BLOCKED.key()), 0.9, 30),
                new Diagnosis.PlanStep(scrape, List.of(scaled.key()), 1, 40)),
            List.of());
    Prices full = dearPump();
    Map<String, Money> parts = Map.of("renew-pump", Cases.eur(90), "renew-heater", Cases.eur(60));
    Weighing weighing = weigh(Cases.washer(8, withParts(full, parts)), both);
    assertEquals(0.9, option(weighing, "plan").probabilityOfCure(), 1e-12);
    Option renew = option(weighing, "renew-all");
    assertEquals(List.of("drain-pump.renew-pump", "heater.renew-heater"), renew.remedies());
    assertEquals(0.98, renew.probabilityOfCure(), 1e-12);
    assertEquals(45 + 45 + 90 + 50 + 60, renew.outlay(), 1e-9);
  }

  /**
   * By hand, nothing discounted: a new-born machine lasts as long as a new one, and by symmetry
   * each of its two mended components fails before it ends in one case of two. Against replacing,
   * the bill and half of what both failures cost are paid and a new machine is saved.
   */
  @Test
  void everyComponentThatWasAtFaultMayFailAgain() {
    Remedy pump = Cases.remedy("renew-pump", Remedy.Restores.COMPONENT, 45, true, 1);
    Remedy heater = Cases.remedy("heater", "renew-heater", Remedy.Restores.COMPONENT, 50, true, 1);
    Fault worn = Cases.fault("worn", pump);
    Fault burnt =
        new Fault(
            "burnt",
            "heater",
            "It is burnt",
            0.1,
            Cases.BLOCKED.source(),
            List.of(heater),
            Optional.empty());
    Diagnosis.Severity severe = new Diagnosis.Severity(0.5, 0.1);
    Diagnosis both =
        Cases.diagnosis(
            List.of(Cases.state(1, worn, burnt)),
            List.of(
                new Diagnosis.FaultProbability(worn, 1, severe),
                new Diagnosis.FaultProbability(burnt, 1, severe)),
            0,
            new Diagnosis.Unexplained(0, 1),
            List.of(),
            List.of(
                new Diagnosis.PlanStep(pump, List.of(worn.key()), 1, 30),
                new Diagnosis.PlanStep(heater, List.of(burnt.key()), 1, 40)),
            List.of());
    Map<String, Money> parts = Map.of("renew-pump", Cases.eur(90), "renew-heater", Cases.eur(60));
    Weighing weighing = weigh(Cases.washer(0, withParts(Cases.prices(0, 0, 800, 0), parts)), both);
    double bill = 45 + (45 + 90) + (50 + 60);
    double failures = 0.5 * (45 + 45 + 90) + 0.5 * (45 + 50 + 60);
    double life = KindOfLife.of("washing-machine").life().mean();
    double saved = (45 + 850) - bill - failures;
    assertEquals(saved / life, mean(weighing, "replace") - mean(weighing, "plan"), 0.01);
  }

  /**
   * By hand, nothing discounted: waiting saves 30 for cleaning where nothing is wrong, and costs
   * another call-out of 45 where something is.
   */
  @Test
  void waitingSavesTheWorkOrCostsAnotherVisit() {
    Fault blocked =
        Cases.fault("blocked", Cases.remedy("clean", Remedy.Restores.FUNCTION, 30, false, 1));
    double sound = 0.8;
    Diagnosis unsure =
        Cases.diagnosis(
            List.of(Cases.state(sound), Cases.state(1 - sound, blocked)),
            List.of(
                new Diagnosis.FaultProbability(
                    blocked, 1 - sound, new Diagnosis.Severity(0.5, 0.1))),
            sound,
            new Diagnosis.Unexplained(0, 1),
            List.of(),
            List.of(),
            List.of());
    Weighing weighing = weigh(Cases.washer(6, Cases.prices(0, 0, 800, 0)), unsure);
    double life = KindOfLife.of("washing-machine").life().meanOfNew(6);
    double dearer = -sound * 30 + (1 - sound) * 45;
    assertEquals(
        dearer / life, mean(weighing, "do-nothing") - mean(weighing, "drain-pump.clean"), 1e-9);
    assertTrue(weighing.assumptions().stream().anyMatch(a -> a.text().contains("nothing is done")));
  }

  private static Prices withParts(Prices full, Map<String, Money> parts) {
    return new Prices(
        full.currency(),
        full.labourPerHour(),
        full.callOut(),
        full.replacement(),
        full.installation(),
        full.runningPerYear(),
        full.runningPerYearNew(),
        full.discountRate(),
        parts);
  }

  @Test
  void withoutAKnownRepairThereIsNoBreakEven() {
    Diagnosis unknown =
        Cases.diagnosis(
            List.of(),
            List.of(),
            0,
            new Diagnosis.Unexplained(1, 0),
            List.of(),
            List.of(),
            List.of());
    Weighing weighing = weigh(Cases.washer(8, dearPump()), unknown);
    assertEquals(List.of("replace"), weighing.options().stream().map(Option::id).toList());
    assertTrue(Double.isNaN(weighing.breakEvenRepair()));
  }

  @Test
  void anOldAgeInMonthsIsReadAsYears() {
    Job job = Cases.washer(1, dearPump());
    Quantity months = Quantity.of(12, "mo", QuantityKind.AGE);
    kelter.core.job.Appliance a = job.appliance();
    Job inMonths =
        new Job(
            "case",
            "",
            new kelter.core.job.Appliance(
                a.kind(), "", "", "", Optional.of(months), a.nameplate(), List.of()),
            job.complaint(),
            List.of(),
            List.of(),
            job.prices());
    assertEquals(
        mean(weigh(job, LIKELY_BLOCKED), "plan"),
        mean(weigh(inMonths, LIKELY_BLOCKED), "plan"),
        1e-9);
  }

  /** Whatever can be written in a job gives finite figures in order. */
  @Test
  void extremesStayFinite() {
    LifecycleWeigher quick = Cases.weigher(500);
    for (double age : new double[] {0, 0.01, 40, 150}) {
      for (double machine : new double[] {0, 1, 1e9}) {
        for (double rate : new double[] {0, 1e-9, 99}) {
          for (double sound : new double[] {0, 0.7}) {
            Diagnosis any = Cases.diagnosis(0.1, 0.1, 0, sound);
            Prices prices = Cases.prices(0, 1e6, machine, rate);
            Weighing weighing = quick.weigh(Cases.washer(age, prices), any, 7);
            String where = "age %s, machine %s, rate %s".formatted(age, machine, rate);
            assertTrue(Double.isFinite(weighing.breakEvenRepair()), where);
            for (Option option : weighing.options()) {
              assertTrue(Double.isFinite(option.annualCost().mean()), where);
              assertTrue(Double.isFinite(option.annualCost().high()), where);
              assertTrue(option.years() > 0, where);
            }
            quick.weighAndExplain(Cases.washer(age, prices), any, 7).reasons();
          }
        }
      }
    }
  }

  @Test
  void tooFewDrawsAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> Cases.weigher(10));
  }
}
