package kelter.core.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.problem.Required;

/**
 * The models that a shop knows.
 *
 * @param all the models, of which no two fit the same machine
 */
public record Models(List<MachineModel> all) implements Completion {

  /** No model is known. */
  public static final Models NONE = new Models(List.of());

  /** Checks that nothing is null. */
  public Models {
    all = Required.list(all, "models of a shop");
  }

  /**
   * The model of a machine.
   *
   * @param machine the machine
   * @return its model, or empty if it is not known
   */
  public Optional<MachineModel> of(Appliance machine) {
    for (MachineModel model : all) {
      if (model.fits(machine)) {
        return Optional.of(model);
      }
    }
    return Optional.empty();
  }

  @Override
  public Completed complete(Appliance stated) {
    Optional<MachineModel> model = of(stated);
    if (model.isEmpty()) {
      return new Completed(stated, model, othersOfThatName(stated));
    }
    Appliance filled = model.get().complete(stated);
    List<String> notes =
        filled.equals(stated) ? List.of() : List.of(note(stated, filled, model.get()));
    return new Completed(filled, model, notes);
  }

  private List<String> othersOfThatName(Appliance stated) {
    List<String> notes = new ArrayList<>();
    for (MachineModel model : all) {
      if (model.names(stated)) {
        notes.add(
            "Nothing is taken from the model file of "
                + model.name()
                + ": it is of another kind of machine, or of another mains.");
      }
    }
    return notes;
  }

  private static String note(Appliance stated, Appliance filled, MachineModel model) {
    List<String> taken = new ArrayList<>();
    if (!filled.nameplate().equals(stated.nameplate())) {
      taken.add("nameplate");
    }
    for (Component component : filled.components()) {
      if (!stated.component(component.id()).equals(Optional.of(component))) {
        taken.add(component.id());
      }
    }
    return "Where the job is silent, the model file of %s stands in: %s. Its source: %s."
        .formatted(model.name(), String.join(", ", taken), model.source().display());
  }
}
