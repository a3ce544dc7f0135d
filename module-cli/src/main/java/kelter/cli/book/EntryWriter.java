package kelter.cli.book;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Types;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import kelter.core.book.BookEntry;
import kelter.core.book.ConfirmedCause;
import kelter.core.book.ReadingTaken;
import kelter.core.book.WorkDone;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.quantity.Money;

/** Writes entries as rows, many at a time. */
final class EntryWriter implements AutoCloseable {

  private final List<PreparedStatement> statements = new ArrayList<>();
  private final Connection connection;
  private final PreparedStatement entry;
  private final PreparedStatement symptom;
  private final PreparedStatement displayed;
  private final PreparedStatement cause;
  private final PreparedStatement work;
  private final PreparedStatement reading;
  private final PreparedStatement prediction;

  EntryWriter(Connection connection) throws SQLException {
    this.connection = connection;
    this.entry = into("entry", 18);
    this.symptom = into("symptom", 4);
    this.displayed = into("displayed", 3);
    this.cause = into("cause", 5);
    this.work = into("work", 7);
    this.reading = into("reading", 7);
    this.prediction = into("prediction", 4);
  }

  private PreparedStatement into(String table, int columns) throws SQLException {
    String sql =
        "insert into "
            + table
            + (table.equals("entry") ? " (" + ENTRY_COLUMNS + ")" : "")
            + " values ("
            + "?, ".repeat(columns - 1)
            + "?)";
    PreparedStatement statement = connection.prepareStatement(sql);
    statements.add(statement);
    return statement;
  }

  /** The columns of an entry, in their order; PostgreSQL has one more. */
  static final String ENTRY_COLUMNS =
      "number, job, digest, called, closed, kind, maker, model, serial, age, cycles, hours,"
          + " market, complaint, notes, outcome, charged, call_back_of";

  /** Puts an entry into the next batch. */
  void add(int number, BookEntry each, String digest) throws SQLException {
    entry.setInt(1, number);
    entry.setString(2, each.job());
    entry.setString(3, digest);
    entry.setString(4, each.called().map(Object::toString).orElse(null));
    entry.setString(5, each.closed().toString());
    entry.setString(6, each.machine().kind());
    entry.setString(7, each.machine().maker());
    entry.setString(8, each.machine().model());
    entry.setString(9, each.machine().serial());
    set(entry, 10, each.machine().age());
    set(entry, 11, each.machine().cycles());
    set(entry, 12, each.machine().hours());
    entry.setString(13, each.market().map(Enum::name).orElse(null));
    entry.setString(14, each.complaint());
    entry.setString(15, each.notes());
    entry.setString(16, each.outcome().id());
    entry.setString(17, each.charged().map(Money::format).orElse(null));
    entry.setString(18, each.callBackOf().orElse(null));
    entry.addBatch();
    int place = 0;
    for (Map.Entry<String, Answer> answer : each.symptoms().entrySet()) {
      at(symptom, number, place++);
      symptom.setString(3, answer.getKey());
      symptom.setString(4, answer.getValue().id());
      symptom.addBatch();
    }
    place = 0;
    for (String meaning : each.displayed()) {
      at(displayed, number, place++);
      displayed.setString(3, meaning);
      displayed.addBatch();
    }
    place = 0;
    for (ConfirmedCause confirmed : each.causes()) {
      at(cause, number, place++);
      cause.setString(3, confirmed.component());
      cause.setString(4, confirmed.kind());
      cause.setString(5, confirmed.fault());
      cause.addBatch();
    }
    place = 0;
    for (WorkDone done : each.work()) {
      at(work, number, place++);
      work.setString(3, done.component());
      work.setString(4, done.remedy());
      set(work, 5, done.minutes());
      work.setString(6, done.parts().map(Money::format).orElse(null));
      work.setObject(7, done.cured().map(cured -> cured ? 1 : 0).orElse(null), Types.INTEGER);
      work.addBatch();
    }
    place = 0;
    for (ReadingTaken taken : each.readings()) {
      at(reading, number, place++);
      reading.setString(3, taken.component());
      reading.setString(4, taken.observable());
      reading.setString(5, taken.instrument());
      set(reading, 6, taken.minutes());
      reading.setInt(7, taken.misled() ? 1 : 0);
      reading.addBatch();
    }
    place = 0;
    for (Map.Entry<String, Double> told : each.predictions().entrySet()) {
      at(prediction, number, place++);
      prediction.setString(3, told.getKey());
      prediction.setDouble(4, told.getValue());
      prediction.addBatch();
    }
  }

  private static void at(PreparedStatement statement, int number, int place) throws SQLException {
    statement.setInt(1, number);
    statement.setInt(2, place);
  }

  private static void set(PreparedStatement statement, int column, OptionalDouble value)
      throws SQLException {
    if (value.isPresent()) {
      statement.setDouble(column, value.getAsDouble());
    } else {
      statement.setNull(column, Types.DOUBLE);
    }
  }

  /** Writes the batch. */
  void write() throws SQLException {
    for (PreparedStatement statement : statements) {
      statement.executeBatch();
    }
  }

  @Override
  public void close() throws SQLException {
    for (PreparedStatement statement : statements) {
      statement.close();
    }
  }
}
