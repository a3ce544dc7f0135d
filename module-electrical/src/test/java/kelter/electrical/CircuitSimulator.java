package kelter.electrical;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** Where the figures of the netlists come from: recorded, or run now. */
enum CircuitSimulator {
  /** As recorded beside the netlists. */
  RECORDED,
  /** From ngspice on this machine; where it is not installed, the test says so and is skipped. */
  LIVE;

  private static final String PROGRAM = "ngspice";

  private static final Path FOLDER = Path.of("src", "test", "resources", "circuits");

  private static final Map<String, Map<String, Double>> RUNS = new HashMap<>();

  /**
   * A figure of a netlist.
   *
   * @param netlist the name of the file
   * @param figure the name of the figure in {@code results.csv}
   */
  double result(String netlist, String figure) {
    Row row =
        rows().stream()
            .filter(r -> r.netlist.equals(netlist) && r.figure.equals(figure))
            .findFirst()
            .orElseThrow(() -> new AssertionError(netlist + " " + figure));
    return this == RECORDED ? row.value : row.live();
  }

  /**
   * A line of {@code results.csv}.
   *
   * @param netlist the name of the file
   * @param figure the name of the figure
   * @param printedAs the name under which ngspice prints it
   * @param value the recorded value
   */
  record Row(String netlist, String figure, String printedAs, double value) {

    double live() {
      Double value = run(netlist).get(printedAs);
      assertTrue(value != null, netlist + " prints no " + printedAs);
      return value;
    }
  }

  static List<Row> rows() {
    try {
      return Files.readAllLines(FOLDER.resolve("results.csv")).stream()
          .skip(1)
          .map(line -> line.split(","))
          .map(cells -> new Row(cells[0], cells[1], cells[2], Double.parseDouble(cells[3])))
          .toList();
    } catch (IOException unreadable) {
      throw new AssertionError(unreadable);
    }
  }

  private static boolean isInstalled() {
    return Stream.of(System.getenv().getOrDefault("PATH", "").split(":"))
        .anyMatch(folder -> Files.isExecutable(Path.of(folder, PROGRAM)));
  }

  private static Map<String, Double> run(String netlist) {
    assumeTrue(
        isInstalled(),
        PROGRAM
            + " is not installed here (Debian package ngspice): only the recorded results"
            + " were held against the laws");
    synchronized (RUNS) {
      return RUNS.computeIfAbsent(netlist, CircuitSimulator::started);
    }
  }

  /** Its exit code tells nothing: it is 1 where all analyses stand in a control block. */
  private static Map<String, Double> started(String netlist) {
    try {
      Process process =
          new ProcessBuilder(PROGRAM, "-b", FOLDER.resolve(netlist).toString())
              .redirectErrorStream(true)
              .start();
      process.getOutputStream().close();
      String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertTrue(process.waitFor(1, TimeUnit.MINUTES), netlist + " takes more than a minute");
      return figures(text);
    } catch (IOException | InterruptedException failed) {
      throw new AssertionError(netlist, failed);
    }
  }

  /** Lines such as {@code mag(i(v1)) = 8.67e-01} or {@code mean = 4.4e-01 from= 0.2 to= 0.22}. */
  private static Map<String, Double> figures(String text) {
    Map<String, Double> all = new HashMap<>();
    for (String line : text.lines().toList()) {
      String[] words = line.strip().split("\\s+");
      if (words.length >= 3 && words[1].equals("=")) {
        try {
          all.put(words[0], Double.parseDouble(words[2]));
        } catch (NumberFormatException aMessage) {
          continue;
        }
      }
    }
    return all;
  }
}
