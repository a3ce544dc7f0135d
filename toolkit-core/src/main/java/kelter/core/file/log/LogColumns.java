package kelter.core.file.log;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import kelter.core.file.log.LogFormat.Column;
import kelter.core.file.log.LogFormat.Role;
import kelter.core.file.log.cell.FigureForm;
import kelter.core.file.log.cell.Heading;
import kelter.core.file.log.cell.Look;
import kelter.core.file.log.cell.Marks;
import kelter.core.file.log.row.LogHead;
import kelter.core.problem.Problem;

/**
 * The columns of a log: names, units, and what they hold.
 *
 * @param columns the columns, in order
 * @param headerRow the row of the headings, from 1; 0 if there are none
 * @param header the cells of that row
 * @param unitColumns the place of the column of units of a column, by the place of that, from 0
 * @param open what must be said first
 */
record LogColumns(
    List<Column> columns,
    int headerRow,
    List<String> header,
    Map<Integer, Integer> unitColumns,
    List<Problem> open) {

  private static final double MOST = 0.5;
  private static final String FLAG = "--units";

  /** So many rows above the readings may be headings and units. */
  private static final int LOOKED_AT = 3;

  /** Headings of numbers of rows. */
  private static final Set<String> ROW_WORDS =
      Set.of("no", "no.", "nr", "nr.", "#", "index", "sample", "record", "row", "number", "id");

  /** Headings of columns of units. */
  private static final Set<String> UNIT_WORDS =
      Set.of("unit", "units", "einheit", "unité", "unite", "unidad", "unità", "eenheid", "uom");

  static LogColumns of(
      LogHead head, List<List<String>> rows, FigureForm form, Map<String, String> said) {
    return new Search(head, rows, form, said).find();
  }

  /** The search for the columns. */
  private static final class Search {
    private final LogHead head;
    private final List<List<String>> rows;
    private final FigureForm form;
    private final Map<String, String> said;
    private final List<Problem> open = new ArrayList<>();

    Search(LogHead head, List<List<String>> rows, FigureForm form, Map<String, String> said) {
      this.head = head;
      this.rows = rows;
      this.form = form;
      this.said = said;
    }

    LogColumns find() {
      List<List<String>> above = head.above();
      int units = unitsAt(above);
      List<String> header = header(above, units);
      List<String> unitRow = units < 0 ? List.of() : above.get(units);
      List<Column> columns = new ArrayList<>();
      for (int i = 0; i < head.width(); i++) {
        columns.add(column(i, header, unitRow));
      }
      Map<Integer, Integer> unitColumns = unitColumns(columns);
      say(columns);
      int headerRow = header.isEmpty() ? 0 : head.first() - above.indexOf(header);
      return new LogColumns(columns, headerRow, header, unitColumns, open);
    }

    /** Units stand under the headings, as a rule; else the row that tells most units. */
    private static List<String> header(List<List<String>> above, int units) {
      if (units >= 0 && units + 1 < above.size()) {
        return above.get(units + 1);
      }
      List<String> best = above.isEmpty() ? List.of() : above.get(0);
      for (List<String> row : above.subList(0, Math.min(LOOKED_AT, above.size()))) {
        best = tellingUnits(row) > tellingUnits(best) ? row : best;
      }
      return best;
    }

    private static long tellingUnits(List<String> row) {
      return row.stream().filter(cell -> !Heading.of(cell).unit().isEmpty()).count();
    }

    /** Which of the rows above holds units, most of its cells being some; -1 if none does. */
    private int unitsAt(List<List<String>> above) {
      for (int i = 0; i < Math.min(LOOKED_AT, above.size()); i++) {
        int cells = 0;
        int units = 0;
        for (String cell : above.get(i)) {
          cells += cell.isEmpty() ? 0 : 1;
          units += !cell.isEmpty() && isUnitCell(cell) ? 1 : 0;
        }
        if (units > MOST * cells && above.size() > 1) {
          return i;
        }
      }
      return -1;
    }

    private static boolean isUnitCell(String cell) {
      String word = cell.toLowerCase(Locale.ROOT);
      return Heading.isUnit(unbracketed(cell)) || word.startsWith("hh:mm") || word.equals("ts");
    }

    private static String unbracketed(String cell) {
      return cell.replaceAll("^[\\[(]|[\\])]$", "").strip();
    }

    private Column column(int place, List<String> names, List<String> units) {
      String written = place < names.size() ? names.get(place) : "";
      Heading heading = Heading.of(written);
      String unit = place < units.size() ? unbracketed(units.get(place)) : "";
      String told = unit.isEmpty() ? heading.unit() : unit;
      String name = heading.name().isBlank() ? "column " + (place + 1) : heading.name();
      boolean number = ROW_WORDS.contains(name.toLowerCase(Locale.ROOT));
      boolean value = holdsFigures(place) && !number;
      return new Column(
          place + 1,
          name,
          written.isBlank() ? name : written,
          told.isEmpty() && value ? unitBehind(place) : told,
          value ? Role.VALUE : Role.OTHER);
    }

    /** A column with a figure here and there but mostly words is one of words. */
    private boolean holdsFigures(int place) {
      int figures = 0;
      int words = 0;
      for (List<String> row : rows) {
        switch (Look.of(row.get(place))) {
          case FIGURE, BEYOND -> figures++;
          case NONE -> {
            // Nothing stands there that could tell.
          }
          default -> words++;
        }
      }
      return figures > 0 && figures >= words;
    }

    /** The unit behind the first figure that has one. */
    private String unitBehind(int place) {
      for (List<String> row : rows) {
        String cell = row.get(place);
        int end = Marks.isAny(cell) ? 0 : form.end(cell);
        if (end > 0 && end < cell.length()) {
          return cell.substring(end).strip();
        }
      }
      return "";
    }

    /** Columns of units, each for the nearest column of figures, first those to its left. */
    private Map<Integer, Integer> unitColumns(List<Column> columns) {
      Map<Integer, Integer> found = new HashMap<>();
      for (int place = 0; place < columns.size(); place++) {
        if (columns.get(place).role() == Role.OTHER && holdsUnits(columns.get(place))) {
          int value = valueBeside(columns, place, found);
          if (value >= 0) {
            found.put(value, place);
            columns.set(place, columns.get(place).as(Role.UNIT));
            Column of = columns.get(value);
            columns.set(value, of.unit().isEmpty() ? of.in(firstCell(place)) : of);
          }
        }
      }
      return found;
    }

    private boolean holdsUnits(Column column) {
      int place = column.place() - 1;
      boolean called =
          column.heading().equals(column.name()) && column.name().startsWith("column ")
              || UNIT_WORDS.stream().anyMatch(column.heading().toLowerCase(Locale.ROOT)::contains);
      return called
          && !firstCell(place).isEmpty()
          && rows.stream()
              .map(row -> row.get(place))
              .allMatch(cell -> cell.isEmpty() || Heading.isUnit(cell));
    }

    private static int valueBeside(List<Column> columns, int place, Map<Integer, Integer> taken) {
      for (int i = place - 1; i >= 0; i--) {
        if (columns.get(i).role() == Role.VALUE && !taken.containsKey(i)) {
          return i;
        }
      }
      for (int i = place + 1; i < columns.size(); i++) {
        if (columns.get(i).role() == Role.VALUE && !taken.containsKey(i)) {
          return i;
        }
      }
      return -1;
    }

    private String firstCell(int place) {
      return rows.stream()
          .map(row -> row.get(place))
          .filter(cell -> !cell.isEmpty())
          .findFirst()
          .orElse("");
    }

    private void say(List<Column> columns) {
      said.forEach(
          (name, unit) -> {
            int called = 0;
            for (int i = 0; i < columns.size(); i++) {
              if (columns.get(i).isCalled(name)) {
                columns.set(i, columns.get(i).in(unit));
                called++;
              }
            }
            if (called != 1) {
              open.add(
                  new Problem(
                      FLAG + " " + name + "=" + unit,
                      called == 0
                          ? "no column is called '" + name + "'"
                          : "%s columns are called '%s'".formatted(called, name),
                      "name it by its heading or its place, as #2"));
            } else if (!Heading.isUnit(unit)) {
              open.add(
                  new Problem(
                      FLAG + " " + name + "=" + unit,
                      "'" + unit + "' is not known as a unit",
                      "write for instance W or L/min"));
            }
          });
    }
  }
}
