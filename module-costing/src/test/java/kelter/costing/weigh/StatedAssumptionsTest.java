package kelter.costing.weigh;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
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
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.core.vocabulary.Statement;
import kelter.costing.choice.Costs;
import kelter.costing.choice.PlannedWork;
import kelter.costing.choice.States;
import org.junit.jupiter.api.Test;

/** What is read from a job and what is taken, and said, where it is silent. */
class StatedAssumptionsTest {

  private static final Diagnosis LEAKS = Cases.certain(Cases.PUMP);
  private static final Optional<Money> NONE = Optional.empty();
  private static final String CYCLES =
      "The job states no cycles a week; use as hard as where the lives were studied was taken.";
  private static final String RATE =
      "The job states no discount rate; 3 % a year was taken, the least real rate of 10 CFR"
          + " 436.14.";
  private static final String DATE =
      "The job does not date its prices; they were taken as those of today.";

  private static Prices prices(
      Optional<Money> old,
      Optional<Money> young,
      Optional<Quantity> rate,
      Terms terms,
      Supplies supplies,
      PriceSpread spread) {
    Prices p = Cases.prices(12, 155, 950, 0);
    return new Prices(
        p.currency(),
        p.labourPerHour(),
        p.callOut(),
        p.replacement(),
        p.installation(),
        old,
        young,
        rate,
        p.parts(),
        terms,
        supplies,
        spread);
  }

  private static Job job(String date, double age, Prices prices, Use use, Component... components) {
    Job job = Cases.washer(age, prices);
    Appliance a = job.appliance();
    return new Job(
        job.id(),
        date,
        new Appliance(a.kind(), "", "", "", a.age(), a.nameplate(), List.of(components)),
        job.complaint(),
        List.of(),
        List.of(),
        job.prices(),
        use);
  }

  private static Job job(double age, Prices prices) {
    return job("", age, prices, Use.UNKNOWN);
  }

  private static List<String> assumed(Job job) {
    List<Statement> assumptions = new ArrayList<>();
    OptionComparison.of(job, LEAKS, LearnedLives.NONE, assumptions);
    return Statement.texts(assumptions);
  }

  private static Costs costs(Job job) {
    return OptionComparison.of(job, LEAKS, LearnedLives.NONE, new ArrayList<>()).basis().costs();
  }

  @Test
  void aSilentJobIsToldAllThatWasTaken() {
    Prices silent =
        prices(NONE, NONE, Optional.empty(), Terms.NONE, Supplies.UNKNOWN, PriceSpread.NONE);
    assertEquals(
        List.of(
            CYCLES,
            "The job states no running costs; energy, water and detergent were taken to cost the"
                + " same for the old and the new machine and were left out.",
            "Not stated in the job, and taken as nothing: the cost of a day without the machine; a"
                + " least time of work that is charged; a credit for the call-out where the machine"
                + " is mended; warranty on the repair; warranty on a new machine; a spread of"
                + " prices.",
            RATE,
            DATE),
        assumed(job(6, silent)));
  }

  /** Four and nine days at 30 each; what is stated is not told as taken. */
  @Test
  void aJobThatStatesAllIsToldLittle() {
    Prices all =
        prices(
            Cases.some(90),
            Cases.some(70),
            Cases.percentage(2),
            Cases.terms(),
            Supplies.UNKNOWN,
            Cases.spread());
    Job job = job("2026-11-02", 6, all, Use.UNKNOWN);
    assertEquals(List.of(CYCLES, "Prices are those of 2026-10-01."), assumed(job));
    assertEquals(new Costs(60, 60, 45, 0, 1000, 90, 70, 120, 270), costs(job));
    Job late = job("2027-10-02", 6, all, Use.UNKNOWN);
    assertEquals(
        List.of(CYCLES, "Prices are those of 2026-10-01, more than a year before the call."),
        assumed(late));
    assertEquals(
        "Prices are those of 2026-10-01.", assumed(job("2027-10-01", 6, all, Use.UNKNOWN)).get(1));
  }

  @Test
  void onlyAMachineYoungerThanTheWarrantyIsUnderWarranty() {
    Prices all =
        prices(
            Cases.some(90),
            Cases.some(70),
            Cases.percentage(2),
            Cases.terms(),
            Supplies.UNKNOWN,
            Cases.spread());
    assertTrue(assumed(job(1.99, all)).get(1).startsWith("The machine is younger than"));
    assertEquals(2, assumed(job(2, all)).size());
  }

  @Test
  void oneSpreadIsASpread() {
    Optional<Quantity> no = Optional.empty();
    for (PriceSpread spread :
        List.of(
            new PriceSpread(Cases.percentage(20), no, no),
            new PriceSpread(no, Cases.percentage(20), no),
            new PriceSpread(no, no, Cases.percentage(20)))) {
      Prices prices =
          prices(Cases.some(80), NONE, Optional.empty(), Terms.NONE, Supplies.UNKNOWN, spread);
      assertFalse(String.join(" ", assumed(job(6, prices))).contains("a spread of prices"));
    }
  }

  @Test
  void aRunningCostThatIsMissingIsThatOfTheOtherMachine() {
    Prices old =
        prices(
            Cases.some(90), NONE, Optional.empty(), Terms.NONE, Supplies.UNKNOWN, PriceSpread.NONE);
    assertEquals(90, costs(job(6, old)).runningNew());
    assertEquals(
        "The job states no running cost of the new machine; that of the old one was taken.",
        assumed(job(6, old)).get(1));
    Prices young =
        prices(
            NONE, Cases.some(70), Optional.empty(), Terms.NONE, Supplies.UNKNOWN, PriceSpread.NONE);
    assertEquals(70, costs(job(6, young)).running());
    assertEquals(
        "The job states no running cost of the old machine; that of the new one was taken.",
        assumed(job(6, young)).get(1));
  }

  /**
   * 7 cycles a week are 365.25 a year. The old machine takes 1 kW.h at 0.30 and 50 L at 4 a cubic
   * metre, together 0.50: 182.625 a year; of the new one only the energy is known, 0.8 kW.h: 0.24
   * and 87.66.
   */
  @Test
  void whatTheRunningCostWasWorkedOutFromIsSaid() {
    Supplies supplies = new Supplies(Cases.some(0.3), Cases.some(4), NONE);
    Prices unstated =
        prices(NONE, NONE, Cases.percentage(3), Terms.NONE, supplies, PriceSpread.NONE);
    Use use =
        new Use(
            Optional.of(Quantity.of(7, "1", QuantityKind.RATIO)),
            Optional.empty(),
            new Use.Consumption(
                Optional.of(Quantity.of(1, "kW.h", QuantityKind.ENERGY)),
                Optional.of(Quantity.of(50, "L", QuantityKind.VOLUME))),
            new Use.Consumption(
                Optional.of(Quantity.of(0.8, "kW.h", QuantityKind.ENERGY)), Optional.empty()),
            Use.Carbon.NONE);
    Job job = job("", 6, unstated, use);
    assertEquals(182.625, costs(job).running(), 1e-9);
    assertEquals(87.66, costs(job).runningNew(), 1e-9);
    String from =
        "The running cost of the %s machine was worked out from its cycles a week and its";
    assertEquals(
        List.of(
            from.formatted("old") + " energy and water, without detergent.",
            from.formatted("new") + " energy, without water, without detergent."),
        assumed(job).subList(1, 3));
    Supplies washed = new Supplies(Cases.some(0.3), NONE, Cases.some(0.2));
    Prices dry = prices(NONE, NONE, Cases.percentage(3), Terms.NONE, washed, PriceSpread.NONE);
    assertEquals(
        from.formatted("old") + " energy, without water, and the detergent.",
        assumed(job("", 6, dry, use)).get(1));
  }

  @Test
  void onlyOfComponentsThatAreWorkedOnTheLifeIsTold() {
    Source invented = new Source("a made-up machine", Standing.INVENTED);
    Prices all =
        prices(
            Cases.some(90),
            Cases.some(70),
            Cases.percentage(2),
            Cases.terms(),
            Supplies.UNKNOWN,
            Cases.spread());
    Component worked =
        new Component(
            "drain-pump", "drain-pump", Nameplate.UNREADABLE, Map.of(), Map.of(), invented);
    Component other =
        new Component("spare", "drain-pump", Nameplate.UNREADABLE, Map.of(), Map.of(), invented);
    assertEquals(
        "Mean lives of components, from memory, at this use: drain-pump 11.0 years. They count half,"
            + " and half counts that a component lasts as long as its machine.",
        assumed(job("", 6, all, Use.UNKNOWN, worked, other)).get(1));
    assertEquals(2, assumed(job("", 6, all, Use.UNKNOWN, other)).size());
  }

  /**
   * Shown are 0.5 of all: blocked 0.4, unexplained 0.05, sound 0.05. Of what is left 0.05 is
   * unexplained and 0.05 sound; 0.4 are single faults, 0.1 blocked and 0.3 leaking.
   */
  @Test
  void whatTheRankingDoesNotShowIsShared() {
    Diagnosis seen = Cases.diagnosis(0.4, 0.3, 0.05, 0.05);
    Diagnosis diagnosis =
        Cases.diagnosis(
            List.of(
                Cases.state(0.4, Cases.BLOCKED),
                new Diagnosis.RankedState(List.of(), true, 0.05, List.of(), List.of()),
                Cases.state(0.05)),
            List.of(
                new Diagnosis.FaultProbability(Cases.BLOCKED, 0.5, seen.faults().get(0).severity()),
                new Diagnosis.FaultProbability(
                    Cases.LEAKING, 0.3, seen.faults().get(1).severity())),
            0.1,
            new Diagnosis.Unexplained(0.1, 0.5),
            List.of(),
            seen.plan(),
            List.of());
    States states = States.of(diagnosis);
    assertEquals(
        List.of(
            Set.of("drain-pump.blocked"),
            Set.of(),
            Set.of(),
            Set.of("drain-pump.blocked"),
            Set.of("drain-pump.leaking"),
            Set.of(),
            Set.of()),
        states.all().stream().map(States.State::faults).toList());
    assertEquals(
        List.of(true, false, true, true, true, true, false),
        states.all().stream().map(States.State::curable).toList());
    assertArrayEquals(
        new double[] {0.4, 0.05, 0.05, 0.1, 0.3, 0.05, 0.05}, states.probabilities(), 1e-12);
    assertEquals(0.1, states.healthy(), 1e-12);
    assertEquals(0.1, states.incurable(), 1e-12);
    PlannedWork.Step pump = PlannedWork.of(diagnosis).steps().get(Cases.PUMP.key());
    assertEquals(0.1 + 0.98 * 0.8, states.chanceOfCure(List.of(pump)), 1e-12);
  }

  @Test
  void statesThatSumToMoreThanOneAreScaled() {
    Diagnosis seen = Cases.diagnosis(0.9, 0.3, 0, 0);
    Diagnosis diagnosis =
        Cases.diagnosis(
            List.of(Cases.state(0.9, Cases.BLOCKED), Cases.state(0.3, Cases.LEAKING)),
            List.of(),
            0,
            new Diagnosis.Unexplained(0, 0.5),
            List.of(),
            seen.plan(),
            List.of());
    assertArrayEquals(new double[] {0.75, 0.25}, States.of(diagnosis).probabilities(), 1e-12);
  }
}
