package kelter.core.log.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.log.Comparison;
import kelter.core.log.Window;
import kelter.core.problem.InputException;

/**
 * A column before and after.
 *
 * @param column the place of the column among those with figures, from 0
 * @param before the stretch before
 * @param after the stretch after
 * @param first the column over the stretch before
 * @param second the column over the stretch after
 * @param comparison what changed
 */
public record Change(
    int column, Stretch before, Stretch after, Window first, Window second, Comparison comparison) {

  /**
   * Compares two stretches: in the column of the windows that are called by number, else in every
   * column.
   *
   * @param before the stretch before
   * @param after the stretch after
   * @param report what the log shows
   * @return what changed, column by column
   * @throws InputException if the windows are of two columns
   */
  public static List<Change> of(Stretch before, Stretch after, LogReport report) {
    Optional<Integer> first = before.numbered().map(LogReport.Numbered::column);
    Optional<Integer> second = after.numbered().map(LogReport.Numbered::column);
    if (first.isPresent() && second.isPresent() && !first.equals(second)) {
      throw new InputException(
          before.words() + " and " + after.words(),
          "speak of two columns, '%s' and '%s'"
              .formatted(report.column(first.get()).name(), report.column(second.get()).name()),
          "name two windows of the same column, or two stretches of time");
    }
    Optional<Integer> only = first.or(() -> second);
    List<Change> changes = new ArrayList<>();
    for (int column = 0; column < report.log().format().values().size(); column++) {
      Optional<Window> earlier = report.over(before, column);
      Optional<Window> later = report.over(after, column);
      if (only.orElse(column) == column && earlier.isPresent() && later.isPresent()) {
        Window one = earlier.get();
        Window other = later.get();
        changes.add(new Change(column, before, after, one, other, Comparison.of(one, other)));
      }
    }
    if (changes.isEmpty()) {
      throw new InputException(
          before.words() + " and " + after.words(), "hold fewer than two samples", "");
    }
    return changes;
  }
}
