package kelter.cli.terminal;

import java.util.ArrayList;
import java.util.List;

/** Words put into lines. */
public final class Words {

  private Words() {}

  /**
   * Puts words into lines, with one space between them; a word that is wider than a line gets one
   * for itself.
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
    }
    lines.add(line.toString());
    return lines;
  }
}
