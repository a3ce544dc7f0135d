package kelter.testkit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.FaultSymptom;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.CalculationModule;
import kelter.core.quantity.Quantity;
import kelter.core.safety.Hazard;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Vocabulary;

/** Which faults a module knows and what it asks. */
public final class FaultRules {

  private FaultRules() {}

  /**
   * A model must know a fault, its faults and remedies must be of components that the appliance
   * has, each with a title of its own, the priors of a model must add up to less than 1, and the
   * symptoms of its faults must be known, named once and made with a chance from 0 to 1 at any
   * severity. What renews a part that is read with the plug out must carry a caution.
   *
   * @param module the module
   * @param appliances the appliances to try
   * @return the breaches
   */
  public static List<String> faults(CalculationModule module, List<Appliance> appliances) {
    List<String> breaches = new ArrayList<>();
    for (Appliance appliance : appliances) {
      for (FaultModel model : module.parts().faultModels(appliance)) {
        if (model.faults().isEmpty()) {
          breaches.add("model " + model.id() + " knows no fault");
        }
        double sum = model.faults().stream().mapToDouble(Fault::prior).sum();
        if (!(sum < 1)) {
          breaches.add("model " + model.id() + ": the priors of its faults add up to " + sum);
        }
        model.faults().forEach(fault -> components(appliance, fault, breaches));
        model.faults().forEach(fault -> symptoms(module, fault, breaches));
        model.faults().forEach(fault -> cautions(module, appliance, fault, breaches));
        titles(model, breaches);
      }
    }
    return breaches;
  }

  private static void symptoms(CalculationModule module, Fault fault, List<String> breaches) {
    Vocabulary vocabulary = new Vocabulary(List.of(), module.symptoms());
    Set<String> named = new HashSet<>();
    for (FaultSymptom made : fault.symptoms()) {
      if (vocabulary.symptom(made.symptom()).isEmpty()) {
        breaches.add("fault " + fault.key() + " makes '" + made.symptom() + "', no symptom");
      }
      if (!named.add(made.symptom())) {
        breaches.add("fault " + fault.key() + " makes '" + made.symptom() + "' twice");
      }
      try {
        IntStream.rangeClosed(1, 100).forEach(percent -> made.at(percent / 100.0));
      } catch (IllegalArgumentException noChance) {
        breaches.add("fault " + fault.key() + " makes " + noChance.getMessage());
      }
    }
  }

  /** What is looked at with the plug out is not renewed with the plug in. */
  private static void cautions(
      CalculationModule module, Appliance appliance, Fault fault, List<String> breaches) {
    for (Remedy remedy : fault.remedies()) {
      boolean renews = remedy.restores() != Remedy.Restores.FUNCTION;
      if (renews && remedy.cautions().isEmpty() && isReadDead(module, appliance, remedy)) {
        breaches.add(
            "remedy %s carries no caution, and the part is read with the plug out"
                .formatted(remedy.key()));
      }
    }
  }

  private static boolean isReadDead(CalculationModule module, Appliance appliance, Remedy remedy) {
    String kind = appliance.component(remedy.component()).map(Component::kind).orElse("");
    return module.parts().kinds().stream()
        .filter(each -> each.id().equals(kind))
        .flatMap(each -> each.observables().stream())
        .anyMatch(each -> each.procedure().hazard() == Hazard.DEAD);
  }

  /** People name faults and work by their titles. */
  private static void titles(FaultModel model, List<String> breaches) {
    Map<String, String> faults = new HashMap<>();
    Map<String, String> remedies = new HashMap<>();
    for (Fault fault : model.faults()) {
      once(faults, fault.component(), fault.title(), fault.key(), breaches);
      for (Remedy remedy : fault.remedies()) {
        once(remedies, remedy.component(), remedy.title(), remedy.key(), breaches);
      }
    }
  }

  private static void once(
      Map<String, String> keys, String of, String title, String key, List<String> breaches) {
    String earlier = keys.putIfAbsent(of + ": " + title, key);
    if (earlier != null && !earlier.equals(key)) {
      breaches.add("%s and %s have the same title, '%s'".formatted(earlier, key, title));
    }
  }

  private static void components(Appliance appliance, Fault fault, List<String> breaches) {
    if (appliance.component(fault.component()).isEmpty()) {
      breaches.add("fault " + fault.key() + " is of a component that the appliance lacks");
    }
    fault.remedies().stream()
        .filter(remedy -> appliance.component(remedy.component()).isEmpty())
        .forEach(
            remedy ->
                breaches.add(
                    "remedy %s of fault %s is of component '%s', which the appliance lacks"
                        .formatted(remedy.id(), fault.key(), remedy.component())));
  }

  /**
   * A model must ask something; a question must be of a component that the appliance has, use the
   * words that the module brings, and belong to one model only.
   *
   * @param module the module
   * @param appliances the appliances to try
   * @return the breaches
   */
  public static List<String> questions(CalculationModule module, List<Appliance> appliances) {
    List<String> breaches = new ArrayList<>();
    Vocabulary vocabulary = new Vocabulary(module.parts().kinds());
    for (Appliance appliance : appliances) {
      Map<String, String> askedBy = new HashMap<>();
      for (FaultModel model : module.parts().faultModels(appliance)) {
        if (model.questions().isEmpty()) {
          breaches.add("model " + model.id() + " asks nothing");
        }
        for (Question question : model.questions()) {
          String name = question.component() + "." + question.observable().id();
          String earlier = askedBy.putIfAbsent(name, model.id());
          if (earlier != null && !earlier.equals(model.id())) {
            breaches.add(name + " is asked by two models, " + earlier + " and " + model.id());
          }
          words(appliance, vocabulary, question, breaches);
        }
      }
    }
    return breaches;
  }

  private static void words(
      Appliance appliance, Vocabulary vocabulary, Question question, List<String> breaches) {
    String name = question.component() + "." + question.observable().id();
    var component = appliance.component(question.component());
    if (component.isEmpty()) {
      breaches.add(name + " is asked of a component that the appliance lacks");
      return;
    }
    Optional<Observable> known =
        vocabulary.observable(component.get().kind(), question.observable().id());
    if (known.isEmpty() || !known.get().equals(question.observable())) {
      breaches.add(
          name + " is not the observable that the module lists for a " + component.get().kind());
    }
    question
        .conditions()
        .figures()
        .forEach((word, figure) -> condition(name, question.observable(), word, figure, breaches));
  }

  private static void condition(
      String name, Observable observable, String word, Quantity figure, List<String> breaches) {
    Optional<Characteristic> known =
        observable.conditions().stream().filter(c -> c.id().equals(word)).findFirst();
    if (known.isEmpty()) {
      breaches.add(name + " is asked at '" + word + "', which is none of its conditions");
    } else if (!known.get().kind().accepts(figure.unit())) {
      breaches.add(name + " is asked at " + word + " in " + figure.unit().code());
    }
  }
}
