package kelter.cli.command.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kelter.cli.program.Console;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code kelter diagnose} tells of one fault, and of readings that were not taken. */
class WhyAndWhatIfTest {

  private static final Path WASHER = Path.of("..", "demo", "jobs", "washer-extractor.json");
  private static final String JOB = WASHER.toString();

  @TempDir private Path folder;

  /** A job of which no symptom was asked. */
  private String unasked() throws IOException {
    String asked = Files.readString(WASHER.resolveSibling("heater-coarse.json"));
    String silent = asked.replaceAll("(?m)^  \"symptoms\".*\n", "");
    assertNotEquals(asked, silent);
    return Files.writeString(folder.resolve("unasked.json"), silent).toString();
  }

  @Test
  void whyTellsPriorReadingsAndWhatWouldTurnIt() {
    Console console = Console.run("diagnose", "--why", "passages-blocked", JOB);

    assertEquals(0, console.code(), console.err());
    String said = console.out().replaceAll("\\s+", " ");
    assertTrue(said.contains("drain-pump.passages-blocked"), said);
    assertTrue(said.contains("Before anything was measured"), said);
    assertTrue(said.contains("from memory"), said);
    assertTrue(said.contains("drain-pump flow 6.4"), said);
    assertTrue(said.contains("times smaller"), said);
    assertTrue(said.contains("! DANGER"), said);
    assertTrue(console.widest() <= 80, console.out());
  }

  @Test
  void whyTellsWhatEachReportSaysInBits() throws IOException {
    Console console = Console.run("diagnose", "--why", "element-open", JOB);

    String said = console.out().replaceAll("\\s+", " ");
    assertTrue(said.contains("What each report says beside all the others"), said);
    assertTrue(Pattern.compile("[+-]\\d\\.\\d\\d heats slowly: yes").matcher(said).find(), said);
    assertTrue(said.contains("do not add up"), said);
    Console silent = Console.run("diagnose", "--why", "heater.open", unasked());
    assertTrue(silent.out().contains("No symptom of the machine was reported."), silent.out());
  }

  /** A heater that heats slowly: the same report as a what-if and in the job gives the same. */
  @Test
  void aReportThatIsTriedCountsAsOneThatWasMade() throws IOException {
    String path = unasked();
    String job = Files.readString(Path.of(path));
    Path told = folder.resolve("told.json");
    Files.writeString(
        told,
        job.replace(
            "\"measurements\"", "\"symptoms\": { \"stays-cold\": \"yes\" }, \"measurements\""));

    String tried = Console.run("diagnose", "--what-if", "stays-cold=yes", path).out();
    String made =
        Console.run("diagnose", "--what-if", "stays-cold=not-asked", told.toString()).out();

    assertTrue(tried.startsWith("What if stays-cold=yes\n"), tried);
    assertEquals(columns(tried, 1, 0), columns(made, 0, 1));
    assertNotEquals(columns(tried, 1, 0), columns(tried, 0, 1));
  }

  /** By fault, the two chances of each line of the table, in the order that is asked for. */
  private static Map<String, String> columns(String out, int first, int second) {
    Map<String, String> rows = new TreeMap<>();
    Matcher row = Pattern.compile("(?m)^  ([<>]? ?\\d+ %) +([<>]? ?\\d+ %) +(\\S.*)$").matcher(out);
    while (row.find()) {
      String[] chances = {row.group(1), row.group(2)};
      rows.put(row.group(3), chances[first] + " " + chances[second]);
    }
    assertTrue(rows.size() > 2, out);
    return rows;
  }

  @Test
  void anUnknownFaultIsToldWithWhatThereIs() {
    Console near = Console.run("diagnose", "--why", "passages-bloked", JOB);
    assertEquals(1, near.code());
    assertTrue(near.err().contains("passages-blocked"), near.err());

    Console none = Console.run("diagnose", "--why", "xyz", JOB);
    assertEquals(1, none.code());
    assertTrue(none.err().contains("known are: heater."), none.err());
  }

  @Test
  void whatIfMovesTheRankingAndLeavesTheJobAlone() throws IOException {
    String before = Files.readString(WASHER);

    Console console =
        Console.run(
            "diagnose",
            "--what-if",
            "drain-pump.flow=24 L/min",
            "--what-if",
            "heater.resistance=13.2 ohm",
            JOB);

    assertEquals(0, console.code(), console.err());
    assertTrue(console.out().matches("(?s).*now +then +fault\n.*"), console.out());
    assertTrue(console.out().contains("nothing was written"), console.out());
    assertTrue(console.widest() <= 80, console.out());
    assertEquals(before, Files.readString(WASHER));
  }

  @Test
  void allMistakesOfWhatIfAreToldAtOnce() {
    Console console =
        Console.run(
            "diagnose",
            "--what-if",
            "heatr.resistance=OL",
            "--what-if",
            "heater.resistanc=OL",
            "--what-if",
            "heater.resistance=3 V",
            "--what-if",
            "heater",
            JOB);

    assertEquals(1, console.code());
    assertEquals(4, console.err().lines().count(), console.err());
    assertTrue(console.err().contains("did you mean 'heater'?"), console.err());
    assertTrue(console.err().contains("did you mean 'resistance'?"), console.err());
  }

  @Test
  void bothAreToldToOtherProgramsToo() {
    Console why = Console.run("diagnose", "--format", "json", "--why", "passages-blocked", JOB);
    assertTrue(why.out().contains("\"turning-factor\""), why.out());

    Console whatIf =
        Console.run("diagnose", "--format", "json", "--what-if", "heater.resistance=OL", JOB);
    assertTrue(whatIf.out().contains("\"then\""), whatIf.out());

    Console plain = Console.run("diagnose", "--format", "json", JOB);
    for (String field : new String[] {"conclusion", "suspects", "priors", "enough-measured"}) {
      assertTrue(plain.out().contains("\"" + field + "\""), field);
    }
  }
}
