package kelter.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The cases of the demo, from the call to the closed case by commands alone. */
@DisabledOnOs(OS.WINDOWS)
class CarriedCasesIT {

  private static final Path CARRY = Path.of("..", "demo", "carry").toAbsolutePath();
  private static final Path TOOL = Path.of("target", "kelter", "bin", "kelter").toAbsolutePath();

  @Test
  void everyCaseIsCarriedToItsEnd(@TempDir Path folder) throws IOException, InterruptedException {
    Path shop = folder.resolve("the shop");
    Path said = folder.resolve("said.txt");
    ProcessBuilder builder =
        new ProcessBuilder(CARRY.toString(), shop.toString())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile());
    builder.environment().put("KELTER", TOOL.toString());
    Process process = builder.start();
    assertTrue(process.waitFor(10, TimeUnit.MINUTES), "it does not end");
    String log = Files.readString(shop.resolve("carried.txt"));

    assertEquals(0, process.exitValue(), () -> log.substring(Math.max(0, log.length() - 2000)));
    List<Path> jobs = files(shop.resolve("jobs"));
    assertEquals(22, jobs.size());
    for (Path job : jobs) {
      assertTrue(Files.readString(job).contains("\"closed\": {"), job.toString());
    }
    assertEquals(2, jobs.stream().filter(job -> job.toString().contains("-again")).count());
    assertFalse(Pattern.compile("Nothing here is called|Which: ").matcher(log).find());
    assertEquals(22, files(shop.resolve("reports")).size());
    assertEquals(List.of(), files(shop.resolve("persons")));
    String report = Files.readString(shop.resolve("reports").resolve("dryer-cold-again.html"));
    assertTrue(report.contains("a call-back of job"), "not joined to the first");
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return new ArrayList<>(all.sorted().toList());
    }
  }
}
