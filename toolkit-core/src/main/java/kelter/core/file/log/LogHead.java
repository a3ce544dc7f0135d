package kelter.core.file.log;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kelter.core.file.log.LogFormat.Column;
import kelter.core.file.log.LogFormat.Role;
import kelter.core.problem.InputException;

/** Recognises a log by its first rows. */
final class LogHead {

  /** How many rows are looked at. */
  private static final int ROWS = 300;

  static final List<Character> DELIMITERS = List.of(';', '\t', '|', ',');
  private static final double MOST = 0.5;
  private static final int LONGEST_UNIT = 8;

  /** Headings of numbers of rows. */
  private static final Set<String> ROW_WORDS =
      Set.of("no", "no.", "nr", "nr.", "#", "index", "sample", "record", "row", "number", "id");

  private static final Pattern WITH_UNIT =
      Pattern.compile("(?<name>.*?)\\s*(?:\\[(?<a>[^\\]]*)\\]|\\((?<b>[^)]*)\\)|/\\s*(?<c>\\S+))");

  private final String file;
  private final List<String> lines;
  private final char delimiter;
  private final int width;
  private final char point;

  private LogHead(String file, List<String> lines, char delimiter) {
    this.file = file;
    this.lines = lines;
    this.delimiter = delimiter;
    this.width = usualWidth(lines, delimiter);
    this.point = point(lines, delimiter, width);
  }

  /**
   * What a log looks like, and how its times are read.
   *
   * @param format what was recognised
   * @param clock where its times stand and how they are read
   */
  record Found(LogFormat format, LogClock clock) {}

  static Found find(
      String file, String head, boolean complete, LogEncoding encoding, LogOptions options) {
    List<String> lines = new ArrayList<>(List.of(head.split("\\r\\n|\\n|\\r", -1)));
    if (!complete || lines.get(lines.size() - 1).isEmpty()) {
      lines.remove(lines.size() - 1);
    }
    if (lines.stream().allMatch(String::isBlank)) {
      throw new InputException(file, "holds nothing but blanks", "name the log of an instrument");
    }
    List<String> first = lines.subList(0, Math.min(ROWS, lines.size()));
    LogHead best = null;
    for (char delimiter : options.delimiter().map(List::of).orElse(DELIMITERS)) {
      LogHead candidate = new LogHead(file, first, delimiter);
      if (best == null || candidate.score() > best.score()) {
        best = candidate;
      }
    }
    return best.found(encoding, options.every());
  }

  /** How well a delimiter explains the rows: the part of them, and of their cells, that fit. */
  private double score() {
    double fits = 0;
    for (String line : lines) {
      fits += (double) row(line).stream().filter(this::isReading).count() / width;
    }
    return width > 1 ? fits + 1e-6 * width : fits / 2;
  }

  static List<String> cells(String line, char delimiter) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (c == delimiter && !quoted) {
        cells.add(cell.toString().strip());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    cells.add(cell.toString().strip());
    return cells;
  }

  /** How many columns most rows have; a delimiter at the end of all of them opens no column. */
  private static int usualWidth(List<String> lines, char delimiter) {
    Map<Integer, Integer> counts = new LinkedHashMap<>();
    Map<Integer, Integer> open = new LinkedHashMap<>();
    for (String line : lines) {
      if (!line.isBlank()) {
        List<String> cells = cells(line, delimiter);
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

  /** The cells of a row of the usual width; none of a row of another. */
  private static List<String> row(String line, char delimiter, int width) {
    List<String> cells = cells(line, delimiter);
    boolean open = cells.size() == width + 1 && cells.get(width).isEmpty();
    return open ? cells.subList(0, width) : cells.size() == width ? cells : List.of();
  }

  private List<String> row(String line) {
    return row(line, delimiter, width);
  }

  private static char point(List<String> lines, char delimiter, int width) {
    int commas = 0;
    int points = 0;
    for (String line : lines) {
      for (String cell : row(line, delimiter, width)) {
        boolean comma = cell.indexOf(',') >= 0 && LogCells.figureEnd(cell, ',') > cell.indexOf(',');
        boolean point = cell.indexOf('.') >= 0 && LogCells.figureEnd(cell, '.') > cell.indexOf('.');
        boolean time = LogTime.shape(cell).isTime();
        commas += comma && !time ? 1 : 0;
        points += point && !time ? 1 : 0;
      }
    }
    return delimiter != ',' && commas > points ? ',' : '.';
  }

  /** A figure, perhaps with its unit behind it, a time, or the mark of no value. */
  private boolean isReading(String cell) {
    return isFigure(cell) || LogCells.isNoFigure(cell) || LogTime.shape(cell).isTime();
  }

  private boolean isFigure(String cell) {
    int end = LogCells.figureEnd(cell, point);
    return end > 0 && unitBehind(cell, end) != null;
  }

  /** The unit behind a figure; null if what stands there is none. */
  private static String unitBehind(String cell, int end) {
    String rest = cell.substring(end).strip();
    boolean unit =
        rest.length() <= LONGEST_UNIT
            && rest.chars().noneMatch(c -> Character.isDigit(c) || ",.:;|-".indexOf(c) >= 0);
    return unit ? rest : null;
  }

  /** What a cell looks like. */
  private enum Look {
    TIME,
    FIGURE,
    NONE,
    WORDS
  }

  private Look look(String cell) {
    if (LogTime.shape(cell).isTime()) {
      return Look.TIME;
    }
    if (isFigure(cell)) {
      return Look.FIGURE;
    }
    return LogCells.isNoFigure(cell) ? Look.NONE : Look.WORDS;
  }

  /** What most cells of each column look like in the later half of the rows. */
  private List<Look> usualLooks() {
    List<Look> usual = new ArrayList<>();
    for (int i = 0; i < width; i++) {
      Map<Look, Integer> counts = new EnumMap<>(Look.class);
      for (String line : lines.subList(lines.size() / 2, lines.size())) {
        List<String> cells = row(line);
        if (!cells.isEmpty()) {
          counts.merge(look(cells.get(i)), 1, Integer::sum);
        }
      }
      usual.add(
          counts.entrySet().stream()
              .max(Map.Entry.comparingByValue())
              .map(Map.Entry::getKey)
              .orElse(Look.WORDS));
    }
    return usual;
  }

  /** Whether a row looks like the others: a time where they have one, and most of the figures. */
  private boolean isData(String line, List<Look> usual) {
    List<String> cells = row(line);
    int figures = 0;
    int wanted = 0;
    for (int i = 0; i < cells.size(); i++) {
      Look look = look(cells.get(i));
      if (usual.get(i) == Look.TIME && look != Look.TIME) {
        return false;
      }
      wanted += usual.get(i) == Look.FIGURE ? 1 : 0;
      figures += usual.get(i) == Look.FIGURE && (look == Look.FIGURE || look == Look.NONE) ? 1 : 0;
    }
    return wanted > 0 && figures >= MOST * wanted;
  }

  private Found found(LogEncoding encoding, double every) {
    List<Look> usual = usualLooks();
    int data = 0;
    while (data < lines.size() && !isData(lines.get(data), usual)) {
      data++;
    }
    if (data == lines.size()) {
      throw noReadings();
    }
    requireNoRaggedRowAbove(data);
    List<List<String>> rows = new ArrayList<>();
    for (String line : lines.subList(data, lines.size())) {
      List<String> cells = row(line);
      if (!cells.isEmpty()) {
        rows.add(cells);
      }
    }
    int header = headerAbove(data);
    List<String> names = header < 0 ? List.of() : row(lines.get(header));
    List<String> units = header >= 0 && header < data - 1 ? row(lines.get(data - 1)) : List.of();
    List<Column> columns = new ArrayList<>();
    for (int i = 0; i < width; i++) {
      columns.add(column(i, names, units, rows));
    }
    LogClock clock = LogClock.find(columns, rows, every);
    List<Column> told =
        columns.stream().map(each -> clock.isAt(each) ? ofTimes(each) : each).toList();
    return new Found(
        new LogFormat(
            encoding.charset().name(),
            encoding.assumed(),
            delimiter,
            point == ',',
            header + 1,
            data + 1,
            clock.timing(),
            told),
        clock);
  }

  private static Column ofTimes(Column column) {
    return new Column(column.place(), column.name(), column.heading(), column.unit(), Role.TIME);
  }

  /** A row of figures of another width is a damaged row of readings and no words above them. */
  private void requireNoRaggedRowAbove(int data) {
    for (int i = 0; i < data; i++) {
      List<String> cells = cells(lines.get(i), delimiter);
      boolean figures =
          cells.stream().anyMatch(this::isFigure) && cells.stream().allMatch(this::isReading);
      if (figures && cells.size() > 1 && row(lines.get(i)).isEmpty()) {
        throw new InputException(
            file + ", row " + (i + 1) + ", column " + (Math.min(cells.size(), width) + 1),
            "the row has " + cells.size() + " columns, the others have " + width,
            "complete the row, or take it out");
      }
    }
  }

  private InputException noReadings() {
    boolean heading = lines.stream().filter(line -> !line.isBlank()).count() <= 2;
    return new InputException(
        file,
        heading
            ? "has a heading but no row of readings"
            : "no row of readings was recognised among the first %s".formatted(lines.size()),
        "a row of readings has columns with figures between ; , | or tabs");
  }

  /**
   * The row of the headings: of the rows above the readings, the first or second of their width.
   */
  private int headerAbove(int data) {
    int above = data - 1;
    if (above < 0 || row(lines.get(above)).isEmpty()) {
      return -1;
    }
    boolean units =
        above > 0
            && !row(lines.get(above - 1)).isEmpty()
            && row(lines.get(above - 1)).stream().noneMatch(this::isReading)
            && row(lines.get(above)).stream().allMatch(cell -> cell.length() <= LONGEST_UNIT);
    return units ? above - 1 : above;
  }

  private Column column(
      int place, List<String> names, List<String> units, List<List<String>> rows) {
    String heading = place < names.size() ? names.get(place) : "";
    Matcher matcher = WITH_UNIT.matcher(heading);
    String name = heading;
    String unit = place < units.size() ? units.get(place).replaceAll("^[\\[(]|[\\])]$", "") : "";
    if (matcher.matches() && !matcher.group("name").isBlank()) {
      name = matcher.group("name");
      unit = first(matcher.group("a"), matcher.group("b"), matcher.group("c"));
    }
    int figures = 0;
    int none = 0;
    String behind = "";
    for (List<String> row : rows) {
      String cell = row.get(place);
      if (LogCells.isNoFigure(cell)) {
        none++;
      } else if (isFigure(cell)) {
        figures++;
        behind = unitBehind(cell, LogCells.figureEnd(cell, point));
      }
    }
    // A column with a figure here and there but mostly words is one of words.
    boolean value = figures > 0 && figures >= MOST * (rows.size() - none);
    boolean number = ROW_WORDS.contains(name.toLowerCase(Locale.ROOT));
    if (name.isBlank()) {
      name = "column " + (place + 1);
    }
    return new Column(
        place + 1,
        name.strip(),
        heading.isBlank() ? name : heading,
        unit.isBlank() ? behind : unit.strip(),
        value && !number ? Role.VALUE : Role.OTHER);
  }

  private static String first(String... texts) {
    for (String text : texts) {
      if (text != null) {
        return text;
      }
    }
    return "";
  }
}
