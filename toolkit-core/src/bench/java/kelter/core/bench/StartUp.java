package kelter.core.bench;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.spi.ToolProvider;

/**
 * How long commands of the built tool take as whole processes, as a ratio to a bare {@code java
 * Hello} in the same run. All take turns, so that a machine that slows down slows them all.
 */
public final class StartUp {

  private static final String HELLO =
      "public class Hello { public static void main(String[] a) { System.out.println(\"Hello\"); } }";
  private static final int WARM_UPS = 3;

  private StartUp() {}

  /**
   * Runs and prints.
   *
   * @param arguments the folder of the built tool, a job file, and how often each command is run
   * @throws IOException if a process cannot be started
   * @throws InterruptedException if somebody ends the wait
   */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    String kelter = Path.of(arguments[0], "bin", "kelter").toString();
    String job = arguments[1];
    int runs = Integer.parseInt(arguments[2]);
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    Map<String, List<String>> commands = new LinkedHashMap<>();
    commands.put("java Hello", List.of(java, "-cp", hello().toString(), "Hello"));
    commands.put("kelter --help", List.of(kelter, "--help"));
    commands.put(
        "kelter compute",
        List.of(kelter, "compute", "heater-resistance", "power=2kW", "voltage=230V"));
    commands.put("kelter check", List.of(kelter, "check", job));
    commands.put("kelter diagnose", List.of(kelter, "diagnose", job));
    commands.put("kelter weigh", List.of(kelter, "weigh", job));
    print(timed(commands, runs));
  }

  private static Path hello() throws IOException {
    Path folder = Files.createTempDirectory("hello");
    folder.toFile().deleteOnExit();
    Path source = Files.writeString(folder.resolve("Hello.java"), HELLO);
    ToolProvider.findFirst("javac").orElseThrow().run(System.out, System.err, source.toString());
    for (File file : folder.toFile().listFiles()) {
      file.deleteOnExit();
    }
    return folder;
  }

  /** The times of each command, in ms, sorted. */
  private static Map<String, double[]> timed(Map<String, List<String>> commands, int runs)
      throws IOException, InterruptedException {
    Map<String, double[]> times = new LinkedHashMap<>();
    for (int run = -WARM_UPS; run < runs; run++) {
      for (Map.Entry<String, List<String>> command : commands.entrySet()) {
        double time = time(command.getValue());
        if (run >= 0) {
          times.computeIfAbsent(command.getKey(), name -> new double[runs])[run] = time;
        }
      }
    }
    times.values().forEach(Arrays::sort);
    return times;
  }

  private static double time(List<String> command) throws IOException, InterruptedException {
    long begin = System.nanoTime();
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    int exit = process.waitFor();
    if (exit != 0) {
      throw new IllegalStateException(String.join(" ", command) + " ended with " + exit);
    }
    return (System.nanoTime() - begin) / 1e6;
  }

  private static void print(Map<String, double[]> times) {
    double[] base = times.values().iterator().next();
    System.out.printf("%-18s %10s %10s %8s%n", "", "least, ms", "median, ms", "ratio");
    times.forEach(
        (name, each) ->
            System.out.printf(
                Locale.ROOT,
                "%-18s %10.1f %10.1f %8.2f%n",
                name,
                each[0],
                each[each.length / 2],
                each[each.length / 2] / base[base.length / 2]));
  }
}
