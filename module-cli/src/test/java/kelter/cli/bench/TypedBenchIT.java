package kelter.cli.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeoutException;
import java.util.regex.Pattern;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A led case as it is typed on a terminal, key by key. */
@DisabledOnOs(OS.WINDOWS)
class TypedBenchIT {

  private static final String TOOL =
      Path.of("target", "kelter", "bin", "kelter").toAbsolutePath().toString();
  private static final String PROMPT = "> ";
  private static final String ENTER = "\r";
  private static final String BACKSPACE = "\u007f";
  private static final String TO_THE_START = "\u0001";

  /** What steers a terminal and takes no room on it. */
  private static final Pattern STEERING =
      Pattern.compile("\u001b\\[[0-9;?<>=$]*[@A-Za-z]|\u001b[=>]|\u001b\\][^\u0007]*\u0007|\u0007");

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({"80, COLUMNS=80", "60, COLUMNS=60", "60, COLUMNS="})
  void aColdWashingMachineIsLedToItsHeater(int width, String told)
      throws IOException, InterruptedException, TimeoutException {
    assumeTrue(hasPseudoTerminals(), "there is no 'script' of util-linux, which gives a terminal");
    try (TypedTool bench = onTerminal(width, told)) {
      answer(bench, "What kind of machine", "washinh" + BACKSPACE + "g");
      answer(bench, "How old", "8" + BACKSPACE + "9");
      answer(bench, "What does the owner", "wash comes out cold" + TO_THE_START + "The ");
      answer(bench, "Ask: ", "y");
      answer(bench, "Ask: ", "n");
      answer(bench, "Ask: ", "heater resistance = OL");
      bench.hear("Do first: heater: renew");
      bench.hear(PROMPT);
      bench.type("done" + ENTER);
      bench.hear("Kept in job.json");
      assertEquals(0, bench.end(), bench.said());

      String kept = Files.readString(folder.resolve("job.json"));
      assertTrue(kept.contains("\"9 a\""), kept);
      assertTrue(kept.contains("\"The wash comes out cold\""), kept);
      assertTrue(widest(bench.said()) <= width, width + " columns:\n" + bench.said());
    }
  }

  private static boolean hasPseudoTerminals() throws IOException, InterruptedException {
    try {
      Process version =
          new ProcessBuilder("script", "--version")
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      return version.waitFor() == 0;
    } catch (IOException missing) {
      return false;
    }
  }

  /** The tool on a terminal of 24 lines and some columns, told by it alone or by a variable too. */
  private TypedTool onTerminal(int width, String told) throws IOException {
    String inside = "stty rows 24 cols " + width + "; " + told + " exec \"$TOOL\" bench job.json";
    return TypedTool.start(
        folder,
        Map.of("TOOL", TOOL, "SHELL", "/bin/sh", "TERM", "xterm", "LC_ALL", "C.UTF-8"),
        List.of("script", "-qec", inside, "/dev/null"));
  }

  private static void answer(TypedTool bench, String question, String keys)
      throws InterruptedException, TimeoutException {
    bench.hear(question);
    bench.hear(PROMPT);
    bench.type(keys + ENTER);
  }

  /** The most columns that a line takes; what is written over it counts by itself. */
  private static int widest(String said) {
    return Arrays.stream(STEERING.matcher(said).replaceAll("").split("[\r\n]"))
        .mapToInt(String::length)
        .max()
        .orElse(0);
  }
}
