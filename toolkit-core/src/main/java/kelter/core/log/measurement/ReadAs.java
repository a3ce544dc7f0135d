package kelter.core.log.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Nearest;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.Unit;
import kelter.core.shop.LogColumn;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Vocabulary;

/**
 * How a column is read that was said to hold something: in which unit, as what kind of quantity.
 *
 * @param mapped the column and what it holds
 * @param unit the unit of the column
 * @param kind what the column holds; of a trend its sum
 * @param trend whether the observable is the trend of the column
 */
public record ReadAs(ColumnMaps.Mapped mapped, Unit unit, QuantityKind kind, boolean trend) {

  /**
   * Holds the units of columns against what they are said to hold. Without a job the name of a
   * component is taken for its kind; if there is no such kind, all kinds are looked through.
   *
   * @param maps what the columns are said to hold
   * @param job the job, if there is one
   * @param vocabulary the words that a job may use
   * @param report what the log shows
   * @return how the columns that were named are read
   * @throws InputException with every column whose unit is missing, unknown or does not fit
   */
  public static List<ReadAs> of(
      ColumnMaps maps, Optional<Job> job, Vocabulary vocabulary, LogReport report) {
    List<ReadAs> all = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (ColumnMaps.Mapped mapped : maps.given()) {
      try {
        all.add(of(mapped, observables(mapped.what(), job, vocabulary), report));
      } catch (IllegalArgumentException unfit) {
        problems.add(new Problem(mapped.what().target(), unfit.getMessage(), ""));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return all;
  }

  private static List<Observable> observables(
      LogColumn what, Optional<Job> job, Vocabulary vocabulary) {
    String kind =
        job.flatMap(known -> known.appliance().component(what.component()))
            .map(Component::kind)
            .orElse(what.component());
    List<ComponentKind> kinds =
        vocabulary.kind(kind).map(List::of).orElseGet(() -> List.copyOf(vocabulary.kinds()));
    List<Observable> known =
        kinds.stream()
            .flatMap(each -> each.observables().stream())
            .filter(each -> each.type() == Observable.Type.QUANTITY)
            .toList();
    List<Observable> named =
        known.stream().filter(each -> each.id().equals(what.observable())).toList();
    if (named.isEmpty()) {
      throw new IllegalArgumentException(
          "no figure of a component is called '%s'%s"
              .formatted(
                  what.observable(),
                  Nearest.of(what.observable(), known.stream().map(Observable::id).toList())
                      .map(near -> "; did you mean '" + near + "'?")
                      .orElse("")));
    }
    return named;
  }

  /** The first of what the word may mean that the unit fits. */
  private static ReadAs of(
      ColumnMaps.Mapped mapped, List<Observable> observables, LogReport report) {
    IllegalArgumentException unfit = null;
    for (Observable observable : observables) {
      try {
        return of(mapped, observable, report);
      } catch (IllegalArgumentException other) {
        unfit = unfit == null ? other : unfit;
      }
    }
    throw unfit;
  }

  private static ReadAs of(ColumnMaps.Mapped mapped, Observable observable, LogReport report) {
    Optional<String> condition = mapped.what().condition();
    if (condition.isEmpty()) {
      MappedColumn column = MappedColumn.of(mapped, observable, report);
      return new ReadAs(mapped, column.unit(), column.kind(), column.trend());
    }
    Characteristic known =
        observable.conditions().stream()
            .filter(each -> each.id().equals(condition.get()))
            .findFirst()
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "'%s' knows no condition '%s'"
                            .formatted(observable.id(), condition.get())));
    return new ReadAs(mapped, MappedColumn.unit(mapped, known.kind(), report), known.kind(), false);
  }
}
