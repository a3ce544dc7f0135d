package kelter.cli.book;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.Driver;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Properties;
import java.util.ServiceLoader;
import kelter.core.book.JobBook;
import kelter.core.problem.InputException;
import kelter.core.problem.Required;

/**
 * Where a book is.
 *
 * @param name a file, or the address of a PostgreSQL database, {@code jdbc:postgresql:...}
 */
public record BookPlace(String name) {

  private static final String SERVER = "jdbc:postgresql:";
  private static final String FILE = "jdbc:sqlite:";

  /** So long another writer is waited for, milliseconds. */
  private static final int PATIENCE = 10_000;

  /** What is set for each connection to a file; WAL lets others read while one writes. */
  private static final List<String> SETTINGS =
      List.of(
          "pragma busy_timeout = " + PATIENCE,
          "pragma journal_mode = wal",
          "pragma synchronous = full",
          "pragma foreign_keys = on",
          "pragma cache_size = -65536",
          "pragma trusted_schema = off");

  /**
   * Checks the address.
   *
   * @throws InputException if it is that of another kind of database
   */
  public BookPlace {
    Required.value(name, "place of a book");
    if (name.startsWith("jdbc:") && !name.startsWith(SERVER)) {
      throw new InputException(
          name, "is no place for a book", "name a file, or " + SERVER + "//HOST/DATABASE");
    }
  }

  /**
   * A file.
   *
   * @param file where it is
   * @return the place
   */
  public static BookPlace of(Path file) {
    return new BookPlace(file.toString());
  }

  private boolean isServer() {
    return name.startsWith(SERVER);
  }

  /**
   * Opens the book, and makes it where there is none.
   *
   * @return the book
   * @throws InputException if it cannot be opened
   */
  public JobBook openOrMake() {
    Dialect dialect = isServer() ? Dialect.POSTGRESQL : Dialect.SQLITE;
    try {
      return new JdbcBook(shown(), dialect, connection(dialect));
    } catch (SQLException fault) {
      throw BookFault.of(shown(), dialect, fault);
    }
  }

  /**
   * Opens a book that is there.
   *
   * @return the book
   * @throws InputException if there is none, or it cannot be opened
   */
  public JobBook open() {
    if (!isServer() && !Files.exists(Path.of(name))) {
      throw new InputException(
          name, "there is no job book", "'kelter book add' or 'kelter book import' makes one");
    }
    return openOrMake();
  }

  /** The address without user and password, which no message should show. */
  private String shown() {
    int query = name.indexOf('?');
    return isServer() && query >= 0 ? name.substring(0, query) : name;
  }

  private Connection connection(Dialect dialect) throws SQLException {
    String address = isServer() ? name : FILE + Path.of(name).toAbsolutePath();
    Connection connection = driver(address).connect(address, new Properties());
    try {
      if (dialect == Dialect.SQLITE) {
        try (Statement statement = connection.createStatement()) {
          for (String setting : SETTINGS) {
            statement.execute(setting);
          }
        }
      }
      connection.setAutoCommit(false);
      new Migrations(connection, dialect, shown()).run();
      connection.commit();
      return connection;
    } catch (SQLException | RuntimeException failed) {
      connection.close();
      throw failed;
    }
  }

  /** The drivers of the program, whichever of them takes such an address. */
  private static Driver driver(String address) throws SQLException {
    for (Driver driver : ServiceLoader.load(Driver.class, BookPlace.class.getClassLoader())) {
      if (driver.acceptsURL(address)) {
        return driver;
      }
    }
    throw new SQLException("no driver for " + address.substring(0, address.indexOf(':', 5)));
  }
}
