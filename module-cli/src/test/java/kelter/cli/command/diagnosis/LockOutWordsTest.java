package kelter.cli.command.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import kelter.cli.program.Console;
import kelter.cli.safety.Call;
import kelter.core.file.catalogue.KindFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is printed of the lock-out table: where it stands, how often, and what is never said. */
class LockOutWordsTest {

  /** Nobody can say that of a machine by readings. */
  private static final Pattern PROMISE =
      Pattern.compile(
          "\\b(is|are|be|now|again|machine) (safe|compliant|harmless|fit (for|to) use)\\b|\\bcomplies\\b"
              + "|\\bsafe to (use|run|touch|plug)\\b",
          Pattern.CASE_INSENSITIVE);

  @TempDir private Path folder;

  static List<String> kinds() {
    return KindFile.shipped();
  }

  static List<Path> demos() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("..", "demo", "jobs"))) {
      return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
  }

  private static List<String> texts(String job) {
    List<String> texts = new ArrayList<>();
    for (String[] command :
        new String[][] {{"check", job}, {"diagnose", job}, {"diagnose", "--full", job}}) {
      texts.add(Console.run(command).out().replaceAll("\\s+", " "));
    }
    return texts;
  }

  private static void assertNoPromise(String text) {
    Matcher promise = PROMISE.matcher(text);
    assertFalse(promise.find(), () -> text.substring(Math.max(0, promise.start() - 60)));
  }

  private static void assertAtMostTwice(String text) {
    Matcher caution =
        Pattern.compile("! ((?:DANGER|WARNING|CAUTION): .{60,}?\\.)(?= |$)").matcher(text);
    while (caution.find()) {
      String whole = caution.group(1);
      int count = text.split(Pattern.quote(whole), -1).length - 1;
      assertTrue(count <= 2, count + " times: " + whole);
    }
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void nothingIsPromisedOfAnyKind(String kind) throws IOException {
    for (String market : List.of("EU", "NA")) {
      Path job =
          Files.write(
              folder.resolve(market + ".json"),
              Call.of(kind).in(market).answered("trips-rcd", "yes").json("", "", ""));
      for (String text : texts(job.toString())) {
        assertNoPromise(text);
        assertAtMostTwice(text);
        assertTrue(text.startsWith("! DANGER: "), text);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("demos")
  void nothingIsPromisedOfAnyDemoJob(Path job) {
    for (String text : texts(job.toString())) {
      assertNoPromise(text);
      assertAtMostTwice(text);
    }
  }

  @Test
  void neitherTableNorKindsPromiseAnything() throws IOException {
    Path resources = Path.of("..", "toolkit-core", "src", "main", "resources", "kelter", "core");
    try (Stream<Path> files = Files.walk(resources)) {
      for (Path file : files.filter(each -> each.toString().endsWith(".json")).toList()) {
        assertNoPromise(Files.readString(file));
      }
    }
  }

  @Test
  void aStopIsTheFirstLineOfEveryOutput() throws IOException {
    String job =
        Files.write(
                folder.resolve("gas.json"),
                Call.of("washing-machine").said("It smells of gas.").json("", "", ""))
            .toString();
    String stop = "! DANGER: Smell of gas: touch no switch";
    for (String[] command :
        new String[][] {
          {"check", job},
          {"diagnose", job},
          {"diagnose", "--full", job},
          {"diagnose", "--why", "heater.open", job},
          {"diagnose", "--what-if", "stays-cold=yes", job}
        }) {
      String said = Console.run(command).out();
      assertTrue(said.startsWith(stop), said);
    }
    for (String[] command :
        new String[][] {
          {"check", "--format", "json", job},
          {"diagnose", "--format", "json", job},
          {"diagnose", "--format", "json", "--why", "heater.open", job}
        }) {
      String said = Console.run(command).out().replaceAll("\\s+", " ");
      int at = said.indexOf("\"lock-out\" : { \"state\" : \"D\"");
      assertTrue(at > 0 && at < said.indexOf("\"job\""), said);
    }
    String said = Console.run("diagnose", job).out();
    assertFalse(said.contains("Do first: "), said);
    assertTrue(said.contains("no part is likely to be needed"), said);
  }

  @Test
  void stepsAroundPowerStandInTheFullText() throws IOException {
    String job =
        Files.write(folder.resolve("tank.json"), Call.of("storage-water-heater").json("", "", ""))
            .toString();
    String said = Console.run("diagnose", "--full", job).out().replaceAll("\\s+", " ");
    int last = 0;
    for (String step :
        List.of(
            "Isolate it, in this order",
            "opens all poles at the isolator",
            "Prove dead on all poles",
            "Open a hot tap",
            "Relieve the pressure to 0",
            "Let it cool below 40",
            "Drain it, with air",
            "Look for a second supply",
            "Back to power, in this order",
            "Earth: at most 0.3 ohm",
            "Insulation: at least 2 Mohm (0.3 Mohm once the nameplate is known to be of class I)",
            "Refill until the tap runs without air",
            "hands off, one minute",
            "at most 3.5 mA",
            "isolated again")) {
      int at = said.indexOf(step);
      assertTrue(at > last, step + " in " + said);
      last = at;
    }
  }

  /**
   * The type tests of North America, 0.1 ohm (UL 859, 57.1) and 0.75 mA or 0.5 mA (UL 101), as test
   * reports cite them; a reading is held against the same.
   */
  @Test
  void theStepsTellTheLimitsThatReadingsAreHeldAgainst() throws IOException {
    Call american =
        Call.of("washing-machine")
            .in("NA")
            .read("supply-cord", "protective-conductor-resistance", "0.2 ohm")
            .read("supply-cord", "protective-conductor-current", "2 mA");
    String job = Files.write(folder.resolve("american.json"), american.json("", "", "")).toString();
    String steps = Console.run("diagnose", "--full", job).out().replaceAll("\\s+", " ");
    String findings = Console.run("check", job).out().replaceAll("\\s+", " ");
    assertTrue(steps.contains("Ground: at most 0.1 ohm"), steps);
    assertTrue(steps.contains("grounding conductor: at most 0.75 mA (0.5 mA if portable)"), steps);
    assertTrue(findings.contains("allowed at most 0.1 ohm: does not conform"), findings);
    assertTrue(findings.contains("allowed at most 0.75 mA: does not conform"), findings);
  }

  @Test
  void whatIsWiredInHasNoOutlet() throws IOException {
    for (String market : List.of("EU", "NA")) {
      byte[] tank = Call.of("storage-water-heater").in(market).json("", "", "");
      String job = Files.write(folder.resolve(market + ".json"), tank).toString();
      String steps = Console.run("diagnose", "--full", job).out().replaceAll("\\s+", " ");
      String device = market.equals("NA") ? "GFCI" : "residual-current device";
      assertTrue(
          steps.contains("behind a " + device + " if its circuit has one, hands off"), steps);
      assertFalse(steps.contains("Outlet behind"), steps);
      assertEquals(market.equals("NA"), steps.contains("140 °F (60 °C)"), steps);
    }
  }

  /** A full tank is read at its terminals; only who opens its water side drains it. */
  @Test
  void aTankIsNotDrainedForAReading() throws IOException {
    byte[] tank = Call.of("storage-water-heater").json("", "", "");
    String job = Files.write(folder.resolve("full.json"), tank).toString();
    for (String text : texts(job)) {
      assertTrue(text.contains("drain before its water side is opened"), text);
    }
    String steps = Console.run("diagnose", "--full", job).out().replaceAll("\\s+", " ");
    assertTrue(steps.contains("Readings at its terminals leave it full."), steps);
  }

  /** A program on the core alone gets the same answers. */
  @ParameterizedTest
  @MethodSource("demos")
  void theCoreAndTheCommandLineAgree(Path demo) {
    var machine = Call.WORKSHOP.open(Call.WORKSHOP.read(demo));
    String json =
        Console.run("diagnose", "--format", "json", demo.toString()).out().replaceAll("\\s+", " ");
    String state = "\"lock-out\" : { \"state\" : \"" + machine.lockOut().state() + "\"";
    assertTrue(json.contains(state), json);
    List<String> told = new ArrayList<>();
    Matcher next =
        Pattern.compile("\"component\" : \"([a-z0-9-]+)\", \"observable\" : \"([a-z0-9-]+)\"")
            .matcher(
                json.substring(json.indexOf("\"next\" : ["), json.indexOf("\"enough-measured\"")));
    while (next.find()) {
      told.add(next.group(1) + "." + next.group(2));
    }
    assertEquals(Call.next(machine), told);
  }
}
