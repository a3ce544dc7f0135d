package kelter.cli.hostile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Changes a table by its cells, its columns and its lines.
 *
 * @param text changes the text of a cell
 */
record TableMutation(TextMutation text) {

  private static final List<String> SIGNS = List.of(";", ",", "\t", "|", " ", "\"", ".", ":");

  String of(String table, Chance chance) {
    List<String> lines = new ArrayList<>(Arrays.asList(table.split("\n", -1)));
    String sign = table.contains(";") ? ";" : table.contains("\t") ? "\t" : ",";
    int line = chance.below(lines.size());
    switch (chance.below(14)) {
      case 10, 11, 12, 13 -> lines.set(line, text.scaled(lines.get(line), chance));
      case 0 -> lines.remove(line);
      case 1 -> lines.add(line, lines.get(chance.below(lines.size())));
      case 2 -> lines.set(line, lines.set(chance.below(lines.size()), lines.get(line)));
      case 3 -> {
        return table.replace(chance.of(SIGNS), chance.of(SIGNS));
      }
      case 4 -> columns(lines, sign, chance);
      case 5 -> lines.set(line, text.of(lines.get(line), chance));
      default -> lines.set(line, cells(lines.get(line), sign, chance));
    }
    return String.join("\n", lines);
  }

  private static List<String> split(String line, String sign) {
    return new ArrayList<>(Arrays.asList(line.split(Pattern.quote(sign), -1)));
  }

  private String cells(String line, String sign, Chance chance) {
    List<String> cells = split(line, sign);
    int cell = chance.below(cells.size());
    switch (chance.below(5)) {
      case 0 -> cells.remove(cell);
      case 1 -> cells.add(cell, cells.get(chance.below(cells.size())));
      case 2 -> cells.set(cell, text.words().any(chance));
      case 3 -> cells.set(cell, text.words().number(chance));
      default -> cells.set(cell, text.of(cells.get(cell), chance));
    }
    return String.join(sign, cells);
  }

  /** One column out, or into the place of another, or all its cells the same. */
  private void columns(List<String> lines, String sign, Chance chance) {
    int one = chance.below(5);
    int other = chance.below(5);
    int how = chance.below(3);
    String same = text.words().any(chance);
    for (int i = 0; i < lines.size(); i++) {
      List<String> cells = split(lines.get(i), sign);
      if (one < cells.size() && other < cells.size()) {
        switch (how) {
          case 0 -> cells.remove(one);
          case 1 -> cells.set(one, cells.set(other, cells.get(one)));
          default -> cells.set(one, same);
        }
        lines.set(i, String.join(sign, cells));
      }
    }
  }
}
