package kelter.core.log.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.log.Window;
import kelter.core.log.change.Comparison;
import kelter.core.log.change.FalseDiscovery;
import kelter.core.problem.InputException;

/**
 * A column before and after.
 *
 * @param column the place of the column among those with figures, from 0
 * @param before the stretch before
 * @param after the stretch after
 * @param healthy the stretch that tells of the drift
 * @param first the column over the stretch before
 * @param second the column over the stretch after
 * @param comparison what changed
 * @param seen whether it counts as a change, of all columns together
 */
public record Change(
    int column,
    Stretch before,
    Stretch after,
    Stretch healthy,
    Window first,
    Window second,
    Comparison comparison,
    boolean seen) {

  /**
   * Compares two stretches: in the column of the windows that are called by number, else in every
   * column.
   *
   * @param before the stretch before
   * @param after the stretch after
   * @param healthy a stretch in which nothing happened, which tells of the drift: the stretch
   *     before for instance
   * @param report what the log shows
   * @return what changed, column by column
   * @throws InputException if the windows are of two columns
   */
  public static List<Change> of(Stretch before, Stretch after, Stretch healthy, LogReport report) {
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
      if (only.orElse(column) == column) {
        change(column, before, after, healthy, report).ifPresent(changes::add);
      }
    }
    if (changes.isEmpty()) {
      throw new InputException(
          before.words() + " and " + after.words(), "hold fewer than two samples", "");
    }
    return judged(changes);
  }

  private static Optional<Change> change(
      int column, Stretch before, Stretch after, Stretch healthy, LogReport report) {
    Optional<Window> first = report.over(before, column);
    Optional<Window> second = report.over(after, column);
    Optional<Window> calm = report.over(healthy, column);
    if (first.isEmpty() || second.isEmpty() || calm.isEmpty()) {
      return Optional.empty();
    }
    Comparison comparison =
        Comparison.of(
            first.get(),
            second.get(),
            new Comparison.Stretch(calm.get(), report.values(healthy, column)),
            report.log().recording().spacing().usual(),
            report.resolution(column));
    return Optional.of(
        new Change(column, before, after, healthy, first.get(), second.get(), comparison, false));
  }

  private static List<Change> judged(List<Change> changes) {
    double[] chances = changes.stream().mapToDouble(each -> each.comparison.chance()).toArray();
    double limit = FalseDiscovery.limit(chances, chances.length, FalseDiscovery.RATE);
    return changes.stream().map(each -> each.judged(limit)).toList();
  }

  private Change judged(double limit) {
    return new Change(
        column, before, after, healthy, first, second, comparison, comparison.chance() <= limit);
  }
}
