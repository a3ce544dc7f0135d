package kelter.cli.usage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The words of a command line, with options of every kind. */
class CommandLineReaderTest {

  private static final CommandOption DRY = CommandOption.flag("--dry", "no water");
  private static final CommandOption NOTE =
      CommandOption.one("--note", ValueKind.TEXT, "TEXT", "a note");
  private static final CommandOption FILE =
      CommandOption.one("--output", ValueKind.FILE, "FILE", "a file").or("-o");
  private static final CommandOption COUNT =
      CommandOption.one("--runs", ValueKind.COUNT, "N", "how many").or("-n");
  private static final CommandOption WHOLE =
      CommandOption.one("--seed", ValueKind.WHOLE, "N", "a seed");
  private static final CommandOption NUMBER =
      CommandOption.one("--shift", ValueKind.NUMBER, "PERCENT", "a shift");
  private static final CommandOption LIST = CommandOption.many("--at", "NAME=VALUE", "where");

  private static final CommandUsage USAGE =
      new CommandUsage(
          "try",
          "Try it.",
          "",
          List.of(DRY, NOTE, FILE, COUNT, WHOLE, NUMBER, LIST),
          List.of(
              CommandArgument.one("JOB", ValueKind.FILE, "a job"),
              CommandArgument.any("PARAMETER=VALUE", "values")),
          List.of("kelter try job.json"));

  private static Given read(String... words) {
    return CommandLineReader.read(USAGE, words);
  }

  @Test
  void withoutOptionsTheUsualHolds() {
    Given given = read("job.json");

    assertFalse(given.has(DRY));
    assertFalse(given.isJson());
    assertEquals(Optional.empty(), given.text(NOTE));
    assertEquals(Optional.empty(), given.path(FILE));
    assertEquals(3, given.count(COUNT, 3));
    assertEquals(4, given.whole(WHOLE, 4));
    assertEquals(0.5, given.number(NUMBER, 0.5));
    assertEquals(List.of(), given.list(LIST));
    assertEquals(List.of("job.json"), given.arguments());
  }

  @Test
  void optionsOfEveryKindStandBeforeAndBehindTheArguments() {
    Given given =
        read(
            "--seed",
            "5000000000",
            "job.json",
            "-n",
            "12",
            "--dry",
            "a=1",
            "--output",
            "out.svg",
            "--shift",
            "2.5",
            "b=2",
            "--format",
            "json",
            "--note",
            "two words");

    assertTrue(given.has(DRY));
    assertTrue(given.isJson());
    assertEquals(Optional.of("two words"), given.text(NOTE));
    assertEquals(Optional.of(Path.of("out.svg")), given.path(FILE));
    assertEquals(12, given.count(COUNT, 3));
    assertEquals(5_000_000_000L, given.whole(WHOLE, 4));
    assertEquals(2.5, given.number(NUMBER, 0));
    assertEquals(List.of("job.json", "a=1", "b=2"), given.arguments());
  }

  @ParameterizedTest
  @ValueSource(strings = {"-n 12", "-n12", "-n=12", "--runs 12", "--runs=12", "-runs 12"})
  void aValueStandsBehindItsOptionOrIsJoinedToIt(String words) {
    assertEquals(12, read(("job " + words).split(" ")).count(COUNT, 0));
  }

  @Test
  void aValueKeepsItsSigns() {
    assertEquals(Optional.of("a=b ± 3 %"), read("job", "--note=a=b ± 3 %").text(NOTE));
    assertEquals(Optional.of("\"quoted\""), read("job", "--note", "\"quoted\"").text(NOTE));
    assertEquals(Optional.of("'quoted'"), read("job", "--note='quoted'").text(NOTE));
    assertEquals(Optional.of("-"), read("job", "--note", "-").text(NOTE));
    assertEquals(Optional.of("-0.5 bar"), read("job", "--note", "-0.5 bar").text(NOTE));
    assertEquals(Optional.of("-x"), read("job", "--note", "-x").text(NOTE));
    assertEquals(Optional.of("-n5"), read("job", "--note=-n5").text(NOTE));
  }

  @Test
  void aNumberMayBeNegative() {
    assertEquals(-12, read("job", "-n", "-12").count(COUNT, 0));
    assertEquals(-7, read("job", "--seed=-7").whole(WHOLE, 0));
    assertEquals(-2.5, read("job", "--shift", "-2.5").number(NUMBER, 0));
  }

  @Test
  void anOptionForSeveralValuesKeepsTheirOrder() {
    Given given = read("--at", "volume=20L", "job", "--at=t=20 ± 1 Cel", "--at", "volume=20L");

    assertEquals(List.of("volume=20L", "t=20 ± 1 Cel", "volume=20L"), given.list(LIST));
  }

  @Test
  void behindTwoHyphensEverythingIsAnArgument() {
    Given given = read("--dry", "job", "--", "--seed", "-n", "--", "--help");

    assertTrue(given.has(DRY));
    assertFalse(given.has(COUNT));
    assertFalse(given.has(CommandUsage.HELP));
    assertEquals(List.of("job", "--seed", "-n", "--", "--help"), given.arguments());
  }

  @Test
  void argumentsKeepTheirSigns() {
    List<String> words = List.of("job", "power=2kW±5%", "t=-5 Cel", "x='1;2'", "-", "=", "");

    assertEquals(words, read(words.toArray(String[]::new)).arguments());
  }

  @Test
  void aNameThatIsNoPathIsAMistake() {
    UsageException wrong =
        assertThrows(UsageException.class, () -> read("a\0b", "--output", "c\0d"));

    assertEquals(
        List.of(
            "--output takes the name of a file or folder, not 'c\0d'",
            "JOB takes the name of a file or folder, not 'a\0b'"),
        wrong.mistakes());
  }
}
