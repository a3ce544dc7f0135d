package kelter.cli.trial;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.simulation.ReadingDraw;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;

/**
 * A machine that was drawn.
 *
 * @param truth what is behind the call: the key of a cause, or one of the two words of {@link
 *     TrueKind}
 * @param modelled whether that is a cause of which a fault model speaks
 * @param severity by its key the severity of each cause that is there, above 0 and up to 1
 * @param strange the id of the fault model whose parts do what no known fault explains, if any
 * @param models the fault models with the figures that this machine truly has
 * @param deviates by the id of a model the deviate of each of its shared quantities
 */
record TrueMachine(
    String truth,
    boolean modelled,
    Map<String, Double> severity,
    Optional<String> strange,
    List<FaultModel> models,
    Map<String, double[]> deviates) {

  /** No fault model forecasts it: it lets the rest be read. */
  private static final String CHARGE = "dc-link-voltage";

  /** What is there: the causes, or the word for it where there is none. */
  Set<String> present() {
    return severity.isEmpty() ? Set.of(truth) : new HashSet<>(severity.keySet());
  }

  /** A machine with deviates of the shared quantities drawn. */
  static TrueMachine of(
      String truth,
      boolean modelled,
      Map<String, Double> severity,
      Optional<String> strange,
      List<FaultModel> models,
      RandomGenerator random) {
    Map<String, double[]> deviates = new HashMap<>();
    for (FaultModel model : models) {
      deviates.put(
          model.id(), model.shared().stream().mapToDouble(each -> random.nextGaussian()).toArray());
    }
    return new TrueMachine(truth, modelled, Map.copyOf(severity), strange, models, deviates);
  }

  /** What is read, with the usual chance of a blunder; a capacitor that is read has discharged. */
  Measurement read(Question question, RandomGenerator random) {
    if (question.observable().id().equals(CHARGE)) {
      return new Measurement(
          question.component(),
          CHARGE,
          List.of(new Reading.Value(Quantity.of(2, "V", QuantityKind.VOLTAGE), 1)),
          question.conditions(),
          Optional.empty(),
          "",
          Measurement.Stage.AS_FOUND);
    }
    FaultModel model = modelOf(question);
    double[] shared = deviates.get(model.id());
    int faults = model.faults().size();
    double[] state = new double[faults + shared.length];
    for (int i = 0; i < faults; i++) {
      state[i] = severity.getOrDefault(model.faults().get(i).key(), 0.0);
    }
    System.arraycopy(shared, 0, state, faults, shared.length);
    return ReadingDraw.of(
        question,
        model,
        state,
        strange.filter(model.id()::equals).isPresent(),
        EngineSettings.USUAL.blunder(),
        random.nextLong());
  }

  /** Whether it can be read; the legs of a heater of one element cannot be held together. */
  boolean has(Question question) {
    return question.observable().id().equals(CHARGE) || find(question).isPresent();
  }

  private FaultModel modelOf(Question question) {
    return find(question)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "no model of the true machine forecasts " + question.key()));
  }

  private Optional<FaultModel> find(Question question) {
    return models.stream()
        .filter(
            model -> model.questions().stream().anyMatch(each -> each.key().equals(question.key())))
        .findFirst();
  }
}
