package kelter.core.catalogue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Market;
import kelter.core.job.Nameplate;

/**
 * A machine of a known kind with all the parts that such machines have.
 *
 * <p>A component of the job is the part of the same id. A component of another id, whose kind of
 * component a part has that the job does not name, stands for that part; several share it. A part
 * for which no component stands is added, unless the job says that the machine lacks it.
 *
 * @param kind the kind
 * @param appliance the machine with its parts, those of the job first; a part on which no module
 *     can observe anything is not among them
 * @param components by the id of a part the ids of the components that stand for it; parts that the
 *     machine lacks are missing
 */
public record KindMachine(Kind kind, Appliance appliance, Map<String, List<String>> components) {

  public KindMachine {
    components = Map.copyOf(components);
  }

  /**
   * Adds what a job does not tell.
   *
   * @param kind the kind
   * @param stated the machine as the job tells it
   * @param known whether a module can observe anything on a kind of component
   * @return the whole machine
   */
  public static KindMachine of(Kind kind, Appliance stated, Predicate<String> known) {
    Map<String, List<String>> components = new LinkedHashMap<>();
    List<Component> all = new ArrayList<>(stated.components());
    Set<String> taken = new LinkedHashSet<>();
    for (KindPart part : kind.parts()) {
      if (stated.component(part.id()).isPresent()) {
        components.put(part.id(), List.of(part.id()));
        taken.add(part.id());
      }
    }
    for (KindPart part : kind.parts()) {
      if (components.containsKey(part.id()) || stated.lacks().contains(part.id())) {
        continue;
      }
      List<String> standing = standing(part, stated, taken);
      if (standing.isEmpty()) {
        standing = List.of(part.id());
        if (known.test(part.kind())) {
          all.add(added(part, kind));
        }
      }
      taken.addAll(standing);
      components.put(part.id(), standing);
    }
    return new KindMachine(kind, stated.with(all), components);
  }

  /** The components of other ids that stand for a part. */
  private static List<String> standing(KindPart part, Appliance stated, Set<String> taken) {
    List<String> standing = new ArrayList<>();
    for (Component component : stated.componentsOf(part.kind())) {
      if (!taken.contains(component.id())) {
        standing.add(component.id());
      }
    }
    return standing;
  }

  private static Component added(KindPart part, Kind kind) {
    return new Component(
        part.id(), part.kind(), Nameplate.UNREADABLE, Map.of(), Map.of(), kind.source());
  }

  /**
   * The same without the parts that machines of a market have not and that the job does not name.
   *
   * @param market where the machine stands
   * @return the machine
   */
  public KindMachine in(Market market) {
    Map<String, List<String>> there = new LinkedHashMap<>(components);
    List<Component> kept = new ArrayList<>(appliance.components());
    for (KindPart part : kind.parts()) {
      if (!part.isIn(market) && isOnlyAdded(part)) {
        there.remove(part.id());
        kept.removeIf(component -> component.id().equals(part.id()));
      }
    }
    return new KindMachine(kind, appliance.with(kept), there);
  }

  private boolean isOnlyAdded(KindPart part) {
    return appliance.component(part.id()).map(this::isOnlyAdded).orElse(true);
  }

  /**
   * Whether the job says nothing of a component.
   *
   * @param component a component of the machine
   * @return true if it is there only since machines of the kind have it
   */
  public boolean isOnlyAdded(Component component) {
    return isOnlyAdded(kind, component);
  }

  /**
   * Whether a job says nothing of a component.
   *
   * @param kind the kind of machine
   * @param component a component of the machine
   * @return true if it is there only since machines of the kind have it
   */
  public static boolean isOnlyAdded(Kind kind, Component component) {
    return component.figures().isEmpty()
        && component.curves().isEmpty()
        && component.nameplate() == Nameplate.UNREADABLE
        && component.source() == kind.source()
        && kind.part(component.id())
            .filter(part -> part.kind().equals(component.kind()))
            .isPresent();
  }

  /**
   * The components that stand for a part.
   *
   * @param part the id of the part
   * @return their ids; none if the machine lacks it
   */
  public List<String> standingFor(String part) {
    return components.getOrDefault(part, List.of());
  }

  /**
   * Whether a component is one of the parts of the kind.
   *
   * @param component its id
   * @return false if the job adds it
   */
  public boolean isOfKind(String component) {
    for (List<String> standing : components.values()) {
      if (standing.contains(component)) {
        return true;
      }
    }
    return false;
  }
}
