package kelter.cli.text;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import kelter.core.safety.Caution;

/**
 * The cautions of one text: each in full where it comes first, after that by its first sentence, or
 * by more of it where others start with the same.
 */
public final class CautionLines {

  /** More of a text than its first sentence, up to the end of a word. */
  private static final int MORE = 60;

  private final Set<String> told = new LinkedHashSet<>();
  private final Layout layout;

  /**
   * Cautions of one text.
   *
   * @param layout where they are written
   */
  public CautionLines(Layout layout) {
    this.layout = layout;
  }

  /**
   * Writes the cautions of a step.
   *
   * @param indent what stands in front of each
   * @param cautions the cautions
   */
  public void write(String indent, List<Caution> cautions) {
    for (Caution caution : cautions) {
      String whole = caution.display();
      layout.hanging(indent + "! ", told.add(whole) ? whole : again(whole));
    }
  }

  private String again(String whole) {
    String sentence = firstSentence(whole);
    boolean shared =
        told.stream()
            .anyMatch(other -> !other.equals(whole) && firstSentence(other).equals(sentence));
    String named = shared ? start(whole) : sentence;
    return named.equals(whole) ? whole : named + " (as above)";
  }

  private static String start(String whole) {
    int end = whole.length() <= MORE ? -1 : whole.lastIndexOf(' ', MORE);
    return end < 0 ? whole : whole.substring(0, end) + " …";
  }

  /** Writes those cautions that have not been told yet. */
  void writeNew(String indent, List<Caution> cautions) {
    for (Caution caution : cautions) {
      if (told.add(caution.display())) {
        layout.hanging(indent + "! ", caution.display());
      }
    }
  }

  private static String firstSentence(String text) {
    int stop = text.indexOf(". ");
    return stop < 0 ? text : text.substring(0, stop);
  }
}
