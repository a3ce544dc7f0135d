package kelter.cli.book;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import kelter.core.problem.InputException;

/**
 * Brings the tables of a book to the form that this program knows: numbered steps, each done once
 * and whole or not at all, never back.
 */
final class Migrations {

  /** By the number of a step its files; the second is another one for each database. */
  private static final List<List<String>> STEPS =
      List.of(List.of("1-entries.sql", "1-search.%s.sql"));

  private final Connection connection;
  private final Dialect dialect;
  private final String book;

  Migrations(Connection connection, Dialect dialect, String book) {
    this.connection = connection;
    this.dialect = dialect;
    this.book = book;
  }

  /** Does all steps that were not done yet. */
  void run() throws SQLException {
    int done = version();
    if (done > STEPS.size()) {
      throw new InputException(
          book,
          "was written by a newer Kelter (form %s; known up to %s)".formatted(done, STEPS.size()),
          "take the newer one");
    }
    if (done < STEPS.size()) {
      toNewest();
    }
  }

  /** Nobody else gets to a step at the same time: the first statement takes the lock. */
  private void toNewest() throws SQLException {
    try (Statement statement = connection.createStatement()) {
      if (dialect == Dialect.POSTGRESQL) {
        statement.execute("select pg_advisory_xact_lock(1801809010)");
      }
      statement.execute("create table if not exists book_form (number integer primary key)");
      // Takes the lock on the file even where the table was there.
      statement.executeUpdate("delete from book_form where number < 0");
      for (int number = version() + 1; number <= STEPS.size(); number++) {
        for (String name : STEPS.get(number - 1)) {
          step(name, statement);
        }
        statement.executeUpdate("insert into book_form (number) values (" + number + ")");
      }
      connection.commit();
    } catch (SQLException | RuntimeException failed) {
      connection.rollback();
      throw failed;
    }
  }

  private void step(String name, Statement statement) throws SQLException {
    String text = text(name.formatted(dialect.word())).replace("[clustered]", dialect.clustered());
    for (String each : text.split(";\\n\\n")) {
      statement.execute(each);
    }
  }

  private static String text(String name) {
    try (InputStream in = Migrations.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The number of the last step that was done; 0 in a new book. */
  private int version() throws SQLException {
    try (ResultSet tables =
        connection.getMetaData().getTables(null, null, "book_form", new String[] {"TABLE"})) {
      if (!tables.next()) {
        return 0;
      }
    }
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery("select coalesce(max(number), 0) from book_form")) {
      row.next();
      return row.getInt(1);
    }
  }
}
