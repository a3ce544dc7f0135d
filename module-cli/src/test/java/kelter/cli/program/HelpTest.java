package kelter.cli.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandLineReader;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** What the help says, and that what it says is true. */
class HelpTest {

  private static final List<String> COMMANDS = Commands.NAMES;

  private static Console help(String command) {
    Console console = Console.run((command + " --help").split(" "));
    assertEquals(0, console.code());
    assertEquals("", console.err());
    return console;
  }

  private static List<String> examples(String help) {
    String joined = help.substring(help.indexOf("\nExample")).replaceAll(" \\\\\n +", " ");
    return joined.lines().filter(line -> line.startsWith("  ")).map(String::strip).toList();
  }

  @Test
  void theListOfCommandsHasOneWholeLineForEach() {
    List<String> lines = Console.run("--help").out().lines().toList();

    int first = lines.indexOf("Commands") + 1;
    for (int i = 0; i < COMMANDS.size(); i++) {
      CommandUsage usage = Commands.named(COMMANDS.get(i)).usage();
      String line = lines.get(first + i);
      assertEquals(usage.name(), COMMANDS.get(i));
      assertTrue(line.strip().startsWith(usage.name() + " "), line);
      assertTrue(line.endsWith(usage.summary()), line);
      assertTrue(usage.summary().endsWith("."), line);
    }
    assertEquals("", lines.get(first + COMMANDS.size()));
    assertTrue(lines.stream().allMatch(line -> line.length() <= 80));
  }

  @Test
  void theRootAnswersToBothNamesOfHelpAndToNoWord() {
    assertEquals(Console.run(), Console.run("--help"));
    assertEquals(Console.run(), Console.run("-h"));
  }

  @ParameterizedTest
  @FieldSource("COMMANDS")
  void everyOptionAndArgumentIsExplainedIn80Columns(String command) {
    Console console = help(command);
    CommandUsage usage = Commands.named(command).usage();
    String said = console.out().replaceAll("\\s+", " ");

    for (CommandOption option : usage.allOptions()) {
      assertEquals(option != CommandUsage.TRACE, said.contains(option.name()), option.name());
      assertTrue(said.contains(option.text()), option.name());
      assertTrue(said.contains(option.letter()), option.name());
    }
    for (CommandArgument argument : usage.arguments()) {
      assertTrue(said.contains(argument.name() + " " + argument.text()), argument.name());
    }
    assertTrue(
        said.contains(usage.summary()) && said.contains(usage.explanation().replace('\u00a0', ' ')),
        said);
    assertTrue(console.widest() <= 80, console.out());
    Console narrow = Console.narrow(40, (command + " --help").split(" "));
    assertTrue(narrow.widest() <= 40, narrow.out());
  }

  @ParameterizedTest
  @FieldSource("COMMANDS")
  void theOptionsAreSortedByName(String command) {
    String help = help(command).out();
    List<String> names = new ArrayList<>();
    help.substring(help.indexOf("\nOptions\n"), help.indexOf("\nExample"))
        .lines()
        .map(line -> line.substring(Math.min(line.length(), 6)))
        .filter(line -> line.startsWith("--"))
        .forEach(line -> names.add(line.split(" ")[0]));

    assertTrue(names.size() >= 3, help);
    assertEquals(names.stream().sorted().toList(), names);
  }

  @ParameterizedTest
  @FieldSource("COMMANDS")
  void everyExampleIsUnderstood(String command) {
    CommandUsage usage = Commands.named(command).usage();
    List<String> examples = examples(help(command).out());

    assertEquals(usage.examples(), examples);
    for (String example : examples) {
      // None has a space between quotes, so that a shell would only take the quotes away.
      String[] words = example.replace("'", "").split(" ");
      assertEquals("kelter", words[0]);
      int named = 1 + command.split(" ").length;
      assertEquals(command, String.join(" ", List.of(words).subList(1, named)));
      String[] behind = List.of(words).subList(named, words.length).toArray(String[]::new);
      assertFalse(CommandLineReader.read(usage, behind).has(CommandUsage.HELP));
    }
  }

  @Test
  void aLongExampleIsBrokenAsAShellTakesIt() {
    String help = help("diagnose").out();

    assertTrue(
        help.contains(
            "\n  kelter diagnose --why drain-pump.passages-blocked \\\n"
                + "      demo/jobs/washer-extractor.json\n"),
        help);
  }

  @Test
  void theUsageLineHangsAndBreaksNoOption() {
    List<String> lines = help("readings").out().lines().takeWhile(l -> !l.isEmpty()).toList();

    assertTrue(lines.size() > 2, lines.toString());
    assertTrue(lines.get(0).startsWith("kelter readings ["), lines.toString());
    for (String line : lines.subList(1, lines.size())) {
      assertTrue(line.startsWith(" ".repeat("kelter readings ".length())), line);
      assertEquals(line.chars().filter(c -> c == '[').count(), closed(line), line);
    }
    assertTrue(lines.toString().contains("[--map MAP]..."), lines.toString());
    assertTrue(lines.get(lines.size() - 1).endsWith(" LOG"), lines.toString());
  }

  private static long closed(String line) {
    return line.chars().filter(c -> c == ']').count();
  }

  @Test
  void helpIsShownWhateverElseIsWrong() {
    String help = help("check").out();

    for (String[] words :
        new String[][] {
          {"check", "-h"},
          {"check", "x.json", "y.json", "--help"},
          {"check", "--fromat", "-h"},
          {"check", "--shop", "--help"}
        }) {
      assertEquals(new Console(0, help, ""), Console.run(words));
    }
  }
}
