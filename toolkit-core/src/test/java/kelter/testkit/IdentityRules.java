package kelter.testkit;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import kelter.core.check.Check;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.job.Appliance;
import kelter.core.job.Instrument;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.module.Part;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Ids;

/** Who a module is: how it is found and what its parts are called. */
public final class IdentityRules {

  private IdentityRules() {}

  /**
   * A module must be public, with a public constructor without parameters or a public static method
   * {@code provider}.
   *
   * @param type the class of the module
   * @return the breaches
   */
  public static List<String> construction(Class<?> type) {
    boolean constructor =
        Stream.of(type.getConstructors()).anyMatch(c -> c.getParameterCount() == 0);
    boolean provider = Stream.of(type.getMethods()).anyMatch(IdentityRules::isProvider);
    if (Modifier.isPublic(type.getModifiers()) && (constructor || provider)) {
      return List.of();
    }
    return List.of(
        type.getName()
            + " must be public with a public constructor without parameters or a provider method");
  }

  private static boolean isProvider(Method method) {
    return method.getName().equals("provider")
        && method.getParameterCount() == 0
        && Modifier.isStatic(method.getModifiers());
  }

  /**
   * Ids must have the form of ids, and each must occur once where it has to tell things apart.
   *
   * @param module the module
   * @param appliances the appliances to try
   * @return the breaches
   */
  public static List<String> ids(CalculationModule module, List<Appliance> appliances) {
    List<String> breaches = new ArrayList<>();
    unique("calculation", module.calculations().stream().map(Calculation::id), breaches);
    unique("caution", module.cautions().stream().map(Caution::id), breaches);
    unique("instrument", module.instruments().stream().map(Instrument::id), breaches);
    for (Part part : module.parts().all()) {
      unique("check", part.checks().stream().map(Check::id), breaches);
    }
    for (ComponentKind kind : module.parts().kinds()) {
      unique("observable of " + kind.id(), kind.observables().stream().map(o -> o.id()), breaches);
      unique("figure of " + kind.id(), kind.figures().stream().map(f -> f.id()), breaches);
      unique("curve of " + kind.id(), kind.curves().stream().map(c -> c.id()), breaches);
    }
    for (Calculation calculation : module.calculations()) {
      unique(
          "output of " + calculation.id(),
          calculation.outputs().stream().map(output -> output.id()),
          breaches);
    }
    for (Appliance appliance : appliances) {
      List<FaultModel> models = module.parts().faultModels(appliance);
      unique("fault model", models.stream().map(FaultModel::id), breaches);
      unique(
          "fault",
          models.stream().flatMap(model -> model.faults().stream()).map(Fault::id),
          models.stream().flatMap(model -> model.faults().stream()).map(Fault::key),
          breaches);
    }
    return breaches;
  }

  private static void unique(String what, Stream<String> ids, List<String> breaches) {
    List<String> all = ids.toList();
    unique(what, all.stream(), all.stream(), breaches);
  }

  private static void unique(
      String what, Stream<String> ids, Stream<String> keys, List<String> breaches) {
    ids.filter(id -> !Ids.isId(id))
        .forEach(id -> breaches.add(what + " '" + id + "' does not have the form of an id"));
    Set<String> seen = new HashSet<>();
    keys.filter(key -> !seen.add(key))
        .forEach(key -> breaches.add(what + " '" + key + "' occurs twice"));
  }

  /**
   * Two instances of a module must name the same things in the same order.
   *
   * @param first the module
   * @param second the module, made anew
   * @param appliances the appliances to try
   * @return the breaches
   */
  public static List<String> order(
      CalculationModule first, CalculationModule second, List<Appliance> appliances) {
    List<String> breaches = new ArrayList<>();
    same("the module itself", List.of(first.about()), List.of(second.about()), breaches);
    same("calculations", names(first), names(first), breaches);
    same("calculations", names(first), names(second), breaches);
    for (Appliance appliance : appliances) {
      same("fault models", names(first, appliance), names(first, appliance), breaches);
      same("fault models", names(first, appliance), names(second, appliance), breaches);
    }
    return breaches;
  }

  private static List<String> names(CalculationModule module) {
    return Stream.of(
            module.calculations().stream().map(Calculation::id),
            module.parts().checks().stream().map(Check::id),
            module.parts().kinds().stream().map(ComponentKind::id))
        .flatMap(ids -> ids)
        .toList();
  }

  private static List<String> names(CalculationModule module, Appliance appliance) {
    return module.parts().faultModels(appliance).stream()
        .flatMap(
            model ->
                Stream.concat(
                    model.faults().stream().map(Fault::key),
                    model.questions().stream().map(IdentityRules::name)))
        .toList();
  }

  private static String name(Question question) {
    return question.component()
        + "."
        + question.observable().id()
        + " at "
        + question.conditions().figures();
  }

  private static void same(String what, List<?> once, List<?> again, List<String> breaches) {
    if (!once.equals(again)) {
      breaches.add(what + " change from call to call: " + once + " and then " + again);
    }
  }
}
