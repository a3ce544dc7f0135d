package kelter.cli.command.entry;

import java.util.List;
import kelter.core.quantity.Nearest;
import kelter.core.workshop.Case;

/** Faults that a command line names. */
public final class FaultWords {

  private FaultWords() {}

  /** Notes each that the machine cannot have. */
  public static void hold(List<String> told, Case machine, JobEdits edits) {
    if (told.isEmpty()) {
      return;
    }
    List<String> keys = machine.faults().stream().map(each -> each.key()).toList();
    for (String word : told) {
      if (!keys.contains(word)) {
        edits.problem(
            word,
            "is no fault that is known for this machine",
            Nearest.of(word, keys)
                .map(near -> "did you mean '" + near + "'?")
                .orElse("write it as PART.FAULT; 'kelter diagnose --full' names them"));
      }
    }
  }
}
