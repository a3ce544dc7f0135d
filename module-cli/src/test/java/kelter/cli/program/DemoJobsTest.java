package kelter.cli.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;
import kelter.core.check.Finding;
import kelter.core.check.Verdict;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.file.json.JsonText;
import kelter.core.job.Complaint;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.SymptomReport;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.module.CalculationModule;
import kelter.core.option.Weighing;
import kelter.core.problem.InputException;
import kelter.core.safety.Hazard;
import kelter.core.workshop.Workshop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The main job on the demo's machines: what was planted is found, and edits move it as they should.
 */
class DemoJobsTest {

  private static final Path JOBS = Path.of("..", "demo", "jobs");
  private static final Workshop WORKSHOP = Workshop.of(ServiceLoader.load(CalculationModule.class));

  @TempDir private Path folder;

  private static String text(String job) throws IOException {
    return Files.readString(JOBS.resolve(job + ".json"));
  }

  private static Job job(String text) {
    return WORKSHOP.read(JsonText.read(text.getBytes(StandardCharsets.UTF_8), "job", "")).job();
  }

  private static Diagnosis diagnose(String text) {
    return WORKSHOP.open(job(text)).diagnosis();
  }

  private static double probability(Diagnosis diagnosis, String key) {
    return diagnosis.fault(key).orElseThrow().probability();
  }

  private static double severity(Diagnosis diagnosis, String key) {
    return diagnosis.faults().stream()
        .filter(fault -> fault.fault().key().equals(key))
        .mapToDouble(fault -> fault.severity().mean())
        .findFirst()
        .orElseThrow();
  }

  private static List<String> best(Diagnosis diagnosis) {
    return diagnosis.ranking().get(0).faults().stream().map(f -> f.fault().key()).sorted().toList();
  }

  /** What the owner says and what was answered tell the same: warm, but not enough. */
  @Test
  void theComplaintAgreesWithTheSymptoms() throws IOException {
    Complaint complaint = job(text("washer-extractor")).complaint();
    assertTrue(complaint.said().contains("barely warm since Monday"), complaint.said());
    assertTrue(
        complaint.symptoms().contains(new SymptomReport("stays-cold", Answer.NO)),
        complaint.symptoms().toString());
    assertTrue(
        complaint
            .symptoms()
            .contains(
                new SymptomReport(
                    "heats-slowly", Answer.YES, Optional.empty(), "main wash", "Monday")),
        complaint.symptoms().toString());
  }

  private static Finding finding(String text, String component, String observable) {
    return WORKSHOP.open(job(text)).findings().stream()
        .filter(f -> f.component().equals(component) && f.observable().equals(observable))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void bothPlantedFaultsOfTheWasherAreOnTop() throws IOException {
    Diagnosis diagnosis = diagnose(text("washer-extractor"));

    assertEquals(List.of("drain-pump.passages-blocked", "heater.element-open"), best(diagnosis));
    assertTrue(diagnosis.ranking().get(0).probability() > 0.6);
    assertTrue(probability(diagnosis, "drain-pump.passages-blocked") > 0.95);
    assertTrue(probability(diagnosis, "heater.element-open") > 0.98);
    assertTrue(diagnosis.basis().conclusion().isDecided());
    assertTrue(diagnosis.basis().suspects().isEmpty());
  }

  @Test
  void nothingIsDiagnosedOnAJobThatBreaksTheRules() throws IOException {
    Job sound = job(text("washer-extractor"));
    Measurement first = sound.measurements().get(0);
    Measurement renamed =
        new Measurement(
            first.component(),
            "hed",
            first.readings(),
            first.conditions(),
            first.instrument(),
            first.note());
    Job wrong =
        new Job(
            sound.id(),
            sound.date(),
            sound.appliance(),
            sound.complaint(),
            sound.instruments(),
            List.of(renamed),
            sound.prices(),
            sound.use());

    String told = assertThrows(InputException.class, () -> WORKSHOP.open(wrong)).getMessage();

    assertTrue(told.contains("measurement 1 'drain-pump.hed', observable"), told);
    assertTrue(told.contains("did you mean 'head'?"), told);
  }

  @Test
  void findingsOfOneCheckAtTwoConditionsHaveIdsOfTheirOwn() throws IOException {
    String again =
        text("washer-extractor")
            .replace(
                "{ \"of\": \"drain-pump\", \"observable\": \"noise\"",
                """
                { "of": "drain-pump", "observable": "head", "reading": "1.1 m",
                  "at": { "flow": "8 L/min" } },
                { "of": "drain-pump", "observable": "noise\"""");

    List<String> ids = WORKSHOP.open(job(again)).findings().stream().map(Finding::id).toList();

    assertEquals(2, ids.stream().filter(id -> id.contains("head")).count(), ids.toString());
    assertEquals(ids.size(), ids.stream().distinct().count(), ids.toString());
  }

  @Test
  void onePriceOfAPartServesForAllComponents() throws IOException {
    String washer = text("washer-extractor");
    String bare = washer.replace("\"drain-pump.renew-pump\"", "\"renew-pump\"");

    assertEquals(diagnose(washer).plan(), diagnose(bare).plan());
  }

  @Test
  void theOtherMachinesAreFoundOut() throws IOException {
    assertEquals(List.of("wash-pump.jets-clogged"), best(diagnose(text("glasswasher"))));
    assertEquals(List.of("air-heater.lint"), best(diagnose(text("tumble-dryer"))));
    Diagnosis boiler = diagnose(text("water-boiler"));
    assertEquals(List.of("heater.leaking"), best(boiler));
    assertEquals("insulation-resistance", boiler.next().get(0).question().observable().id());
  }

  /**
   * Every reading of the boiler is asked for or taken with the plug out; no other is needed. Low
   * insulation is a leak in the heater or a split of its sheath, which only a look tells.
   */
  @Test
  void theLeakOfTheBoilerIsFoundWithDeadTestsOnly() throws IOException {
    String boiler = text("water-boiler");
    Job before = job(boiler);
    assertTrue(before.measurements("heater", "insulation-resistance").isEmpty());
    before.measurements().forEach(measurement -> assertTrue(isDead(before, measurement)));
    Diagnosis asked = WORKSHOP.open(before).diagnosis();
    assertEquals("heater", asked.next().get(0).question().component());
    assertEquals("insulation-resistance", asked.next().get(0).question().observable().id());
    assertEquals(Hazard.DEAD, asked.next().get(0).question().observable().procedure().hazard());

    String leaks =
        boiler.replace(
            "\"measurements\": [",
            """
            "measurements": [
            { "of": "heater", "observable": "insulation-resistance", "reading": "40 kOhm" },""");
    Diagnosis found = diagnose(leaks);
    assertEquals(List.of("heater.leaking"), best(found));
    assertTrue(
        probability(found, "heater.leaking") + probability(found, "heater.sheath-split") > 0.95);
    assertEquals("heater", found.next().get(0).question().component());
    assertEquals(Hazard.DEAD, found.next().get(0).question().observable().procedure().hazard());
    assertTrue(probability(found, "heater.leaking") > probability(asked, "heater.leaking"));
    Finding finding = finding(leaks, "heater", "insulation-resistance");
    assertEquals(Verdict.DOES_NOT_CONFORM, finding.verdict());
    assertTrue(finding.cautions().get(0).text().startsWith("Electric shock"));

    String whole = leaks.replace("40 kOhm", "> 200 MOhm");
    assertTrue(
        probability(diagnose(whole), "heater.leaking") < probability(asked, "heater.leaking"));
    String warm =
        whole.replace("\"> 200 MOhm\"", "\"> 200 MOhm\", \"at\": { \"temperature\": \"65 Cel\" }");
    assertTrue(probability(diagnose(warm), "heater.leaking") < 0.02);
  }

  private static boolean isDead(Job job, Measurement measurement) {
    String kind = job.appliance().component(measurement.component()).orElseThrow().kind();
    Hazard hazard =
        WORKSHOP
            .vocabulary()
            .observable(kind, measurement.observable())
            .orElseThrow()
            .procedure()
            .hazard();
    return hazard == Hazard.NONE || hazard == Hazard.DEAD;
  }

  /** What a cold insulation reading leaves open is a leak that shows only while it is warm. */
  @Test
  void nothingIsWrongWithTheHealthyMachine() throws IOException {
    Diagnosis diagnosis = diagnose(text("healthy-washer"));

    assertEquals(List.of(), best(diagnosis));
    assertTrue(
        diagnosis.healthy()
                + probability(diagnosis, "heater.leaking")
                + probability(diagnosis, "heater.sheath-split")
            > 0.9);
    assertTrue(diagnosis.healthy() > 0.88, diagnosis.healthy() + "");
    assertTrue(diagnosis.ranking().get(0).evidence().stream().anyMatch(e -> e.bits() > 3));
  }

  @Test
  void aLowerFlowMeansAWorseBlockage() throws IOException {
    String lower = text("washer-extractor").replace("6.4 L/min", "4.0 L/min");

    assertTrue(
        severity(diagnose(lower), "drain-pump.passages-blocked")
            > severity(diagnose(text("washer-extractor")), "drain-pump.passages-blocked"));
  }

  @Test
  void aHeadOnTheCurveConforms() throws IOException {
    String better = text("washer-extractor").replace("[\"1.82 m\", \"1.84 m\"]", "\"2.10 m\"");

    assertEquals(
        Verdict.DOES_NOT_CONFORM,
        finding(text("washer-extractor"), "drain-pump", "head").verdict());
    assertEquals(Verdict.CONFORMS, finding(better, "drain-pump", "head").verdict());
  }

  @Test
  void theResistanceOfAWholeHeaterClearsIt() throws IOException {
    String whole = text("washer-extractor").replace("26.6 ohm", "13.1 ohm");

    assertEquals(Verdict.CONFORMS, finding(whole, "heater", "resistance").verdict());
    assertTrue(probability(diagnose(whole), "heater.element-open") < 0.05);
  }

  @Test
  void anOlderMachineIsWorthLessOfARepair() throws IOException {
    Weighing young = weigh(text("washer-extractor").replace("\"7 years\"", "\"2 years\""));
    Weighing old = weigh(text("washer-extractor").replace("\"7 years\"", "\"14 years\""));

    assertTrue(young.breakEvenRepair() > old.breakEvenRepair());
  }

  private static Weighing weigh(String text) {
    Job job = job(text);
    return WORKSHOP.open(job).options(1);
  }

  @Test
  void everyDemoJobRunsInEightyColumnsAndTheSameFileGivesTheSameBytes() throws IOException {
    try (var jobs = Files.list(JOBS)) {
      for (Path path : jobs.filter(p -> p.toString().endsWith(".json")).sorted().toList()) {
        for (String command : List.of("check", "diagnose", "weigh")) {
          Console first = Console.run(command, path.toString());
          assertEquals(0, first.code(), first.err());
          assertTrue(first.widest() <= 80, path + " " + command);
          assertEquals(first.out(), Console.run(command, path.toString()).out());
        }
      }
    }
  }

  @Test
  void jsonHasTheFieldsOfTheContract() {
    String json =
        Console.run(
                "diagnose", "--format", "json", JOBS.resolve("washer-extractor.json").toString())
            .out();
    for (String field :
        List.of(
            "findings",
            "measured",
            "limits",
            "verdict",
            "probability-of-conformity",
            "source",
            "standing",
            "cautions",
            "ranking",
            "severity",
            "evidence",
            "bits",
            "unexplained",
            "misfit",
            "next",
            "minutes",
            "hazard",
            "plan",
            "remedy",
            "cures",
            "probability-of-cure",
            "cost")) {
      assertTrue(json.contains("\"" + field + "\""), field);
    }
  }

  @Test
  void eightMistakesPrintEightLines() throws IOException {
    String wrong =
        text("washer-extractor")
            .replace("\"date\": \"2026-10-19\"", "\"date\": \"yesterday\"")
            .replace("\"maker\"", "\"makr\"")
            .replace("\"7 years\"", "\"7 volts\"")
            .replace("\"1.9 m\"", "\"1.9 metrs\"")
            .replace("\"measures\": \"flow\"", "\"measures\": \"flw\"")
            .replace("\"observable\": \"noise\"", "\"observable\": \"nois\"")
            .replace("26.6 ohm", "26.6 V")
            .replace("\"58 EUR\"", "\"58\"");
    Path file = folder.resolve("wrong.json");
    Files.writeString(file, wrong);

    Console console = Console.run("diagnose", file.toString());

    assertEquals(1, console.code());
    assertEquals(8, console.err().lines().count(), console.err());
  }
}
