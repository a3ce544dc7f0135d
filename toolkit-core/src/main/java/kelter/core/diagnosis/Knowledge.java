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
 * @param brings which of its faults bring others; those that are not known count for nothing
 * @param causes causes of complaints, each once; those that a model speaks of are left to it, and
 *     so is their share
 */
public record Knowledge(
    List<FaultModel> models, List<Symptom> symptoms, List<Brings> brings, List<CauseShare> causes) {

  /**
   * Checks relations and causes.
   *
   * @throws IllegalArgumentException if two faults are named as cause and effect more than once, be
   *     it the other way round, or a cause is; with all of them
   */
  public Knowledge {
    models = List.copyOf(models);
    symptoms = List.copyOf(symptoms);
    brings = List.copyOf(brings);
    causes = List.copyOf(causes);
    List<String> twice = new ArrayList<>();
    Set<Object> known = new HashSet<>();
    for (Brings each : brings) {
      if (!known.add(Set.of(each.cause(), each.effect()))) {
        twice.add(each.cause() + " and " + each.effect() + " as cause and effect");
      }
    }
    for (CauseShare each : causes) {
      if (!known.add(each.key())) {
        twice.add(each.key());
      }
    }
    if (!twice.isEmpty()) {
      throw new IllegalArgumentException("name once only: " + String.join("; ", twice));
    }
  }

  /**
   * The models, and behind them one of the causes that none of them speaks of, if there are any.
   *
   * @return models, in their order
   */
  public List<FaultModel> allModels() {
    List<FaultModel> all = new ArrayList<>(models);
    CausesWithoutModel.of(causes, models, brings).ifPresent(all::add);
    return List.copyOf(all);
  }

  /**
   * A machine of which only models are known.
   *
   * @param models the fault models of its components
   * @return the models with the symptoms of any machine
   */
  public static Knowledge of(List<FaultModel> models) {
    return new Knowledge(models, Symptoms.ALL, List.of(), List.of());
  }
}
