package kelter.core.catalogue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Curve;
import kelter.core.job.Nameplate;
import kelter.core.job.RatedRange;
import kelter.core.quantity.Quantity;
import kelter.core.source.Source;

/** Fills a machine from its model; see {@link MachineModel#complete}. */
final class Filling {

  private final Appliance stated;
  private final MachineModel model;

  private Filling(Appliance stated, MachineModel model) {
    this.stated = stated;
    this.model = model;
  }

  static Appliance of(Appliance stated, MachineModel model) {
    return new Filling(stated, model).filled();
  }

  private Appliance filled() {
    List<Component> components = new ArrayList<>();
    for (Component component : stated.components()) {
      Optional<Component> known = known(component);
      components.add(known.isPresent() ? component(component, known.get()) : component);
    }
    for (Component known : model.components()) {
      if (isLacking(known)) {
        components.add(known);
      }
    }
    return new Appliance(
        stated.kind(),
        stated.maker(),
        stated.model(),
        stated.serial(),
        stated.age(),
        nameplate(stated.nameplate(), model.nameplate()),
        components,
        stated.lacks());
  }

  /** What the model says of a component of the job. */
  private Optional<Component> known(Component component) {
    List<Component> ofKind = new ArrayList<>();
    for (Component each : model.components()) {
      if (each.kind().equals(component.kind())) {
        if (each.id().equals(component.id())) {
          return Optional.of(each);
        }
        ofKind.add(each);
      }
    }
    boolean only = ofKind.size() == 1 && stated.componentsOf(component.kind()).size() == 1;
    return only ? Optional.of(ofKind.get(0)) : Optional.empty();
  }

  /**
   * Whether the job has no such component. Where it has one of the kind under a name that the model
   * does not know, nobody can tell whether it is this one.
   */
  private boolean isLacking(Component known) {
    if (stated.component(known.id()).isPresent() || stated.lacks().contains(known.id())) {
      return false;
    }
    for (Component component : stated.componentsOf(known.kind())) {
      Optional<Component> same = known(component);
      if (same.isEmpty() || same.get().equals(known)) {
        return false;
      }
    }
    return true;
  }

  private static Component component(Component stated, Component known) {
    Map<String, Quantity> figures = new LinkedHashMap<>(known.figures());
    figures.putAll(stated.figures());
    Map<String, Curve> curves = new LinkedHashMap<>(known.curves());
    curves.putAll(stated.curves());
    int own = stated.figures().size() + stated.curves().size();
    boolean filled = figures.size() + curves.size() > own;
    return new Component(
        stated.id(),
        stated.kind(),
        nameplate(stated.nameplate(), known.nameplate()),
        figures,
        curves,
        filled ? source(own, stated.source(), known.source()) : stated.source());
  }

  private static Source source(int own, Source stated, Source known) {
    return own == 0 ? known : stated.with(known);
  }

  /** Ratings hold at their voltage: power and current are not taken to another one. */
  private static Nameplate nameplate(Nameplate stated, Nameplate known) {
    boolean sameVoltage =
        stated.voltage().isEmpty()
            || known.voltage().isEmpty()
            || isSame(stated.voltage().get(), known.voltage().get());
    return new Nameplate(
        or(stated.voltage(), known.voltage()),
        or(stated.frequency(), known.frequency()),
        sameVoltage ? or(stated.power(), known.power()) : stated.power(),
        sameVoltage ? or(stated.current(), known.current()) : stated.current(),
        or(stated.protectionClass(), known.protectionClass()));
  }

  private static boolean isSame(RatedRange one, RatedRange other) {
    return one.low().si() == other.low().si() && one.high().si() == other.high().si();
  }

  private static <T> Optional<T> or(Optional<T> stated, Optional<T> known) {
    return stated.isPresent() ? stated : known;
  }
}
