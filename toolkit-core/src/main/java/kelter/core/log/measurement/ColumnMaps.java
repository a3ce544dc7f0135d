package kelter.core.log.measurement;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.file.log.LogFormat;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Nearest;
import kelter.core.shop.LogColumn;

/**
 * What the columns of a log hold.
 *
 * @param given what was said on the command line
 * @param remembered what the shop profile says of the other columns
 */
public record ColumnMaps(List<Mapped> given, List<Mapped> remembered) {

  public ColumnMaps {
    given = List.copyOf(given);
    remembered = List.copyOf(remembered);
  }

  /**
   * A column and what it holds.
   *
   * @param column the place of the column among those with figures, from 0
   * @param what what it holds
   */
  public record Mapped(int column, LogColumn what) {}

  /**
   * Makes out what the columns hold.
   *
   * @param maps what was said, {@code COLUMN=component.observable} or {@code
   *     COLUMN[UNIT]=component.observable.condition}
   * @param instrument the instrument that wrote the log, if it was named
   * @param known what the shop profile says
   * @param format what was recognised of the log
   * @return what the columns hold
   * @throws InputException with every map that cannot be used
   */
  public static ColumnMaps of(
      List<String> maps, Optional<String> instrument, List<LogColumn> known, LogFormat format) {
    List<Problem> problems = new ArrayList<>();
    Map<String, Mapped> given = new LinkedHashMap<>();
    for (String map : maps) {
      try {
        Mapped mapped = parse(map, instrument, format);
        if (given.put(mapped.what().column() + " " + mapped.what().target(), mapped) != null) {
          problems.add(new Problem(map, "is given twice", "keep one of them"));
        }
      } catch (IllegalArgumentException wrong) {
        problems.add(new Problem(map, wrong.getMessage(), ""));
      } catch (InputException unknown) {
        problems.addAll(unknown.problems());
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return new ColumnMaps(List.copyOf(given.values()), remembered(given.values(), known, format));
  }

  private static List<Mapped> remembered(
      Collection<Mapped> given, List<LogColumn> known, LogFormat format) {
    Set<String> said = new HashSet<>();
    given.forEach(each -> said.add(each.what().column()));
    List<String> headings = format.values().stream().map(LogFormat.Column::heading).toList();
    return known.stream()
        .filter(each -> !said.contains(each.column()))
        .filter(each -> headings.stream().filter(each.column()::equals).count() == 1)
        .map(each -> new Mapped(headings.indexOf(each.column()), each))
        .toList();
  }

  private static Mapped parse(String map, Optional<String> instrument, LogFormat format) {
    int sign = map.lastIndexOf('=');
    String[] target = map.substring(sign + 1).strip().split("\\.", -1);
    if (sign <= 0 || target.length < 2 || target.length > 3) {
      throw new IllegalArgumentException(
          "is not of the form COLUMN=component.observable, for instance 'Power=heater.power'");
    }
    String name = map.substring(0, sign).strip();
    Optional<Integer> place = format.find(name);
    Optional<String> unit = Optional.empty();
    int bracket = name.lastIndexOf('[');
    if (place.isEmpty() && bracket > 0 && name.endsWith("]")) {
      unit = Optional.of(name.substring(bracket + 1, name.length() - 1));
      place = format.find(name.substring(0, bracket));
    }
    int column = place.orElseThrow(() -> unknown(map, name, format));
    return new Mapped(
        column,
        new LogColumn(
            format.values().get(column).heading(),
            target[0],
            target[1],
            target.length == 3 ? Optional.of(target[2]) : Optional.empty(),
            unit,
            instrument));
  }

  private static InputException unknown(String map, String name, LogFormat format) {
    List<String> names = format.values().stream().map(LogFormat.Column::name).toList();
    return new InputException(
        map,
        "no column with figures is called '" + name + "'",
        Nearest.of(name, names)
            .map(near -> "did you mean '" + near + "'?")
            .orElse("there are: " + String.join(", ", names)));
  }

  /**
   * All of them.
   *
   * @return what was said, then what was remembered
   */
  public List<Mapped> all() {
    List<Mapped> all = new ArrayList<>(given);
    all.addAll(remembered);
    return all;
  }
}
