package kelter.cli.book;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Asks for some entries by their numbers. */
final class PageQueries {

  /** So many entries are asked for at a time at most; as many numbers both databases take. */
  static final int PAGE = 1_000;

  private final Connection connection;

  /** By their text the queries for whole pages, which are costly to prepare. */
  private final Map<String, PreparedStatement> ofPages = new HashMap<>();

  PageQueries(Connection connection) {
    this.connection = connection;
  }

  @FunctionalInterface
  interface RowReader<T> {
    T of(ResultSet row) throws SQLException;
  }

  /** The place of so many numbers in a query. */
  static String marks(int number) {
    return "(" + "?, ".repeat(number - 1) + "?)";
  }

  /**
   * Asks.
   *
   * @param sql a query that ends in {@link #marks} or goes on behind them
   * @param numbers as many as it has marks, up to {@value #PAGE}
   * @param reader makes something of all rows
   */
  <T> T asked(String sql, List<Integer> numbers, RowReader<T> reader) throws SQLException {
    boolean isPage = numbers.size() == PAGE;
    PreparedStatement query = ofPages.get(sql);
    if (query == null) {
      query = connection.prepareStatement(sql);
      if (isPage) {
        ofPages.put(sql, query);
      }
    }
    try {
      for (int i = 0; i < numbers.size(); i++) {
        query.setInt(i + 1, numbers.get(i));
      }
      try (ResultSet rows = query.executeQuery()) {
        return reader.of(rows);
      }
    } finally {
      if (!isPage) {
        query.close();
      }
    }
  }
}
