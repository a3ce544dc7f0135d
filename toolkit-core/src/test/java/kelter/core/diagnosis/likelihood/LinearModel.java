package kelter.core.diagnosis.likelihood;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Nameplate;
import kelter.core.job.Reading;
import kelter.core.quantity.Quantity;
import kelter.core.safety.Hazard;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;

/** A fault model whose forecasts are linear in the severity, and jobs with readings for it. */
public record LinearModel(
    List<Observable> observables,
    double[] healthy,
    double[][] slope,
    double[] spread,
    List<Fault> faults)
    implements FaultModel {

  public static final Procedure PROCEDURE =
      new Procedure("Read it.", 2, Hazard.DEAD, new Accuracy(0.01, 0), List.of());

  public static final Remedy REMEDY =
      new Remedy(
          "renew", "part", "renew it", 30, Remedy.Restores.COMPONENT, false, 0.95, List.of());

  public static Fault fault(String id, double prior) {
    return new Fault(
        id, "part", id, prior, Source.fromMemory("a test"), List.of(REMEDY), Optional.empty());
  }

  public static Job job(String said, List<Observable> observables, double[] y, double[] u) {
    List<Measurement> measurements = new ArrayList<>();
    for (int k = 0; k < y.length; k++) {
      if (Double.isNaN(y[k])) {
        continue;
      }
      Observable observable = observables.get(k);
      Quantity quantity = Quantity.ofSi(y[k], u[k], observable.kind()).in(observable.kind().unit());
      measurements.add(
          new Measurement(
              "part",
              observable.id(),
              List.of(new Reading.Value(quantity, 0)),
              Conditions.NONE,
              Optional.empty(),
              ""));
    }
    return job(said, measurements);
  }

  public static Job job(String said, List<Measurement> measurements) {
    Component component =
        new Component(
            "part", "part", Nameplate.UNREADABLE, Map.of(), Map.of(), Source.fromMemory("a test"));
    Appliance appliance =
        new Appliance(
            "machine", "", "", "", Optional.empty(), Nameplate.UNREADABLE, List.of(component));
    return new Job(
        "test",
        "",
        appliance,
        said.isEmpty() ? Complaint.NONE : new Complaint(said, ""),
        List.of(),
        measurements,
        Optional.empty());
  }

  @Override
  public String id() {
    return "linear";
  }

  @Override
  public List<Question> questions() {
    return observables.stream().map(o -> new Question("part", o, Conditions.NONE)).toList();
  }

  @Override
  public Forecaster forecaster(List<Question> questions) {
    int[] place = questions.stream().mapToInt(q -> observables.indexOf(q.observable())).toArray();
    return (severity, value, width) -> {
      for (int k = 0; k < place.length; k++) {
        value[k] = healthy[place[k]];
        width[k] = spread[place[k]];
      }
      for (int f = 0; f < severity.length; f++) {
        for (int k = 0; severity[f] > 0 && k < place.length; k++) {
          value[k] += slope[f][place[k]] * severity[f];
        }
      }
    };
  }
}
