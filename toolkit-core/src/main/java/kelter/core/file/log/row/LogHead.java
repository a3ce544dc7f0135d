package kelter.core.file.log.row;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.file.log.cell.Look;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;

/** Recognises the rows of a log by its first ones: what splits columns, where readings begin. */
public final class LogHead {

  /** How many rows are looked at. */
  static final int ROWS = 300;

  /** What may stand between columns. */
  public static final List<Character> DELIMITERS = List.of(';', '\t', '|', ',');

  private static final double MOST = 0.5;
  private static final double SOME = 0.2;
  private static final String DIRECTIVE = "sep=";

  private final String file;
  private final List<List<String>> lines;
  private final char delimiter;
  private final int width;
  private int first;
  private List<Look> usual = List.of();

  private LogHead(String file, String head, boolean complete, char delimiter) {
    this.file = file;
    this.delimiter = delimiter;
    List<List<String>> rows = new ArrayList<>(LogCsv.rows(head, delimiter, ROWS));
    if (!complete && rows.size() < ROWS && rows.size() > 1) {
      rows.remove(rows.size() - 1);
    }
    while (!rows.isEmpty() && isBlank(rows.get(rows.size() - 1))) {
      rows.remove(rows.size() - 1);
    }
    this.lines = rows;
    this.width = usualWidth(rows);
  }

  /**
   * Recognises the rows of a log.
   *
   * @param file the name of the log
   * @param head its first characters
   * @param complete whether there are no more
   * @param delimiter what stands between columns, if it is said
   * @param decimal the decimal sign, if it is said
   * @return its rows
   * @throws InputException if there are no readings, or it cannot be told what splits columns
   */
  public static LogHead find(
      String file,
      String head,
      boolean complete,
      Optional<Character> delimiter,
      Optional<Character> decimal) {
    if (head.isBlank()) {
      throw new InputException(file, "holds nothing but blanks", "name the log of an instrument");
    }
    LogHead best = null;
    List<Character> candidates = delimiter.map(List::of).orElseGet(() -> candidates(head, decimal));
    for (char each : candidates) {
      LogHead candidate = new LogHead(file, head, complete, each);
      if (best == null || candidate.score() > best.score()) {
        best = candidate;
      }
    }
    best.findFirst();
    if (delimiter.isEmpty()) {
      best.refuseSplitDecimals();
    }
    return best;
  }

  /** A comma that was said to be the decimal sign splits columns only where quotes tell the two. */
  private static List<Character> candidates(String head, Optional<Character> decimal) {
    String start = head.startsWith("\uFEFF") ? head.substring(1) : head;
    if (start.startsWith(DIRECTIVE) && start.length() > DIRECTIVE.length()) {
      return List.of(start.charAt(DIRECTIVE.length()));
    }
    boolean noComma = decimal.equals(Optional.of(',')) && head.indexOf('"') < 0;
    return noComma ? DELIMITERS.subList(0, DELIMITERS.size() - 1) : DELIMITERS;
  }

  /**
   * What stands between columns.
   *
   * @return the delimiter
   */
  public char delimiter() {
    return delimiter;
  }

  /**
   * How many columns there are.
   *
   * @return the number
   */
  public int width() {
    return width;
  }

  /**
   * The first row of readings.
   *
   * @return its number, from 0
   */
  public int first() {
    return first;
  }

  /**
   * The rows of readings among those that were looked at.
   *
   * @return their cells
   */
  public List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    for (List<String> line : lines.subList(first, lines.size())) {
      if (isData(line)) {
        rows.add(row(line));
      }
    }
    return rows;
  }

  /**
   * Whether all rows of the log were looked at.
   *
   * @param complete whether the first characters were all
   * @return whether it is so
   */
  public boolean sawAll(boolean complete) {
    return complete && lines.size() < ROWS;
  }

  /** How well a delimiter explains the rows: the part of them, and of their cells, that fit. */
  private double score() {
    double fits = 0;
    for (List<String> line : lines) {
      fits += (double) row(line).stream().filter(Look::isReading).count() / width;
    }
    return width > 1 ? fits + 1e-6 * width : fits / 2;
  }

  static boolean isBlank(List<String> line) {
    return line.stream().allMatch(String::isBlank);
  }

  /** How many columns most rows have; a delimiter at the end of all of them opens no column. */
  private static int usualWidth(List<List<String>> lines) {
    Map<Integer, Integer> counts = new LinkedHashMap<>();
    Map<Integer, Integer> open = new LinkedHashMap<>();
    for (List<String> cells : lines) {
      if (!isBlank(cells)) {
        counts.merge(cells.size(), 1, Integer::sum);
        open.merge(cells.size(), cells.get(cells.size() - 1).isEmpty() ? 1 : 0, Integer::sum);
      }
    }
    int usual =
        counts.entrySet().stream()
            .max(Map.Entry.<Integer, Integer>comparingByValue().thenComparing(Map.Entry::getKey))
            .map(Map.Entry::getKey)
            .orElse(1);
    boolean allOpen = usual > 1 && open.get(usual).equals(counts.get(usual));
    return allOpen ? usual - 1 : usual;
  }

  /**
   * The cells of a row of the usual width.
   *
   * @param cells a row
   * @return its cells; none of a row of another width
   */
  public List<String> row(List<String> cells) {
    boolean open = cells.size() == width + 1 && cells.get(width).isEmpty();
    return open ? cells.subList(0, width) : cells.size() == width ? cells : List.of();
  }

  /**
   * What each column holds: times or figures if a good part of its cells are some, since words may
   * stand above and below them.
   */
  private List<Look> usualLooks() {
    List<Look> usual = new ArrayList<>();
    List<List<String>> rows = lines.stream().map(this::row).filter(row -> !row.isEmpty()).toList();
    for (int i = 0; i < width; i++) {
      Map<Look, Integer> counts = new EnumMap<>(Look.class);
      for (List<String> row : rows) {
        Look look = Look.of(row.get(i));
        counts.merge(look == Look.BEYOND ? Look.FIGURE : look, 1, Integer::sum);
      }
      int times = counts.getOrDefault(Look.TIME, 0);
      int figures = counts.getOrDefault(Look.FIGURE, 0);
      boolean some = Math.max(times, figures) >= SOME * rows.size();
      usual.add(!some ? Look.WORDS : times >= figures ? Look.TIME : Look.FIGURE);
    }
    return usual;
  }

  /**
   * Whether a row looks like the others: a time where they have one, and most of the figures.
   *
   * @param line a row
   * @return whether it does
   */
  public boolean isData(List<String> line) {
    List<String> cells = row(line);
    int figures = 0;
    int wanted = 0;
    for (int i = 0; i < cells.size(); i++) {
      Look look = Look.of(cells.get(i));
      if (usual.get(i) == Look.TIME && look != Look.TIME) {
        return false;
      }
      boolean figure = look == Look.FIGURE || look == Look.BEYOND || look == Look.NONE;
      wanted += usual.get(i) == Look.FIGURE ? 1 : 0;
      figures += usual.get(i) == Look.FIGURE && figure ? 1 : 0;
    }
    return wanted > 0 && figures >= MOST * wanted;
  }

  private void findFirst() {
    usual = usualLooks();
    first = 0;
    while (first < lines.size() && !isData(lines.get(first))) {
      first++;
    }
    if (first == lines.size()) {
      throw noReadings();
    }
    requireNoRaggedRowAbove();
  }

  /** A row of figures of another width is a damaged row of readings and no words above them. */
  private void requireNoRaggedRowAbove() {
    for (int i = 0; i < first; i++) {
      List<String> cells = lines.get(i);
      boolean figures =
          cells.stream().anyMatch(Look::isFigure) && cells.stream().allMatch(Look::isReading);
      if (figures && cells.size() > 1 && row(cells).isEmpty()) {
        throw new InputException(
            file + ", row " + (i + 1) + ", column " + (Math.min(cells.size(), width) + 1),
            "the row has " + cells.size() + " columns, the others have " + width,
            "complete the row, or take it out");
      }
    }
  }

  private InputException noReadings() {
    boolean heading = lines.stream().filter(line -> !isBlank(line)).count() <= 2;
    return new InputException(
        file,
        heading
            ? "has a heading but no row of readings"
            : "no row of readings was recognised among the first %s".formatted(lines.size()),
        "a row of readings has columns with figures between ; , | or tabs");
  }

  /**
   * A comma that splits columns of whole figures only may be the decimal sign as well, unless as
   * many headings stand above.
   */
  private void refuseSplitDecimals() {
    List<String> above = first > 0 ? lines.get(first - 1) : List.of("");
    boolean told = !row(above).isEmpty() && above.stream().noneMatch(Look::isFigure);
    boolean points =
        rows().stream()
            .flatMap(List::stream)
            .anyMatch(cell -> hasMark(cell) && Look.isFigure(cell));
    if (delimiter == ',' && width > 1 && !told && !points) {
      throw new InputException(
          List.of(
              new Problem(
                  "%s, row %s".formatted(file, first + 1),
                  "the comma may split columns or decimals: %s, under %s"
                      .formatted(
                          String.join(",", lines.get(first)),
                          isBlank(above) ? "no headings" : String.join(",", above)),
                  "say --delimiter , if it splits columns; else write the log with another"
                      + " delimiter, or, if it has one column, say --decimal comma")));
    }
    boolean ragged = above.size() > 1 && row(above).isEmpty() && !isBlank(above);
    boolean words = above.stream().noneMatch(cell -> !cell.isEmpty() && Look.isReading(cell));
    if (ragged && words && above.stream().filter(cell -> !cell.isEmpty()).count() > 1) {
      throw new InputException(
          "%s, row %s".formatted(file, first),
          "the headings are %s, the columns of readings %s".formatted(above.size(), width),
          "complete the headings, or put an empty row between them and the readings; if commas"
              + " are decimal signs too, write the log with another delimiter");
    }
  }

  private static boolean hasMark(String cell) {
    return cell.indexOf('.') >= 0 || cell.indexOf(',') >= 0;
  }

  /**
   * The rows of words right above the readings and as wide as they are.
   *
   * @return the rows, the nearest first
   */
  public List<List<String>> above() {
    List<List<String>> above = new ArrayList<>();
    for (int i = first - 1; i >= 0 && !row(lines.get(i)).isEmpty(); i--) {
      if (isBlank(lines.get(i))) {
        break;
      }
      above.add(row(lines.get(i)));
    }
    return above;
  }
}
