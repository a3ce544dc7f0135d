package kelter.core.workshop;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import kelter.core.catalogue.Kind;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Market;
import kelter.core.job.Nameplate;

/**
 * What can be wrong with a kind of component and what mends it, as models and kinds have it on any
 * machine of the known kinds in any market.
 *
 * @param component the id of the kind of component
 * @param faults its faults, by id
 * @param remedies its remedies, by id
 */
public record PartFaults(String component, List<Fault> faults, List<Remedy> remedies) {

  /** Copies the lists. */
  public PartFaults {
    faults = List.copyOf(faults);
    remedies = List.copyOf(remedies);
  }

  /** What is found of one kind of component. */
  private record Found(Map<String, Fault> faults, Map<String, Remedy> remedies) {

    void add(Fault fault) {
      faults.putIfAbsent(fault.id(), fault);
      fault.remedies().forEach(remedy -> remedies.putIfAbsent(remedy.id(), remedy));
    }
  }

  /**
   * Goes through machines of some kinds.
   *
   * @param workshop the workshop
   * @param kinds the kinds of machines
   * @return what is known, by kind of component
   */
  static List<PartFaults> of(Workshop workshop, Collection<Kind> kinds) {
    Map<String, Found> found = new TreeMap<>();
    for (Kind kind : kinds) {
      Appliance machine =
          workshop.whole(
              new Appliance(
                  kind.id(), "", "", "", Optional.empty(), Nameplate.UNREADABLE, List.of()));
      for (Market market : Market.values()) {
        workshop
            .known(machine, Optional.of(market))
            .knowledge()
            .allModels()
            .forEach(model -> add(model, machine, found));
      }
    }
    List<PartFaults> all = new ArrayList<>();
    found.forEach(
        (component, each) ->
            all.add(
                new PartFaults(
                    component,
                    List.copyOf(each.faults().values()),
                    List.copyOf(each.remedies().values()))));
    return all;
  }

  private static void add(FaultModel model, Appliance machine, Map<String, Found> found) {
    for (Fault fault : model.faults()) {
      machine
          .component(fault.component())
          .map(Component::kind)
          .ifPresent(
              kind ->
                  found
                      .computeIfAbsent(kind, none -> new Found(new TreeMap<>(), new TreeMap<>()))
                      .add(fault));
    }
  }
}
