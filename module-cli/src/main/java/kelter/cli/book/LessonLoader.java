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
import java.util.function.Function;
import kelter.core.book.BookEntry;
import kelter.core.book.BookedMachine;
import kelter.core.book.ConfirmedCause;
import kelter.core.book.ReadingTaken;
import kelter.core.book.WorkDone;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.vocabulary.CalendarDate;

/**
 * Makes entries with what they teach alone. Each comes as one row, in which the rows of another
 * table stand as one text, since going from row to row costs more than to take the text apart. Its
 * words are parted by blanks, which no id has; a number is written by the database with as many
 * digits as it takes to read the same number again.
 */
final class LessonLoader {

  private static final String SQL =
      "select number, job, closed, kind, maker, model, serial, age, outcome, call_back_of, "
          + String.join(
              ", ",
              joined("symptom", "symptom || ' ' || answer"),
              joined("cause", "component || ' ' || kind || ' ' || fault"),
              joined(
                  "work",
                  "component || ' ' || remedy || ' ' || coalesce(minutes || '', '') || ' '"
                      + " || coalesce(cured || '', '')"),
              joined(
                  "reading",
                  "component || ' ' || observable || ' ' || instrument || ' '"
                      + " || coalesce(minutes || '', '') || ' ' || misled"),
              joined("prediction", "fault || ' ' || probability"))
          + " from entry where number in ";

  private final PageQueries queries;
  private final Known<String> same = new Known<>(Function.identity());
  private final Known<Answer> answers = new Known<>(EntryLoader::answer);
  private final Known<List<ConfirmedCause>> causes = new Known<>(LessonLoader::causes);
  private final Known<List<WorkDone>> work = new Known<>(LessonLoader::work);
  private final Known<List<ReadingTaken>> readings = new Known<>(LessonLoader::readings);

  LessonLoader(PageQueries queries) {
    this.queries = queries;
  }

  /** What was made of texts, most of which come again and again. */
  private record Known<T>(Map<String, T> made, Function<String, T> making) {

    /** So many are kept. */
    private static final int MOST = 20_000;

    Known(Function<String, T> making) {
      this(new HashMap<>(), making);
    }

    T of(String text) {
      T known = made.get(text);
      if (known == null) {
        known = making.apply(text);
        if (made.size() < MOST) {
          made.put(text, known);
        }
      }
      return known;
    }
  }

  private static String joined(String table, String words) {
    return "(select string_agg(words, ' ') from (select "
        + words
        + " as words from "
        + table
        + " where entry = number order by place) as in_order)";
  }

  /** The entries of some numbers, in their order. */
  List<BookEntry> load(List<Integer> numbers) throws SQLException {
    if (numbers.isEmpty()) {
      return List.of();
    }
    return queries.asked(
        SQL + PageQueries.marks(numbers.size()),
        numbers,
        row -> {
          Map<Integer, BookEntry> found = new HashMap<>();
          while (row.next()) {
            found.put(row.getInt(1), entry(row));
          }
          return numbers.stream().filter(found::containsKey).map(found::get).toList();
        });
  }

  private BookEntry entry(ResultSet row) throws SQLException {
    return new BookEntry(
        row.getString(2),
        Optional.empty(),
        CalendarDate.require(row.getString(3)),
        new BookedMachine(
            same.of(row.getString(4)),
            row.getString(5),
            row.getString(6),
            row.getString(7),
            EntryLoader.number(row, 8),
            OptionalDouble.empty(),
            OptionalDouble.empty()),
        Optional.empty(),
        "",
        "",
        symptoms(row.getString(11)),
        List.of(),
        EntryLoader.outcome(row.getString(9)),
        of(causes, row.getString(12)),
        of(work, row.getString(13)),
        of(readings, row.getString(14)),
        predictions(row.getString(15)),
        Optional.empty(),
        Optional.ofNullable(row.getString(10)));
  }

  private static <T> List<T> of(Known<List<T>> known, String text) {
    return text == null ? List.of() : known.of(text);
  }

  private Map<String, Answer> symptoms(String text) {
    Map<String, Answer> symptoms = new LinkedHashMap<>();
    String[] words = words(text, 2);
    for (int i = 0; i < words.length; i += 2) {
      symptoms.put(same.of(words[i]), answers.of(words[i + 1]));
    }
    return symptoms;
  }

  private static List<ConfirmedCause> causes(String text) {
    String[] words = words(text, 3);
    List<ConfirmedCause> causes = new ArrayList<>();
    for (int i = 0; i < words.length; i += 3) {
      causes.add(new ConfirmedCause(words[i], words[i + 1], words[i + 2]));
    }
    return List.copyOf(causes);
  }

  private static List<WorkDone> work(String text) {
    String[] words = words(text, 4);
    List<WorkDone> work = new ArrayList<>();
    for (int i = 0; i < words.length; i += 4) {
      String cured = words[i + 3];
      work.add(
          new WorkDone(
              words[i],
              words[i + 1],
              number(words[i + 2]),
              Optional.empty(),
              cured.isEmpty() ? Optional.empty() : Optional.of(cured.equals("1"))));
    }
    return List.copyOf(work);
  }

  private static List<ReadingTaken> readings(String text) {
    String[] words = words(text, 5);
    List<ReadingTaken> readings = new ArrayList<>();
    for (int i = 0; i < words.length; i += 5) {
      readings.add(
          new ReadingTaken(
              words[i],
              words[i + 1],
              words[i + 2],
              number(words[i + 3]),
              words[i + 4].equals("1")));
    }
    return List.copyOf(readings);
  }

  private Map<String, Double> predictions(String text) {
    String[] words = words(text, 2);
    Map<String, Double> predictions = new LinkedHashMap<>();
    for (int i = 0; i < words.length; i += 2) {
      predictions.put(same.of(words[i]), Double.valueOf(words[i + 1]));
    }
    return predictions;
  }

  /** The words of all rows; none where there is no row. */
  static String[] words(String text, int ofRow) {
    String[] words = text == null ? new String[0] : text.split(" ", -1);
    if (words.length % ofRow != 0) {
      throw new IllegalArgumentException("'" + text + "' has a word that is no id");
    }
    return words;
  }

  private static OptionalDouble number(String text) {
    return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
  }
}
