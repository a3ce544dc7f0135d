package kelter.core.safety.lockout;

/**
 * A reading that is still open before a row lets go.
 *
 * @param component the id of the component; empty where the job lists none of the kind
 * @param observable the word for what is read
 * @param warm whether it counts only on a warm part
 */
public record Reread(String component, String observable, boolean warm) {

  /** The job lists no part on which it could be read. */
  static final Reread NOTHING_KNOWN = new Reread("", "", false);

  /**
   * The words for a person.
   *
   * @return component and what is read
   */
  public String display() {
    return component.isEmpty()
        ? "a part that the job does not list"
        : component + " " + observable.replace('-', ' ') + (warm ? ", warm" : "");
  }
}
