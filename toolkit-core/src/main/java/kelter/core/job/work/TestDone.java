package kelter.core.job.work;

import kelter.core.problem.Required;
import kelter.core.vocabulary.Ids;

/**
 * A test without a figure that somebody made on the way back to power, such as a look at screws and
 * covers.
 *
 * @param step the id of the step of the lock-out table
 * @param met whether it came out as it must
 * @param note what was seen, may be empty
 */
public record TestDone(String step, boolean met, String note) {

  /** Checks the id. */
  public TestDone {
    Ids.require(Required.value(step, "step of a test"));
    Required.value(note, "note of a test");
  }
}
