package kelter.cli.completion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Words of modules from outside that would do something in a shell, and do not. */
class HostileWordsTest {

  private static final List<String> WORDS =
      List.of(
          "a$(touch done)",
          "b`touch done`",
          "c';touch done;'",
          "d\\",
          "e\"]:[",
          "f g",
          "halt\ngo on");

  private static final Completion COMPLETION =
      new Completion(
          List.of(
              new CommandUsage(
                  "try",
                  "It's [odd]: $(touch done) `touch done` \\",
                  "",
                  List.of(CommandOption.flag("--odd", "';touch done;' [it]: \\ \"$(touch done)\"")),
                  List.of(CommandArgument.one("A:B]", ValueKind.KIND, "a kind")),
                  List.of())),
          Map.of(ValueKind.KIND, WORDS));

  @TempDir private Path folder;

  @Test
  void bashProposesThemQuotedAndRunsNone() throws IOException, InterruptedException {
    assumeTrue(Shell.has("bash"), "there is no bash");
    List<String> proposed =
        new Shell(folder).proposals(COMPLETION.script("bash"), "kelter", "try", "");

    assertEquals(
        List.of(
            "a\\$\\(touch\\ done\\)",
            "b\\`touch\\ done\\`",
            "c\\'\\;touch\\ done\\;\\'",
            "d\\\\",
            "e\\\"\\]:\\[",
            "f\\ g"),
        proposed);
    assertFalse(Files.exists(folder.resolve("done")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"bash", "zsh", "fish"})
  void aShellReadsTheScript(String shell) throws IOException, InterruptedException {
    assumeTrue(Shell.has(shell), "there is no " + shell);
    new Shell(folder).assertReads(shell, COMPLETION.script(shell));
    assertFalse(Files.exists(folder.resolve("done")));
  }

  @Test
  void everyWordStandsBetweenQuotes() {
    String zsh = COMPLETION.script("zsh");
    assertTrue(zsh.contains("\n    'c'\\'';touch done;'\\'''\n"), zsh);
    assertTrue(zsh.contains("'(--odd)--odd['\\'';touch done;'\\'' \\[it\\]: \\\\ \"$(touch"), zsh);
    assertTrue(zsh.contains("':A\\:B]:_kelter_kind'"), zsh);

    String fish = COMPLETION.script("fish");
    assertTrue(fish.contains(" 'c\\';touch done;\\'' "), fish);
    assertTrue(fish.contains(" 'd\\\\' "), fish);
    assertTrue(fish.contains(" -d '\\';touch done;\\' [it]: \\\\ \"$(touch done)\"'\n"), fish);
  }

  @ParameterizedTest
  @ValueSource(strings = {"bash", "zsh", "fish"})
  void aWordOfSeveralLinesIsLeftOut(String shell) {
    assertFalse(COMPLETION.script(shell).contains("halt"), shell);
    assertFalse(COMPLETION.script(shell).contains("go on"), shell);
  }
}
