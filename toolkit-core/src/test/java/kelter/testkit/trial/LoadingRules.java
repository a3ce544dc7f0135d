package kelter.testkit.trial;

import java.lang.module.ModuleDescriptor;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.CalculationModule;
import kelter.core.module.Claims;
import kelter.core.module.Part;
import kelter.core.quantity.Nearest;
import kelter.core.vocabulary.ComponentKind;

/** Whether a module will be found, goes with the others, and is met by the machines of the test. */
public final class LoadingRules {

  private LoadingRules() {}

  /**
   * The descriptor of the module must provide it, since nothing else makes it known to Kelter.
   *
   * @param type the class of the module
   * @return the breaches
   */
  public static List<String> provided(Class<?> type) {
    Optional<ModuleDescriptor> descriptor = FoundModules.descriptor(type);
    if (descriptor.isEmpty()) {
      return List.of("there is no module-info.java beside " + type.getName());
    }
    if (FoundModules.providers(descriptor.get()).contains(type.getName())) {
      return List.of();
    }
    return List.of(
        "module-info.java of %s lacks 'provides %s with %s', so Kelter will not find it"
            .formatted(descriptor.get().name(), CalculationModule.class.getName(), type.getName()));
  }

  /**
   * No id may be that of a module that is loaded beside it.
   *
   * @param module the module
   * @param beside the others; there must be some
   * @return the breaches
   */
  public static List<String> claims(CalculationModule module, List<CalculationModule> beside) {
    if (beside.isEmpty()) {
      return List.of(
          "no module of Kelter is on the path of the test, so no clash of ids can be found: add"
              + " kelter-hydraulics, kelter-electrical and kelter-costing with scope test");
    }
    return new Claims(beside).claimedBy(module);
  }

  /**
   * A module must bring something, and each of its kinds of components must be in a machine of the
   * test: what no machine has is not tried.
   *
   * @param module the module
   * @param appliances the machines of the test
   * @return the breaches
   */
  public static List<String> reached(CalculationModule module, List<Appliance> appliances) {
    List<String> breaches = new ArrayList<>();
    if (isEmpty(module)) {
      breaches.add("the module brings nothing, so nothing was tried");
    }
    Set<String> there = new HashSet<>();
    for (Appliance appliance : appliances) {
      appliance.components().stream().map(Component::kind).forEach(there::add);
    }
    Set<String> kinds =
        module.parts().kinds().stream()
            .map(ComponentKind::id)
            .filter(kind -> !there.contains(kind))
            .collect(Collectors.toCollection(java.util.TreeSet::new));
    for (String kind : kinds) {
      breaches.add(
          "no machine of the test has a '%s', so nothing of it was tried%s"
              .formatted(
                  kind,
                  Nearest.of(kind, there).map(near -> "; one has a '" + near + "'").orElse("")));
    }
    return breaches;
  }

  /**
   * Where a part makes models, one must speak of each kind of its components on a machine of the
   * test.
   *
   * @param module the module
   * @param appliances the machines of the test
   * @return the breaches
   */
  public static List<String> modelled(CalculationModule module, List<Appliance> appliances) {
    List<String> breaches = new ArrayList<>();
    for (Part part : module.parts().all()) {
      Set<String> spokenOf = new HashSet<>();
      for (Appliance appliance : appliances) {
        for (FaultModel model : part.faultModels(appliance)) {
          for (Fault fault : model.faults()) {
            appliance.component(fault.component()).map(Component::kind).ifPresent(spokenOf::add);
          }
          for (Question question : model.questions()) {
            appliance.component(question.component()).map(Component::kind).ifPresent(spokenOf::add);
          }
        }
      }
      for (ComponentKind kind : part.kinds()) {
        if (makesModels(part) && !spokenOf.contains(kind.id())) {
          breaches.add("no machine of the test has a model that speaks of a '" + kind.id() + "'");
        }
      }
    }
    return breaches;
  }

  private static boolean makesModels(Part part) {
    return Stream.of(part.getClass().getMethods())
        .filter(method -> method.getName().startsWith("faultModel"))
        .anyMatch(method -> !method.getDeclaringClass().equals(Part.class));
  }

  private static boolean isEmpty(CalculationModule module) {
    return module.calculations().isEmpty()
        && module.parts().all().isEmpty()
        && module.symptoms().isEmpty()
        && module.instruments().isEmpty()
        && module.weigher().isEmpty();
  }
}
