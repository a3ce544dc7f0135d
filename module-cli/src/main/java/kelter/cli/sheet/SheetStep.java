package kelter.cli.sheet;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kelter.cli.text.StepText;

/**
 * A step of a work sheet as it is shown.
 *
 * @param signal the signal word of a caution, which says what can hurt; empty for a step
 * @param text what it says, without its mark and its signal word
 */
record SheetStep(String signal, String text) {

  private static final Pattern CAUTION = Pattern.compile("! (\\p{Lu}+): (.*)");

  /** The step that a sheet writes so, with {@code "! "} in front of a caution. */
  static SheetStep of(String step) {
    Matcher caution = CAUTION.matcher(step);
    return caution.matches()
        ? new SheetStep(caution.group(1), caution.group(2))
        : new SheetStep("", StepText.sentence(step));
  }

  boolean caution() {
    return !signal.isEmpty();
  }
}
