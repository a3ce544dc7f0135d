package kelter.cli.command.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import kelter.cli.program.Console;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Readings and answers go into a job by the command line. */
class EnterCommandTest {

  @TempDir private Path folder;
  private String job;

  @BeforeEach
  void aDryerThatStaysCold() {
    job = folder.resolve("dryer.json").toString();
    run(0, "new", "tumble-dryer", "-s", "stays-cold", "-o", job);
  }

  private static Console run(int code, String... words) {
    Console console = Console.run(words);
    assertEquals(code, console.code(), console.err() + console.out());
    return console;
  }

  @Test
  void whatIsEnteredCountsAtOnce() {
    Console entered =
        run(0, "enter", job, "--read", "air-heater.resistance=OL", "--saw", "does-not-dry=yes");

    assertEquals(run(0, "diagnose", job).out(), entered.out());
    String first = entered.out().lines().filter(line -> line.contains("1. ")).findFirst().get();
    assertTrue(first.contains("heater open"), entered.out());
  }

  @Test
  void aSecondReadingStandsBesideTheFirstUnlessItCorrectsIt() throws IOException {
    run(0, "enter", job, "--read", "air-heater.resistance=OL");
    run(0, "enter", job, "--read", "air-heater.resistance=24 ohm");
    assertTrue(Files.readString(Path.of(job)).contains("\"OL\""));

    Console corrected =
        run(0, "enter", job, "--correct", "--read", "air-heater.resistance=24.4 ohm");

    String left = Files.readString(Path.of(job));
    assertFalse(left.contains("\"OL\"") || left.contains("24 ohm"), left);
    assertTrue(left.contains("24.4 ohm"), left);
    assertTrue(corrected.err().contains("earlier readings, 2"), corrected.err());
  }

  /** Two works on one cord take two parts along, each by its name. */
  @Test
  void aPlugIsTakenAlongBesideACord() {
    String vacuum = folder.resolve("vacuum.json").toString();
    run(0, "new", "vacuum-cleaner", "--age", "8", "-o", vacuum);
    String told =
        run(0, "enter", vacuum, "--read", "supply-cord.conductor-resistance=OL")
            .out()
            .replaceAll("\\s+", " ");

    assertTrue(told.contains("Take along: a new plug for the supply cord (needed:"), told);
    assertTrue(told.contains(", supply cord ("), told);
  }

  /** 2600 W at 240 V is 22.15 ohm: what is typical of such elements is wider. */
  @Test
  void thePlateOfAPartOfTheKindIsTakenByItsId() {
    String oven = folder.resolve("oven.json").toString();
    run(0, "new", "oven", "--market", "NA", "--plate", "grill-element.power=3.4 kW", "-o", oven);
    String reading = "bake-element.resistance=22.4 ohm";
    run(0, "enter", oven, "--plate", "voltage=240 V", "--read", reading);
    assertTrue(run(0, "check", oven).out().contains("undecided"));

    run(0, "enter", oven, "--plate", "bake-element.power=2600 W");
    String decided = run(0, "check", oven).out();
    assertTrue(decided.contains("conforms"), decided);
    assertFalse(decided.contains("undecided"), decided);

    String refused = run(1, "enter", oven, "--plate", "bake.power=2600 W").err();
    assertTrue(refused.contains("no part of this machine; did you mean 'bake-element'?"), refused);
  }

  /** A dryer with a heat pump has no heater that could be open. */
  @Test
  void whatTheMachineHasNotIsNotSuspected() {
    assertTrue(run(0, "diagnose", job).out().contains("heater open"));
    String lacking = run(0, "enter", job, "--lacks", "air-heater").out();
    assertFalse(lacking.contains("heater"), lacking);

    String pump = folder.resolve("pump.json").toString();
    run(0, "new", "dryer", "-s", "cold", "--lacks", "air-heater", "-o", pump);
    assertEquals(
        run(0, "diagnose", job).out().lines().skip(1).toList(),
        run(0, "diagnose", pump).out().lines().skip(1).toList());
    for (String[] words :
        new String[][] {
          {"enter", job, "--lacks", "condensate-pumpe"},
          {"new", "dryer", "--lacks", "condensate-pumpe"}
        }) {
      String refused = run(1, words).err();
      assertTrue(refused.contains("did you mean 'condensate-pump'?"), refused);
    }
  }

  @Test
  void aPriceIsToldWithoutAnEditor() throws IOException {
    String part = "air-heater.renew-heater=41.20 EUR";
    run(0, "enter", job, "--read", "air-heater.resistance=OL", "--price", part);
    String[] rest = {"call-out=49 EUR", "labour-per-hour=72 EUR", "tax-rate=21 %"};
    for (String price : rest) {
      run(0, "enter", job, "--price", price);
    }
    String quoted = run(0, "quote", "--option", "1", job).out();
    assertTrue(quoted.contains("41.20 EUR"), quoted);
    assertFalse(quoted.contains("is open"), quoted);

    String before = Files.readString(Path.of(job));
    for (String wrong :
        new String[] {"air-heater.renew-heatr=41 EUR", "call-out=49 USD", "call-out=cheap"}) {
      run(1, "enter", job, "--price", wrong);
    }
    assertEquals(before, Files.readString(Path.of(job)));
  }

  @Test
  void aReadingThatNoFaultUsesIsToldOnTheScreen() {
    String reading = "air-heater.readings-differ=3";
    String told = run(0, "enter", job, "--read", reading).out().replaceAll("\\s+", " ");
    assertTrue(
        told.contains("1 used by no known fault or limit: air-heater readings differ."), told);
  }

  @Test
  void wordsOfASymptomAreNotTakenButTold() {
    String refused = run(1, "enter", job, "--saw", "takes forever=yes").err();
    assertTrue(refused.contains("it may be: "), refused);
    assertTrue(refused.contains("does-not-dry"), refused);
    run(0, "enter", job, "--saw", "does not dry=yes");
  }

  @Test
  void oneMistakeAndNothingIsEntered() throws IOException {
    String before = Files.readString(Path.of(job));
    Console refused =
        run(
            1,
            "enter",
            job,
            "--read",
            "air-heater.resistance=24 ohm",
            "--read",
            "air-heatr.resistance=24 ohm",
            "--saw",
            "stays-cold=perhaps");

    assertEquals(before, Files.readString(Path.of(job)));
    assertEquals(
        2,
        refused.err().lines().filter(line -> line.startsWith("kelter: --")).count(),
        refused.err());
    assertTrue(run(1, "enter", job).err().contains("nothing to enter"), "not told");
  }
}
