package kelter.core.module;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.diagnosis.FaultModel;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.problem.InputException;
import kelter.core.vocabulary.ComponentKind;

/**
 * A part of appliances, or a circuit of parts: its words, what can be held against limits on it,
 * and what can be wrong with it. Most parts are one kind of component and one model for each; a
 * circuit says by itself which components go together.
 */
public interface Part {

  /**
   * The kinds of components of which it speaks, with what can be observed on them.
   *
   * @return one kind or more
   */
  List<ComponentKind> kinds();

  /**
   * What it can hold against limits. It is asked only where a job has one of its kinds.
   *
   * @return checks, each id once in this part
   */
  default List<Check> checks() {
    return List.of();
  }

  /**
   * What can be wrong with a component, and how it would show.
   *
   * @param appliance the machine
   * @param component a component of one of its kinds
   * @return the model, or empty if there is none or figures are missing
   * @throws IllegalArgumentException if a figure or a curve of the component is impossible; the
   *     message says which and what is allowed
   */
  default Optional<FaultModel> faultModel(Appliance appliance, Component component) {
    return Optional.empty();
  }

  /**
   * Why a component has no fault model although none of its own figures is missing.
   *
   * @param appliance the machine
   * @param component a component of one of its kinds that has no fault model
   * @return what its figures say that cannot be, or which part the job has to list beside it, for a
   *     person, without a full stop; empty if the part has no model of it or figures are missing
   */
  default String whyNot(Appliance appliance, Component component) {
    return "";
  }

  /**
   * What can be wrong with the components of an appliance.
   *
   * @param appliance the machine
   * @return the models that apply, in the order of the appliance's components; empty where it lacks
   *     the parts or the figures
   * @throws InputException if a figure or a curve of a component is impossible
   */
  default List<FaultModel> faultModels(Appliance appliance) {
    List<FaultModel> models = new ArrayList<>();
    for (Component component : appliance.components()) {
      if (speaksOf(component.kind())) {
        try {
          faultModel(appliance, component).ifPresent(models::add);
        } catch (IllegalArgumentException impossible) {
          throw new InputException(
              component.id(), impossible.getMessage(), "correct the component's curve or figures");
        }
      }
    }
    return List.copyOf(models);
  }

  /**
   * Whether it speaks of a kind of component.
   *
   * @param kind the word for a kind
   * @return true if it is one of its kinds
   */
  default boolean speaksOf(String kind) {
    for (ComponentKind own : kinds()) {
      if (own.id().equals(kind)) {
        return true;
      }
    }
    return false;
  }
}
