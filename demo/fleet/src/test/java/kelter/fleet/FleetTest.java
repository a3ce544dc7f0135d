package kelter.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryType;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import kelter.core.book.learned.Learned;
import kelter.core.book.learning.BookLearning;
import kelter.core.book.learning.LearningRule;
import kelter.core.file.book.EntryLine;
import kelter.core.file.book.LearnedFile;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonFile;
import kelter.core.file.json.JsonText;
import kelter.core.problem.InputException;
import kelter.core.workshop.Workshop;
import org.apache.spark.api.java.JavaSparkContext;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import scala.Tuple2;

/** What many machines learn and tell is what one machine does. */
class FleetTest {

  private static final int JOBS = Integer.getInteger("fleet.jobs", 200_000);
  private static final int JOBS_IN_DATABASE = 20_000;
  private static final int FILES = 5;
  private static final double TOLERANCE = 1e-9;
  private static final LearningRule RULE =
      new LearningRule(Network.lastDay(), LearningRule.USUALLY_KEPT);
  private static final Path TOOL = Path.of("../../module-cli/target/kelter/bin/kelter");
  private static final Path DEMO_JOBS = Path.of("../jobs");

  @TempDir private Path folder;

  private JavaSparkContext spark;

  @BeforeEach
  void begin() {
    spark =
        new JavaSparkContext(
            Fleet.configuration()
                .setMaster("local[2]")
                .set("spark.ui.enabled", "false")
                .set("spark.driver.host", "localhost")
                .set("spark.driver.bindAddress", "127.0.0.1")
                .set("spark.local.dir", folder.resolve("spark").toString()));
    spark.setLogLevel("WARN");
  }

  @AfterEach
  void end() {
    spark.close();
  }

  /** Writes a network into a folder, spread over files by chance, and learns from it in order. */
  private Learned written(int jobs, Path books) throws IOException {
    Files.createDirectories(books);
    BookLearning learning = BookLearning.begin(Tool.workshop().kinds()::kind, RULE);
    List<BufferedWriter> files = new ArrayList<>();
    try {
      for (int i = 0; i < FILES; i++) {
        files.add(Files.newBufferedWriter(books.resolve("book-" + i + ".jsonl")));
      }
      new Network(jobs, 22)
          .forEachRemaining(
              entry -> {
                learning.read(entry);
                write(files.get(Math.floorMod(entry.job().hashCode() * 31, FILES)), entry);
              });
    } finally {
      for (BufferedWriter each : files) {
        each.close();
      }
    }
    return learning.learned();
  }

  private static void write(BufferedWriter file, kelter.core.book.BookEntry entry) {
    try {
      file.write(EntryLine.write(entry));
      file.write('\n');
    } catch (IOException full) {
      throw new UncheckedIOException(full);
    }
  }

  /** The greatest relative difference of any figure; the same figures must be there. */
  private static double apart(Learned one, Learned other) {
    Map<String, Double> figures = Figures.of(one);
    Map<String, Double> others = Figures.of(other);
    assertEquals(figures.keySet(), others.keySet());
    double greatest = 0;
    for (Map.Entry<String, Double> each : figures.entrySet()) {
      double here = each.getValue();
      double there = others.get(each.getKey());
      if (Double.compare(here, there) != 0) {
        double difference =
            Math.abs(here - there) / Math.max(Math.abs(here), Math.abs(there));
        assertTrue(difference <= TOLERANCE, each.getKey() + ": " + here + ", " + there);
        greatest = Math.max(greatest, difference);
      }
    }
    return greatest;
  }

  private static long peakMegabytes() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(pool -> pool.getType() == MemoryType.HEAP)
            .mapToLong(pool -> pool.getPeakUsage().getUsed())
            .sum()
        >> 20;
  }

  @Test
  void partsOfABookTeachWhatTheBookTeaches() throws IOException {
    Path books = folder.resolve("books");
    long begun = System.nanoTime();
    Learned alone = written(JOBS, books);
    System.out.printf(
        Locale.ROOT,
        "%d jobs, written and learned from by one thread alone in %.1f s; %d figures%n",
        JOBS,
        (System.nanoTime() - begun) / 1e9,
        Figures.of(alone).size());
    assertEquals(JOBS, alone.jobs());
    for (int parts : new int[] {1, 2, 7}) {
      begun = System.nanoTime();
      FleetLearning all = FleetLearning.of(Line.in(spark, books.toString()), RULE, parts);
      double seconds = (System.nanoTime() - begun) / 1e9;
      assertEquals(List.of(), all.told());
      System.out.printf(
          Locale.ROOT,
          "%d parts: %.1f s, greatest relative difference %.1e, heap up to %d MB%n",
          parts,
          seconds,
          apart(alone, all.learned()),
          peakMegabytes());
    }
  }
}
