package kelter.core.file.log.row;

import java.util.List;
import kelter.core.file.log.cell.Look;
import kelter.core.problem.Problem;
import org.apache.commons.csv.CSVRecord;

/**
 * What a row of a log may be besides a reading.
 *
 * @param file the name of the log
 * @param width how many columns it has
 * @param delimiter what stands between them
 * @param header the cells of its headings; empty if there are none
 * @param told the place of the column that tells a footer, from 0: that of the times, or the first
 * @param timed whether it is that of the times
 */
public record RowShape(
    String file, int width, char delimiter, List<String> header, int told, boolean timed) {

  /**
   * Whether a row is empty.
   *
   * @param cells a row
   * @return whether it is
   */
  public static boolean isBlank(CSVRecord cells) {
    return cells.size() == 1 && cells.get(0).isBlank();
  }

  /**
   * Whether a row is the headings again, as of a meter that was switched on again.
   *
   * @param cells a row
   * @return whether it is, perhaps with units behind
   */
  public boolean isHeading(CSVRecord cells) {
    return !header.isEmpty()
        && cells.size() >= header.size()
        && cells.toList().subList(0, header.size()).equals(header);
  }

  /**
   * A row that is no reading by its first cells: it has no time where the others have one, or words
   * in front where they have figures.
   *
   * @param cells a row
   * @return whether it may stand below the readings
   */
  public boolean mayBeFooter(CSVRecord cells) {
    String cell = cells.size() > told ? cells.get(told) : "";
    return isWords(cell) || (timed && cell.isEmpty() && cells.stream().anyMatch(RowShape::isWords));
  }

  private static boolean isWords(String cell) {
    return Character.isLetter(letter(cell)) && Look.of(cell) == Look.WORDS;
  }

  private static char letter(String cell) {
    int i = 0;
    while (i < cell.length() && !Character.isLetterOrDigit(cell.charAt(i))) {
      i++;
    }
    return i < cell.length() ? cell.charAt(i) : ' ';
  }

  /**
   * Whether a row has more or fewer cells than the others; one delimiter more at the end is none.
   *
   * @param cells a row
   * @return whether it has
   */
  public boolean isRagged(CSVRecord cells) {
    boolean open = cells.size() == width + 1 && cells.get(width).isBlank();
    return cells.size() != width && !open;
  }

  /**
   * What is wrong with a ragged row.
   *
   * @param row its number
   * @param cells its cells
   * @return where it is, what it has and how to mend it
   */
  public Problem ragged(long row, CSVRecord cells) {
    String other = otherDelimiter(cells);
    String remedy =
        other.isEmpty()
            ? "complete the row, or take it out"
            : "it seems to be split by '%s' where the others are by '%s'"
                .formatted(other, shown(delimiter));
    return new Problem(
        "%s, row %s, column %s".formatted(file, row, Math.min(cells.size(), width) + 1),
        "the row has %s %s, the others have %s"
            .formatted(cells.size(), cells.size() == 1 ? "column" : "columns", width),
        remedy);
  }

  private String otherDelimiter(CSVRecord cells) {
    String line = String.join(String.valueOf(delimiter), cells);
    for (char c : LogHead.DELIMITERS) {
      boolean splits = LogCsv.rows(line, c, 1).stream().anyMatch(row -> row.size() == width);
      if (c != delimiter && splits) {
        return shown(c);
      }
    }
    return "";
  }

  private static String shown(char delimiter) {
    return delimiter == '\t' ? "tab" : String.valueOf(delimiter);
  }
}
