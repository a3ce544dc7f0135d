package kelter.cli.terminal;

import java.util.ArrayList;
import java.util.List;

/** Words put into lines. */
public final class Words {

  private Words() {}

  /**
   * Puts words into lines, with one space between them; a word that is wider than a line is broken
   * at a no-break space, else behind a full stop or hyphen, or gets a line for itself where it has
   * none.
   *
   * @param words the words, one or more
   * @param first the most characters of the first line
   * @param others the most characters of each other line
   * @return the lines, one or more
   */
  public static List<String> lines(List<String> words, int first, int others) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : words) {
      int room = lines.isEmpty() ? first : others;
      if (line.length() > 0 && line.length() + 1 + word.length() > room) {
        lines.add(line.toString().stripTrailing());
        line.setLength(0);
      } else if (line.length() > 0) {
        line.append(' ');
      }
      line.append(word);
      breakLong(line, room, others, lines);
    }
    lines.add(line.toString());
    return lines;
  }

  /** Takes whole lines off a line that is too long, as far as it can be broken. */
  private static void breakLong(StringBuilder line, int room, int others, List<String> lines) {
    int most = room;
    while (line.length() > most) {
      int space = line.lastIndexOf("\u00a0", most - 1);
      int cut =
          space > 0
              ? space
              : Math.max(line.lastIndexOf(".", most - 1), line.lastIndexOf("-", most - 1));
      if (cut < 1 || line.indexOf(" ") >= 0 || line.charAt(cut - 1) == '-') {
        return;
      }
      lines.add(line.substring(0, space > 0 ? cut : cut + 1));
      line.delete(0, cut + 1);
      most = others;
    }
  }
}
