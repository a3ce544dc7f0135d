package kelter.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.spi.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The tool as it is built: its launcher on the runtime image and on the jars, and its modules. */
@DisabledOnOs(OS.WINDOWS)
class BuiltToolIT {

  private static final Path TOOL = Path.of("target", "kelter").toAbsolutePath();
  private static final String JOB =
      Path.of("..", "demo", "jobs", "washer-extractor.json").toAbsolutePath().toString();

  private record Run(int code, String out, String err) {}

  private static Run run(Map<String, String> environment, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(TOOL.resolve("bin").resolve("kelter").toString());
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command);
    Path err = Files.createTempFile("kelter", ".err");
    builder.redirectError(err.toFile());
    builder.environment().putAll(environment);
    Process process = builder.start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    int code = process.waitFor();
    String said = Files.readString(err);
    Files.delete(err);
    return new Run(code, out, said);
  }

  @Test
  void diagnosesOnTheImageAndOnTheJarsAlike() throws IOException, InterruptedException {
    Run image = run(Map.of("LC_ALL", "C.UTF-8"), "diagnose", JOB);
    Run jars = run(Map.of("LC_ALL", "C.UTF-8", "KELTER_RUNTIME", "system"), "diagnose", JOB);

    assertEquals(0, image.code(), image.err());
    String said = image.out().replaceAll("\\s+", " ");
    assertTrue(said.contains("passages of the drain pump blocked"), said);
    assertTrue(said.contains("one element of the heater open"), said);
    assertEquals(image, jars);
    // Where the clock is behind the day of the job, that is told.
    assertTrue(image.err().lines().allMatch(line -> line.contains("(/date)")), image.err());
  }

  @Test
  void exitCodesReachTheShell() throws IOException, InterruptedException {
    assertEquals(1, run(Map.of(), "check", "none.json").code());
    assertEquals(2, run(Map.of(), "check").code());
    assertEquals(0, run(Map.of(), "--help").code());
  }

  /**
   * The owner's question at the built tool: a dear assembly, young and old, and a drawing of it.
   */
  @Test
  void weighsADearAssembly(@TempDir Path folder) throws IOException, InterruptedException {
    String dear = Files.readString(Path.of("..", "demo", "jobs", "dear-heater.json"));
    Path young =
        Files.writeString(folder.resolve("young.json"), dear.replace("\"310 EUR\"", "\"150 EUR\""));
    Path old =
        Files.writeString(folder.resolve("old.json"), dear.replace("\"2 years\"", "\"14 years\""));
    Path drawing = folder.resolve("cost.svg");

    Run mend = run(Map.of(), "weigh", "--why", "--plot", drawing.toString(), young.toString());
    Run replace = run(Map.of(), "weigh", "--why", old.toString());

    assertEquals(0, mend.code(), mend.err());
    assertTrue(mend.out().contains("Repair (1.) costs least"), mend.out());
    assertTrue(mend.out().contains("Break-even age of the machine"), mend.out());
    assertTrue(replace.out().contains("A new machine (1.) costs least"), replace.out());
    assertTrue(Files.readString(drawing).endsWith("</svg>\n"));
  }

  @Test
  void whatCannotBeWeighedIsToldAtOnce(@TempDir Path folder)
      throws IOException, InterruptedException {
    String wrong =
        Files.readString(Path.of("..", "demo", "jobs", "dear-heater.json"))
            .replace("\"2 years\"", "\"-2 years\"")
            .replace("\"60 EUR\"", "\"60 USD\"")
            .replace("\"58 EUR\"", "\"-58 EUR\"");
    Run run = run(Map.of(), "weigh", Files.writeString(folder.resolve("a.json"), wrong).toString());

    assertEquals(1, run.code());
    assertEquals("", run.out());
    assertEquals(3, run.err().lines().count(), run.err());
  }

  /** Three technicians enter readings into one job at the same time. */
  @Test
  void readingsThatAreEnteredSideBySideAreAllKept(@TempDir Path folder)
      throws IOException, InterruptedException {
    Path demo = Path.of("..", "demo");
    Path job = folder.resolve("job.json");
    Files.copy(demo.resolve("jobs").resolve("water-boiler.json"), job);
    String before = Files.readString(job);
    List<Process> all = new ArrayList<>();
    for (int minute = 4; minute < 7; minute++) {
      all.add(
          new ProcessBuilder(
                  TOOL.resolve("bin").resolve("kelter").toString(),
                  "readings",
                  demo.resolve("logs").resolve("boiler-heating.csv").toString(),
                  "--map",
                  "Power=heater.power",
                  "--window",
                  "14:0%d:00..14:0%d:50".formatted(minute, minute),
                  "--into",
                  job.toString())
              .inheritIO()
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start());
    }
    for (Process process : all) {
      assertEquals(0, process.waitFor());
    }

    String after = Files.readString(job);
    assertEquals(3, after.split("mean of rows", -1).length - 1, after);
    List<String> kept = new ArrayList<>(after.lines().toList());
    kept.removeAll(before.lines().toList());
    assertTrue(kept.size() <= 3 * 4, "what was there stays as it was: " + kept);
    try (var left = Files.list(folder)) {
      assertEquals(1, left.count());
    }
  }

  private static String tool(String name, String... arguments) {
    StringWriter said = new StringWriter();
    PrintWriter out = new PrintWriter(said);
    ToolProvider.findFirst(name).orElseThrow().run(out, out, arguments);
    return said.toString();
  }

  private static List<Path> ownJars() throws IOException {
    try (var jars = Files.list(TOOL.resolve("lib"))) {
      return jars.filter(j -> j.getFileName().toString().matches("kelter-.*")).toList();
    }
  }

  @Test
  void everyArtifactHasARealDescriptor() throws IOException {
    assertEquals(5, ownJars().size());
    for (Path jar : ownJars()) {
      String described = tool("jar", "--describe-module", "--file", jar.toString());
      assertTrue(described.startsWith("kelter."), described);
      assertFalse(described.contains("automatic"), described);
    }
  }

  @Test
  void noCalculationModuleReadsGuiceOrAnother() throws IOException {
    for (Path jar : ownJars()) {
      String name = jar.getFileName().toString();
      if (name.startsWith("kelter-core") || name.startsWith("kelter-cli")) {
        continue;
      }
      String summary =
          tool(
              "jdeps",
              "-s",
              "--multi-release",
              "17",
              "--module-path",
              TOOL.resolve("lib").toString(),
              jar.toString());
      String own = "kelter." + name.split("-")[1];
      assertTrue(summary.contains(own + " -> kelter.core"), summary);
      assertFalse(summary.contains("guice"), summary);
      for (String other : List.of("hydraulics", "electrical", "costing", "cli")) {
        assertFalse(summary.contains(own + " -> kelter." + other), summary);
      }
    }
  }
}
