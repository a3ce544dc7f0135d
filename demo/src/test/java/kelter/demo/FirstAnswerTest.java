package kelter.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The program of ten lines, in a process of its own, on the class path and on the module path. */
class FirstAnswerTest {

  private static final Path JOB = Path.of("jobs", "washer-extractor.json");
  private static final String PROGRAM = "kelter.demo.FirstAnswer";

  private static List<String> run(String... start) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of(start));
    command.add(JOB.toString());
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    List<String> lines = process.inputReader().lines().toList();
    assertEquals(0, process.waitFor(), String.join("\n", lines));
    return lines;
  }

  /** Wherever the test runner put them. */
  private static String everything() {
    Set<String> places = new LinkedHashSet<>();
    for (String name : List.of("jdk.module.path", "surefire.test.class.path", "java.class.path")) {
      places.addAll(Arrays.asList(System.getProperty(name, "").split(File.pathSeparator)));
    }
    return places.stream()
        .filter(place -> !place.isEmpty() && !place.contains("test-classes"))
        .collect(Collectors.joining(File.pathSeparator));
  }

  private static void assertAnswered(List<String> lines) {
    assertTrue(lines.contains("heater-resistance.heater: does not conform"), lines.toString());
    assertTrue(lines.contains("heater-insulation.heater: conforms"), lines.toString());
    assertTrue(
        lines.contains("one element of the heater open")
            || lines.contains("passages of the drain pump blocked"),
        lines.toString());
  }

  @Test
  void onTheClassPath() throws IOException, InterruptedException {
    assertAnswered(run("-cp", everything(), PROGRAM));
  }

  @Test
  void onTheModulePath() throws IOException, InterruptedException {
    assertAnswered(run("-p", everything(), "-m", "kelter.demo/" + PROGRAM));
  }
}
