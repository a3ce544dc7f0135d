package kelter.cli.book;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import kelter.core.book.BookedMachine;
import kelter.core.book.Likeness;
import kelter.core.job.SymptomReport.Answer;

/** Finds the jobs that are most like one, among all of its kind of machine. */
final class LikestJobs {

  private static final Comparator<Scored> WORST_FIRST =
      Comparator.comparingDouble(Scored::points).thenComparingInt(Scored::number);

  private final Connection connection;

  LikestJobs(Connection connection) {
    this.connection = connection;
  }

  /** The number of an entry and how like it is. */
  record Scored(int number, double points) {}

  /** The likest first; of those that are alike, the later one. */
  List<Scored> of(Likeness wanted, int most) throws SQLException {
    PriorityQueue<Scored> best = new PriorityQueue<>(WORST_FIRST);
    Likeness.Scale scale = wanted.scale();
    List<String> symptoms = List.copyOf(wanted.symptoms().keySet());
    try (PreparedStatement query = connection.prepareStatement(sql(symptoms.size()))) {
      for (int i = 0; i < symptoms.size(); i++) {
        query.setString(i + 1, symptoms.get(i));
      }
      query.setString(symptoms.size() + 1, wanted.machine().kind());
      try (ResultSet row = query.executeQuery()) {
        while (row.next()) {
          best.add(scored(row, wanted.machine().kind(), scale));
          if (best.size() > most) {
            best.poll();
          }
        }
      }
    }
    return best.stream().sorted(WORST_FIRST.reversed()).toList();
  }

  /** One row for each entry, with the answers to the symptoms as one text. */
  private static String sql(int symptoms) {
    String answers =
        symptoms == 0
            ? "''"
            : "(select string_agg(symptom || ' ' || answer, ' ') from symptom"
                + " where entry = number and symptom in "
                + PageQueries.marks(symptoms)
                + ")";
    return "select number, maker, model, age, " + answers + " from entry where kind = ?";
  }

  private static Scored scored(ResultSet row, String kind, Likeness.Scale scale)
      throws SQLException {
    BookedMachine machine =
        new BookedMachine(
            kind,
            row.getString(2),
            row.getString(3),
            "",
            EntryLoader.number(row, 4),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    return new Scored(row.getInt(1), scale.of(answers(row.getString(5)), machine));
  }

  private static Map<String, Answer> answers(String text) {
    if (text == null || text.isEmpty()) {
      return Map.of();
    }
    Map<String, Answer> answers = new HashMap<>();
    String[] words = LessonLoader.words(text, 2);
    for (int i = 0; i < words.length; i += 2) {
      answers.put(words[i], EntryLoader.answer(words[i + 1]));
    }
    return answers;
  }
}
