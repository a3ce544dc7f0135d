package kelter.core.job;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import kelter.core.quantity.Quantity;
import kelter.core.vocabulary.Ids;

/**
 * The machine, with its nameplate and its components.
 *
 * @param kind what it is, for instance {@code washer-extractor}
 * @param maker the maker, may be empty
 * @param model the model, may be empty
 * @param serial the serial number, may be empty
 * @param age its age, in a
 * @param nameplate its nameplate
 * @param components its components, each id once
 */
public record Appliance(
    String kind,
    String maker,
    String model,
    String serial,
    Optional<Quantity> age,
    Nameplate nameplate,
    List<Component> components) {

  /**
   * Checks the parts.
   *
   * @throws IllegalArgumentException if an id occurs twice or the age is negative
   */
  public Appliance {
    Ids.require(kind);
    Objects.requireNonNull(maker);
    Objects.requireNonNull(model);
    Objects.requireNonNull(serial);
    Objects.requireNonNull(nameplate);
    if (age.isPresent() && age.get().value() < 0) {
      throw new IllegalArgumentException(
          "an age of " + age.get().format() + "; it must not be negative");
    }
    components = List.copyOf(components);
    Set<String> ids = new HashSet<>();
    for (Component component : components) {
      if (!ids.add(component.id())) {
        throw new IllegalArgumentException("component '" + component.id() + "' occurs twice");
      }
    }
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
