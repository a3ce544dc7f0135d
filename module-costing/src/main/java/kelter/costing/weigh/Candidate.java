package kelter.costing.weigh;

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
record Candidate(String id, String title, List<Work.Step> steps, boolean replaces) {

  /** The word for the option to buy a new machine. */
  static final String REPLACE = "replace";

  /** The word for the option to leave it as it is. */
  static final String NOTHING = "do-nothing";

  /** The word for the option to go down the plan. */
  static final String PLAN = "plan";

  Candidate {
    steps = List.copyOf(steps);
  }

  boolean isRepair() {
    return !steps.isEmpty();
  }
}
