package kelter.cli.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.Remedy;
import kelter.core.diagnosis.engine.DiagnosisEngine;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Nameplate;
import kelter.core.job.Reading;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Hazard;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;

/**
 * Diagnoses a made-up part once, whose result nobody sees: the Java machine then has the engine's
 * code ready, compiled in part, by the time that the job of the user is read.
 */
final class Rehearsal implements FaultModel {

  private static final String PART = "part";
  private static final int READINGS = 4;
  private static final Source NOBODY_SEES_IT = Source.fromMemory("a rehearsal");

  private final List<Fault> faults = new ArrayList<>();
  private final List<Question> questions = new ArrayList<>();

  private Rehearsal() {
    Remedy remedy = new Remedy("mend", PART, "", 1, Remedy.Restores.PART, false, 0.9, List.of());
    for (int i = 0; i < 3; i++) {
      faults.add(new Fault("fault-" + i, PART, "", 0.1, NOBODY_SEES_IT, List.of(remedy)));
    }
    Procedure procedure = new Procedure("", 1, Hazard.NONE, new Accuracy(0.01, 0), List.of());
    for (int k = 0; k <= READINGS; k++) {
      Observable observable =
          k == 0
              ? Observable.yesNo("seen-0", "", procedure)
              : Observable.quantity(
                  "seen-" + k, "", QuantityKind.RESISTANCE, new Span(0, 100), List.of(), procedure);
      questions.add(new Question(PART, observable, Conditions.NONE));
    }
  }

  static void run() {
    new DiagnosisEngine(EngineSettings.USUAL).diagnose(job(), List.of(new Rehearsal()));
  }

  private static Job job() {
    List<Measurement> measurements = new ArrayList<>();
    measurements.add(measurement(0, new Reading.YesNo(true)));
    for (int k = 1; k < READINGS; k++) {
      Quantity read = Quantity.of(50 + 10 * k, "Ohm", QuantityKind.RESISTANCE);
      measurements.add(measurement(k, new Reading.Value(read, 0.1)));
    }
    Component part =
        new Component(PART, PART, Nameplate.UNREADABLE, Map.of(), Map.of(), NOBODY_SEES_IT);
    return new Job(
        "rehearsal",
        "",
        new Appliance(PART, "", "", "", Optional.empty(), Nameplate.UNREADABLE, List.of(part)),
        new Complaint("it is weak", ""),
        List.of(),
        measurements,
        Optional.empty());
  }

  private static Measurement measurement(int k, Reading reading) {
    return new Measurement(
        PART, "seen-" + k, List.of(reading), Conditions.NONE, Optional.empty(), "");
  }

  @Override
  public String id() {
    return PART;
  }

  @Override
  public List<Fault> faults() {
    return faults;
  }

  @Override
  public List<Question> questions() {
    return questions;
  }

  @Override
  public Forecaster forecaster(List<Question> asked) {
    int[] place = new int[asked.size()];
    for (int i = 0; i < place.length; i++) {
      while (questions.get(place[i]).observable() != asked.get(i).observable()) {
        place[i]++;
      }
    }
    return (severity, value, spread) -> {
      for (int i = 0; i < place.length; i++) {
        int k = place[i];
        double sum = 50;
        for (int f = 0; f < severity.length; f++) {
          sum += severity[f] * 10 * ((k + f) % 3) * (1 - severity[f] / 4);
        }
        value[i] = k == 0 ? 0.1 + 0.8 * severity[0] : sum;
        spread[i] = 2;
      }
    };
  }
}
