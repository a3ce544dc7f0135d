package kelter.cli.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import kelter.cli.completion.Shell;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the scripts complete. */
class CompletionCommandTest {

  private static final List<String> COMMANDS = Commands.NAMES;
  private static final String BASH = script("bash");
  private static final String ZSH = script("zsh");
  private static final String FISH = script("fish");

  @TempDir private Path folder;

  private static String script(String shell) {
    Console console = Console.run("completion", shell);
    assertEquals(0, console.code(), console.err());
    assertEquals("", console.err());
    return console.out();
  }

  private List<String> proposals(String... words) throws IOException, InterruptedException {
    assumeTrue(Shell.has("bash"), "there is no bash");
    return new Shell(folder).proposals(BASH, words);
  }

  private static String between(String text, String from, String to) {
    int start = text.indexOf(from);
    assertTrue(start >= 0, from);
    return text.substring(start, text.indexOf(to, start));
  }

  @ParameterizedTest
  @FieldSource("COMMANDS")
  void everyOptionOfACommandStandsInEachScript(String command) {
    CommandUsage usage = Commands.named(command).usage();
    String[] words = command.split(" ");
    String last = words[words.length - 1];
    String bash = between(BASH, "\n    '" + command + "')\n      options=", "esac");
    String zsh =
        between(
            words.length == 1 ? ZSH : ZSH.substring(ZSH.indexOf("'" + words[0] + "')")),
            "'"
                + last
                + "')\n      shift "
                + (words.length == 1 ? "words" : words.length + " words"),
            "\n      ;;\n");
    String fish =
        FISH.lines()
            .filter(line -> line.contains(" -n '__kelter_is \\'" + command + "\\'' "))
            .collect(Collectors.joining("\n"));

    for (CommandOption option : usage.shownOptions()) {
      assertTrue(fish.contains(" -l '" + option.bareName() + "'"), option + fish);
      for (String name : option.names()) {
        assertTrue(bash.contains("\n" + name) || bash.contains("'" + name), name + bash);
        assertTrue(
            zsh.contains(name + (option.takesValue() && name.startsWith("--") ? "=[" : "[")));
      }
    }
    assertEquals(usage.shownOptions().size(), fish.lines().count(), fish);
  }

  @Test
  void commands() throws IOException, InterruptedException {
    assertEquals(List.of("diagnose"), proposals("kelter", "diag"));
    assertEquals(List.of("init", "person", "forget"), proposals("kelter", "shop", ""));
    assertEquals(List.of("model"), proposals("kelter", "man", "model"));
  }

  @Test
  void options() throws IOException, InterruptedException {
    assertEquals(List.of("--format", "--full"), proposals("kelter", "diagnose", "--f"));
    assertEquals(List.of("--help"), proposals("kelter", "shop", "init", "--h"));
    assertEquals(List.of(), proposals("kelter", "shop", "init", "--f"));
    assertEquals(List.of("--budget"), proposals("kelter", "compute", "x", "a", "=", "1", "--b"));
    assertEquals(List.of(), proposals("kelter", "diagnose", "--", "--f"));
  }

  @Test
  void values() throws IOException, InterruptedException {
    List<String> forms = List.of("text", "json");
    assertEquals(forms, proposals("kelter", "check", "--format", ""));
    assertEquals(forms, proposals("kelter", "check", "--format", "="));
    assertEquals(List.of("json"), proposals("kelter", "check", "--format", "=", "j"));
    assertEquals(List.of("washing-machine"), proposals("kelter", "new", "washing"));
    assertEquals(List.of("stays-cold"), proposals("kelter", "new", "x", "-s", "stays-c"));
    assertEquals(List.of(), proposals("kelter", "new", "-s", "leaks", "=", "n"));
    assertEquals(
        List.of("washing-machine"),
        proposals("kelter", "new", "-s", "leaks", "=", "no", "washing"));
    assertEquals(List.of(), proposals("kelter", "diagnose", "--why", ""));
  }

  @Test
  void files() throws IOException, InterruptedException {
    Files.createFile(folder.resolve("my-job.json"));
    for (String command : List.of("bench", "check", "diagnose", "simulate", "sheet")) {
      assertEquals(List.of("my-job.json"), proposals("kelter", command, "my-"), command);
    }
    assertEquals(List.of("my-job.json"), proposals("kelter", "check", "--shop", "my-"));
    assertEquals(List.of("my-job.json"), proposals("kelter", "new", "-o", "my-"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"bash", "zsh", "fish"})
  void aShellReadsTheScript(String shell) throws IOException, InterruptedException {
    assumeTrue(Shell.has(shell), "there is no " + shell);
    new Shell(folder).assertReads(shell, script(shell));
  }

  @Test
  void anotherShellIsAMistakeOfUsage() {
    Console console = Console.run("completion", "tcsh");
    assertEquals(2, console.code());
    assertTrue(console.err().contains("SHELL takes bash, zsh or fish, not 'tcsh'"), console.err());
  }
}
