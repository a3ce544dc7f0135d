package kelter.cli.text;

import java.util.ArrayList;
import java.util.List;
import kelter.core.safety.Caution;

/** What stands in front of the one step of a screen: what to mind, the gravest in full. */
public final class StepText {

  private static final String MORE = " (more: --full)";

  private final Layout layout;
  private final int width;

  /**
   * The steps of one screen.
   *
   * @param layout where they are written
   * @param width the width of the terminal, in characters
   */
  public StepText(Layout layout, int width) {
    this.layout = layout;
    this.width = width;
  }

  /**
   * Writes one caution in full, how to lock off or else the worst, and all others in one line.
   *
   * @param indent what stands in front of each
   * @param cautions the cautions of the step
   */
  public void cautions(String indent, List<Caution> cautions) {
    String mark = indent + "! ";
    List<Caution> others = new ArrayList<>(cautions);
    others.sort(StepText::compare);
    if (!others.isEmpty()) {
      layout.hanging(mark, others.remove(0).display());
    }
    if (!others.isEmpty()) {
      layout.hanging(mark, inOneLine(others, width - mark.length()));
    }
  }

  /** Locking off first, then by how bad it can get. */
  private static int compare(Caution one, Caution other) {
    int byUnplug = Boolean.compare(other.equals(Caution.UNPLUG), one.equals(Caution.UNPLUG));
    return byUnplug != 0 ? byUnplug : one.signal().compareTo(other.signal());
  }

  /** Whole where it fits, else as many first sentences as do. */
  private static String inOneLine(List<Caution> cautions, int room) {
    String first = cautions.get(0).display();
    if (cautions.size() == 1 && first.length() <= room) {
      return first;
    }
    StringBuilder line = new StringBuilder(firstSentence(first));
    for (Caution caution : cautions.subList(1, cautions.size())) {
      String next = " " + firstSentence(caution.text());
      if (line.length() + next.length() + MORE.length() > room) {
        break;
      }
      line.append(next);
    }
    return line + MORE;
  }

  public static String firstSentence(String text) {
    int stop = text.indexOf(". ");
    return stop < 0 ? text : text.substring(0, stop + 1);
  }

  /**
   * Words with a capital at their beginning.
   *
   * @param words the words, may be empty
   * @return the same as the beginning of a sentence
   */
  public static String sentence(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
