package kelter.core.safety.lockout;

/**
 * A reading that is still open before a row lets go.
 *
 * @param component the id of the component; empty where the machine has none of the kind
 * @param observable the word for what is read; empty where nothing is known that could be read
 * @param warm whether it counts only on a warm part
 * @param step the id of the test to which the figure is written, where the machine has no part on
 *     which it is read; else empty
 */
public record Reread(String component, String observable, boolean warm, String step) {

  /** Nothing is known on which it could be read. */
  static final Reread NOTHING_KNOWN = new Reread("", "", false, "");

  /**
   * A reading on a component.
   *
   * @param component the id of the component
   * @param observable the word for what is read
   * @param warm whether it counts only on a warm part
   * @return what is open
   */
  public static Reread of(String component, String observable, boolean warm) {
    return new Reread(component, observable, warm, "");
  }

  /** A figure that is read where the machine is connected. */
  static Reread at(String step, String observable) {
    return new Reread("", observable, false, step);
  }

  /**
   * Whether it is a figure of a test before power.
   *
   * @param test the test
   * @return true if the figure is written to that test, and read dead
   */
  public boolean isAt(ReleaseTest test) {
    return !step.isEmpty() && step.equals(test.step()) && !test.powered();
  }

  /**
   * The words for a person.
   *
   * @return component and what is read
   */
  public String display() {
    if (observable.isEmpty()) {
      return "a part that the job does not list";
    }
    String read = observable.replace('-', ' ');
    return component.isEmpty()
        ? read + " where the machine is connected"
        : component + " " + read + (warm ? ", warm" : "");
  }
}
