package kelter.cli.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kelter.core.book.BookEntry;
import kelter.core.book.JobBook;
import kelter.core.problem.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A job book in one file. */
class SqliteBookTest extends BookContract {

  @TempDir private Path folder;

  @Override
  BookPlace place() {
    return BookPlace.of(folder.resolve("book.db"));
  }

  private static void full(BookPlace place, int number) {
    List<BookEntry> entries = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      entries.add(Entries.full("job-" + i));
    }
    try (JobBook book = place.openOrMake()) {
      book.add(entries);
    }
  }

  @Test
  void aBookThatIsNotThereIsToldAndNotMade() {
    InputException missing = assertThrows(InputException.class, () -> place().open());

    assertTrue(missing.getMessage().contains("there is no job book"), missing.getMessage());
    assertFalse(Files.exists(folder.resolve("book.db")));
  }

  @Test
  void whatIsNoBookIsTold() throws IOException {
    Path file = Files.writeString(folder.resolve("book.db"), "Dear diary, ".repeat(400));
    String before = Files.readString(file);
    InputException wrong = assertThrows(InputException.class, () -> place().open());

    assertTrue(wrong.getMessage().contains("is no job book"), wrong.getMessage());
    assertEquals(before, Files.readString(file));
  }

  @Test
  void aDamagedPageIsTold() throws IOException {
    full(place(), 400);
    Path file = folder.resolve("book.db");
    byte[] bytes = Files.readAllBytes(file);
    for (int page = 10; page < bytes.length / 4096; page += 3) {
      Arrays.fill(bytes, page * 4096, page * 4096 + 600, (byte) 0x5a);
    }
    Files.write(file, bytes);
    List<String> told = new ArrayList<>();
    try (JobBook book = place().open()) {
      told.addAll(book.check());
    } catch (InputException damaged) {
      told.add(damaged.getMessage());
    }

    assertFalse(told.isEmpty());
  }

  @Test
  void aRowThatWasChangedByHandIsTold() throws SQLException {
    full(place(), 3);
    try (var connection = DriverManager.getConnection("jdbc:sqlite:" + place().name());
        var statement = connection.createStatement()) {
      statement.executeUpdate("update cause set fault = 'grounded' where entry = 2");
    }
    try (JobBook book = place().open()) {
      assertEquals(List.of("the entry of 'job-1' is not as it was added"), book.check());
    }
  }

  @Test
  void aBackupIsTheBook() {
    full(place(), 20);
    Path copy = folder.resolve("copy.db");
    try (JobBook book = place().open()) {
      book.backUp(copy);
      assertThrows(InputException.class, () -> book.backUp(copy));
      book.add(List.of(Entries.full("later")));
    }
    try (JobBook book = BookPlace.of(copy).open()) {
      assertEquals(20, book.size());
      assertEquals(List.of(), book.check());
    }
  }

  @Test
  void aBookOfANewerProgramIsLeftAlone() throws SQLException {
    full(place(), 1);
    try (var connection = DriverManager.getConnection("jdbc:sqlite:" + place().name());
        var statement = connection.createStatement()) {
      statement.executeUpdate("insert into book_form values (99)");
    }
    InputException newer = assertThrows(InputException.class, () -> place().open());

    assertTrue(newer.getMessage().contains("newer Kelter"), newer.getMessage());
  }

  @Test
  void otherDatabasesAreRefused() {
    for (String address : List.of("jdbc:h2:mem:x", "jdbc:sqlite::memory:", "jdbc:")) {
      assertThrows(InputException.class, () -> new BookPlace(address));
    }
  }
}
