package kelter.testkit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kelter.core.diagnosis.FaultModel;
import kelter.core.job.Appliance;
import kelter.core.module.CalculationModule;
import kelter.core.safety.Caution;
import kelter.core.safety.Hazard;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Vocabulary;

/** The words that a module brings. */
public final class VocabularyRules {

  private VocabularyRules() {}

  /**
   * A procedure on a running machine must carry a caution, one on live parts a warning or worse.
   *
   * @param module the module
   * @param appliances the appliances to try
   * @return the breaches
   */
  public static List<String> cautions(CalculationModule module, List<Appliance> appliances) {
    List<String> breaches = new ArrayList<>();
    observables(module, appliances)
        .forEach((name, observable) -> caution(name, observable.procedure(), breaches));
    return breaches;
  }

  private static void caution(String name, Procedure procedure, List<String> breaches) {
    boolean warned = procedure.cautions().stream().anyMatch(VocabularyRules::isWarning);
    if (procedure.hazard() == Hazard.RUNNING && procedure.cautions().isEmpty()) {
      breaches.add(name + " is taken on a running machine and carries no caution");
    }
    if (procedure.hazard() == Hazard.LIVE && !warned) {
      breaches.add(name + " is taken on live parts and carries neither danger nor warning");
    }
  }

  private static boolean isWarning(Caution caution) {
    return caution.signal() == Caution.Signal.DANGER || caution.signal() == Caution.Signal.WARNING;
  }

  /**
   * No word may have two meanings, and a figure must be taken with an instrument that is not exact.
   *
   * @param module the module
   * @param appliances the appliances to try
   * @return the breaches
   */
  public static List<String> words(CalculationModule module, List<Appliance> appliances) {
    List<String> breaches = new ArrayList<>();
    try {
      new Vocabulary(module.parts().kinds());
    } catch (IllegalArgumentException twoMeanings) {
      breaches.add(twoMeanings.getMessage());
    }
    observables(module, appliances)
        .forEach(
            (name, observable) -> {
              boolean figure = observable.type() == Observable.Type.QUANTITY;
              double middle = observable.span().low() / 2 + observable.span().high() / 2;
              if (figure && !(observable.procedure().typical().limitOfError(middle) > 0)) {
                breaches.add(name + ": the typical instrument has no limits of error");
              }
            });
    return breaches;
  }

  private static Map<String, Observable> observables(
      CalculationModule module, List<Appliance> appliances) {
    Map<String, Observable> all = new LinkedHashMap<>();
    for (ComponentKind kind : module.parts().kinds()) {
      kind.observables().forEach(o -> all.put("observable " + kind.id() + "." + o.id(), o));
    }
    for (Appliance appliance : appliances) {
      for (FaultModel model : module.parts().faultModels(appliance)) {
        model
            .questions()
            .forEach(
                q ->
                    all.put(
                        "question " + q.component() + "." + q.observable().id(), q.observable()));
      }
    }
    return all;
  }
}
