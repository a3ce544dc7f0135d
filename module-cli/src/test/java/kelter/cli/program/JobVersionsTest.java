package kelter.cli.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import kelter.cli.command.ExitCode;
import kelter.cli.wiring.Found;
import kelter.core.file.catalogue.KindFile;
import kelter.core.file.job.JobDocument;
import kelter.core.file.job.JobFile;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.job.Complaint;
import kelter.core.job.Job;
import kelter.core.job.SymptomReport;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.text.HarmlessText;
import kelter.core.vocabulary.Vocabulary;
import kelter.core.workshop.Workshop;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Job files of both versions, as the commands take them. */
class JobVersionsTest {

  private static final Path DEMO = Path.of("..", "demo");
  private static final Workshop WORKSHOP = Workshop.of(Found.usual().modules());
  private static final Vocabulary WORDS = WORKSHOP.vocabulary();

  private static final List<String> NOTES =
      List.of(
          "'drain-pump.drains-slowly' of a file of version 1: taken as the symptom"
              + " 'drains-slowly', yes",
          "'heater.washes-cold' of a file of version 1: taken as the symptom 'stays-cold', no",
          "'heater.heats-slowly' of a file of version 1: taken as the symptom 'heats-slowly',"
              + " yes");

  @TempDir private Path folder;
  private Path one;

  @BeforeEach
  void writeVersionOne() throws IOException {
    one = folder.resolve("one.json");
    try (InputStream in =
        JobVersionsTest.class.getResourceAsStream("washer-extractor-version-1.json")) {
      Files.copy(in, one);
    }
  }

  @Test
  void whatAnOlderFileSaysIsTakenAndToldOnce() {
    for (String command : List.of("check", "diagnose", "weigh")) {
      Console console = Console.run(command, one.toString());

      assertEquals(0, console.code(), console.err());
      assertEquals(
          NOTES.stream().map(note -> "kelter: " + note).toList(), console.err().lines().toList());
    }
  }

  @Test
  void otherProgramsAreToldInTheNotes() {
    Console console = Console.run("diagnose", "--format", "json", one.toString());
    Json.Obj result = json(console.out());
    List<Json> notes = ((Json.Arr) result.members().get("notes")).items();

    for (String note : NOTES) {
      Json told =
          new Json.Obj(Map.of("id", new Json.Str("job-as-read"), "text", new Json.Str(note)));
      assertTrue(notes.contains(told), notes.toString());
    }
  }

  @Test
  void nothingIsToldOfAFileOfThePresentVersion() {
    Path two = DEMO.resolve("jobs/washer-extractor.json");
    assertEquals("", Console.run("diagnose", two.toString()).err());
  }

  /** The demo's washer was written anew in the present version. */
  @Test
  void bothVersionsOfTheWasherSayTheSame() {
    Job old = WORKSHOP.read(one);
    Job now = WORKSHOP.read(DEMO.resolve("jobs/washer-extractor.json"));

    assertEquals(old.measurements(), now.measurements());
    assertEquals(answers(old.complaint()), answers(now.complaint()));
    assertEquals(old.complaint().said(), now.complaint().said());
  }

  private static List<SymptomReport> answers(Complaint complaint) {
    return complaint.symptoms().stream()
        .map(report -> new SymptomReport(report.symptom(), report.answer()))
        .toList();
  }

  @Test
  void readingsGoIntoJobsOfBothVersions() throws IOException {
    Path two = Files.copy(DEMO.resolve("jobs/water-boiler.json"), folder.resolve("two.json"));
    Path old = folder.resolve("old.json");
    Files.writeString(
        old,
        Files.readString(two)
            .replace("kelter-job/2", "kelter-job/1")
            .replaceAll("\"market\": \"EU\",|\"symptoms\": \\{(?s:.*?)\n  },", "")
            .replace(
                "\"measurements\": [",
                "\"measurements\": [ { \"of\": \"heater\", \"observable\": \"trips-rcd\","
                    + " \"reading\": \"yes\" },"));

    for (Path job : List.of(two, old)) {
      int before = StatedJob.read(job, WORDS).job().measurements().size();
      Console console =
          Console.run(
              "readings",
              DEMO.resolve("logs/boiler-heating.csv").toString(),
              "--map",
              "Power=heater.power",
              "--window",
              "2",
              "--into",
              job.toString());

      assertEquals(0, console.code(), console.err());
      JobDocument after = StatedJob.read(job, WORDS);
      assertEquals(before + 1, after.job().measurements().size());
      assertEquals("trips-rcd", after.job().complaint().symptoms().get(0).symptom());
      assertEquals(job == old, after.text().contains("kelter-job/1"), "the version stays");
    }
  }

  @Test
  void everyTemplateAndDemoJobIsOfThePresentVersion() throws IOException {
    var schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(JobFile.schema(), InputFormat.JSON);
    for (String kind : KindFile.shipped()) {
      String text = Console.run("new", kind, "--all").out();
      assertEquals(List.of(), schema.validate(text, InputFormat.JSON), kind);
      assertEquals(Complaint.UNSAID, StatedJob.parse(text, WORDS).job().complaint(), kind);
      String shortForm = Console.run("new", kind, "-s", "loud=no", "--age", "3 a").out();
      String inYears = Console.run("new", kind, "-s", "loud=no", "--age", "3").out();
      assertEquals(shortForm, inYears);
      assertEquals(List.of(), schema.validate(shortForm, InputFormat.JSON), kind);
    }
    try (Stream<Path> jobs = Files.list(DEMO.resolve("jobs"))) {
      for (Path job : jobs.toList()) {
        assertEquals(
            List.of(), schema.validate(Files.readString(job), InputFormat.JSON), job.toString());
      }
    }
    assertEquals(
        Complaint.Reason.INSPECTION,
        WORKSHOP.read(DEMO.resolve("jobs/healthy-washer.json")).complaint().reason());
  }

  /** What a template offers to ask and to state is what a job may say. */
  @Test
  void theSymptomsOfATemplateCanBeAnswered() {
    String text = Console.run("new", "tumble-dryer", "--all").out();
    JobDocument answered = StatedJob.parse(text.replace("\"not asked\"", "\"no\""), WORDS);
    List<String> asked =
        answered.job().complaint().symptoms().stream().map(SymptomReport::symptom).toList();

    assertTrue(asked.containsAll(List.of("trips-rcd", "stays-cold", "does-not-dry")), text);
    assertFalse(asked.contains("does-not-drain"), "a dryer without a drain pump");
    Json.Obj questions = (Json.Obj) answered.content().members().get("x-what-can-be-asked");
    assertTrue(questions.members().keySet().containsAll(asked), text);
    assertFalse(questions.members().containsKey("shows-heat"), text);
    Json.Obj stated = (Json.Obj) answered.content().members().get("x-what-can-be-stated");
    assertEquals(new Json.Str("EU or UK or NA"), stated.members().get("market"));
  }

  @Test
  void bothSchemasAreShown() {
    assertTrue(Console.run("schema", "job").out().contains("\"urn:kelter:job:2\""));
    assertTrue(Console.run("schema", "job-1").out().contains("\"urn:kelter:job:1\""));
    assertTrue(Console.run("schema").out().contains("job-1: Kelter job file, version 1"));
  }

  @Test
  void hostileSymptomsAreHarmlessToLookAt() throws IOException {
    Path file = folder.resolve("hostile.json");
    String hostile = "\\u001b[31m\\u202e\\nDANGER";
    String job = Files.readString(DEMO.resolve("jobs/dear-heater.json"));
    for (String symptoms :
        List.of(
            "{ \"" + hostile + "\": \"yes\" }",
            "{ \"leaks\": \"" + hostile + "\" }",
            "{ \"leaks\": { \"report\": \"yes\", \"step\": \"%s\", \"since\": \"%<s\" } }"
                .formatted(hostile))) {
      String text = job.replaceFirst("\"symptoms\": \\{[^}]*}", "\"symptoms\": @");
      Files.writeString(file, text.replace("@", symptoms));
      for (String format : List.of("text", "json")) {
        Console console = Console.run("diagnose", "--format", format, file.toString());
        String all = console.out() + console.err();
        assertTrue(console.code() < ExitCode.DEFECT, all);
        assertFalse(all.replace("\n", "").codePoints().anyMatch(HarmlessText::isHarmful), all);
        assertFalse(all.lines().anyMatch(line -> line.startsWith("DANGER")), all);
      }
    }
  }

  @Test
  void aDisplayedMeaningIsASymptom() throws IOException {
    Path file = folder.resolve("shown.json");
    Files.writeString(
        file,
        Files.readString(DEMO.resolve("jobs/dear-heater.json"))
            .replace("\"measurements\"", "\"displayed\": [\"heat\"], \"measurements\""));

    assertTrue(
        StatedJob.read(file, WORDS)
            .job()
            .complaint()
            .symptoms()
            .contains(new SymptomReport("shows-heat", Answer.YES)));
  }

  private static Json.Obj json(String text) {
    return (Json.Obj) JsonText.read(text.getBytes(StandardCharsets.UTF_8), "result", "");
  }
}
