package kelter.core.diagnosis;

import java.util.List;
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

  public Knowledge {
    models = List.copyOf(models);
    symptoms = List.copyOf(symptoms);
    brings = List.copyOf(brings);
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
