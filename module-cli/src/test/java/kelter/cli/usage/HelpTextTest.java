package kelter.cli.usage;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import kelter.cli.terminal.Terminal;
import org.junit.jupiter.api.Test;

/** The help of a made-up command. */
class HelpTextTest {

  private static String help(String example) {
    Terminal terminal =
        new Terminal(
            new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
            new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
            StandardCharsets.UTF_8,
            false,
            false,
            40);
    return HelpText.of(
        new CommandUsage(
            "try",
            "Try it.",
            "",
            List.of(),
            List.of(
                CommandArgument.one("JOB", ValueKind.FILE, "a job"),
                new CommandArgument("PLACE", ValueKind.TEXT, true, false, "where"),
                CommandArgument.any("NAME=VALUE", "values")),
            List.of(example)),
        terminal);
  }

  @Test
  void anExampleIsNeverBrokenBetweenQuotes() {
    String help = help("kelter try job.json 'a = 200 L ± 10 L' 'b = 5 K'");

    assertTrue(
        help.endsWith(
            """
            Example
              kelter try job.json \\
                  'a = 200 L ± 10 L' 'b = 5 K'
            """),
        help);
  }

  @Test
  void whatMayBeLeftOutStandsInBrackets() {
    String usageLine = help("kelter try job.json").replaceAll("\\s+", " ");

    assertTrue(usageLine.contains(" JOB [PLACE] [NAME=VALUE]... "), usageLine);
  }
}
