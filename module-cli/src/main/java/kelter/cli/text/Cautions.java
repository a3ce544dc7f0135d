package kelter.cli.text;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import kelter.core.safety.Caution;

/** The cautions of one text: each in full where it comes first, by its first words after that. */
public final class Cautions {

  private final Set<String> told = new HashSet<>();
  private final Layout layout;

  /**
   * Cautions of one text.
   *
   * @param layout where they are written
   */
  public Cautions(Layout layout) {
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
      layout.hanging(
          indent + "! ",
          told.add(caution.display())
              ? caution.display()
              : caution.signal() + ": " + firstWords(caution.text()) + " (as above)");
    }
  }

  /** Writes those cautions that have not been told yet. */
  void writeNew(String indent, List<Caution> cautions) {
    for (Caution caution : cautions) {
      if (told.add(caution.display())) {
        layout.hanging(indent + "! ", caution.display());
      }
    }
  }

  private static String firstWords(String text) {
    int stop = text.indexOf(". ");
    return stop < 0 ? text : text.substring(0, stop);
  }
}
