package kelter.cli.book;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import kelter.core.book.BookEntry;
import kelter.core.book.BookedMachine;
import kelter.core.book.ConfirmedCause;
import kelter.core.book.JobBook;
import kelter.core.book.Outcome;
import kelter.core.book.ReadingTaken;
import kelter.core.book.WorkDone;
import kelter.core.job.Market;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.quantity.Money;
import kelter.core.vocabulary.CalendarDate;

/** Makes entries of their rows. */
final class EntryLoader {

  /** So many entries are loaded at a time at most; as many numbers both databases take. */
  static final int PAGE = 1_000;

  private final Connection connection;

  /** By their text the queries for pages, which are costly to prepare; they go with the book. */
  private final Map<String, PreparedStatement> ofPages = new HashMap<>();

  EntryLoader(Connection connection) {
    this.connection = connection;
  }

  /** An entry and what it was told by when it was added. */
  record Stored(BookEntry entry, String digest) {}

  @FunctionalInterface
  private interface RowReader<T> {
    T of(ResultSet row) throws SQLException;
  }

  /** The columns of an entry that teach, and nothing in the place of the others. */
  private static final String LESSON =
      "number, job, '', null, closed, kind, maker, model, serial, age, null, null, null, '', '',"
          + " outcome, null, call_back_of";

  /** Parts ids that are read as one text, which is costly to fetch; no id has a blank. */
  private static final String BLANK = " ";

  /** What was made of such texts, most of which come again and again. */
  private final Map<String, Map.Entry<String, Answer>> knownAnswers = new HashMap<>();

  private final Map<String, ConfirmedCause> knownCauses = new HashMap<>();
  private final Map<String, String[]> knownWords = new HashMap<>();

  /** The entries of some numbers, in their order; up to {@value #PAGE}. */
  List<Stored> load(List<Integer> numbers) throws SQLException {
    return numbers.isEmpty() ? List.of() : load(numbers, EntryWriter.ENTRY_COLUMNS, parts(numbers));
  }

  /** The same entries with what they teach alone ({@link JobBook#lessons}). */
  List<Stored> lessons(List<Integer> numbers) throws SQLException {
    return numbers.isEmpty() ? List.of() : load(numbers, LESSON, taught(numbers));
  }

  private Parts parts(List<Integer> numbers) throws SQLException {
    return new Parts(
        rows("symptom", "*", numbers, row -> Map.entry(row.getString(3), answer(row.getString(4)))),
        rows("displayed", "*", numbers, row -> row.getString(3)),
        rows(
            "cause",
            "*",
            numbers,
            row -> new ConfirmedCause(row.getString(3), row.getString(4), row.getString(5))),
        rows("work", "*", numbers, EntryLoader::work),
        rows("reading", "*", numbers, EntryLoader::reading),
        rows("prediction", "*", numbers, EntryLoader::prediction));
  }

  private Parts taught(List<Integer> numbers) throws SQLException {
    return new Parts(
        rows("symptom", "entry, symptom || ' ' || answer", numbers, this::knownAnswer),
        Map.of(),
        rows(
            "cause",
            "entry, component || ' ' || kind || ' ' || fault",
            numbers,
            row -> knownCauses.computeIfAbsent(row.getString(2), EntryLoader::cause)),
        rows(
            "work", "entry, component || ' ' || remedy, minutes, cured", numbers, this::taughtWork),
        rows(
            "reading",
            "entry, component || ' ' || observable || ' ' || instrument, minutes, misled",
            numbers,
            this::taughtReading),
        rows("prediction", "*", numbers, EntryLoader::prediction));
  }

  private String[] words(ResultSet row) throws SQLException {
    return knownWords.computeIfAbsent(row.getString(2), text -> text.split(BLANK, -1));
  }

  private Map.Entry<String, Answer> knownAnswer(ResultSet row) throws SQLException {
    return knownAnswers.computeIfAbsent(
        row.getString(2),
        text -> {
          String[] words = text.split(BLANK, -1);
          return Map.entry(words[0], answer(words[1]));
        });
  }

  private static ConfirmedCause cause(String text) {
    String[] words = text.split(BLANK, -1);
    return new ConfirmedCause(words[0], words[1], words[2]);
  }

  private WorkDone taughtWork(ResultSet row) throws SQLException {
    String[] words = words(row);
    int cured = row.getInt(4);
    Optional<Boolean> known = row.wasNull() ? Optional.empty() : Optional.of(cured == 1);
    return new WorkDone(words[0], words[1], number(row, 3), Optional.empty(), known);
  }

  private ReadingTaken taughtReading(ResultSet row) throws SQLException {
    String[] words = words(row);
    return new ReadingTaken(words[0], words[1], words[2], number(row, 3), row.getInt(4) == 1);
  }

  private static Map.Entry<String, Double> prediction(ResultSet row) throws SQLException {
    return Map.entry(row.getString(3), row.getDouble(4));
  }

  private List<Stored> load(List<Integer> numbers, String columns, Parts parts)
      throws SQLException {
    String sql = "select " + columns + " from entry where number in " + marks(numbers.size());
    return asked(
        sql,
        numbers,
        row -> {
          Map<Integer, Stored> found = new HashMap<>();
          while (row.next()) {
            found.put(row.getInt(1), new Stored(entry(row, parts), row.getString(3)));
          }
          return numbers.stream().filter(found::containsKey).map(found::get).toList();
        });
  }

  /** What stands in the other tables, by the number of the entry. */
  private record Parts(
      Map<Integer, List<Map.Entry<String, Answer>>> symptoms,
      Map<Integer, List<String>> displayed,
      Map<Integer, List<ConfirmedCause>> causes,
      Map<Integer, List<WorkDone>> work,
      Map<Integer, List<ReadingTaken>> readings,
      Map<Integer, List<Map.Entry<String, Double>>> predictions) {}

  private static BookEntry entry(ResultSet row, Parts parts) throws SQLException {
    int number = row.getInt(1);
    return new BookEntry(
        row.getString(2),
        Optional.ofNullable(row.getString(4)).map(CalendarDate::require),
        CalendarDate.require(row.getString(5)),
        machine(row),
        Optional.ofNullable(row.getString(13)).map(Market::valueOf),
        row.getString(14),
        row.getString(15),
        mapped(parts.symptoms().getOrDefault(number, List.of())),
        parts.displayed().getOrDefault(number, List.of()),
        outcome(row.getString(16)),
        parts.causes().getOrDefault(number, List.of()),
        parts.work().getOrDefault(number, List.of()),
        parts.readings().getOrDefault(number, List.of()),
        mapped(parts.predictions().getOrDefault(number, List.of())),
        Optional.ofNullable(row.getString(17)).map(Money::parse),
        Optional.ofNullable(row.getString(18)));
  }

  private <T> Map<Integer, List<T>> rows(
      String table, String columns, List<Integer> numbers, RowReader<T> reader)
      throws SQLException {
    String sql =
        "select "
            + columns
            + " from "
            + table
            + " where entry in "
            + marks(numbers.size())
            + " order by entry, place";
    return asked(
        sql,
        numbers,
        row -> {
          Map<Integer, List<T>> rows = new HashMap<>();
          while (row.next()) {
            rows.computeIfAbsent(row.getInt(1), any -> new ArrayList<>()).add(reader.of(row));
          }
          return rows;
        });
  }

  static String marks(int number) {
    return "(" + "?, ".repeat(number - 1) + "?)";
  }

  private <T> T asked(String sql, List<Integer> numbers, RowReader<T> reader) throws SQLException {
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

  private static <T> Map<String, T> mapped(List<Map.Entry<String, T>> members) {
    Map<String, T> map = new LinkedHashMap<>();
    members.forEach(each -> map.put(each.getKey(), each.getValue()));
    return map;
  }

  private static BookedMachine machine(ResultSet row) throws SQLException {
    return new BookedMachine(
        row.getString(6),
        row.getString(7),
        row.getString(8),
        row.getString(9),
        number(row, 10),
        number(row, 11),
        number(row, 12));
  }

  private static WorkDone work(ResultSet row) throws SQLException {
    int cured = row.getInt(7);
    Optional<Boolean> known = row.wasNull() ? Optional.empty() : Optional.of(cured == 1);
    return new WorkDone(
        row.getString(3),
        row.getString(4),
        number(row, 5),
        Optional.ofNullable(row.getString(6)).map(Money::parse),
        known);
  }

  private static ReadingTaken reading(ResultSet row) throws SQLException {
    return new ReadingTaken(
        row.getString(3), row.getString(4), row.getString(5), number(row, 6), row.getInt(7) == 1);
  }

  static OptionalDouble number(ResultSet row, int column) throws SQLException {
    double value = row.getDouble(column);
    return row.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  static Answer answer(String id) {
    for (Answer each : Answer.values()) {
      if (each.id().equals(id)) {
        return each;
      }
    }
    throw new IllegalArgumentException("'" + id + "' is no answer");
  }

  private static Outcome outcome(String id) {
    for (Outcome each : Outcome.values()) {
      if (each.id().equals(id)) {
        return each;
      }
    }
    throw new IllegalArgumentException("'" + id + "' is no outcome");
  }
}
