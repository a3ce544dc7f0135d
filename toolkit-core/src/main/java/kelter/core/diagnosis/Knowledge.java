package kelter.core.diagnosis;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Symptoms;

/**
 * What is known of a machine before anything is said of it or measured.
 *
 * @param models the fault models of its components; no two may share an observable of a component
 * @param symptoms the symptoms that machines can have
 * @param brings which of its faults bring others; those that no model knows count for nothing
 */
public record Knowledge(List<FaultModel> models, List<Symptom> symptoms, List<Brings> brings) {

  /**
   * Checks the relations.
   *
   * @throws IllegalArgumentException if two faults are named as cause and effect more than once, be
   *     it the other way round; with all such pairs
   */
  public Knowledge {
    models = List.copyOf(models);
    symptoms = List.copyOf(symptoms);
    brings = List.copyOf(brings);
    requireOnce(brings);
  }

  private static void requireOnce(List<Brings> brings) {
    Set<Set<String>> pairs = new HashSet<>();
    List<String> twice = new ArrayList<>();
    for (Brings each : brings) {
      if (!pairs.add(Set.of(each.cause(), each.effect()))) {
        twice.add(each.cause() + " and " + each.effect());
      }
    }
    if (!twice.isEmpty()) {
      throw new IllegalArgumentException(
          "named more than once as cause and effect: "
              + String.join("; ", twice)
              + "; name each two faults once, in one order");
    }
  }

  /**
   * A machine of which only models are known.
   *
   * @param models the fault models of its components
   * @return the models with the symptoms of any machine
   */
  public static Knowledge of(List<FaultModel> models) {
    return new Knowledge(models, Symptoms.ALL, List.of());
  }
}
