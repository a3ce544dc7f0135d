package kelter.cli.text;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kelter.core.safety.Caution;

/**
 * The cautions of one text: each in full where it comes first, after that by its first sentence, or
 * by more of it where others start with the same.
 */
public final class CautionLines {

  /** More of a text than its first sentence, up to the end of a word. */
  private static final int MORE = 60;

  /** So often a caution of one sentence stands in full. */
  private static final int IN_FULL = 2;

  private final Map<String, Integer> told = new LinkedHashMap<>();
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
      int times = told.merge(whole, 1, Integer::sum);
      layout.hanging(indent + "! ", times == 1 ? whole : again(whole, times));
    }
  }

  private String again(String whole, int times) {
    String sentence = firstSentence(whole);
    boolean shared =
        told.keySet().stream()
            .anyMatch(other -> !other.equals(whole) && firstSentence(other).equals(sentence));
    boolean often = times > IN_FULL && sentence.equals(whole);
    String named = shared || often ? start(whole) : sentence;
    return named.equals(whole) ? whole : named + " (as above)";
  }

  private static String start(String whole) {
    int end = whole.length() <= MORE ? -1 : whole.lastIndexOf(' ', MORE);
    return end < 0 ? whole : whole.substring(0, end) + " …";
  }

  /** Writes those cautions that have not been told yet. */
  void writeNew(String indent, List<Caution> cautions) {
    for (Caution caution : cautions) {
      if (told.putIfAbsent(caution.display(), 1) == null) {
        layout.hanging(indent + "! ", caution.display());
      }
    }
  }

  private static String firstSentence(String text) {
    int stop = text.indexOf(". ");
    return stop < 0 ? text : text.substring(0, stop);
  }
}
