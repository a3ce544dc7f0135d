package kelter.core.job;

import kelter.core.problem.Required;

/**
 * What the owner says and what the machine displays.
 *
 * @param said what the owner says; empty for a routine check without a complaint
 * @param displayed what the machine displays, may be empty
 */
public record Complaint(String said, String displayed) {

  /** A routine check: nobody complains. */
  public static final Complaint NONE = new Complaint("", "");

  public Complaint {
    Required.value(said, "what the owner says of a complaint");
    Required.value(displayed, "what the machine displays of a complaint");
  }

  /**
   * Whether anybody complains.
   *
   * @return true if the owner or the machine says something
   */
  public boolean isMade() {
    return !said.isBlank() || !displayed.isBlank();
  }
}
