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
import org.junit.jupiter.api.Test;
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
  private static final String NO_TERMINAL =
      "there is no 'script' of util-linux, which gives a terminal";
  private static final int MOST_KEYS = 60;
  private static final int MOST_ANSWERS = 8;
  private static final String FIRST = "Do first: ";
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
    assumeTrue(hasPseudoTerminals(), NO_TERMINAL);
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

  @Test
  void aWasherThatDrainsSlowlyIsLedToItsStrainer()
      throws IOException, InterruptedException, TimeoutException {
    assumeTrue(hasPseudoTerminals(), NO_TERMINAL);
    String first =
        led(
            List.of("washing", "7", "It drains slowly", "y"),
            Map.of("noise of the drain pump", "usual", "Is water left", "y"));
    assertTrue(first.startsWith("drain pump: clean the strainer"), first);
  }

  @Test
  void aBoilerThatTripsIsLedToItsHeater()
      throws IOException, InterruptedException, TimeoutException {
    assumeTrue(hasPseudoTerminals(), NO_TERMINAL);
    String first =
        led(
            List.of("water-boiler", "9", "RCD trips", "ok", "y"),
            Map.of(
                "heater: insulation resistance", "40 kOhm",
                "Is the water coloured", "n",
                "Is it louder", "n",
                "its sheath is split", "n"));
    assertTrue(first.startsWith("heater: renew the heater"), first);
  }

  /** Answers a call and then what is known, until the tool says what to do first. */
  private String led(List<String> call, Map<String, String> known)
      throws IOException, InterruptedException, TimeoutException {
    assertTrue(String.join(ENTER, call).length() + 1 < MOST_KEYS, "keys of the call");
    try (TypedTool bench = onTerminal(80, "COLUMNS=80")) {
      for (String keys : call) {
        asked(bench);
        bench.type(keys + ENTER);
      }
      String said = asked(bench);
      for (int answers = 0; answers < MOST_ANSWERS && !said.contains(FIRST); answers++) {
        bench.type(answerTo(said, known) + ENTER);
        said = asked(bench);
      }
      bench.type("done" + ENTER);
      bench.hear("Kept in job.json");
      assertEquals(0, bench.end(), bench.said());
      assertTrue(said.contains(FIRST), said);
      return said.substring(said.indexOf(FIRST) + FIRST.length());
    }
  }

  /** What it asks next, up to its prompt. */
  private static String asked(TypedTool bench) throws InterruptedException, TimeoutException {
    String[] questions = {
      "What kind of machine", "How old", "What does the owner", "Type ok", "Ask: ", "Read: ", FIRST
    };
    return bench.hear(questions) + bench.hear(PROMPT);
  }

  private static String answerTo(String said, Map<String, String> known) {
    return known.entrySet().stream()
        .filter(each -> said.contains(each.getKey()))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse("skip");
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
