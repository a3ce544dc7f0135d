package kelter.costing.choice;

import java.util.List;

/**
 * An option before it is weighed.
 *
 * @param id the word for it
 * @param title what is done, for a person
 * @param steps the remedies, tried in this order until the machine works; empty if nothing is
 *     mended
 * @param replaces whether a new machine is bought whatever is found
 */
public record Candidate(String id, String title, List<Work.Step> steps, boolean replaces) {

  /** The word for the option to buy a new machine. */
  public static final String REPLACE = "replace";

  /** The word for the option to leave it as it is. */
  public static final String NOTHING = "do-nothing";

  /** The word for the option to go down the plan. */
  public static final String PLAN = "plan";

  /** The word for the option to renew whole components rather than to mend them. */
  public static final String RENEW = "renew-all";

  /** Copies the list. */
  public Candidate {
    steps = List.copyOf(steps);
  }

  /**
   * Whether it mends something.
   *
   * @return true if there are remedies
   */
  public boolean isRepair() {
    return !steps.isEmpty();
  }
}
