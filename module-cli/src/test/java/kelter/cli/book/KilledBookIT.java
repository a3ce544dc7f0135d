package kelter.cli.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import kelter.core.book.JobBook;
import kelter.core.file.book.LearnedFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * Processes that write a job book or what it taught, killed (SIGKILL) at random moments: the book
 * opens and is sound, and a job is there whole or not at all. The usual build kills some, {@code
 * -Dkills=100} a hundred.
 */
@DisabledOnOs(OS.WINDOWS)
class KilledBookIT {

  private static final int KILLS = Integer.getInteger("kills", 8);
  private static final long SEED = Long.getLong("kills.seed", 23);

  /** Jobs that were in the book before. */
  private static final int OLD = 400;

  /** Jobs with those that are added or imported. */
  private static final int ALL = OLD + 3_000;

  /** So many jobs are imported in one transaction. */
  private static final int BATCH = 1_000;

  @TempDir private Path folder;
  private BookTool tool;
  private Random chance;
  private Path lines;
  private Path old;
  private Path grown;
  private Path oldLearned;

  /** How long a process takes that is not killed, ns. */
  private long lasting;

  private int inTime;

  @BeforeEach
  void makeBooks() throws IOException, InterruptedException {
    tool = new BookTool(folder);
    chance = new Random(SEED);
    lines = tool.lines("new.jsonl", OLD, ALL);
    old = folder.resolve("old.db");
    add(old, tool.lines("old.jsonl", 0, OLD)).end().succeeded();
    grown = Files.copy(old, folder.resolve("grown.db"));
    long start = System.nanoTime();
    add(grown, lines).end().succeeded();
    lasting = System.nanoTime() - start;
    oldLearned = folder.resolve("old-learned.json");
    learn(old, oldLearned).end().succeeded();
  }

  private BookTool.Running add(Path book, Path file) throws IOException {
    return tool.start("add", "--book", book.toString(), file.toString());
  }

  private BookTool.Running learn(Path book, Path to) throws IOException {
    return tool.start("learn", "--book", book.toString(), "-o", to.toString());
  }

  @Test
  void whatWasToldIsThereAndNothingIsHalf() throws IOException, InterruptedException {
    for (int kill = 0; kill < KILLS; kill++) {
      String what = "seed " + SEED + ", kill " + kill;
      switch (kill % 4) {
        case 0 -> killAdding(Files.copy(old, folder.resolve(kill + ".db")), OLD, what);
        case 1 -> killImporting(Files.copy(old, folder.resolve(kill + ".db")), what);
        case 2 -> killLearning(Files.copy(oldLearned, folder.resolve(kill + ".json")), what);
        // The book is made first, by all steps of the migration.
        default -> killAdding(folder.resolve(kill + ".db"), 0, what);
      }
    }
    assertTrue(2 * inTime > KILLS, inTime + " of " + KILLS + " were killed before they ended");
  }

  private void killAdding(Path book, int before, String what)
      throws IOException, InterruptedException {
    boolean told = kill(add(book, lines)).contains("Added: " + (ALL - OLD));
    Set<String> found = jobs(book, what);

    assertTrue(Set.of(jobs(OLD - before, OLD), jobs(OLD - before, ALL)).contains(found), what);
    assertTrue(!told || found.size() == ALL - OLD + before, what);
    add(book, lines).end().succeeded();
    assertEquals(jobs(OLD - before, ALL), jobs(book, what), what);
  }

  private void killImporting(Path book, String what) throws IOException, InterruptedException {
    BookTool.Running running = tool.start("import", "--book", book.toString(), lines.toString());
    boolean told = kill(running).contains("Added: " + (ALL - OLD));
    Set<String> found = jobs(book, what);

    assertEquals(0, (found.size() - OLD) % BATCH, what);
    assertEquals(jobs(0, found.size()), found, what);
    assertTrue(!told || found.size() == ALL, what);
    BookTool.Said again = tool.run("import", "--book", book.toString(), lines.toString());
    again.succeeded();
    assertTrue(again.out().contains("already: " + (found.size() - OLD) + "."), again.out());
    assertEquals(jobs(0, ALL), jobs(book, what), what);
  }

  private void killLearning(Path learned, String what) throws IOException, InterruptedException {
    boolean told = kill(learn(grown, learned)).contains("Learned from " + ALL);
    String found = Files.readString(learned);
    int from = LearnedFile.read(learned).jobs();

    assertTrue(from == ALL || found.equals(Files.readString(oldLearned)), what);
    assertTrue(!told || from == ALL, what);
    jobs(grown, what);
    learn(grown, learned).end().succeeded();
    assertEquals(ALL, LearnedFile.read(learned).jobs(), what);
  }

  /** Kills a process somewhere in the time that such a one takes, and tells what it said. */
  private String kill(BookTool.Running running) throws IOException, InterruptedException {
    TimeUnit.NANOSECONDS.sleep((long) (chance.nextDouble() * lasting));
    inTime += running.process().isAlive() ? 1 : 0;
    running.kill();
    return Files.readString(running.out());
  }

  /** The jobs in a book, which must be sound. */
  private static Set<String> jobs(Path file, String what) {
    Set<String> jobs = new TreeSet<>();
    try (JobBook book = BookPlace.of(file).openOrMake()) {
      assertEquals(List.of(), book.check(), what);
      book.each(entry -> jobs.add(entry.job()));
      assertEquals(jobs.size(), book.size(), what);
    }
    return jobs;
  }

  private static Set<String> jobs(int from, int to) {
    return IntStream.range(from, to)
        .mapToObj(i -> "job-" + i)
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
