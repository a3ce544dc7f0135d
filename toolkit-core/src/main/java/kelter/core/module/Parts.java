package kelter.core.module;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import kelter.core.check.Check;
import kelter.core.diagnosis.FaultModel;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.problem.InputException;
import kelter.core.vocabulary.ComponentKind;

/**
 * The parts and circuits of which a module, or several, speak.
 *
 * @param all the parts, in the order in which their findings are told
 */
public record Parts(List<Part> all) {

  /** No part. */
  public static final Parts NONE = new Parts(List.of());

  public Parts {
    all = List.copyOf(all);
  }

  /**
   * Some parts.
   *
   * @param parts in the order in which their findings are told
   * @return the parts
   */
  public static Parts of(Part... parts) {
    return new Parts(List.of(parts));
  }

  /**
   * Their words.
   *
   * @return the kinds of components, in the order of the parts, each once; a word more than once
   *     where parts mean different things by it
   */
  public List<ComponentKind> kinds() {
    Map<ComponentKind, Boolean> kinds = new IdentityHashMap<>();
    List<ComponentKind> each = new ArrayList<>();
    for (Part part : all) {
      for (ComponentKind kind : part.kinds()) {
        if (kinds.put(kind, true) == null) {
          each.add(kind);
        }
      }
    }
    return each;
  }

  /**
   * What they can hold against limits.
   *
   * @return checks, in the order of the parts
   */
  public List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    for (Part part : all) {
      checks.addAll(part.checks());
    }
    return checks;
  }

  /**
   * What can be wrong with an appliance.
   *
   * @param appliance the machine
   * @return the fault models that apply, in the order of the parts
   * @throws InputException if a figure or a curve of a component is impossible
   */
  public List<FaultModel> faultModels(Appliance appliance) {
    List<FaultModel> models = new ArrayList<>();
    for (Part part : all) {
      models.addAll(part.faultModels(appliance));
    }
    return models;
  }

  /**
   * Why a component has no fault model although none of its own figures is missing.
   *
   * @param appliance the machine
   * @param component a component of it that has no fault model
   * @return what its figures say that cannot be, or which part the job has to list beside it, for a
   *     person; may be empty
   */
  public String whyNot(Appliance appliance, Component component) {
    for (Part part : all) {
      String why = part.speaksOf(component.kind()) ? part.whyNot(appliance, component) : "";
      if (!why.isEmpty()) {
        return why;
      }
    }
    return "";
  }

  /**
   * The parts that speak of components of an appliance.
   *
   * @param appliance the machine
   * @return these parts
   */
  public Parts on(Appliance appliance) {
    List<Part> some = new ArrayList<>();
    for (Part part : all) {
      if (speaksOfAny(part, appliance)) {
        some.add(part);
      }
    }
    return new Parts(some);
  }

  private static boolean speaksOfAny(Part part, Appliance appliance) {
    for (Component component : appliance.components()) {
      if (part.speaksOf(component.kind())) {
        return true;
      }
    }
    return false;
  }
}
