package kelter.cli.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a technician sees first fits a terminal of 80 columns by 24 lines; all else is one flag
 * away.
 */
class OneScreenTest {

  private static final Path JOBS = Path.of("..", "demo", "jobs");
  private static final int LINES = 24;
  private static final String LOCK_OFF =
      "Pull the plug or lock off the supply, and prove dead before you touch or measure.";

  @TempDir private Path folder;

  private static List<String> jobs() throws IOException {
    try (Stream<Path> files = Files.list(JOBS)) {
      return files.map(Path::toString).filter(name -> name.endsWith(".json")).sorted().toList();
    }
  }

  private static String demo(String name) {
    return JOBS.resolve(name + ".json").toString();
  }

  private static String flat(Console console) {
    assertEquals(0, console.code(), console.err());
    return console.out().replaceAll("\\s+", " ");
  }

  private static void assertFits(Console console) {
    assertEquals(0, console.code(), console.err());
    long lines = (console.out() + console.err()).lines().count();
    assertTrue(lines <= LINES, lines + " lines:\n" + console.out() + console.err());
    assertTrue(console.widest() <= 80, console.out());
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void aDiagnosisFits(String job) {
    Console screen = Console.run("diagnose", job);

    assertFits(screen);
    for (String part : List.of("Most likely", "Check next", "Take along: ", "Readings: ")) {
      assertTrue(screen.out().contains("\n" + part), screen.out());
    }
    assertTrue(
        screen.out().lines().reduce((one, last) -> last).orElseThrow().contains("--full JOB"),
        screen.out());
  }

  /**
   * A scaled heater leaks no less: what is likely beside other faults too is told as what it is.
   */
  @Test
  void aCauseIsToldWithWhatItIsBesideOthers() {
    String boiler = flat(Console.run("diagnose", demo("water-boiler")));
    Matcher told =
        Pattern.compile("(\\d+) % \\([a-z ]+\\): heater leaks to earth; (\\d+) % with or without")
            .matcher(boiler);
    assertTrue(told.find(), boiler);
    assertTrue(Integer.parseInt(told.group(1)) + 10 <= Integer.parseInt(told.group(2)), boiler);
    assertTrue(
        boiler.contains("Suspected: heater leaks to earth (" + told.group(2) + " %)"), boiler);
    assertFalse(flat(Console.run("diagnose", demo("dear-heater"))).contains("with or without"));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void aWeighingFits(String job) {
    Console screen = Console.run("weigh", job);

    assertFits(screen);
    assertTrue(screen.out().contains("\nRepair or replace"), screen.out());
    assertTrue(screen.out().contains(" of 100"), screen.out());
    assertTrue(screen.out().contains("\nMore: kelter weigh --full JOB"), screen.out());
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void allOfADiagnosisIsOneFlagAway(String job) {
    Console full = Console.run("diagnose", "--full", job);

    assertTrue(full.widest() <= 80, full.out());
    for (String section :
        List.of(
            "Job ",
            "Readings against limits",
            "Most likely",
            "Check next",
            "What to do, in this order",
            "Assumptions")) {
      assertTrue(full.out().contains(section + (section.endsWith(" ") ? "" : "\n")), section);
    }
    String weighed = Console.run("weigh", "--full", job).out();
    for (String section : List.of("Repair or replace", "Bill now:", "Assumptions", "Sources")) {
      assertTrue(weighed.contains(section), section);
    }
  }

  /** How to lock off stands in full once, however many steps need it. */
  @ParameterizedTest
  @MethodSource("jobs")
  void lockingOffIsToldOnce(String job) {
    for (String[] command : new String[][] {{"diagnose", job}, {"diagnose", "--full", job}}) {
      String said = flat(Console.run(command));
      for (String text : List.of(LOCK_OFF, "two-pole tester that you have tried")) {
        assertEquals(said.indexOf(text), said.lastIndexOf(text), said);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void neitherBitsNorSigmaAreTold(String job) {
    for (String[] command : new String[][] {{"diagnose", job}, {"diagnose", "--full", job}}) {
      String said = flat(Console.run(command));
      assertFalse(said.contains(" bits"), said);
      assertFalse(said.contains("sigma"), said);
    }
  }

  @Test
  void theCautionThatKeepsItUnpluggedStandsFirstAndOnce() {
    String said = flat(Console.run("diagnose", demo("water-boiler")));
    String caution = "It trips: do not plug in until the leak is found.";
    assertTrue(said.startsWith("! DANGER: " + caution), said);
    assertEquals(said.indexOf(caution), said.lastIndexOf(caution), said);
    assertTrue(said.contains("Read heater insulation resistance first"), said);
    assertTrue(said.contains("nothing powered before. heater: insulation resistance"), said);
    assertFalse(said.contains(" min, running"), said);
  }

  @Test
  void aFindingThatKeepsItUnpluggedStandsFirst() throws IOException {
    Path job =
        Files.writeString(
            folder.resolve("job.json"),
            Files.readString(Path.of(demo("washer-extractor"))).replace("> 200 MOhm", "0.1 MOhm"));
    Console screen = Console.run("diagnose", job.toString());

    assertFits(screen);
    String said = flat(screen);
    assertTrue(said.startsWith("! DANGER: Insulation too low: do not plug in."), said);
    assertTrue(said.contains("Check next Take again: heater insulation resistance."), said);
    assertFalse(said.contains(" min, running"), said);
  }

  /** What costs nothing to ask is asked before anything is opened. */
  @Test
  void theOwnerIsAskedWhereThatTellsMoreForItsTime() {
    String said = flat(Console.run("diagnose", demo("heater-coarse")));
    assertTrue(said.contains("Ask the owner: Does the residual-current device"), said);
    assertTrue(said.contains("Enter the answer: kelter enter JOB --saw trips-rcd=yes"), said);
    assertTrue(said.contains("If nobody can tell, take drum-bearing: "), said);
  }

  /** At the machine, the dead test of what is suspected comes before all else. */
  @Test
  void theTestOfASuspicionComesBeforeAnyQuestion() {
    String said = flat(Console.run("diagnose", demo("tumble-dryer")));
    assertTrue(said.contains("Suspected: lint on the heater and in the channels"), said);
    assertTrue(said.contains("nothing powered before. air-heater: lint on the heater"), said);
    assertFalse(said.contains("Ask the owner"), said);
  }

  @Test
  void theWorkToDoFirstStandsWhereNothingIsLeftToRead() {
    String said = flat(Console.run("diagnose", demo("dear-heater")));
    assertTrue(said.contains("Nothing more: another reading would not change"), said);
    assertTrue(said.contains("Do first: heater: renew the heater"), said);
    assertTrue(said.contains("1 does not conform: heater resistance; 1 conforms."), said);
  }

  @Test
  void partsStandWithTheChanceThatTheyAreNeeded() {
    String said = flat(Console.run("diagnose", demo("washer-extractor")));
    assertTrue(
        said.contains("Take along: heater with its seal (needed: > 99 %), drain pump (10 %)."),
        said);
    String cleaned = flat(Console.run("diagnose", demo("glasswasher")));
    assertTrue(cleaned.contains("Take along: no part is likely to be needed."), cleaned);
    String json = Console.run("diagnose", "--format", "json", demo("washer-extractor")).out();
    assertTrue(
        json.replaceAll("\\s+", " ")
            .contains(
                "\"take-along\" : [ { \"component\" : \"heater\", \"remedy\" : \"heater.renew-heater\","
                    + " \"title\" : \"renew the heater with its seal\", \"chance\" : 0.99"),
        json);
  }

  /** A reading that was misread is taken again before anything is mended. */
  @Test
  void aReadingThatFitsNothingIsTakenAgain() throws IOException {
    Path job =
        Files.writeString(
            folder.resolve("job.json"),
            Files.readString(Path.of(demo("washer-extractor")))
                .replace("[\"1.82 m\", \"1.84 m\"]", "\"0.3 m\"")
                .replace("26.6 ohm", "13.1 ohm")
                .replace("6.4 L/min", "20.2 L/min"));
    String said = flat(Console.run("diagnose", job.toString()));
    assertTrue(said.contains("Check next Take again: drain-pump head"), said);
  }

  @Test
  void aJobWithoutReadingsFits() {
    String job = folder.resolve("call.json").toString();
    assertEquals(0, Console.run("new", "washer-extractor", "-o", job).code());
    Console screen = Console.run("diagnose", job);

    assertFits(screen);
    assertTrue(flat(screen).contains("not decided: too little was measured"), screen.out());
    assertTrue(flat(screen).contains("Readings: none yet."), screen.out());
  }

  @Test
  void whatIsToBeReadFirstStandsBeforeTheOptions() {
    String said = flat(Console.run("weigh", demo("tumble-dryer")));
    assertTrue(said.contains("Do not choose yet. First measure air-heater lint"), said);
    assertTrue(flat(Console.run("weigh", demo("dear-heater"))).contains("It is close:"));
    assertTrue(
        flat(Console.run("weigh", demo("dear-heater"))).contains("Depends most on: running cost"));
  }
}
