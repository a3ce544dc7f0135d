package kelter.cli.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A led case whose process is killed loses the line that was typed last, and nothing before it. */
@DisabledOnOs(OS.WINDOWS)
class KilledBenchIT {

  private static final String TOOL =
      Path.of("target", "kelter", "bin", "kelter").toAbsolutePath().toString();
  private static final List<String> ANSWERS =
      List.of(
          "washing", "9", "The wash comes out cold", "y", "n", "heater resistance = OL", "leaks=n");
  private static final String[] QUESTIONS = {
    "What kind of machine",
    "How old",
    "What does the owner",
    "Ask: ",
    "Read: ",
    "You know enough",
    "It is not decided"
  };
  private static final int KILLS = 50;
  private static final long SEED = 19;

  /** The longest wait for a kill; the slowest answers take about as long. */
  private static final int MOST_MICROSECONDS = 150_000;

  /** Makes short waits frequent, since most answers are kept within some milliseconds. */
  private static final int SHORT_ONES = 3;

  @TempDir private Path folder;

  @Test
  void nothingIsLostButTheLineThatWasTypedLast()
      throws IOException, InterruptedException, TimeoutException {
    List<String> kept = keptAfterEachAnswer();
    Random chance = new Random(SEED);
    for (int kill = 0; kill < KILLS; kill++) {
      Path job = folder.resolve("killed-" + kill + ".json");
      int answered = chance.nextInt(ANSWERS.size());
      killed(job, answered, wait(chance));

      String found = content(job);
      assertTrue(
          List.of(kept.get(answered), kept.get(answered + 1)).contains(found),
          answered + " answers:\n" + found);
      if (!found.isEmpty()) {
        assertChecked(job);
      }
    }
  }

  /**
   * What is in the file before the first answer and after each, from a case that was not killed.
   */
  private List<String> keptAfterEachAnswer()
      throws IOException, InterruptedException, TimeoutException {
    Path job = folder.resolve("whole.json");
    List<String> kept = new ArrayList<>(List.of(""));
    try (TypedTool bench = bench(job)) {
      bench.hear(QUESTIONS);
      for (String answer : ANSWERS) {
        bench.type(answer + "\n");
        bench.hear(QUESTIONS);
        String now = content(job);
        assertFalse(kept.contains(now), answer + " is kept at once:\n" + now);
        kept.add(now);
      }
      bench.type("done\n");
      assertEquals(0, bench.end(), bench.said());
    }
    return kept;
  }

  /** Answers some questions, types one answer more, and is killed some time after it. */
  private void killed(Path job, int answered, long microseconds)
      throws IOException, InterruptedException, TimeoutException {
    try (TypedTool bench = bench(job)) {
      bench.hear(QUESTIONS);
      for (String answer : ANSWERS.subList(0, answered)) {
        bench.type(answer + "\n");
        bench.hear(QUESTIONS);
      }
      bench.type(ANSWERS.get(answered) + "\n");
      TimeUnit.MICROSECONDS.sleep(microseconds);
      bench.kill();
    }
  }

  private static long wait(Random chance) {
    return (long) (Math.pow(chance.nextDouble(), SHORT_ONES) * MOST_MICROSECONDS);
  }

  private void assertChecked(Path job) throws IOException, InterruptedException, TimeoutException {
    try (TypedTool check =
        TypedTool.start(folder, Map.of(), List.of(TOOL, "check", job.toString()))) {
      assertEquals(0, check.end(), check.said());
    }
  }

  private TypedTool bench(Path job) throws IOException {
    return TypedTool.start(folder, Map.of(), List.of(TOOL, "bench", job.toString()));
  }

  private static String content(Path job) throws IOException {
    return Files.exists(job) ? Files.readString(job) : "";
  }
}
