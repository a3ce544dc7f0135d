package kelter.cli.sheet;

import kelter.cli.text.StepText;

/**
 * A step of a work sheet as it is shown.
 *
 * @param caution whether it says what can hurt, and is no step
 * @param text what it says, without its mark
 */
record SheetStep(boolean caution, String text) {

  private static final String MARK = "! ";

  /** The step that a sheet writes so, with {@code "! "} in front of a caution. */
  static SheetStep of(String step) {
    return step.startsWith(MARK)
        ? new SheetStep(true, step.substring(MARK.length()))
        : new SheetStep(false, StepText.sentence(step));
  }
}
