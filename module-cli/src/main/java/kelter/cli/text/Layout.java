package kelter.cli.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kelter.cli.terminal.Terminal;
import kelter.cli.terminal.Words;

/**
 * Lines of text, wrapped and aligned within the width of the terminal. What is put in is made
 * harmless first, so that no word can begin a line of its own. A line is never broken at a no-break
 * space, which comes out as a plain one.
 */
public final class Layout {

  /** A column narrower than this is not worth wrapping into. */
  private static final int LEAST_ROOM = 20;

  /** How far what stands below its label is set in. */
  private static final int BELOW = 4;

  private final StringBuilder text = new StringBuilder();
  private final Terminal terminal;

  /**
   * An empty text.
   *
   * @param terminal where it will be shown
   */
  public Layout(Terminal terminal) {
    this.terminal = terminal;
  }

  /**
   * A heading, below an empty line unless it is the first.
   *
   * @param words the heading
   * @return this text
   */
  public Layout heading(String words) {
    if (text.length() > 0) {
      text.append('\n');
    }
    for (String line : wrap(terminal.shown(words), terminal.width())) {
      text.append(terminal.heading(line)).append('\n');
    }
    return this;
  }

  /**
   * A paragraph whose first line starts with a label and whose others hang below its text; below
   * the label where the terminal has no room for a word beside it.
   *
   * @param label what stands in front
   * @param words the paragraph
   * @return this text
   */
  public Layout hanging(String label, String words) {
    String front = terminal.shown(label);
    int indent = front.length();
    if (indent > BELOW && isTooWide(words, terminal.width() - indent)) {
      String lead = label.substring(0, label.length() - label.stripLeading().length());
      return hanging(lead, label.strip()).hanging(" ".repeat(BELOW), words);
    }
    List<String> lines = wrap(terminal.shown(words), terminal.width() - indent);
    for (int i = 0; i < lines.size(); i++) {
      text.append(i == 0 ? front : " ".repeat(indent)).append(lines.get(i)).append('\n');
    }
    return this;
  }

  /**
   * A paragraph.
   *
   * @param words the paragraph
   * @return this text
   */
  public Layout line(String words) {
    return hanging("", words);
  }

  /**
   * A line of a picture, never wrapped.
   *
   * @param line the line
   * @return this text
   */
  public Layout asIs(String line) {
    text.append(terminal.shown(line)).append('\n');
    return this;
  }

  /**
   * An empty line.
   *
   * @return this text
   */
  public Layout blank() {
    text.append('\n');
    return this;
  }

  /**
   * Rows in columns; the last column is wrapped, or stands below the others where the terminal has
   * no room for it beside them.
   *
   * @param indent what stands in front of each line
   * @param cells the rows
   * @return this text
   */
  public Layout table(String indent, List<List<String>> cells) {
    List<List<String>> rows = shown(cells);
    int columns = rows.stream().mapToInt(List::size).max().orElse(0);
    int[] width = new int[columns];
    for (List<String> row : rows) {
      for (int c = 0; c < row.size() - 1; c++) {
        width[c] = Math.max(width[c], row.get(c).length());
      }
    }
    for (List<String> row : rows) {
      StringBuilder label = new StringBuilder(indent);
      for (int c = 0; c < row.size() - 1; c++) {
        label.append(row.get(c)).append(" ".repeat(width[c] - row.get(c).length() + 2));
      }
      String last = row.get(row.size() - 1);
      if (label.length() + LEAST_ROOM > terminal.width() && label.length() > indent.length()) {
        hanging(indent, label.substring(indent.length()).strip());
        hanging(indent + "    ", last);
      } else {
        hanging(label.toString(), last);
      }
    }
    return this;
  }

  /**
   * Rows of figures in columns, the first row a head. Where they are too wide for the terminal, the
   * first column gets a line of its own.
   *
   * @param indent what stands in front of each line
   * @param cells the rows
   * @return this text
   */
  public Layout figures(String indent, List<List<String>> cells) {
    List<List<String>> rows = shown(cells);
    int columns = rows.get(0).size();
    int[] width = new int[columns];
    int total = indent.length();
    for (int c = 0; c < columns; c++) {
      for (List<String> row : rows) {
        width[c] = Math.max(width[c], row.get(c).length());
      }
      total += width[c] + (c == 0 ? 0 : 2);
    }
    boolean stacked = total > terminal.width();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder(indent);
      if (stacked) {
        hanging(indent, row.get(0));
        line.append("  ");
      }
      for (int c = stacked ? 1 : 0; c < columns; c++) {
        line.append(row.get(c)).append(" ".repeat(width[c] - row.get(c).length() + 2));
      }
      text.append(line.toString().stripTrailing()).append('\n');
    }
    return this;
  }

  private List<List<String>> shown(List<List<String>> cells) {
    List<List<String>> rows = new ArrayList<>();
    for (List<String> row : cells) {
      List<String> shown = new ArrayList<>();
      for (String cell : row) {
        shown.add(terminal.shown(cell));
      }
      rows.add(shown);
    }
    return rows;
  }

  /** Whether a word does not fit beside a label, and does below it. */
  private boolean isTooWide(String words, int room) {
    for (String word : terminal.shown(words).split("[ \u00a0]")) {
      if (word.length() > room && word.length() <= terminal.width() - BELOW) {
        return true;
      }
    }
    return false;
  }

  private static List<String> wrap(String words, int width) {
    int room = Math.max(LEAST_ROOM, width);
    return Words.lines(Arrays.asList(words.split(" ", -1)), room, room);
  }

  @Override
  public String toString() {
    return text.toString().replace('\u00a0', ' ');
  }
}
