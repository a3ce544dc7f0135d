package kelter.core.session;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import kelter.core.file.job.MarkedEdit;
import kelter.core.file.json.Json;

/**
 * The protection class as somebody types it where the earth is asked for. A machine of class II or
 * III has none; that a machine of class I has none is a fault, so that the class has to be said.
 */
final class ProtectionClassTold {

  static final String DOUBT =
      "A machine of class II (a square in a square on its nameplate) has no earth: then type class"
          + " II. On any other a missing earth is a fault: type OL.";

  private static final Set<String> DOUBTED =
      Set.of(
          "no earth", "no ground", "not applicable", "n/a", "does not apply", "double insulated");

  private ProtectionClassTold() {}

  static boolean isTold(String word) {
    return word.matches("(protection )?class *(i{1,3}|[1-3])");
  }

  static boolean isDoubted(String word) {
    return DOUBTED.contains(word);
  }

  static boolean isAsked(Prompt prompt) {
    return prompt instanceof Prompt.Look look && look.test().step().equals("earth")
        || prompt instanceof Prompt.Failed failed && failed.test().step().equals("earth")
        || prompt instanceof Prompt.Measure measure
            && measure.question().observable().id().startsWith("protective-conductor");
  }

  /** The class in Roman figures, as it stands in a job. */
  static String of(String word) {
    String told = word.substring(word.indexOf("class") + "class".length()).strip();
    return told.matches("[1-3]")
        ? "I".repeat(Integer.parseInt(told))
        : told.toUpperCase(Locale.ROOT);
  }

  static Json.Obj in(Json.Obj job, String word) {
    return MarkedEdit.plate(job, Optional.empty(), "protection-class", of(word));
  }
}
