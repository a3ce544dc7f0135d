package kelter.core.catalogue;

import java.util.List;
import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.problem.Required;
import kelter.core.vocabulary.Meaning;

/**
 * A machine of which more is known than its job states.
 *
 * @param appliance the machine, with what the job states and what is known beside that
 * @param model the model that it is of, if it is known
 * @param notes what was taken from where, a sentence each
 */
public record Completed(Appliance appliance, Optional<MachineModel> model, List<String> notes) {

  /** Checks that nothing is null. */
  public Completed {
    Required.value(appliance, "completed appliance");
    Required.optional(model, "model of an appliance");
    notes = Required.list(notes, "notes on a completed appliance");
  }

  /**
   * A machine of which nothing more is known.
   *
   * @param stated the machine as its job states it
   * @return the same
   */
  public static Completed asStated(Appliance stated) {
    return new Completed(stated, Optional.empty(), List.of());
  }

  /**
   * What a code on the display of the machine means.
   *
   * @param code the code as it is shown; case, spaces and hyphens do not matter
   * @return the meaning; empty if no model tells it
   */
  public Optional<Meaning> meaning(String code) {
    return model.flatMap(known -> known.meaning(code));
  }
}
