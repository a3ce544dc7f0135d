package kelter.cli.text;

import java.util.List;
import kelter.cli.terminal.Terminal;
import kelter.core.safety.Caution;

/** What to mind about the instruments of a job, for a person. */
public final class JobCautionsText {

  private JobCautionsText() {}

  /**
   * Writes what stands above the results of a job.
   *
   * @param cautions what to mind, may be empty
   * @param terminal where it will be shown
   * @return the text with an empty line below; empty if there is nothing to mind
   */
  public static String of(List<Caution> cautions, Terminal terminal) {
    if (cautions.isEmpty()) {
      return "";
    }
    Layout layout = new Layout(terminal);
    new Cautions(layout).write("", cautions);
    return layout.blank().toString();
  }
}
