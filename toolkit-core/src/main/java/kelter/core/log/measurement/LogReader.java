package kelter.core.log.measurement;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.instrument.InstrumentLibrary;
import kelter.core.job.Component;
import kelter.core.job.Instrument;
import kelter.core.job.Job;
import kelter.core.log.Window;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Nearest;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityParser;
import kelter.core.shop.LogColumn;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Vocabulary;

/**
 * Makes readings of a job out of the columns of a log.
 *
 * @param job the job, for its components and instruments
 * @param vocabulary the words that a job may use
 * @param instruments instruments beside those of the job and of the library
 */
public record LogReader(Job job, Vocabulary vocabulary, List<Instrument> instruments) {

  /**
   * Makes the readings.
   *
   * @param report what the log shows
   * @param maps what its columns hold
   * @param stretches the stretches that were named; if none was, the one steady window of a column
   * @param stated conditions that were stated, {@code name=value}
   * @return the readings, in the order of the maps and of the stretches
   * @throws InputException with everything that cannot be used
   */
  public List<LogReading> readings(
      LogReport report, ColumnMaps maps, List<Stretch> stretches, List<String> stated) {
    Map<String, String> at = stated(stated);
    List<LogReading> readings = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (ColumnMaps.Mapped mapped : maps.all()) {
      boolean meant =
          maps.given().contains(mapped) || component(mapped.what().component()).isPresent();
      if (meant && mapped.what().condition().isEmpty()) {
        try {
          MappedColumn column = MappedColumn.of(mapped, observable(mapped.what()), report);
          for (Stretch stretch : column.stretches(stretches)) {
            readings.add(reading(column, stretch, maps, at));
          }
        } catch (IllegalArgumentException unusable) {
          problems.add(new Problem(mapped.what().target(), unusable.getMessage(), ""));
        }
      }
    }
    for (String word : at.keySet()) {
      boolean used = readings.stream().anyMatch(each -> each.conditions().containsKey(word));
      if (!used && problems.isEmpty()) {
        problems.add(new Problem(word, "is a condition of none of the readings", ""));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return readings;
  }

  private LogReading reading(
      MappedColumn column, Stretch stretch, ColumnMaps maps, Map<String, String> at) {
    Window window =
        column
            .over(stretch)
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "there are fewer than two samples in " + stretch.words()));
    Optional<Instrument.Function> range =
        column
            .what()
            .instrument()
            .flatMap(id -> instrument(id).range(column.kind(), column.si(window.mean())));
    return column.reading(stretch, window, range, conditions(column, stretch, maps, at));
  }

  private Optional<Component> component(String id) {
    return job.appliance().component(id);
  }

  private Observable observable(LogColumn what) {
    List<String> ids = job.appliance().components().stream().map(Component::id).toList();
    Component component =
        component(what.component())
            .orElseThrow(() -> unknown("the job has no component '%s'", what.component(), ids));
    List<Observable> observables =
        vocabulary.kind(component.kind()).map(kind -> kind.observables()).orElse(List.of());
    Observable observable =
        vocabulary
            .observable(component.kind(), what.observable())
            .orElseThrow(
                () ->
                    unknown(
                        QuantityFormat.withArticle(component.kind()) + " has no observable '%s'",
                        what.observable(),
                        observables.stream().map(Observable::id).toList()));
    if (observable.type() != Observable.Type.QUANTITY) {
      throw new IllegalArgumentException("'" + what.observable() + "' is not a figure");
    }
    return observable;
  }

  private static IllegalArgumentException unknown(String what, String word, List<String> known) {
    String near =
        Nearest.of(word, known)
            .map(found -> "; did you mean '" + found + "'?")
            .orElse("; known: " + String.join(", ", known));
    return new IllegalArgumentException(what.formatted(word) + near);
  }

  private Instrument instrument(String id) {
    return job.instrument(id)
        .or(() -> instruments.stream().filter(each -> each.id().equals(id)).findFirst())
        .or(() -> InstrumentLibrary.find(id))
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "neither the job, the shop nor the library has an instrument '" + id + "'"));
  }

  /** The means of the columns that hold a condition, and what was stated. */
  private static Map<String, Quantity> conditions(
      MappedColumn column, Stretch stretch, ColumnMaps maps, Map<String, String> at) {
    Map<String, Quantity> conditions = new LinkedHashMap<>();
    for (ColumnMaps.Mapped other : maps.all()) {
      if (other.what().condition().isPresent() && isOfSame(other.what(), column.what())) {
        Characteristic condition = condition(column.observable(), other.what().condition().get());
        MappedColumn.condition(other, condition.kind(), column.report(), stretch)
            .ifPresent(value -> conditions.put(condition.id(), value));
      }
    }
    at.forEach(
        (word, value) ->
            find(column.observable(), word)
                .ifPresent(
                    known -> conditions.put(word, QuantityParser.parse(value, known.kind()))));
    return conditions;
  }

  private static boolean isOfSame(LogColumn one, LogColumn other) {
    return one.component().equals(other.component()) && one.observable().equals(other.observable());
  }

  private static Characteristic condition(Observable observable, String word) {
    return find(observable, word)
        .orElseThrow(
            () ->
                unknown(
                    "'" + observable.id() + "' knows no condition '%s'",
                    word,
                    observable.conditions().stream().map(Characteristic::id).toList()));
  }

  private static Optional<Characteristic> find(Observable observable, String word) {
    return observable.conditions().stream().filter(each -> each.id().equals(word)).findFirst();
  }

  /** Conditions that were stated, by their words. */
  private static Map<String, String> stated(List<String> pairs) {
    Map<String, String> stated = new LinkedHashMap<>();
    for (String pair : pairs) {
      int sign = pair.indexOf('=');
      if (sign <= 0) {
        throw new InputException(pair, "is not of the form condition=value", "");
      }
      stated.put(pair.substring(0, sign).strip(), pair.substring(sign + 1));
    }
    return stated;
  }
}
