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
import kelter.core.job.Appliance;
import kelter.core.module.CalculationModule;
import kelter.core.quantity.Quantity;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Vocabulary;

/** Which faults a module knows and what it asks. */
public final class FaultRules {

  private FaultRules() {}

  /**
   * A model must know a fault, its faults and remedies must be of components that the appliance
   * has, the priors of a model must add up to less than 1, and the symptoms of its faults must be
   * known, named once and made with a chance from 0 to 1 at any severity.
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
