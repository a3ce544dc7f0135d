package kelter.core.diagnosis.simulation;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.FaultSymptom;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Nameplate;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Hazard;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;

/**
 * A made-up part with three faults, read as a value, over decades, as a yes or no and a grade.
 *
 * @param component what it is called
 * @param made for each fault the symptoms that it makes
 */
record ThreeFaults(String component, List<List<FaultSymptom>> made) implements FaultModel {

  static final double[] PRIORS = {0.3, 0.2, 0.1};
  static final double CURRENT_SPREAD = 0.3;
  static final double CURRENT_SHARE = 0.02;

  static final Observable NOISE =
      Observable.named("noise", "noise").graded("none", "some", "loud").by(procedure(3));
  static final Observable WARM = Observable.named("warm", "warm").by(procedure(2));
  static final Observable CURRENT =
      Observable.named("current", "current").quantity(QuantityKind.CURRENT, 0, 40).by(procedure(4));
  static final Observable LEAK =
      Observable.named("leak", "leak")
          .logarithmic(QuantityKind.RESISTANCE, new Span(1, 1e6))
          .by(procedure(5));

  static final EngineSettings SETTINGS = EngineSettings.USUAL;

  private static final Remedy REMEDY =
      new Remedy("renew", "part", "renew it", 30, Remedy.Restores.PART, false, 0.95, List.of());

  private static Procedure procedure(double minutes) {
    return new Procedure(
        "Read it.", minutes, Hazard.DEAD, new Accuracy(CURRENT_SHARE, 0), List.of());
  }

  /** One that makes no symptom. */
  ThreeFaults() {
    this("part", List.of(List.of(), List.of(), List.of()));
  }

  static Appliance appliance() {
    Component component =
        new Component(
            "part", "part", Nameplate.UNREADABLE, Map.of(), Map.of(), Source.fromMemory("a test"));
    return new Appliance(
        "machine", "", "", "", Optional.empty(), Nameplate.UNREADABLE, List.of(component));
  }

  @Override
  public String id() {
    return "three-faults-of-" + component;
  }

  @Override
  public List<Fault> faults() {
    return List.of(fault("worn", 0), fault("leaking", 1), fault("stuck", 2));
  }

  private Fault fault(String id, int place) {
    return new Fault(
        id,
        component,
        id,
        PRIORS[place],
        Source.fromMemory("a test"),
        List.of(REMEDY),
        Optional.empty(),
        made.get(place));
  }

  @Override
  public List<Question> questions() {
    return List.of(NOISE, WARM, CURRENT, LEAK).stream()
        .map(observable -> new Question(component, observable, Conditions.NONE))
        .toList();
  }

  @Override
  public Forecaster forecaster(List<Question> questions) {
    return (severity, value, spread) -> {
      for (int k = 0; k < value.length; k++) {
        switch (questions.get(k).observable().id()) {
          case "noise" -> put(value, spread, k, 0.15 + 0.5 * severity[0], 0.13);
          case "warm" -> put(value, spread, k, 0.1 + 0.7 * severity[2], 1);
          case "current" ->
              put(value, spread, k, 10 - 3 * severity[0] + 6 * severity[2], CURRENT_SPREAD);
          default -> put(value, spread, k, 1e5 * Math.exp(-9 * severity[1]), 0.4);
        }
      }
    };
  }

  private static void put(double[] value, double[] spread, int k, double v, double s) {
    value[k] = v;
    spread[k] = s;
  }
}
