package kelter.costing.choice;

import java.util.List;

/**
 * An option before it is weighed.
 *
 * @param id the word for it
 * @param title what is done, for a person
 * @param steps the remedies, tried in this order until the machine works, may be empty
 * @param kind what is done now
 */
public record Candidate(String id, String title, List<PlannedWork.Step> steps, Kind kind) {

  /** What is done now. */
  public enum Kind {
    /** The remedies are tried. */
    MEND,
    /** A new machine is bought, whatever is found. */
    REPLACE,
    /** Nothing; the remedies follow at another visit if the machine turns out to be at fault. */
    WAIT
  }

  /** The word for the option to go down the plan. */
  public static final String PLAN = "plan";

  /** The word for the option to renew whole components rather than to mend them. */
  public static final String RENEW = "renew-all";

  public Candidate {
    steps = List.copyOf(steps);
  }
}
