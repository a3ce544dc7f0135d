package kelter.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertIterableEquals;
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
import kelter.core.book.BookEntry;
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
            Fleet.configuration().setMaster("local[2]").set("spark.ui.enabled", "false"));
    spark.setLogLevel("WARN");
  }

  @AfterEach
  void end() {
    spark.close();
  }

  /** Writes a network into a folder, spread over files by chance, and learns from it in order. */
  private static Learned written(int jobs, Path books) throws IOException {
    return written(jobs, books, FILES);
  }

  private static Learned written(int jobs, Path books, int number) throws IOException {
    Files.createDirectories(books);
    BookLearning learning = BookLearning.begin(Tool.workshop().kinds()::kind, RULE);
    List<BufferedWriter> files = new ArrayList<>();
    try {
      for (int i = 0; i < number; i++) {
        files.add(Files.newBufferedWriter(books.resolve("book-" + i + ".jsonl")));
      }
      new Network(jobs, 22)
          .forEachRemaining(
              entry -> {
                learning.read(entry);
                write(files.get(Math.floorMod(entry.job().hashCode() * 31, number)), entry);
              });
    } finally {
      for (BufferedWriter each : files) {
        each.close();
      }
    }
    return learning.learned();
  }

  private static void write(BufferedWriter file, BookEntry entry) {
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
        double difference = Math.abs(here - there) / Math.max(Math.abs(here), Math.abs(there));
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

  /**
   * By the tool: imported into SQLite and learned from there; it writes figures to five digits. A
   * book takes jobs of one day in the order in which they were entered, so that they are entered in
   * the order of their ids here.
   */
  @Test
  void theToolLearnsTheSameFromItsDatabase() throws IOException, InterruptedException {
    assumeTrue(Files.exists(TOOL), "no built tool in " + TOOL + ": its database is not compared");
    Path books = folder.resolve("books");
    written(JOBS_IN_DATABASE, books, 1);
    String book = folder.resolve("book.db").toString();
    Path learned = folder.resolve("learned.json");
    long begun = System.nanoTime();
    tool("book", "import", books.resolve("book-0.jsonl").toString(), "--book", book);
    tool("book", "learn", "--book", book, "-o", learned.toString());
    Learned byTool = LearnedFile.read(learned);
    LearningRule rule = new LearningRule(byTool.asOf(), byTool.keptPerYear());
    FleetLearning all = FleetLearning.of(Line.in(spark, books.toString()), rule, 3);
    System.out.printf(
        Locale.ROOT,
        "%d jobs, imported into SQLite, learned from there and here in %.1f s%n",
        all.learned().jobs(),
        (System.nanoTime() - begun) / 1e9);

    assertEquals(JOBS_IN_DATABASE, all.learned().jobs());
    assertIterableEquals(
        Files.readAllLines(learned), LearnedFile.text(all.learned()).lines().toList());
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    }
  }

  private void tool(String... words) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(TOOL.toString()));
    command.addAll(List.of(words));
    Path said = folder.resolve("said.txt");
    Process tool =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile()).start();
    boolean isDone = tool.waitFor(2, TimeUnit.MINUTES);
    if (!isDone) {
      tool.destroyForcibly();
    }
    assertTrue(isDone && tool.exitValue() == 0, Files.readString(said));
  }

  @Test
  void whatCannotBeUsedIsToldWithItsPlaceAndTheRestIsLearnedFrom() throws IOException {
    Path books = folder.resolve("books");
    Learned sound = written(300, books);
    List<String> lines = Files.readAllLines(books.resolve("book-0.jsonl"));
    Path twice = books.resolve("twice.jsonl");
    Files.write(twice, List.of(lines.get(0), lines.get(1)));
    apart(sound, FleetLearning.of(Line.in(spark, books.toString()), RULE, 2).learned());

    Files.writeString(twice, "{\"format\": 7}\n\nno JSON\n");
    Files.write(
        books.resolve("latin.jsonl"),
        "{\"job\": \"m\u00fchle\"}\n".getBytes(StandardCharsets.ISO_8859_1));
    Files.writeString(
        books.resolve("other.jsonl"),
        lines.get(0).replace("it does not do", "nobody knows") + "\n");
    FleetLearning all = FleetLearning.of(Line.in(spark, books.toString()), RULE, 2);

    assertEquals(299, all.learned().jobs());
    assertEquals(4, all.refused());
    String told = String.join("\n", all.told());
    assertTrue(told.contains("twice.jsonl, byte 0: "), told);
    assertTrue(told.contains("twice.jsonl, byte 15: "), told);
    assertTrue(told.contains("latin.jsonl, byte 0: is not UTF-8 text"), told);
    assertTrue(told.contains("is told in different ways"), told);
  }

  /**
   * Every hundredth job begins a chain of call-backs of its own; the least job is never the first.
   */
  @Test
  void longChainsAreFollowedToTheirEnd() {
    List<Tuple2<String, String>> ties = new ArrayList<>();
    Map<String, String> least = new HashMap<>();
    for (int i = 0; i < 1_000; i++) {
      String job = scattered(i);
      String chain = "chain " + i / 100;
      ties.add(new Tuple2<>("job " + job, job));
      if (i % 100 > 0) {
        ties.add(new Tuple2<>("job " + scattered(i - 1), job));
      }
      least.merge(chain, job, (one, other) -> one.compareTo(other) < 0 ? one : other);
    }
    Map<String, String> found = Groups.of(spark.parallelizePairs(ties, 3)).collectAsMap();

    assertEquals(990, found.size());
    for (int i = 0; i < 1_000; i++) {
      String job = scattered(i);
      String first = least.get("chain " + i / 100);
      assertEquals(first, found.getOrDefault(job, job), job);
    }
  }

  /** 617 and 1009 have no common divisor, so that each number is met once. */
  private static String scattered(int number) {
    return "j-%04d".formatted(number * 617 % 1009);
  }

  @Test
  void jobsAreDiagnosedAsByOneWorkshop() throws IOException {
    Path jobs = folder.resolve("jobs.jsonl");
    Map<String, Double> expected = new HashMap<>();
    List<String> lines = new ArrayList<>();
    Workshop workshop = Tool.workshop();
    for (Path each : files(DEMO_JOBS)) {
      lines.add(JsonText.line(JsonFile.read(each, 1 << 20, "a job file", "")));
      var job = workshop.read(each);
      workshop
          .open(job)
          .diagnosis()
          .faults()
          .forEach(
              fault -> expected.put(job.id() + " " + fault.fault().key(), fault.probability()));
    }
    lines.add("{\"format\": \"kelter-job/2\"}");
    Files.write(jobs, lines);
    List<String> results =
        FleetDiagnosis.of(Line.in(spark, jobs.toString()), Optional.empty(), 3).collect();

    assertEquals(lines.size(), results.size());
    assertEquals(
        1, results.stream().filter(each -> each.contains("jobs.jsonl, byte ")).count(), "mistakes");
    assertEquals(expected, probabilities(results));
  }

  private static Map<String, Double> probabilities(List<String> results) {
    Map<String, Double> found = new HashMap<>();
    for (String line : results) {
      Json.Obj result = (Json.Obj) JsonText.read(line.getBytes(StandardCharsets.UTF_8), "", "");
      if (result.members().get("faults") instanceof Json.Arr faults) {
        String job = ((Json.Str) result.members().get("job")).text();
        for (Json each : faults.items()) {
          Map<String, Json> fault = ((Json.Obj) each).members();
          found.put(
              job + " " + ((Json.Str) fault.get("fault")).text(),
              Double.valueOf(((Json.Num) fault.get("probability")).spelling()));
        }
      }
    }
    return found;
  }

  @Test
  void whatWasLearnedIsDiagnosedWith() throws IOException {
    Path books = folder.resolve("books");
    Path learned = folder.resolve("learned.json");
    written(3_000, books);
    Path job = folder.resolve("job.jsonl");
    Files.writeString(
        job,
        JsonText.line(
            JsonFile.read(DEMO_JOBS.resolve("tumble-dryer.json"), 1 << 20, "a job file", "")));
    LocalDate today = Network.lastDay();
    assertEquals(
        0,
        Fleet.learn(
            spark,
            Orders.of(new String[] {"learn", books.toString(), learned.toString()}, today, 2)));
    String plain = diagnosed(job, "plain");
    assertNotEquals(plain, diagnosed(job, "taught", "--learned=" + learned));
    assertTrue(plain.contains("\"job\":"), plain);
  }

  private String diagnosed(Path job, String to, String... options) throws IOException {
    Path results = folder.resolve(to);
    List<String> words = new ArrayList<>(List.of("diagnose", job.toString(), results.toString()));
    words.addAll(List.of(options));
    Orders orders = Orders.of(words.toArray(String[]::new), Network.lastDay(), 1);
    assertEquals(0, Fleet.diagnose(spark, orders));
    return Files.readString(results.resolve("part-00000"));
  }

  @Test
  void allMistakesOfACommandLineAreTold() {
    String[] words = {
      "learn", "books", "--as-of=yesterday", "--kept-per-year=2", "--parts=0", "--colour=red"
    };
    InputException refused =
        assertThrows(InputException.class, () -> Orders.of(words, LocalDate.of(2026, 6, 1), 2));

    assertEquals(5, refused.problems().size(), refused.getMessage());
    assertTrue(refused.getMessage().contains("'yesterday' is no day"), refused.getMessage());
  }
}
