package kelter.cli.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.sql.SQLException;
import java.util.List;
import kelter.core.problem.InputException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A job book on a server, which the tests bring along. */
class PostgresqlBookTest extends BookContract {

  private static EmbeddedPostgres server;
  private static int books;

  @BeforeAll
  static void start() {
    try {
      server = EmbeddedPostgres.start();
    } catch (IOException | RuntimeException cannot) {
      Assumptions.abort("No PostgreSQL runs here: " + cannot);
    }
  }

  @AfterAll
  static void stop() throws IOException {
    if (server != null) {
      server.close();
    }
  }

  @Override
  BookPlace place() throws SQLException {
    String name = "book_" + books++;
    try (var connection = server.getPostgresDatabase().getConnection();
        var statement = connection.createStatement()) {
      statement.execute("create database " + name);
    }
    return new BookPlace(server.getJdbcUrl("postgres", name));
  }

  @Test
  void aServerThatIsNotThereIsToldWithoutThePassword() {
    BookPlace nowhere =
        new BookPlace("jdbc:postgresql://127.0.0.1:1/book?user=van&password=secret");
    InputException told = assertThrows(InputException.class, nowhere::open);

    assertTrue(told.getMessage().contains("cannot be reached"), told.getMessage());
    assertTrue(!told.getMessage().contains("secret"), told.getMessage());
  }

  @Test
  void aLostConnectionIsToldAndNothingIsHalfAdded() throws SQLException {
    BookPlace place = place();
    try (var book = place.openOrMake()) {
      book.add(List.of(Entries.full("one")));
      try (var connection = server.getPostgresDatabase().getConnection();
          var statement = connection.createStatement()) {
        statement.execute(
            "select pg_terminate_backend(pid) from pg_stat_activity where datname like 'book_%'");
      }
      InputException lost =
          assertThrows(InputException.class, () -> book.add(List.of(Entries.full("two"))));
      assertTrue(lost.getMessage().contains("closed the connection"), lost.getMessage());
    }
    try (var book = place.open()) {
      assertEquals(1, book.size());
    }
  }
}
