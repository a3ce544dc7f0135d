package kelter.cli.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ManualPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** Manual pages. */
class ManCommandTest {

  private static final List<String> COMMANDS = Commands.NAMES;

  @TempDir private Path folder;

  private static String page(String command) {
    Console console = Console.run(("man " + command).strip().split(" "));
    assertEquals(0, console.code(), console.err());
    return console.out();
  }

  /** A page as it is read, without what steers it. */
  private static String read(String page) {
    return page.replaceAll("\\\\f[BIR]", "").replace("\\-", "-").replace("\\(aq", "'");
  }

  private static void assertSteersOnlyAsMeant(String page) {
    for (String line : page.lines().toList()) {
      assertTrue(
          !line.startsWith("'")
              && (!line.startsWith(".")
                  || line.matches("\\.(TP|nf|fi|nh|TH .*|SH [A-Z ]+|\\\\\" .*)")),
          line);
    }
    assertTrue(StandardCharsets.US_ASCII.newEncoder().canEncode(page), page);
  }

  @ParameterizedTest
  @FieldSource("COMMANDS")
  void aPageTellsAllThatTheCommandTakes(String command) {
    CommandUsage usage = Commands.named(command).usage();
    String page = page(command);
    String read = read(page);

    assertSteersOnlyAsMeant(page);
    for (CommandOption option : usage.shownOptions()) {
      String label = option.takesValue() ? " " + option.label() : "";
      assertTrue(read.contains("\n[" + option.name() + label + "]"), option.name() + read);
      assertTrue(read.contains(option.name() + label + "\n" + option.text() + "\n"), read);
      assertTrue(read.contains(option.letter()), read);
    }
    for (CommandArgument argument : usage.arguments()) {
      assertTrue(read.contains("\n.TP\n" + argument.name() + "\n" + argument.text()), read);
    }
    assertTrue(read.contains(" - " + usage.summary() + "\n"), read);
  }

  @Test
  void withoutACommandItListsThem() {
    String page = page("");
    String read = read(page);

    assertSteersOnlyAsMeant(page);
    for (CommandUsage usage : Commands.usages()) {
      assertTrue(read.contains("\n.TP\n" + usage.name() + "\n" + usage.summary() + "\n"), read);
    }
    assertTrue(read.contains("3 a defect"), read);
  }

  @Test
  void allPagesAreWrittenWhereTold() throws IOException {
    Path pages = folder.resolve("share/man1");
    assertEquals(0, Console.run("man", "-o", pages.toString()).code());

    assertEquals(page(""), Files.readString(pages.resolve("kelter.1")));
    assertEquals(page("shop init"), Files.readString(pages.resolve("kelter-shop-init.1")));
    try (Stream<Path> written = Files.list(pages)) {
      assertEquals(COMMANDS.size() + 1, written.count());
    }

    Path one = folder.resolve("one");
    assertEquals(0, Console.run("man", "check", "-o", one.toString()).code());
    try (Stream<Path> written = Files.list(one)) {
      assertEquals(List.of(one.resolve("kelter-check.1")), written.toList());
    }
  }

  @Test
  void aCommandThatIsNotThereIsTold() {
    Console console = Console.run("man", "chek");
    assertEquals(1, console.code());
    assertTrue(console.err().contains("did you mean 'check'?"), console.err());
  }

  @Test
  void noTextSteersAPage() {
    String page =
        new ManualPage("1", "0 done")
            .of(
                new CommandUsage(
                    "try",
                    ".so /etc/passwd",
                    "'de x \\fB\\*[y] \"~^`\u00a0\u00b1\n.ab",
                    List.of(CommandOption.flag("--odd", ".de\n.ex")),
                    List.of(),
                    List.of("'x'", ".fi")));

    assertSteersOnlyAsMeant(page);
    assertTrue(
        page.contains("\n\\(aqde x \\(rsfB\\(rs*[y] \\(dq\\(ti\\(ha\\(ga\\ \\[u00B1] .ab\n"), page);
    assertTrue(page.contains("\n\\&.de .ex\n"), page);
    assertTrue(page.contains("\n\\(aqx\\(aq\n\\&.fi\n"), page);
  }
}
