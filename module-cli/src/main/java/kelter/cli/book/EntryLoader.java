package kelter.cli.book;

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
import kelter.core.book.Outcome;
import kelter.core.book.ReadingTaken;
import kelter.core.book.WorkDone;
import kelter.core.job.Market;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.quantity.Money;
import kelter.core.vocabulary.CalendarDate;

/** Makes entries of their rows. */
final class EntryLoader {

  private final PageQueries queries;

  EntryLoader(PageQueries queries) {
    this.queries = queries;
  }

  /** An entry and what it was told by when it was added. */
  record Stored(BookEntry entry, String digest) {}

  /** The entries of some numbers, in their order; up to {@value PageQueries#PAGE}. */
  List<Stored> load(List<Integer> numbers) throws SQLException {
    if (numbers.isEmpty()) {
      return List.of();
    }
    Parts parts = parts(numbers);
    String sql =
        "select "
            + EntryWriter.ENTRY_COLUMNS
            + " from entry where number in "
            + PageQueries.marks(numbers.size());
    return queries.asked(
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

  private Parts parts(List<Integer> numbers) throws SQLException {
    return new Parts(
        rows("symptom", numbers, row -> Map.entry(row.getString(3), answer(row.getString(4)))),
        rows("displayed", numbers, row -> row.getString(3)),
        rows(
            "cause",
            numbers,
            row -> new ConfirmedCause(row.getString(3), row.getString(4), row.getString(5))),
        rows("work", numbers, EntryLoader::work),
        rows("reading", numbers, EntryLoader::reading),
        rows("prediction", numbers, EntryLoader::prediction));
  }

  private static Map.Entry<String, Double> prediction(ResultSet row) throws SQLException {
    return Map.entry(row.getString(3), row.getDouble(4));
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
      String table, List<Integer> numbers, PageQueries.RowReader<T> reader) throws SQLException {
    String sql =
        "select * from "
            + table
            + " where entry in "
            + PageQueries.marks(numbers.size())
            + " order by entry, place";
    return queries.asked(
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

  static Outcome outcome(String id) {
    for (Outcome each : Outcome.values()) {
      if (each.id().equals(id)) {
        return each;
      }
    }
    throw new IllegalArgumentException("'" + id + "' is no outcome");
  }
}
