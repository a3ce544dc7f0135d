package kelter.core.job.work;

import java.util.List;
import java.util.Optional;
import kelter.core.problem.Required;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;

/**
 * How a job ended.
 *
 * @param date the day, {@code yyyy-mm-dd}
 * @param outcome what came of it
 * @param causes what turned out to be the cause, {@code component.fault} each; none where it was
 *     not found
 * @param charged what was charged, tax included, if it is told
 * @param oldParts where the old parts went, may be empty
 * @param guarantee how long the repairer stands for the work, if that is told
 * @param by who closed it, may be empty
 * @param note a remark, may be empty
 */
public record Closing(
    String date,
    Outcome outcome,
    List<String> causes,
    Optional<Money> charged,
    String oldParts,
    Optional<Quantity> guarantee,
    String by,
    String note) {

  /** Checks that nothing is null. */
  public Closing {
    Required.value(date, "day of a closing");
    Required.value(outcome, "outcome of a closing");
    causes = Required.list(causes, "causes of a closing");
    Required.optional(charged, "amount of a closing");
    Required.value(oldParts, "old parts of a closing");
    Required.optional(guarantee, "guarantee of a closing");
    Required.value(by, "who closed a job");
    Required.value(note, "note of a closing");
  }
}
