package kelter.core.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.problem.Required;
import kelter.core.quantity.Quantity;
import kelter.core.vocabulary.Ids;

/**
 * The machine, with its nameplate and its components.
 *
 * @param kind what it is, for instance {@code washer-extractor}
 * @param maker the maker, may be empty
 * @param model the model, may be empty
 * @param serial the serial number, may be empty
 * @param age its age, in a, from 0 to 100
 * @param nameplate its nameplate
 * @param components its components, each id once
 * @param lacks the ids of parts that machines of its kind may have and this one has not
 */
public record Appliance(
    String kind,
    String maker,
    String model,
    String serial,
    Optional<Quantity> age,
    Nameplate nameplate,
    List<Component> components,
    List<String> lacks) {

  /**
   * A machine of which nothing is said to be missing.
   *
   * @param kind what it is, for instance {@code washer-extractor}
   * @param maker the maker, may be empty
   * @param model the model, may be empty
   * @param serial the serial number, may be empty
   * @param age its age, in a, from 0 to 100
   * @param nameplate its nameplate
   * @param components its components, each id once
   * @throws IllegalArgumentException if the kind is not an id
   */
  public Appliance(
      String kind,
      String maker,
      String model,
      String serial,
      Optional<Quantity> age,
      Nameplate nameplate,
      List<Component> components) {
    this(kind, maker, model, serial, age, nameplate, components, List.of());
  }

  /**
   * Checks that nothing is null. Ids and age are held against the rules of a job.
   *
   * @throws IllegalArgumentException if the kind is not an id
   */
  public Appliance {
    Ids.require(Required.value(kind, "kind of an appliance"));
    Required.value(maker, "maker of an appliance");
    Required.value(model, "model of an appliance");
    Required.value(serial, "serial number of an appliance");
    Required.optional(age, "age of an appliance");
    Required.value(nameplate, "nameplate of an appliance");
    components = Required.list(components, "components of an appliance");
    lacks = Required.list(lacks, "parts that an appliance lacks");
  }

  /**
   * The same with other components.
   *
   * @param others its components, each id once
   * @return the machine
   */
  public Appliance with(List<Component> others) {
    return new Appliance(kind, maker, model, serial, age, nameplate, others, lacks);
  }

  /**
   * The same with another nameplate.
   *
   * @param other its nameplate
   * @return the machine
   */
  public Appliance with(Nameplate other) {
    return new Appliance(kind, maker, model, serial, age, other, components, lacks);
  }

  /**
   * A component by its id.
   *
   * @param id the id within this appliance
   * @return the component, or empty if there is none
   */
  public Optional<Component> component(String id) {
    for (Component component : components) {
      if (component.id().equals(id)) {
        return Optional.of(component);
      }
    }
    return Optional.empty();
  }

  /**
   * The components of a kind, in the order of the job.
   *
   * @param componentKind the kind of component
   * @return the components, may be empty
   */
  public List<Component> componentsOf(String componentKind) {
    List<Component> ofKind = new ArrayList<>();
    for (Component component : components) {
      if (component.kind().equals(componentKind)) {
        ofKind.add(component);
      }
    }
    return List.copyOf(ofKind);
  }
}
