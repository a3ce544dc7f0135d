package kelter.core.safety.lockout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kelter.core.check.Finding;
import kelter.core.check.Judgement;
import kelter.core.check.Limits;
import kelter.core.check.Verdict;
import kelter.core.file.catalogue.LockOutFile;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Market;
import kelter.core.job.Measurement;
import kelter.core.job.Measurement.Stage;
import kelter.core.job.Nameplate;
import kelter.core.job.Progress;
import kelter.core.job.Reading;
import kelter.core.job.SymptomReport;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.job.work.TestDone;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.core.safety.Hazard;
import kelter.core.safety.LockState;
import kelter.core.safety.Taken;
import kelter.core.safety.lockout.table.LockOutTable;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.core.uncertainty.InputQuantity;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Vocabulary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The table that comes with Kelter on machines whose parts are made up here, without any module.
 * What is expected stands in its rows: 1 shock, 3 gas, 6 earth, 11 supply, 12 hot joint, 22 charge.
 */
class LockOutTest {

  private static final LockOutTable TABLE = LockOutFile.shipped();

  private static final Source INVENTED = new Source("made up for tests", Standing.INVENTED);

  private static final String EARTH = "protective-conductor-resistance";

  private static final Vocabulary WORDS =
      new Vocabulary(
          List.of(
              kind(
                  "supply-cord",
                  dead(EARTH),
                  dead("insulation-resistance"),
                  running("protective-conductor-current"),
                  Observable.named("plug-burns", "plug-burns")
                      .graded("none", "dark", "brown", "charred")
                      .asked(1, "Look at it.")),
              kind(
                  "heater",
                  dead("resistance"),
                  Observable.named("insulation-resistance", "insulation-resistance")
                      .quantity(QuantityKind.RATIO, 0, 1e9)
                      .at(new Characteristic("temperature", "its", QuantityKind.TEMPERATURE))
                      .how("Measure it.")
                      .by(Procedure.inside(1))),
              kind("refrigerant-circuit", dead("insulation-resistance")),
              kind("relay", dead("joint-drop")),
              kind("supply", dead("voltage-idle")),
              kind("inverter-drive", dead("dc-link-voltage"), dead("insulation-resistance"))));

  private static ComponentKind kind(String id, Observable... observables) {
    return new ComponentKind(id, id, List.of(observables), List.of(), List.of());
  }

  private static Observable dead(String id) {
    return Observable.named(id, id)
        .quantity(QuantityKind.RATIO, 0, 1e9)
        .how("Measure it.")
        .by(Procedure.inside(1));
  }

  private static Observable running(String id) {
    return Observable.named(id, id)
        .quantity(QuantityKind.RATIO, 0, 1e9)
        .how("Measure it.")
        .by(Procedure.running(1, Procedure.BY_EYE));
  }

  /** What is known of a made-up machine. */
  private static final String[] BEFORE_POWER = {"look", "polarity", "filled", "one-minute"};

  private record Machine(
      List<SymptomReport> told,
      String said,
      List<Measurement> read,
      Map<String, String> records,
      List<TestDone> tests) {

    static final Machine SILENT = new Machine(List.of(), "", List.of(), Map.of(), List.of());

    static Machine of(String symptom, Answer answer) {
      return new Machine(
          List.of(new SymptomReport(symptom, answer)), "", List.of(), Map.of(), List.of());
    }

    Machine and(String symptom, Answer answer) {
      List<SymptomReport> all = new ArrayList<>(told);
      all.add(new SymptomReport(symptom, answer));
      return new Machine(all, said, read, records, tests);
    }

    Machine with(Measurement... measurements) {
      return new Machine(told, said, List.of(measurements), records, tests);
    }

    Machine saying(String words) {
      return new Machine(told, words, read, records, tests);
    }

    Machine recording(String row) {
      return new Machine(told, said, read, Map.of(row, "seen to on Monday"), tests);
    }

    Machine tested(String... met) {
      List<TestDone> done = Stream.of(met).map(step -> new TestDone(step, true, "")).toList();
      return new Machine(told, said, read, records, done);
    }
  }

  private static Measurement read(
      String component, String observable, Reading reading, Conditions conditions, Stage stage) {
    return new Measurement(
        component, observable, List.of(reading), conditions, Optional.empty(), "", stage);
  }

  private static Measurement ratio(String component, String observable, double value, Stage stage) {
    Reading reading = new Reading.Value(Quantity.of(value, "1", QuantityKind.RATIO), 0);
    return read(component, observable, reading, Conditions.NONE, stage);
  }

  private static Measurement volts(String component, String observable, double value) {
    Reading reading = new Reading.Value(Quantity.of(value, "V", QuantityKind.VOLTAGE), 0);
    return read(component, observable, reading, Conditions.NONE, Stage.AS_FOUND);
  }

  private static Measurement drop(double volts, double amperes) {
    return read(
        "relay",
        "joint-drop",
        new Reading.Value(Quantity.of(volts, "V", QuantityKind.VOLTAGE), 0),
        new Conditions(Map.of("current", Quantity.of(amperes, "A", QuantityKind.CURRENT))),
        Stage.AS_FOUND);
  }

  /** What a check would say of a ratio: below 1 conforms, below 2 is undecided, more does not. */
  private static List<Finding> judge(Measurement measurement) {
    double value =
        measurement.readings().get(0) instanceof Reading.Value read ? read.quantity().si() : 0;
    Verdict verdict =
        value < 1 ? Verdict.CONFORMS : value < 2 ? Verdict.UNDECIDED : Verdict.DOES_NOT_CONFORM;
    return measurement.observable().endsWith("resistance")
            || measurement.observable().equals("protective-conductor-current")
        ? List.of(finding(measurement.component(), measurement.observable(), value, verdict))
        : List.of();
  }

  private static Finding finding(
      String component, String observable, double value, Verdict verdict, Caution... cautions) {
    return new Finding(
        "check." + component,
        component,
        observable,
        observable,
        "",
        QuantityKind.RATIO,
        QuantityKind.RATIO.unit(),
        new Judgement(
            Optional.of(InputQuantity.exact(value)),
            verdict == Verdict.CONFORMS ? 1 : 0,
            verdict,
            false),
        new Limits(0, 1.5),
        INVENTED,
        List.of(cautions),
        "");
  }

  private static LockOut of(Machine machine, Market market, String... kinds) {
    return of(machine, market, List.of(), List.of(), kinds);
  }

  private static LockOut of(
      Machine machine,
      Market market,
      List<Finding> findings,
      List<Suspicion> suspicions,
      String... kinds) {
    return LockOut.of(TABLE, situation(machine, market, findings, kinds), suspicions);
  }

  private static Situation situation(
      Machine machine, Market market, List<Finding> findings, String... kinds) {
    List<Component> components = new ArrayList<>();
    for (String kind : kinds) {
      components.add(new Component(kind, kind, Nameplate.UNREADABLE, Map.of(), Map.of(), INVENTED));
    }
    Complaint complaint = new Complaint(Complaint.Reason.FAULT, machine.said(), "", machine.told());
    Job plain =
        new Job(
            "job-1",
            "",
            new Appliance(
                "washing-machine", "", "", "", Optional.empty(), Nameplate.UNREADABLE, components),
            complaint,
            List.of(),
            machine.read(),
            Optional.empty());
    Job job =
        new Job(
            plain.id(),
            plain.date(),
            plain.appliance(),
            plain.complaint(),
            plain.instruments(),
            plain.measurements(),
            plain.prices(),
            plain.use(),
            Optional.of(market),
            machine.records(),
            new Progress(
                List.of(),
                machine.tests(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
    return new Situation(job, findings, LockOutTest::judge, Optional.empty(), market, WORDS);
  }

  private static LockState state(Machine machine, String... kinds) {
    return of(machine, Market.EU, kinds).state();
  }

  @ParameterizedTest
  @CsvSource({"YES, B", "SOMETIMES, B", "NO, A"})
  void aShockKeepsTheMachineUnplugged(Answer answer, LockState expected) {
    LockOut lockOut = of(Machine.of("shock-felt", answer), Market.EU, "supply-cord", "heater");
    assertEquals(expected, lockOut.state());
    assertEquals(expected == LockState.B, lockOut.forbidsRunning());
    assertEquals(expected == LockState.B, lockOut.staysUnplugged());
    assertTrue(lockOut.allows("heater", "resistance", Hazard.DEAD));
    assertEquals(expected == LockState.A, lockOut.allows("heater", "current", Hazard.RUNNING));
    assertEquals(expected == LockState.A, lockOut.allows("heater", "voltage", Hazard.LIVE));
  }

  @Test
  void nothingKnownForbidsNothing() {
    LockOut lockOut = of(Machine.SILENT, Market.EU, "heater");
    assertEquals(LockState.A, lockOut.state());
    assertEquals(Set.of(Taken.values()), lockOut.allowed());
    assertEquals(List.of(), lockOut.rows());
    assertEquals("", lockOut.text());
    assertTrue(lockOut.mends("heater"));
    assertFalse(lockOut.staysUnplugged());
  }

  /** What somebody says counts until it is answered; what is denied in words is asked for once. */
  @Test
  void wordsOfTheOwnerHoldUntilSomebodyAnswers() {
    assertEquals(LockState.B, state(Machine.SILENT.saying("I got a shock at the door")));
    LockOut denied = of(Machine.SILENT.saying("I never got a shock"), Market.EU);
    assertEquals(LockState.A, denied.state());
    assertEquals(List.of("shock-felt"), denied.ask());
    Machine answered = Machine.of("shock-felt", Answer.NO).saying("I got a shock at the door");
    assertEquals(LockState.A, state(answered));
    assertEquals(List.of(), of(answered, Market.EU).ask());
  }

  @Test
  void theStrictestRowComesFirstAndIsTold() {
    LockOut lockOut =
        of(
            Machine.of("shock-felt", Answer.YES).and("smells-of-gas", Answer.YES),
            Market.EU,
            "heater");
    assertEquals(LockState.D, lockOut.state());
    assertEquals("gas-smell", lockOut.rows().get(0).row().id());
    assertEquals("shock", lockOut.rows().get(1).row().id());
    assertEquals(lockOut.rows().get(0).text(), lockOut.text());
    assertEquals(Set.of(Taken.ASK), lockOut.allowed());
    assertFalse(lockOut.mends("heater"));
    assertFalse(lockOut.allows("heater", "resistance", Hazard.DEAD));
  }

  @Test
  void onlyTheRecordOfTheRightPersonLetsGoOfGas() {
    Machine gas = Machine.of("smells-of-gas", Answer.YES);
    assertEquals(LockState.A, state(gas.recording("gas-smell")));
    assertEquals(LockState.D, state(gas.recording("shock")));
  }

  /** As found it does not conform, or lies outside though undecided; as left it has to conform. */
  @ParameterizedTest
  @CsvSource({
    "0.5, , A",
    "1.2, , A",
    "1.7, , B",
    "3, , B",
    "3, 0.5, A",
    "3, 1.2, B",
    "3, 3, B",
    "0.5, 3, B"
  })
  void anEarthThatIsPoorIsReadAgainAfterTheWork(double found, Double left, LockState expected) {
    List<Measurement> read = new ArrayList<>();
    read.add(ratio("supply-cord", EARTH, found, Stage.AS_FOUND));
    if (left != null) {
      read.add(ratio("supply-cord", EARTH, left, Stage.AS_LEFT));
    }
    Machine machine = Machine.SILENT.with(read.toArray(Measurement[]::new));
    assertEquals(expected, state(machine, "supply-cord", "heater"));
  }

  /** A second reading before the work does not let go, nor does the last but one after it. */
  @Test
  void onlyTheLastReadingAfterTheWorkCounts() {
    Measurement poor = ratio("supply-cord", EARTH, 3, Stage.AS_FOUND);
    Measurement good = ratio("supply-cord", EARTH, 0.5, Stage.AS_LEFT);
    Measurement poorAgain = ratio("supply-cord", EARTH, 3, Stage.AS_LEFT);
    Measurement goodBefore = ratio("supply-cord", EARTH, 0.5, Stage.AS_FOUND);
    assertEquals(LockState.B, state(Machine.SILENT.with(poor, goodBefore), "supply-cord"));
    assertEquals(LockState.B, state(Machine.SILENT.with(poor, good, poorAgain), "supply-cord"));
    assertEquals(LockState.A, state(Machine.SILENT.with(poor, poorAgain, good), "supply-cord"));
  }

  /** 10 % about 230 V; of 120 V nets, which the table has no lower end of, only above. */
  @ParameterizedTest
  @CsvSource({
    "EU, 230, A",
    "EU, 252, A",
    "EU, 254, C",
    "EU, 208, A",
    "EU, 206, C",
    "NA, 120, A",
    "NA, 133, C",
    "NA, 131, A",
    "NA, 100, A"
  })
  void aSupplyOutsideItsRangeIsForAnElectrician(Market market, double volts, LockState expected) {
    LockOut lockOut =
        of(Machine.SILENT.with(volts("supply", "voltage-idle", volts)), market, "supply");
    assertEquals(expected, lockOut.state());
  }

  /** Row 12: more than 5 W, or more than 1 % of 230 V, which are 2.3 V. */
  @ParameterizedTest
  @CsvSource({"0.4, 10, A", "0.6, 10, B", "2.2, 1, A", "2.4, 1, B"})
  void aJointThatGetsHotKeepsTheMachineOff(double volts, double amperes, LockState expected) {
    assertEquals(expected, state(Machine.SILENT.with(drop(volts, amperes)), "relay"));
  }

  /** Row 22: until the DC link is read, nothing inside is touched but the cord. */
  @Test
  void chargeIsReadBeforeAnythingInside() {
    LockOut charged = of(Machine.SILENT, Market.EU, "inverter-drive", "heater", "supply-cord");
    assertFalse(charged.allows("heater", "resistance", Hazard.DEAD));
    assertTrue(charged.waits("heater", "resistance", Hazard.DEAD));
    assertTrue(charged.allows("supply-cord", EARTH, Hazard.DEAD));
    assertFalse(charged.waits("supply-cord", EARTH, Hazard.DEAD));
    assertTrue(charged.allows("inverter-drive", "dc-link-voltage", Hazard.DEAD));
    assertFalse(charged.allows("inverter-drive", "insulation-resistance", Hazard.DEAD));
    assertEquals(List.of(Reread.of("inverter-drive", "dc-link-voltage", false)), charged.before());
    assertTrue(charged.allows("heater", "current", Hazard.RUNNING));
    assertFalse(charged.waits("heater", "current", Hazard.RUNNING));
    assertFalse(charged.staysUnplugged());
  }

  @Test
  void aLikelyFaultComesBeforeAnyPowerAndItsTestFirst() {
    Suspicion suspicion =
        new Suspicion("earth", "supply-cord", "earth-open", "earth open", 0.2, Optional.of(EARTH));
    LockOut lockOut =
        of(Machine.SILENT, Market.EU, List.of(), List.of(suspicion), "supply-cord", "heater");
    assertEquals(LockState.A, lockOut.state());
    assertTrue(lockOut.forbidsRunning());
    assertEquals(Set.of(Taken.LOOK, Taken.ASK, Taken.DEAD), lockOut.allowed());
    assertTrue(lockOut.goesFirst("supply-cord", EARTH));
    assertFalse(lockOut.goesFirst("supply-cord", "insulation-resistance"));
    assertFalse(lockOut.goesFirst("heater", EARTH));
  }

  /** A caution of a module that keeps a machine unplugged holds where no row of the table does. */
  @Test
  void whatAModuleSaysKeepsItUnplugged() {
    Caution unplug = new Caution("shock", Signal.DANGER, "Shock. Leave it unplugged.", true);
    Caution other = new Caution("care", Signal.DANGER, "Shock. Take care.", false);
    Measurement poor = ratio("heater", "resistance", 3, Stage.AS_FOUND);
    Finding keeps = finding("heater", "resistance", 3, Verdict.DOES_NOT_CONFORM, unplug);
    Finding warns = finding("heater", "resistance", 3, Verdict.DOES_NOT_CONFORM, other);
    Machine machine = Machine.SILENT.with(poor);
    LockOut lockOut = of(machine, Market.EU, List.of(keeps), List.of(), "heater");
    assertEquals(LockState.B, lockOut.state());
    assertEquals("module-finding", lockOut.rows().get(0).row().id());
    assertEquals(LockState.A, of(machine, Market.EU, List.of(warns), List.of(), "heater").state());
  }

  /** A denial counts up to three words before, a doubt leaves the words standing and asks. */
  @ParameterizedTest
  @CsvSource({
    "I got a shock, B, 0",
    "maybe a shock, B, 1",
    "I never got a shock, A, 1",
    "no I really did get a shock, B, 0",
    "not wet. I got a shock, B, 0",
    "it hums, A, 0"
  })
  void deniedAndDoubtfulWordsAreAskedFor(String said, LockState expected, int asked) {
    LockOut lockOut = of(Machine.SILENT.saying(said), Market.EU);
    assertEquals(expected, lockOut.state());
    assertEquals(asked, lockOut.ask().size(), lockOut.ask().toString());
  }

  /** Row 1: earth, insulation and the tests before power first, then the current as it runs. */
  @Test
  void thePoweredRetestOpensOnceAllDeadOnesConform() {
    Machine shock = Machine.of("shock-felt", Answer.YES);
    Measurement earth = ratio("supply-cord", EARTH, 0.5, Stage.AS_LEFT);
    Measurement cord = ratio("supply-cord", "insulation-resistance", 0.5, Stage.AS_LEFT);
    Measurement heater = ratio("heater", "insulation-resistance", 0.5, Stage.AS_LEFT);
    Measurement current =
        ratio("supply-cord", "protective-conductor-current", 0.005, Stage.AS_LEFT);
    String powered = "protective-conductor-current";
    LockOut open = of(shock.with(earth, cord), Market.EU, "supply-cord", "heater");
    assertFalse(open.allows("supply-cord", powered, Hazard.RUNNING));
    Machine conforming = shock.with(earth, cord, heater);
    LockOut untested = of(conforming, Market.EU, "supply-cord", "heater");
    assertFalse(untested.allows("supply-cord", powered, Hazard.RUNNING));
    LockOut last = of(conforming.tested(BEFORE_POWER), Market.EU, "supply-cord", "heater");
    assertEquals(List.of(), last.beforePower());
    assertEquals(LockState.B, last.state());
    assertTrue(last.allows("supply-cord", powered, Hazard.RUNNING));
    assertFalse(last.allows("supply-cord", powered, Hazard.LIVE));
    assertFalse(last.allows("heater", powered, Hazard.RUNNING));
    assertEquals(
        LockState.A, state(shock.with(earth, cord, heater, current), "supply-cord", "heater"));
  }

  /** Row 5: what trips when warm is read at 40 °C or more; 39 °C does not let go. */
  @ParameterizedTest
  @CsvSource({"20, B", "39, B", "40, A", "70, A"})
  void whatTripsIsReadWarm(double celsius, LockState expected) {
    Measurement warm =
        read(
            "heater",
            "insulation-resistance",
            new Reading.Value(Quantity.of(0.5, "1", QuantityKind.RATIO), 0),
            new Conditions(
                Map.of("temperature", Quantity.of(celsius, "Cel", QuantityKind.TEMPERATURE))),
            Stage.AS_LEFT);
    Machine mended =
        Machine.of("trips-rcd", Answer.YES)
            .with(
                ratio("supply-cord", EARTH, 0.5, Stage.AS_LEFT),
                ratio("supply-cord", "insulation-resistance", 0.5, Stage.AS_LEFT),
                warm);
    assertEquals(expected, state(mended, "supply-cord", "heater"));
  }

  /** Row 12: from brown on; and what no check judges is held against the limits of the row. */
  @Test
  void aJointIsReadAgainOnceItIsRenewed() {
    assertEquals(LockState.B, state(Machine.SILENT.with(burns("brown", 2)), "supply-cord"));
    assertEquals(LockState.B, state(Machine.SILENT.with(burns("charred", 3)), "supply-cord"));
    assertEquals(LockState.A, state(Machine.SILENT.with(burns("dark", 1)), "supply-cord"));
    assertEquals(
        LockState.A, state(Machine.SILENT.with(drop(0.6, 10), left(drop(0.1, 10))), "relay"));
    assertEquals(
        LockState.B, state(Machine.SILENT.with(drop(0.6, 10), left(drop(0.6, 10))), "relay"));
  }

  private static Measurement burns(String word, int rank) {
    return read(
        "supply-cord",
        "plug-burns",
        new Reading.Grade(word, rank),
        Conditions.NONE,
        Stage.AS_FOUND);
  }

  private static Measurement left(Measurement found) {
    return read(
        found.component(),
        found.observable(),
        found.readings().get(0),
        found.conditions(),
        Stage.AS_LEFT);
  }

  /** Row 20 is about the sealed circuit alone: the rest of the machine is as usual. */
  @Test
  void aSealedCircuitIsLeftClosedAndTheRestIsNot() {
    LockOut lockOut = of(Machine.SILENT, Market.EU, "refrigerant-circuit", "heater");
    assertEquals(LockState.A, lockOut.state());
    assertFalse(lockOut.mends("refrigerant-circuit"));
    assertFalse(lockOut.allows("refrigerant-circuit", "insulation-resistance", Hazard.DEAD));
    assertFalse(lockOut.waits("refrigerant-circuit", "insulation-resistance", Hazard.DEAD));
    assertTrue(lockOut.mends("heater"));
    assertTrue(lockOut.allows("heater", "resistance", Hazard.DEAD));
    assertFalse(lockOut.staysUnplugged());
  }

  private static List<Suspicion> suspected(Machine machine, String part, double chance, String id) {
    List<Suspicion> all = new ArrayList<>();
    for (Suspicion each :
        Suspicion.of(
            TABLE,
            situation(machine, Market.EU, List.of(), "supply-cord", "heater", "door-switch"),
            List.of(new Suspicion.Likely(part, id, id, chance)))) {
      all.add(each);
    }
    return all;
  }

  /** From one in five on a fault that a row names is looked for before any power. */
  @Test
  void aLikelyFaultIsSuspectedUntilItsTestIsIn() {
    assertEquals(List.of(), suspected(Machine.SILENT, "supply-cord", 0.19, "earth-open"));
    assertEquals(List.of(), suspected(Machine.SILENT, "supply-cord", 0.9, "broken"));
    List<Suspicion> open = suspected(Machine.SILENT, "supply-cord", 0.2, "earth-open");
    assertEquals(
        List.of(
            new Suspicion(
                "earth", "supply-cord", "earth-open", "earth-open", 0.2, Optional.of(EARTH))),
        open);
    Machine good = Machine.SILENT.with(ratio("supply-cord", EARTH, 0.5, Stage.AS_FOUND));
    assertEquals(List.of(), suspected(good, "supply-cord", 0.2, "earth-open"));
    Machine poor = Machine.SILENT.with(ratio("supply-cord", EARTH, 3, Stage.AS_FOUND));
    assertEquals(List.of(), suspected(poor, "supply-cord", 0.2, "earth-open"));
    Machine unclear = Machine.SILENT.with(ratio("supply-cord", EARTH, 1.2, Stage.AS_FOUND));
    assertEquals(1, suspected(unclear, "supply-cord", 0.2, "earth-open").size());
    assertEquals(
        List.of(), suspected(Machine.SILENT.recording("earth"), "supply-cord", 0.2, "earth-open"));
  }

  /** What none of several faults of a row is likely enough for, they are together. */
  @Test
  void severalUnlikelyFaultsOfARowAreSuspectedTogether() {
    List<Suspicion.Likely> faults =
        List.of(
            new Suspicion.Likely("heater", "leaking", "heater leaks to earth", 0.12),
            new Suspicion.Likely("supply-cord", "damp", "cord damp", 0.09),
            new Suspicion.Likely("supply-cord", "broken", "cord broken", 0.7));
    Situation silent = situation(Machine.SILENT, Market.EU, List.of(), "supply-cord", "heater");
    List<Suspicion> suspected = Suspicion.of(TABLE, silent, faults);
    assertEquals(1, suspected.size());
    assertEquals("insulation", suspected.get(0).row());
    assertEquals("heater", suspected.get(0).component());
    assertEquals("heater leaks to earth, or another of its kind", suspected.get(0).fault());
    assertEquals(0.21, suspected.get(0).probability(), 1e-12);
    List<Suspicion.Likely> fewer = List.of(faults.get(0), faults.get(2));
    assertEquals(List.of(), Suspicion.of(TABLE, silent, fewer));
  }

  /** A welded contact is row 10, but that of a door switch is not: it has a row of its own. */
  @Test
  void aWeldedDoorSwitchIsNoStuckContact() {
    assertEquals(
        List.of("stuck-contact"),
        suspected(Machine.SILENT, "heater", 0.5, "welded").stream().map(Suspicion::row).toList());
    assertFalse(
        suspected(Machine.SILENT, "door-switch", 0.5, "welded").stream()
            .anyMatch(each -> each.row().equals("stuck-contact")));
  }
}
