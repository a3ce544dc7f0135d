package kelter.cli.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import kelter.cli.terminal.Terminal;
import kelter.cli.wiring.Found;
import kelter.cli.wiring.Opening;
import kelter.core.file.catalogue.KindFile;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.vocabulary.Vocabulary;
import kelter.core.workshop.Workshop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KelterTest {

  @TempDir private Path folder;

  @Test
  void withoutAWordItTellsWhatThereIs() {
    Console console = Console.run();

    assertEquals(0, console.code());
    for (String command :
        List.of(
            "new",
            "check",
            "diagnose",
            "weigh",
            "quote",
            "simulate",
            "readings",
            "compute",
            "modules",
            "instruments")) {
      assertTrue(console.out().contains("  " + command), command);
    }
    assertTrue(console.out().contains("Exit codes"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "new",
        "check",
        "diagnose",
        "weigh",
        "quote",
        "simulate",
        "readings",
        "compute",
        "modules",
        "instruments"
      })
  void everyCommandExplainsItselfWithAnExampleIn80Columns(String command) {
    Console console = Console.run(command, "--help");

    assertEquals(0, console.code());
    assertTrue(console.out().contains("Example"), console.out());
    assertTrue(console.out().contains("  kelter " + command), console.out());
    assertTrue(console.widest() <= 80, console.out());
  }

  @Test
  void theVersionIsThatOfTheModule() {
    Console console = Console.run("--version");

    assertEquals(0, console.code());
    String version = Kelter.class.getModule().getDescriptor().rawVersion().orElseThrow();
    assertTrue(console.out().startsWith("kelter " + version + ", Java "), console.out());
    assertTrue(version.matches("\\d+\\.\\d+.*"), version);
  }

  @Test
  void outputThatCannotBeWrittenIsToldAndIsNoSuccess() {
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int value) throws IOException {
            throw new IOException("No space left on device");
          }
        };
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Terminal terminal =
        new Terminal(
            new PrintStream(full, false, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            StandardCharsets.UTF_8,
            false,
            false,
            Terminal.WIDTH);

    assertEquals(1, new Kelter(terminal, new Opening(terminal, Clock.systemUTC())).run("modules"));

    String said = err.toString(StandardCharsets.UTF_8);
    assertTrue(said.startsWith("kelter: the output could not be written"), said);
    assertEquals(1, said.lines().count(), said);
  }

  @Test
  void complaintsFitATerminalAndStayOneLineElsewhere() throws IOException {
    Path job = folder.resolve("job.json");
    Files.writeString(job, "{}");
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Terminal terminal =
        new Terminal(
            new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            StandardCharsets.UTF_8,
            false,
            true,
            60);

    assertEquals(
        1,
        new Kelter(terminal, new Opening(terminal, Clock.systemUTC()))
            .run("diagnose", "--shop", "x", job + ""));
    terminal.complain("kelter: " + "word ".repeat(30).strip());

    String said = err.toString(StandardCharsets.UTF_8);
    String wrapped = said.substring(said.indexOf("kelter: word"));
    assertTrue(wrapped.lines().allMatch(line -> line.length() <= 60), said);
    assertTrue(wrapped.lines().skip(1).allMatch(line -> line.startsWith("    word")), said);
    assertEquals(
        "kelter: " + "word ".repeat(30).strip(),
        wrapped.strip().replaceAll("\\R +", " "),
        "nothing is lost");
    assertTrue(Console.run("check", job.toString()).err().lines().count() >= 3);
  }

  @Test
  void mistakesOfAJobFileAreToldWithTheirLines() throws IOException {
    Path job = folder.resolve("job.json");
    Files.writeString(job, "{\n  \"format\": \"kelter-job/1\",\n  \"id\": \"A\"\n}\n");

    Console console = Console.run("check", job.toString());

    assertEquals(1, console.code());
    assertTrue(console.err().contains(job + ", line 3, column 3 (/id): 'A'"), console.err());
    assertTrue(console.err().contains(job + ", line 1, column 1: has no"), console.err());
  }

  @Test
  void readingsLeftInTheTemplateAreToldOnce() throws IOException {
    Path job = folder.resolve("job.json");
    assertEquals(0, Console.run("new", "water-boiler", "--all", "-o", job.toString()).code());
    assertEquals("", Console.run("check", job.toString()).err());
    String text = Files.readString(job);
    Files.writeString(
        job,
        text.replaceFirst("\"reading\": \"\\.\\.\\. Ohm\"", "\"reading\": \"26 Ohm\"")
            .replaceFirst("\"yes or no\"", "\"yes\""));

    for (String command : List.of("check", "diagnose")) {
      Console console = Console.run(command, job.toString());

      assertEquals(0, console.code(), console.err());
      assertEquals(1, console.err().lines().count(), console.err());
      assertTrue(console.err().contains("2 readings were not read"), console.err());
      assertTrue(console.err().contains("belong into \"measurements\""), console.err());
    }
  }

  @Test
  void aKindIsFoundByAPartOfItsName() {
    assertTrue(Console.run("new", "dryer").out().contains("\"kind\": \"tumble-dryer\""));
    assertTrue(Console.run("new", "Washing Machine").out().contains("\"washing-machine\""));
    Console several = Console.run("new", "boiler");
    assertEquals(1, several.code());
    assertTrue(several.err().contains("storage-water-heater, water-boiler"));
    assertTrue(Console.run("new", "toster").err().contains("did you mean 'toaster'?"));
    assertTrue(Console.run("new", "zeppelin").err().contains("known: cooker-hood, "));
  }

  /** What the template tells of words is what a job file may have: each is put where it belongs. */
  @Test
  void theWordsInATemplateAreThoseOfAJob() throws IOException {
    String text = Console.run("new", "glasswasher", "--all").out();
    assertTrue(text.contains("\"x-what-can-be-stated\""), text);
    Path job = folder.resolve("job.json");
    String nameplate =
        text.substring(text.indexOf("{ \"voltage\""), text.indexOf("\"I or II or III\""));
    String figures = text.substring(text.indexOf("\"figures\": { \"") + 11);
    figures = figures.substring(0, figures.indexOf(" }") + 2);
    Files.writeString(
        job,
        text.replaceFirst("\"nameplate\": \\{}", "\"nameplate\": " + nameplate + "\"I\" }")
            .replaceFirst("\"figures\": \\{}", "\"figures\": " + figures));

    Console console = Console.run("check", job.toString());

    // Each word is known; what is left are the blanks, which are no figures.
    assertEquals(1, console.code(), text);
    assertFalse(console.err().contains("is not known"), console.err());
    assertTrue(console.err().lines().allMatch(line -> line.contains("'...")), console.err());
  }

  @Test
  void aDateToComeIsTold() throws IOException {
    Path job = folder.resolve("job.json");
    assertEquals(0, Console.run("new", "other", "-o", job.toString()).code());
    Files.writeString(
        job,
        Files.readString(job).replaceFirst("\"date\": \"[^\"]*\"", "\"date\": \"9000-01-31\""));

    Console console = Console.run("check", job.toString());

    assertEquals(0, console.code(), console.err());
    assertTrue(console.err().contains("line 4, column 3 (/date)"), console.err());
    assertTrue(console.err().contains("9000-01-31 is to come"), console.err());
  }

  @Test
  void aPriceForARemedyThatNoModelHasIsTold() throws IOException {
    Path job = folder.resolve("job.json");
    String demo = Files.readString(Path.of("..", "demo", "jobs", "washer-extractor.json"));
    Files.writeString(job, demo.replaceFirst("\"heater\\.([a-z-]+)\": ", "\"heater.$1x\": "));

    for (String command : List.of("diagnose", "weigh")) {
      Console console = Console.run(command, job.toString());

      // Weighing lacks the price that stands under the wrong name.
      assertEquals(command.equals("weigh") ? 1 : 0, console.code(), console.err());
      assertTrue(console.err().contains("is not a remedy of this job"), console.err());
      assertTrue(console.err().contains("did you mean 'heater."), console.err());
    }
  }

  @Test
  void whatACalculationTakesIsToldAsJsonToo() throws IOException {
    Console console = Console.run("compute", "heater-resistance", "--format", "json");

    assertEquals(0, console.code(), console.err());
    try (JsonParser parser = new JsonFactory().createParser(console.out())) {
      while (parser.nextToken() != null) {
        continue;
      }
    }
    assertTrue(console.out().contains("\"kelter-calculation/3\""), console.out());
    assertTrue(console.out().contains("\"measures\" : \"power\""), console.out());
  }

  @Test
  void usageMistakesExitWith2AndASuggestion() {
    Console command = Console.run("diagnoes", "x.json");
    assertEquals(2, command.code());
    assertTrue(command.err().contains("diagnose"), command.err());

    Console option = Console.run("diagnose", "--fromat", "json", "x.json");
    assertEquals(2, option.code());
    assertTrue(option.err().contains("kelter diagnose --help"), option.err());

    assertEquals(2, Console.run("diagnose").code());
  }

  @Test
  void unusableInputExitsWith1WithoutATrace() {
    Console console = Console.run("diagnose", folder.resolve("none.json").toString());

    assertEquals(1, console.code());
    assertEquals("", console.out());
    assertTrue(console.err().contains("no such file"));
    assertFalse(console.err().contains("at kelter."));
  }

  @Test
  void heaterResistanceFromItsNameplate() {
    Console console = Console.run("compute", "heater-resistance", "power=2kW", "voltage=230V");

    assertEquals(0, console.code());
    // Ohm's law: 230^2/2000 = 26.45; the band by IEC 60335-1 clause 10, arithmetic on its table.
    assertTrue(console.out().contains("26.45 ohm"), console.out());
    assertTrue(console.out().contains("25.19 ohm"), console.out());
    assertTrue(console.out().contains("29.39 ohm"), console.out());
    assertTrue(console.out().contains("formula"), console.out());
    assertTrue(console.out().contains("IEC 60335-1"), console.out());
    assertTrue(console.out().contains("published"), console.out());
    assertTrue(console.widest() <= 80, console.out());
  }

  @Test
  void wrongUnitIsRefusedWithWhatWasExpected() {
    Console console = Console.run("compute", "heater-resistance", "power=2V", "voltage=230V");

    assertEquals(1, console.code());
    assertTrue(console.err().contains("a power is expected"), console.err());
    assertTrue(console.err().contains("W"), console.err());
  }

  @Test
  void misspeltCalculationAndParameterAreSuggested() {
    assertTrue(Console.run("compute", "heater-resistence").err().contains("heater-resistance"));
    Console parameter = Console.run("compute", "heater-resistance", "powr=2kW", "voltage=230V");
    assertTrue(parameter.err().contains("did you mean 'power'?"), parameter.err());
    assertTrue(parameter.err().contains("is missing"), "all mistakes at once");
  }

  @Test
  void calculationWithoutValuesTellsWhatItTakes() {
    Console console = Console.run("compute", "heater-resistance");

    assertEquals(0, console.code());
    assertTrue(console.out().contains("power") && console.out().contains("voltage"));
  }

  @Test
  void signsThatTheTerminalLacksAreSpeltOut() {
    Console console =
        Console.run(
            StandardCharsets.US_ASCII,
            "compute",
            "heater-resistance",
            "power=2kW ± 50 W",
            "voltage=230V");

    assertEquals(0, console.code());
    assertTrue(console.out().contains("+/-"), console.out());
    assertFalse(console.out().contains("?"), console.out());
  }

  @Test
  void newJobCanBeReadBackAndIsNeverWrittenOver() throws IOException {
    Path file = folder.resolve("job.json");

    assertEquals(0, Console.run("new", "glasswasher", "--all", "-o", file.toString()).code());
    assertEquals(0, Console.run("check", file.toString()).code());
    String first = Files.readString(file);
    assertTrue(first.contains("wash-pump"), first);

    assertEquals(1, Console.run("new", "glasswasher", "-o", file.toString()).code());
    assertEquals(first, Files.readString(file));
    assertTrue(Console.run("new", "glaswasher").err().contains("did you mean 'glasswasher'?"));
  }

  /** Which parts a kind of machine has is common practice, no source. */
  @Test
  void theLongFormHasThePartsOfItsMachine() {
    Vocabulary words = Workshop.of(Found.usual().modules()).vocabulary();
    for (String kind : KindFile.shipped()) {
      Job job = StatedJob.parse(Console.run("new", kind, "--all").out(), words).job();
      List<String> parts =
          job.appliance().components().stream().map(Component::kind).sorted().toList();
      boolean washes = kind.startsWith("wash") || kind.equals("glasswasher");
      if (washes || kind.equals("water-boiler")) {
        assertTrue(parts.contains("heater"), kind);
      }
      if (washes || kind.equals("dishwasher")) {
        assertTrue(parts.contains("drain-pump"), kind);
      }
      assertFalse(parts.isEmpty(), kind);
    }
  }

  @Test
  void modulesAreToldWithTheirSources() {
    Console text = Console.run("modules");
    assertEquals(0, text.code());
    for (String id : List.of("hydraulics", "electrical", "costing", "heater-resistance")) {
      assertTrue(text.out().contains(id), id);
    }
    assertTrue(Console.run("modules", "--format", "json").out().contains("\"standing\""));
  }

  @Test
  void ofManyMistakesTheFirstAreToldAndHowManyMoreThereAre() throws IOException {
    String job = Files.readString(Path.of("..", "demo", "jobs", "water-boiler.json"));
    String many = "\"measurements\": [{}" + ", {}".repeat(299) + "], \"x-old\": [";
    Path file = folder.resolve("job.json");
    Files.writeString(file, job.replace("\"measurements\": [", many));

    Console console = Console.run("check", file.toString());

    assertEquals(1, console.code());
    List<String> lines = console.err().lines().toList();
    assertEquals(21, lines.size());
    // Each of 300 entries lacks three members.
    assertEquals("kelter: and 880 more; correct these first", lines.get(20));
  }

  @Test
  void aDayOfThePricesThatIsToComeIsTold() throws IOException {
    String job = Files.readString(Path.of("..", "demo", "jobs", "dear-heater.json"));
    Path file = folder.resolve("job.json");
    Files.writeString(file, job.replace("\"2026-11-10\"", "\"9999-12-31\""));

    Console console = Console.run("weigh", file.toString());

    assertEquals(0, console.code(), console.err());
    assertTrue(console.err().contains("(/prices/date): the date 9999-12-31 is to come"));
  }
}
