package kelter.cli.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import kelter.cli.safety.Call;
import kelter.core.check.Finding;
import kelter.core.check.Verdict;
import kelter.core.file.catalogue.WorkStepsFile;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.job.Conditions;
import kelter.core.job.Measurement;
import kelter.core.job.ReadingParser;
import kelter.core.proof.Proof;
import kelter.core.proof.ReadTwice;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import kelter.core.report.OwnersPage;
import kelter.core.report.Point;
import kelter.core.safety.Hazard;
import kelter.core.safety.lockout.ReleaseTest;
import kelter.core.session.Prompt;
import kelter.core.session.Reply;
import kelter.core.session.Session;
import kelter.core.workshop.Case;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The way back to power as a technician is led along it, with what may go wrong on it. */
class LedProofTest {

  private static final String WASHER =
      """
      {"format":"kelter-job/2","id":"washer","appliance":{"kind":"washing-machine","age":"6 a",
        "components":[{"id":"heater","nameplate":{"power":"2000 W","voltage":"230 V"}}]},
       "symptoms":{"stays-cold":"yes"},
       "measurements":[{"of":"heater","observable":"resistance","reading":"OL"}],
       "work":[{"remedy":"heater.renew-heater","title":"renew the heater"}]}
      """;

  private static final String DRYER =
      """
      {"format":"kelter-job/2","id":"dryer","appliance":{"kind":"tumble-dryer","age":"6 a",
        "components":[{"id":"air-heater","nameplate":{"power":"2700 W","voltage":"230 V"}}]},
       "symptoms":{"does-not-dry":"yes"},
       "measurements":[{"of":"air-heater","observable":"lint","reading":"blocked"}],
       "work":[{"remedy":"air-heater.clear-air-path","title":"clear the way of the air"}]}
      """;

  private static final String WATER_HEATER =
      """
      {"format":"kelter-job/2","id":"tank","appliance":{"kind":"storage-water-heater","age":"12 a"},
       "symptoms":{"trips-rcd":"yes"},
       "work":[{"remedy":"heater.renew-heater","title":"renew the heater"}],
       "measurements":[{"of":"heater","observable":"insulation-resistance","reading":"> 200 Mohm",
         "at":{"temperature":"45 Cel"},"stage":"as-left"}],
       "symptoms-left":{"trips-rcd":"no"}}
      """;

  /** A vacuum cleaner whose class nobody told. */
  private static final String VACUUM =
      """
      {"format":"kelter-job/2","id":"vacuum","appliance":{"kind":"vacuum-cleaner","age":"8 a"},
       "symptoms":{"stops-in-cycle":"yes"},
       "work":[{"remedy":"supply-cord.shorten-cord"}],
       "measurements":[{"of":"supply-cord","observable":"conductor-resistance",
         "reading":"0.15 ohm","stage":"as-left"}],
       "tests":{"look":"met"}}
      """;

  /** It holds no water, so that nothing stands in it at 60 °C and no valve lets expansion out. */
  @Test
  void aFlowHeaterIsNotTestedAsAStore() {
    String flow =
        """
        {"format":"kelter-job/2","id":"flow","appliance":{"kind":"instantaneous-water-heater"},
         "work":[{"remedy":"heater.renew-heater","title":"renew the heater"}]}
        """;
    List<String> steps =
        Proof.of(proving(flow).machine()).tests().stream().map(ReleaseTest::step).toList();

    assertTrue(steps.contains("refill"), steps.toString());
    assertFalse(steps.contains("store-hot"), steps.toString());
    assertFalse(steps.contains("valve-free"), steps.toString());
  }

  @Test
  void aMachineOfClassTwoHasNoEarthToRead() {
    Session session = proving(VACUUM);
    assertTrue(session.prompt() instanceof Prompt.Measure, session.prompt().toString());
    String doubt = String.join(" ", session.answer("no earth").told());
    assertTrue(doubt.contains("type class II"), doubt);

    Session told = typing(session, "class II");
    Proof proof = Proof.of(told.machine());
    assertTrue(
        proof.beforePower().stream().noneMatch(each -> each.step().equals("earth")),
        proof.beforePower().toString());
    Prompt.Measure next = assertInstanceOf(Prompt.Measure.class, told.prompt());
    assertEquals("insulation-resistance", next.question().observable().id());
    String foil = next.question().observable().procedure().text();
    assertTrue(foil.contains("of class II, which has none, to bare touchable metal"), foil);
  }

  private static Json.Obj content(String job) {
    return (Json.Obj) JsonText.read(job.getBytes(StandardCharsets.UTF_8), "job", "");
  }

  private static Session proving(String job) {
    return heeding(Session.proving(Call.WORKSHOP, content(job)));
  }

  private static Session heeding(Session session) {
    Session now = session;
    while (now.prompt() instanceof Prompt.Heed) {
      now = now.answer("ok").session();
    }
    return now;
  }

  private static Session typing(Session session, String... lines) {
    Session now = session;
    for (String line : lines) {
      now = heeding(now.answer(line).session());
    }
    return now;
  }

  /**
   * Answers tests by name and readings by key, in whatever order they come; the rest is skipped.
   */
  private static Session answering(Session session, String... answers) {
    Session now = session;
    for (int i = 0; i < 40 && !ends(now.prompt()); i++) {
      String line = "skip";
      for (String each : answers) {
        String[] told = each.split(" = ", 2);
        line = told[0].equals(asked(now.prompt())) ? told[1] : line;
      }
      now = heeding(now.answer(line).session());
    }
    return now;
  }

  private static boolean ends(Prompt prompt) {
    return prompt instanceof Prompt.Shown
        || prompt instanceof Prompt.Outside
        || prompt instanceof Prompt.Failed
        || prompt instanceof Prompt.Enough;
  }

  private static String asked(Prompt prompt) {
    if (prompt instanceof Prompt.Look look) {
      return look.test().step();
    }
    if (prompt instanceof Prompt.Measure measure) {
      return measure.question().key();
    }
    return prompt instanceof Prompt.Ask ask ? ask.symptom().id() : "";
  }

  private static boolean isPowered(Prompt prompt) {
    if (prompt instanceof Prompt.Look look) {
      return look.test().powered();
    }
    return prompt instanceof Prompt.Measure measure
        && measure.question().observable().procedure().hazard().compareTo(Hazard.DEAD) > 0;
  }

  private static Proof proof(Session session) {
    return Proof.of(session.machine());
  }

  private static Point mayUse(Case machine) {
    return OwnersPage.of(
            machine,
            Proof.of(machine),
            WorkStepsFile.shipped(),
            new OwnersPage.Beside("", false, Optional.empty()))
        .get(0);
  }

  /** 2 kW at 230 V is 26.45 ohm; 0.3 ohm would draw 767 A. */
  @Test
  void aNewPartThatIsShortedKeepsThePowerOff() {
    Session session = typing(proving(WASHER), "0.3 ohm");

    ReadTwice outside = assertInstanceOf(Prompt.Outside.class, session.prompt()).read();
    assertEquals("heater", outside.component());
    assertEquals(List.of(outside), proof(session).outside());
    assertTrue(proof(session).open() > 0);
    assertEquals(
        "Not mended: what was read after the work is not within its limits",
        proof(session).cure().orElseThrow().words());
    assertTrue(mayUse(session.machine()).warning());
    assertTrue(mayUse(session.machine()).answers().get(0).contains("heater: resistance"));

    Session skipped = session.answer("skip").session();
    assertInstanceOf(Prompt.Outside.class, skipped.prompt());
  }

  @Test
  void theLastReadingOfAPartCounts() {
    Session session = typing(proving(WASHER), "0.3 ohm", "26.4 ohm");
    Proof proof = proof(session);

    assertFalse(session.prompt() instanceof Prompt.Outside);
    assertEquals(List.of(), proof.outside());
    assertFalse(proof.isRefuted());
    assertEquals(1, proof.readings().size());
    assertEquals("0.3 Ω", proof.readings().get(0).superseded().get(0).shown().replace("ohm", "Ω"));
    assertTrue(proof.cure().orElseThrow().chance() > 0.9, proof.cure().toString());
    assertEquals(3, session.machine().job().measurements().size());
  }

  /** A cold reading says nothing of how a part is warm. */
  @Test
  void aColdReadingDoesNotStandInPlaceOfAWarmOne() {
    String bad = WATER_HEATER.replace("> 200 Mohm", "0.01 Mohm");
    Session session = proving(bad);
    assertInstanceOf(Prompt.Outside.class, session.prompt());
    Reply cold = session.answer("> 200 Mohm");
    assertTrue(cold.told().get(0).contains("temperature"), cold.told().toString());
    assertInstanceOf(Prompt.Outside.class, typing(session, "> 200 Mohm at 15 Cel").prompt());
    assertFalse(typing(session, "> 200 Mohm at 45 Cel").prompt() instanceof Prompt.Outside);
  }

  @Test
  void whatEndsALockOutUnderPowerWaitsForTheTestsBeforeIt() {
    Session session =
        answering(
            proving(DRYER),
            "air-heater.lint = none",
            "look = y",
            "lint-clean = y",
            "polarity = y",
            "one-minute = y");

    assertInstanceOf(Prompt.Shown.class, session.prompt());
    assertEquals(List.of("earth", "insulation", "one-minute"), waiting(session));
  }

  @Test
  void aMinuteBehindAResidualCurrentDeviceComesBeforeAReadingUnderPower() {
    String[] dead = {
      "air-heater.lint = none",
      "look = y",
      "lint-clean = y",
      "polarity = y",
      "supply-cord.protective-conductor-resistance = 0.1 ohm",
      "supply-cord.insulation-resistance = > 200 Mohm"
    };
    Session skipped = answering(proving(DRYER), dead);
    assertEquals(List.of("one-minute"), waiting(skipped));
    assertFalse(
        skipped.machine().lockOut().allows("air-heater", "air-temperature-rise", Hazard.RUNNING));

    Session now = proving(DRYER);
    List<String> powered = new ArrayList<>();
    List<String> all = new ArrayList<>(List.of(dead));
    all.add("one-minute = y");
    for (int i = 0; i < 20 && !ends(now.prompt()); i++) {
      if (isPowered(now.prompt())) {
        powered.add(asked(now.prompt()));
      }
      String asked = asked(now.prompt());
      String line =
          all.stream()
              .filter(each -> each.startsWith(asked + " = "))
              .map(each -> each.split(" = ", 2)[1])
              .findFirst()
              .orElse("skip");
      now = heeding(now.answer(line).session());
    }
    assertEquals("one-minute", powered.get(0));
    assertTrue(powered.contains("air-heater.air-temperature-rise"), powered.toString());
  }

  private static List<String> waiting(Session session) {
    return proof(session).beforePower().stream()
        .map(ReleaseTest::step)
        .distinct()
        .collect(Collectors.toList());
  }

  /** A machine without a cord: the earth is read where it is connected. */
  @Test
  void aMachineWithoutACordIsReleasedByAFigureAtItsConnection() {
    Session session = proving(WATER_HEATER);
    assertEquals(
        List.of("protective conductor resistance where the machine is connected"),
        proof(session).release().stream().map(each -> each.display()).toList());

    Session earth = answering(session, "look = y", "earth = 0.05 ohm");
    assertFalse(earth.machine().lockOut().staysUnplugged(), earth.machine().lockOut().toString());

    Session word = answering(session, "look = y", "earth = y");
    assertTrue(word.machine().lockOut().staysUnplugged());

    Session bad = answering(session, "look = y", "earth = 2 ohm");
    assertEquals("earth", assertInstanceOf(Prompt.Failed.class, bad.prompt()).test().step());
  }

  @ParameterizedTest
  @CsvSource({"OL, 200", "OL, > 200 Mohm", "over range, 200 Mohm", "OL at 20 Cel, > 500 Mohm"})
  void overRangeOfAnInsulationTesterAsksForTheEndOfItsRange(String first, String end) {
    Session session = proving(WASHER);
    for (int i = 0;
        i < 9 && !asked(session.prompt()).equals("supply-cord.insulation-resistance");
        i++) {
      session = heeding(session.answer("skip").session());
    }
    Session range = session.answer(first).session();
    assertInstanceOf(Prompt.RangeEnd.class, range.prompt());
    Session told = range.answer(end).session();
    assertEquals(
        ReleaseTest.Result.MET,
        proof(told).tests().stream()
            .filter(each -> each.step().equals("insulation"))
            .findFirst()
            .orElseThrow()
            .result());
  }

  @Test
  void whereTheEndOfTheRangeIsNotKnownNothingIsAskedTwice() {
    Session session = proving(WASHER);
    for (int i = 0;
        i < 9 && !asked(session.prompt()).equals("supply-cord.insulation-resistance");
        i++) {
      session = heeding(session.answer("skip").session());
    }
    Reply skipped = session.answer("OL").session().answer("skip");
    assertTrue(skipped.told().get(0).contains("> 200"), skipped.told().toString());
    assertFalse(
        asked(skipped.session().prompt()).equals("supply-cord.insulation-resistance"),
        asked(skipped.session().prompt()));
    assertEquals("over range", skipped.session().machine().job().measurements().get(1).shown());
  }

  /**
   * 2.7 kW warm 42 L/s of air by 53 K, 55 L/s by 41 K, 30 L/s by 75 K (density 1.2 kg/m³, 1.0
   * kJ/(kg K)): what may be a choked machine stays locked, and is told what would decide it.
   */
  @ParameterizedTest
  @CsvSource({"45, true", "55, true", "80, false", "200, false", "12, false"})
  void aRiseOfTheAirThatNoSoundMachineExceedsEndsTheLint(int rise, boolean ends) {
    Session session =
        answering(
            proving(DRYER),
            "air-heater.lint = none",
            "look = y",
            "lint-clean = y",
            "polarity = y",
            "one-minute = y",
            "supply-cord.protective-conductor-resistance = 0.1 ohm",
            "supply-cord.insulation-resistance = > 200 Mohm",
            "supply-cord.protective-conductor-current = 0.3 mA",
            "supply-cord.touch-current = 0.1 mA",
            "air-heater.air-temperature-rise = " + rise + " K");
    assertEquals(
        !ends, session.machine().lockOut().row("lint").isPresent(), proof(session).toString());
  }

  @Test
  void aReadingThatDecidesNothingIsAskedAgainWithTheReason() {
    Session session = proving(DRYER);
    List<String> answers =
        List.of(
            "air-heater.lint = none",
            "look = y",
            "lint-clean = y",
            "polarity = y",
            "one-minute = y",
            "supply-cord.protective-conductor-resistance = 0.1 ohm",
            "supply-cord.insulation-resistance = > 200 Mohm",
            "supply-cord.protective-conductor-current = 0.3 mA",
            "supply-cord.touch-current = 0.1 mA");
    for (int i = 0;
        i < 20 && !asked(session.prompt()).equals("air-heater.air-temperature-rise");
        i++) {
      String asked = asked(session.prompt());
      session =
          typing(
              session,
              answers.stream()
                  .filter(each -> each.startsWith(asked + " = "))
                  .map(each -> each.split(" = ", 2)[1])
                  .findFirst()
                  .orElse("skip"));
    }
    Reply undecided = session.answer("80 K");
    assertTrue(undecided.told().toString().contains("airflow"), undecided.told().toString());
    assertTrue(undecided.told().toString().contains("State what this machine has"));
  }

  /** The figure of one current says nothing of the other that is read at the same step. */
  @Test
  void eachCurrentOfAMachineWithoutACordIsAskedFor() {
    Session session =
        answering(
            proving(WATER_HEATER.replace("\"trips-rcd\":\"yes\"", "\"stays-cold\":\"yes\"")),
            "look = y",
            "earth = 0.05 ohm",
            "insulation = > 200 Mohm",
            "polarity = y",
            "filled = y",
            "refill = y",
            "valve-free = y",
            "one-minute = y",
            "leakage = 0.4 mA");
    List<ReleaseTest> leakage =
        proof(session).tests().stream().filter(each -> each.step().equals("leakage")).toList();
    assertEquals("0.4 mA; 0.4 mA", leakage.get(0).note());
    assertEquals(ReleaseTest.Result.MET, leakage.get(1).result());

    Case one =
        Call.of("storage-water-heater")
            .met("leakage: 0.4 mA")
            .open("\"voltage\":\"230 V\"", "", "");
    assertOneOfTwoIsMet(one);
  }

  private static void assertOneOfTwoIsMet(Case machine) {
    assertEquals(
        List.of(ReleaseTest.Result.MET, ReleaseTest.Result.NOT_MEASURED),
        Proof.of(machine).tests().stream()
            .filter(each -> each.step().equals("leakage"))
            .map(ReleaseTest::result)
            .toList());
  }

  /** Nor does a yes to the one: each is asked for. */
  @Test
  void aYesToOneCurrentSaysNothingOfTheOther() {
    Session session =
        answering(
            proving(WATER_HEATER.replace("\"trips-rcd\":\"yes\"", "\"stays-cold\":\"yes\"")),
            "look = met",
            "earth = 0.05 ohm",
            "insulation = > 200 Mohm",
            "polarity = met",
            "filled = ok",
            "refill = y",
            "valve-free = y",
            "one-minute = y",
            "leakage = y");
    ReleaseTest leakage =
        proof(session).tests().stream()
            .filter(each -> each.step().equals("leakage"))
            .findFirst()
            .orElseThrow();
    assertEquals("met; met", leakage.note());

    Case one = Call.of("storage-water-heater").met("leakage: met;").open("", "", "");
    assertOneOfTwoIsMet(one);
  }

  /** What is wired in is asked for what it does once it has run. */
  @Test
  void whatAWiredInMachineDoesAfterTheWorkIsAskedFor() {
    String oven =
        """
        {"format":"kelter-job/2","id":"oven","appliance":{"kind":"oven"},
         "symptoms":{"heats-slowly":"yes"},
         "work":[{"remedy":"bake-element.renew-heater"}],
         "tests":{"look":"met","glass-renewed":"met","earth":"met","insulation":"met",
           "polarity":"met","one-minute":"met","leakage":"met","cycle":"met"},
         "measurements":[
           {"of":"supply-cord","observable":"protective-conductor-resistance",
            "reading":"0.05 ohm","stage":"as-left"},
           {"of":"supply-cord","observable":"insulation-resistance",
            "reading":"> 200 Mohm","stage":"as-left"}]}
        """;
    Session session = proving(oven);
    for (int i = 0; i < 9 && !(session.prompt() instanceof Prompt.Ask); i++) {
      session = typing(session, "skip");
    }
    assertEquals("heats-slowly", asked(session.prompt()));
  }

  @Test
  void aLookThatKeepsThePowerOffIsAskedAgainWithTheReason() {
    Session session = proving(WATER_HEATER);
    for (int i = 0; i < 9 && !asked(session.prompt()).equals("heater.sheath-damaged"); i++) {
      session = typing(session, "skip");
    }
    Session split = typing(session, "y");
    for (int i = 0; i < 9 && !asked(split.prompt()).equals("heater.sheath-damaged"); i++) {
      split = typing(split, "skip");
    }
    String why = assertInstanceOf(Prompt.Measure.class, split.prompt()).why();
    assertTrue(why.contains("Read as yes, which does not do"), why);
  }

  /** Less air that is read with the rise explains it, and is what a choked machine has. */
  @Test
  void lessAirDoesNotExcuseAHotterOne() {
    Case choked =
        Call.of("tumble-dryer")
            .read("air-heater", "lint", "blocked")
            .open(
                "\"voltage\":\"230 V\"",
                "{\"id\":\"air-heater\",\"nameplate\":{\"power\":\"2700 W\",\"voltage\":\"230"
                    + " V\"},\"figures\":{\"airflow\":\"50 L/s\"}}",
                "");
    List<Finding> found =
        choked.judged(
            new Measurement(
                "air-heater",
                "air-temperature-rise",
                List.of(
                    ReadingParser.parse(
                        "110 K",
                        choked
                            .vocabulary()
                            .observable("air-heater", "air-temperature-rise")
                            .orElseThrow())),
                new Conditions(
                    Map.of("airflow", QuantityParser.parse("20 L/s", QuantityKind.FLOW))),
                Optional.empty(),
                "",
                Measurement.Stage.AS_LEFT));
    assertTrue(
        found.stream()
            .anyMatch(
                each ->
                    each.observable().equals("air-temperature-rise")
                        && each.verdict() == Verdict.DOES_NOT_CONFORM),
        found.toString());
  }

  /**
   * An oven's cord of 2.5 mm²: 0.04 ohm at 5 m (IEC 60228, 7.98 ohm/km) and 0.1 ohm for contacts.
   */
  @ParameterizedTest
  @CsvSource({"0.08, MET", "0.5, NOT_MET"})
  void theEarthOfAThickerCordIsDecided(String read, ReleaseTest.Result result) {
    Case oven =
        Call.WORKSHOP.open(
            Call.WORKSHOP
                .read(
                    content(
                        """
                        {"format":"kelter-job/2","id":"oven","appliance":{"kind":"oven"},
                         "symptoms":{"stays-cold":"yes"},
                         "measurements":[{"of":"supply-cord",
                           "observable":"protective-conductor-resistance",
                           "reading":"READ ohm","stage":"as-left"}]}
                        """
                            .replace("READ", read)))
                .job());
    assertEquals(
        result,
        Proof.of(oven).tests().stream()
            .filter(each -> each.step().equals("earth"))
            .findFirst()
            .orElseThrow()
            .result());
  }

  /** Title and verdict of one test speak of the same limit. */
  @ParameterizedTest
  @CsvSource({"'', 2", "I, 0.3", "II, 2"})
  void theTestOfInsulationNamesTheLimitThatDecides(String stated, String most) {
    String nameplate =
        stated.isEmpty() ? "" : "\"nameplate\":{\"protection-class\":\"" + stated + "\"},";
    Session session = proving(WASHER.replace("\"age\":\"6 a\",", "\"age\":\"6 a\"," + nameplate));
    ReleaseTest test =
        proof(session).tests().stream()
            .filter(each -> each.step().equals("insulation"))
            .findFirst()
            .orElseThrow();
    assertTrue(test.text().contains("at least " + most + " Mohm"), test.text());
  }
}
