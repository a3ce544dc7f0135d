package kelter.cli.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import kelter.cli.wiring.Found;
import kelter.core.shop.Shop;
import kelter.core.workshop.Workshop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Tries hostile inputs for some minutes, one after the other, and tells what went wrong. The system
 * properties {@code fuzz} (minutes), {@code fuzz.seed}, {@code fuzz.clock} and {@code fuzz.only}
 * (FAMILY or FAMILY:NUMBER) say what; the same ones give the same inputs.
 */
class FuzzRun {

  /** Stands for the folder of the plugin. */
  static final String PLUGINS = "@PLUGINS@";

  private static final Duration MOST = Duration.ofSeconds(2);
  private static final Duration ENDLESS = Duration.ofSeconds(30);

  /** Each leaves a hook behind that runs when the process ends. */
  private static final int MOST_PLUGINS = 1500;

  private static final String SLOW = "takes ";
  private static final int MOST_KEPT = 200;

  private final PrintStream out = System.out;
  private final Map<String, Integer> tried = new TreeMap<>();
  private final Map<String, Integer> done = new TreeMap<>();
  private final Map<String, Double> slowest = new TreeMap<>();
  private final Map<String, Integer> wrong = new TreeMap<>();
  private final List<String> told = new ArrayList<>();

  @TempDir private Path folder;
  private Path plugins;
  private Clock clock;
  private long seed;

  @Test
  void nothingHostileDoesHarm() throws IOException {
    double minutes = Double.parseDouble(System.getProperty("fuzz", "1"));
    seed = Long.getLong("fuzz.seed", System.nanoTime());
    String at = System.getProperty("fuzz.clock", Instant.now().toString());
    clock = Clock.fixed(Instant.parse(at), ZoneOffset.UTC);
    String only = System.getProperty("fuzz.only", "");
    out.printf("fuzzing: -Dfuzz.seed=%d -Dfuzz.clock=%s%n", seed, at);
    plugins = Files.createDirectories(folder.resolve("plugins"));
    HostilePlugin.into(plugins.resolve("hostile.jar"));
    Path demo = Path.of(System.getProperty("basedir"), "..", "demo");
    Map<String, Family> families =
        new Families(
                Seeds.of(demo), Workshop.of(Found.usual().modules(), Shop.UNKNOWN).calculations())
            .all();
    if (only.contains(":")) {
      String family = only.substring(0, only.indexOf(':'));
      attempt(family, families.get(family), Long.parseLong(only.substring(only.indexOf(':') + 1)));
    } else {
      families.keySet().removeIf(family -> !only.isEmpty() && !only.equals(family));
      round(families, System.nanoTime() + (long) (minutes * 60e9));
    }
    table();
    assertEquals(List.of(), told);
  }

  private void round(Map<String, Family> families, long end) throws IOException {
    for (long number = 0; System.nanoTime() < end; number++) {
      for (Map.Entry<String, Family> family : families.entrySet()) {
        if (!family.getKey().equals("plugins") || number < MOST_PLUGINS) {
          attempt(family.getKey(), family.getValue(), number);
        }
      }
    }
  }

  private void table() {
    out.printf("%-14s %8s %8s %8s %9s%n", "family", "tried", "exit 0", "wrong", "slowest");
    for (String family : tried.keySet()) {
      out.printf(
          "%-14s %8d %8d %8d %7.2f s%n",
          family,
          tried.get(family),
          done.getOrDefault(family, 0),
          wrong.getOrDefault(family, 0),
          slowest.getOrDefault(family, 0.0));
    }
  }

  private void attempt(String name, Family family, long number) throws IOException {
    Attempt attempt = family.draw(Chance.of(seed, name, number));
    String fault = fault(name, attempt);
    // Beside other work a run may be slow that is not.
    for (int again = 1; again < 3 && fault.startsWith(SLOW); again++) {
      fault = fault(name, attempt);
    }
    tried.merge(name, 1, Integer::sum);
    if (!fault.isEmpty()) {
      wrong.merge(name, 1, Integer::sum);
      tell(name + ":" + number, attempt, fault);
    }
  }

  private void tell(String which, Attempt attempt, String fault) throws IOException {
    out.printf("WRONG -Dfuzz.only='%s' %s%n  %s%n", which, attempt.arguments(), fault);
    if (told.size() < MOST_KEPT) {
      told.add(which + ": " + fault.lines().findFirst().orElse(""));
      Path kept =
          Path.of(System.getProperty("basedir"), "target", "fuzz", "wrong")
              .resolve(which.replaceAll("\\W", "-"));
      Files.createDirectories(kept);
      for (Map.Entry<String, byte[]> file : attempt.files().entrySet()) {
        Files.write(kept.resolve(file.getKey()), file.getValue());
      }
    }
  }

  /** What is wrong with an attempt, empty if nothing. */
  private String fault(String family, Attempt attempt) throws IOException {
    Path here = Files.createTempDirectory(folder, "attempt");
    try {
      for (Map.Entry<String, byte[]> file : attempt.files().entrySet()) {
        Files.write(here.resolve(file.getKey()), file.getValue());
      }
      byte[] plugin = attempt.files().get(HostilePlugin.SEED);
      if (plugin != null) {
        System.setProperty(HostilePlugin.SEED, new String(plugin));
      }
      return watched(family, attempt, arguments(attempt, here));
    } finally {
      System.setOut(out);
      endWatches();
      delete(here);
    }
  }

  private List<String> arguments(Attempt attempt, Path here) {
    return attempt.arguments().stream()
        .map(word -> word.replace(Attempt.FOLDER, here + "/").replace(PLUGINS, plugins.toString()))
        .toList();
  }

  private String watched(String family, Attempt attempt, List<String> arguments) {
    FutureTask<Trial> task = new FutureTask<>(() -> Trial.run(clock, arguments));
    Thread thread = new Thread(task, "attempt");
    thread.setDaemon(true);
    long begun = System.nanoTime();
    Duration worked = worked();
    thread.start();
    try {
      Trial trial = task.get(ENDLESS.toMillis(), TimeUnit.MILLISECONDS);
      double seconds = (System.nanoTime() - begun) / 1e9;
      if (seconds > MOST.toSeconds() && worked().minus(worked).compareTo(MOST) > 0) {
        return SLOW + "%.1f s".formatted(seconds);
      }
      slowest.merge(family, seconds, Math::max);
      if (trial.code() == 0) {
        done.merge(family, 1, Integer::sum);
      }
      return trial.wrong(attempt.mayBeUsage(), attempt.given());
    } catch (TimeoutException endless) {
      return "does not end within " + ENDLESS + ", at " + List.of(thread.getStackTrace());
    } catch (InterruptedException | java.util.concurrent.ExecutionException failed) {
      throw new IllegalStateException(failed);
    }
  }

  /** How long processors worked for this process; a machine with other work may be as slow. */
  private static Duration worked() {
    return ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ofDays(1));
  }

  /** The watches over plugins, each of which would last as long as the process. */
  private static void endWatches() {
    Thread[] threads = new Thread[Thread.activeCount() + 50];
    int count = Thread.enumerate(threads);
    for (int i = 0; i < count; i++) {
      if (threads[i].getName().equals("plugin watch")) {
        threads[i].interrupt();
      }
    }
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
