package kelter.electrical.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.engine.DiagnosisEngine;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.quantity.Quantity;
import kelter.core.safety.Hazard;
import kelter.core.vocabulary.Observable;
import kelter.electrical.ElectricalModule;
import kelter.electrical.SampleMachines;

/**
 * Breaks a made-up machine in each way in turn, takes every reading that needs no live work with an
 * ordinary instrument, and counts what the diagnosis says first. The seed makes it the same every
 * time.
 */
public final class ConfusionMatrix {

  static final String HEALTHY = "healthy";
  static final String UNEXPLAINED = "unexplained";

  private static final long SEED = 6;

  private final Random random = new Random(SEED);
  private final DiagnosisEngine engine = new DiagnosisEngine(EngineSettings.USUAL);

  /**
   * Prints the tables.
   *
   * @param arguments the number of trials for each fault, 50 where none is given
   */
  public static void main(String[] arguments) {
    int trials = arguments.length == 0 ? 50 : Integer.parseInt(arguments[0]);
    for (Appliance appliance : SampleMachines.all()) {
      for (FaultModel model : new ElectricalModule().faultModels(appliance)) {
        for (double severity : new double[] {0.8, 0.3}) {
          System.out.printf("%n%s, severity %.1f, %d trials each%n", model.id(), severity, trials);
          new ConfusionMatrix()
              .of(appliance, model, severity, trials)
              .forEach((fault, said) -> System.out.printf("  %-28s %s%n", fault, said));
        }
      }
    }
  }

  /** For each true state, how often each state was named first. */
  Map<String, Map<String, Integer>> of(
      Appliance appliance, FaultModel model, double severity, int trials) {
    Map<String, Map<String, Integer>> matrix = new TreeMap<>();
    for (int fault = -1; fault < model.faults().size(); fault++) {
      double[][] forecast = FaultEffects.forecast(model, fault, severity);
      Map<String, Integer> said = new TreeMap<>();
      for (int trial = 0; trial < trials; trial++) {
        said.merge(first(appliance, model, forecast), 1, Integer::sum);
      }
      matrix.put(fault < 0 ? HEALTHY : model.faults().get(fault).key(), said);
    }
    return matrix;
  }

  private String first(Appliance appliance, FaultModel model, double[][] forecast) {
    List<Measurement> read = new ArrayList<>();
    for (int i = 0; i < model.questions().size(); i++) {
      Question question = model.questions().get(i);
      if (question.observable().procedure().hazard() != Hazard.LIVE) {
        read.add(
            new Measurement(
                question.component(),
                question.observable().id(),
                List.of(reading(question.observable(), forecast[0][i], forecast[1][i])),
                question.conditions(),
                Optional.empty(),
                ""));
      }
    }
    Job job =
        new Job(
            "trial",
            "",
            appliance,
            new Complaint("it does not work", ""),
            List.of(),
            read,
            Optional.empty());
    Diagnosis.RankedState best = engine.diagnose(job, List.of(model)).ranking().get(0);
    if (best.unexplained()) {
      return UNEXPLAINED;
    }
    return best.faults().isEmpty() ? HEALTHY : best.faults().get(0).fault().key();
  }

  private Reading reading(Observable observable, double value, double spread) {
    return switch (observable.type()) {
      case YES_NO -> new Reading.YesNo(random.nextDouble() < value);
      case GRADE -> {
        int words = observable.grades().size();
        double place = value + spread * random.nextGaussian();
        int rank = Math.max(0, Math.min(words - 1, (int) Math.floor(place * words)));
        yield new Reading.Grade(observable.grades().get(rank), rank);
      }
      case QUANTITY -> figure(observable, value, spread);
    };
  }

  private Reading figure(Observable observable, double value, double spread) {
    double instrument = observable.procedure().typical().standardUncertainty(value);
    double machine =
        observable.logarithmic()
            ? value * Math.exp(spread * random.nextGaussian())
            : value + spread * random.nextGaussian();
    double shown = machine + instrument * random.nextGaussian();
    if (shown > observable.span().high() / 2 && observable.logarithmic()) {
      return new Reading.OverRange();
    }
    double inSpan = Math.max(observable.span().low(), Math.min(observable.span().high(), shown));
    return new Reading.Value(Quantity.ofSi(inSpan, 0, observable.kind()), 0);
  }
}
