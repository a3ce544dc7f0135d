package kelter.cli.hostile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Inputs in order, of the demo.
 *
 * @param jobs job files
 * @param shop the shop profile
 * @param logs logs of instruments
 */
record Seeds(List<String> jobs, String shop, List<String> logs) {

  private static final int ROWS = 150;

  static Seeds of(Path demo) throws IOException {
    List<String> jobs = new ArrayList<>();
    try (Stream<Path> files = Files.list(demo.resolve("jobs"))) {
      for (Path file : files.sorted().toList()) {
        jobs.add(Files.readString(file));
      }
    }
    String log = Files.readString(demo.resolve("logs/boiler-heating.csv"));
    return new Seeds(jobs, Files.readString(demo.resolve("logs/kelter-shop.json")), logs(log));
  }

  /** The log of the demo, cut short, and the same as other instruments write it. */
  private static List<String> logs(String log) {
    String head = String.join("\n", log.lines().limit(ROWS).toList()) + "\n";
    StringBuilder american = new StringBuilder("Timestamp,Voltage [V],Power [kW],Temp [°F]\r\n");
    StringBuilder bare = new StringBuilder("s\tV\tohm\n");
    for (int row = 0; row < ROWS; row++) {
      american
          .append("10/23/2026 2:%02d:%02d PM,".formatted(row / 60, row % 60))
          .append(
              "23%d.%d,%s,%d\r\n"
                  .formatted(row % 3, row % 7, row < 40 ? "0" : "1.98", 66 + row / 9));
      bare.append("%d\t12.0%d\t%s\n".formatted(row, row % 4, row == 77 ? "OL" : "26.4"));
    }
    return List.of(head, head, american.toString(), bare.toString());
  }

  List<String> all() {
    List<String> all = new ArrayList<>(jobs);
    all.add(shop);
    all.addAll(logs);
    return all;
  }
}
