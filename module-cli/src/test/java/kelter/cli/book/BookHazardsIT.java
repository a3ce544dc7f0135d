package kelter.cli.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kelter.core.book.JobBook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * What can befall the file of a job book, at the built tool: each is told in a sentence with exit
 * code 1, and no job is lost.
 */
@DisabledOnOs(OS.WINDOWS)
class BookHazardsIT {

  private static final int OLD = 400;
  private static final int PAGE = 4096;

  @TempDir private Path folder;
  private BookTool tool;
  private Path book;

  @BeforeEach
  void makeBook() throws IOException, InterruptedException {
    tool = new BookTool(folder);
    book = Files.createDirectory(folder.resolve("shop")).resolve("book.db");
    book("add", tool.lines("old.jsonl", 0, OLD).toString()).succeeded();
  }

  private BookTool.Said book(String command, String... rest)
      throws IOException, InterruptedException {
    return tool.run(words(command, rest));
  }

  private String[] words(String command, String... rest) {
    List<String> words = new ArrayList<>(List.of(command, "--book", book.toString()));
    words.addAll(List.of(rest));
    return words.toArray(String[]::new);
  }

  private void assertHolds(int jobs) {
    try (JobBook opened = BookPlace.of(book).open()) {
      assertEquals(List.of(), opened.check());
      assertEquals(jobs, opened.size());
    }
  }

  /** A limit on the size of files stands in for the end of the disk (POSIX, ulimit -f). */
  @Test
  void aFullDiskIsToldWithWhatWasAddedBefore() throws IOException, InterruptedException {
    String lines = tool.lines("new.jsonl", OLD, OLD + 9_000).toString();
    List<String> limited = List.of("/bin/sh", "-c", "ulimit -f 6000; exec \"$0\" \"$@\"");

    BookTool.Said added = tool.start(limited, words("add", lines)).end();
    added.refusedFor("the disk is full");
    assertHolds(OLD);
    BookTool.Said imported = tool.start(limited, words("import", lines)).end();

    imported.refusedFor("the disk is full");
    String told = imported.err().replaceAll("(?s).*of which it added (\\d+)\\..*", "$1");
    assertTrue(Integer.parseInt(told) > 0, imported.err());
    assertHolds(OLD + Integer.parseInt(told));
    Path copy = folder.resolve("copy.db");
    book("import", lines).succeeded();
    tool.start(limited, words("backup", copy.toString())).end().refusedFor("copy.db");
    assertFalse(Files.exists(copy));
    assertHolds(OLD + 9_000);
  }

  @Test
  void aFolderThatMayNotBeWrittenIsTold() throws IOException, InterruptedException {
    Path shop = book.getParent();
    Files.setPosixFilePermissions(shop, PosixFilePermissions.fromString("r-xr-xr-x"));
    Files.setPosixFilePermissions(book, PosixFilePermissions.fromString("r--r--r--"));
    try {
      assumeFalse(Files.isWritable(shop), "This user may write everywhere.");
      book("add", tool.lines("one.jsonl", OLD, OLD + 1).toString())
          .refusedFor("may not be written");
      book("list").refusedFor("may not be written");
    } finally {
      Files.setPosixFilePermissions(shop, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
    assertHolds(OLD);
  }

  @Test
  void aBookThatAnotherProgramHoldsIsTold() throws IOException, InterruptedException, SQLException {
    try (var connection = DriverManager.getConnection("jdbc:sqlite:" + book);
        var statement = connection.createStatement()) {
      statement.execute("pragma locking_mode = exclusive");
      statement.execute("begin exclusive");
      statement.execute("update writer set one = one");
      book("add", tool.lines("one.jsonl", OLD, OLD + 1).toString())
          .refusedFor("is being written by another program");
    }
    assertHolds(OLD);
  }

  /** Another page each time, the first one too. */
  @Test
  void aDamagedPageIsToldByTheCheck() throws IOException, InterruptedException {
    byte[] whole = Files.readAllBytes(book);
    for (int page : new int[] {0, 2, whole.length / PAGE / 2, whole.length / PAGE - 1}) {
      byte[] damaged = whole.clone();
      Arrays.fill(damaged, page * PAGE, page * PAGE + 600, (byte) 0x5a);
      Files.write(book, damaged);
      BookTool.Said checked = book("check");

      assertEquals(1, checked.code(), "page " + page);
      String told = checked.out() + checked.err();
      assertTrue(told.contains("is damaged") || told.contains("is no job book"), told);
      assertFalse(told.contains("Exception") || told.contains("defect"), told);
    }
  }

  /** Two vans add two hundred jobs each, fifty in each process. */
  @Test
  void twoVansLoseNothing() throws IOException, InterruptedException {
    for (int from = OLD; from < OLD + 400; from += 100) {
      List<BookTool.Running> vans = new ArrayList<>();
      for (int van = 0; van < 2; van++) {
        int first = from + van * 50;
        Path lines = tool.lines("van-" + first + ".jsonl", first, first + 50);
        vans.add(tool.start(words("add", lines.toString())));
      }
      for (BookTool.Running van : vans) {
        BookTool.Said said = van.end();
        said.succeeded();
        assertTrue(said.out().contains("Added: 50."), said.out());
      }
    }
    assertHolds(OLD + 400);
  }
}
